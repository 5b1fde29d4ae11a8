"""A calibration through its file and on to the proofs."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from bookmaker.grade.bands import VERSION, bounded, level
from bookmaker.source.diagnostics import BookErrors
from bookmaker.times import Calibration, assess, calibrated, calibration_text, read_calibration, read_results
from tests.layout.sample_book import sample_proofs
from tests.times.clubs import graded, kept, sheet


def read(folder: Path, text: str) -> Calibration:
    file = folder / "calibration.yaml"
    file.write_text(text, encoding="utf-8")
    return read_calibration(file)


def test_what_is_written_is_read(tmp_path: Path) -> None:
    proofs = sample_proofs()
    levels = [level(proof.grade.difficulty) for proof in proofs if proof.grade]
    text = sheet(levels, [proof.entry.id for proof in proofs], 10, 1, {2: 1.5})
    found = assess(read_results(kept(tmp_path, text), [proof.entry for proof in proofs]), proofs)
    calibration = read(tmp_path, calibration_text(found, "results.csv"))
    assert calibration.warnings == ()
    assert calibration.families.keys() == found.families.keys()
    for proof, measured in zip(calibrated(proofs, calibration), found.puzzles, strict=True):
        assert proof.grade and measured.proof.grade
        assert proof.grade.difficulty == pytest.approx(bounded(measured.both), abs=1e-3)
        assert proof.grade.effort == measured.proof.grade.effort


def test_a_puzzle_that_was_not_timed_is_shifted_with_its_family() -> None:
    (proof,) = graded(1)
    assert proof.grade
    before = proof.grade.difficulty
    for bands in (0.5, -0.5, 3.0, -3.0):
        (after,) = calibrated([proof], Calibration({"classic": bands, "sums": 1.0}, {}))
        assert after.grade and 1 < after.grade.difficulty < 6
        assert level(after.grade.difficulty) == pytest.approx(level(before) + bands, abs=1e-3)
    assert calibrated([proof], Calibration({"sums": 1.0}, {})) == (proof,)
    assert calibrated([proof], Calibration({}, {})) == (proof,)


def test_a_puzzle_is_known_by_what_it_is() -> None:
    """Not by its id or title; another given or mark makes another puzzle of it."""
    told = [proof.entry.fingerprint for proof in sample_proofs()]
    assert len(set(told)) == len(told)
    entry = sample_proofs()[0].entry
    assert replace(entry, id="other", title="Other").fingerprint == told[0]
    fewer = replace(entry.puzzle, givens=(0,) * len(entry.puzzle.givens))
    assert replace(entry, puzzle=fewer).fingerprint != told[0]


def test_families_of_other_grades_are_passed_over(tmp_path: Path) -> None:
    text = f"grades: {VERSION - 1}\nfamilies: {{sums: +0.40}}\npuzzles:\n- {{puzzle: abc, difficulty: 3.4}}\n"
    calibration = read(tmp_path, text)
    assert (calibration.families, calibration.puzzles) == ({}, {"abc": 3.4})
    assert [diagnostic.code for diagnostic in calibration.warnings] == ["other-grades"]


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("families: {}\n", ["1:1 missing-key"]),
        (f"grades: {VERSION}\nfamily: {{}}\n", ["2:1 unknown-key"]),
        (f"grades: {VERSION}\nfamilies: {{sums: lots, soms: 1}}\n", ["2:18 bad-shift", "2:24 unknown-key"]),
        (f"grades: {VERSION}\nfamilies: {{sums: 9}}\n", ["2:18 bad-shift"]),
        (f"grades: {VERSION}\npuzzles:\n- {{puzzle: ab, difficulty: 6.1}}\n", ["3:28 bad-difficulty"]),
        (f"grades: {VERSION}\npuzzles:\n- {{puzzle: ab}}\n", ["3:3 missing-key"]),
        ("grades: [\n", ["2:1 open-bracket"]),
    ],
)
def test_mistakes_stand_at_their_place(tmp_path: Path, text: str, found: list[str]) -> None:
    with pytest.raises(BookErrors) as raised:
        read(tmp_path, text)
    assert [f"{t.place.line}:{t.place.column} {t.code}" for t in raised.value.diagnostics] == found
