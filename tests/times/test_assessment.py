"""What is said of a book by the times of a club."""

from __future__ import annotations

import csv
from dataclasses import replace
from math import exp, log
from pathlib import Path
from random import Random
from statistics import fmean

import pytest

from bookmaker.grade.bands import PER_BAND, level
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.proof import Proof, prove_all
from bookmaker.source.diagnostics import BookErrors
from bookmaker.times import Assessment, assess, read_results
from bookmaker.times.assessment import GRADE_SPREAD, rank_correlation
from bookmaker.times.wording import data, sentences, table
from tests.times.clubs import CHANCE, graded, kept, sheet

TIMES = Path(__file__).resolve().parents[3] / "shared" / "data" / "solving-times.tsv"

PLANTED = {3: 2.0, 11: -1.8, 22: 1.8}
"""How many bands harder than graded some puzzles are, counted from 0."""


def levels(proofs: tuple[Proof, ...]) -> list[float]:
    return [level(proof.grade.difficulty) for proof in proofs if proof.grade]


def assessed(folder: Path, proofs: tuple[Proof, ...], text: str, limit: float | None = 90.0) -> Assessment:
    return assess(read_results(kept(folder, text), [proof.entry for proof in proofs]), proofs, limit)


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_twelve_solvers_and_thirty_puzzles_show_the_order_and_planted_misjudgements(tmp_path: Path, seed: int) -> None:
    proofs = graded(30)
    truth = [at + PLANTED.get(number, 0.0) for number, at in enumerate(levels(proofs))]
    heads = [proof.entry.id for proof in proofs]
    found = assessed(tmp_path, proofs, sheet(levels(proofs), heads, 12, seed, PLANTED))
    assert len(found.puzzles) == 30
    assert rank_correlation([m.times for m in found.puzzles], truth)[0] >= 0.9
    assert found.low < rank_correlation(levels(proofs), truth)[0] < found.high
    flagged = {m.number - 1 for m in found.puzzles if m.misjudged}
    assert flagged == PLANTED.keys()
    said = "\n".join(sentences(found, BAND_NAMES))
    assert "agree with the times closely" in said
    for number, off in PLANTED.items():
        (line,) = (line for line in said.splitlines() if f"“{proofs[number].entry.title}”" in line)
        assert ("times as long" if off > 0 else "times as fast") in line


def test_grade_and_times_together_lie_between_the_two_and_nearer_to_the_truth(tmp_path: Path) -> None:
    """Four clubs with few times, whose puzzles lie as far from their grades as those of published times do."""
    proofs = graded(20)
    heads = [proof.entry.id for proof in proofs]
    errors = {"graded": 0.0, "times": 0.0, "both": 0.0}
    for seed in range(4):
        rng = Random(seed)
        truth = [at + rng.gauss(0.0, GRADE_SPREAD) for at in levels(proofs)]
        off = {number: there - at for number, (there, at) in enumerate(zip(truth, levels(proofs), strict=True))}
        found = assessed(tmp_path, proofs, sheet(levels(proofs), heads, 8, seed, off, missed=0.4))
        for m in found.puzzles:
            assert min(m.expected, m.times) <= m.both <= max(m.expected, m.times)
        for way in errors:
            apart = [getattr(m, way) - truth[m.number - 1] for m in found.puzzles]
            errors[way] += sum((x - fmean(apart)) ** 2 for x in apart)  # the club's pace is anybody's guess
    assert errors["both"] < 0.9 * min(errors["graded"], errors["times"])


def test_eight_solvers_and_ten_puzzles_are_enough_and_fewer_are_not(tmp_path: Path) -> None:
    proofs = graded(10)
    heads = [str(number) for number in range(1, 11)]
    text = sheet(levels(proofs), heads, 8, 4, missed=0.0)
    found = assessed(tmp_path, proofs, text)
    assert (found.solvers, len(found.puzzles)) == (8, 10)
    fewer = "\n".join(text.splitlines()[:-1])
    with pytest.raises(BookErrors) as raised:
        assessed(tmp_path, proofs, fewer)
    (diagnostic,) = raised.value.diagnostics
    assert diagnostic.text.startswith("the table cannot tell: 7 solvers and 10 puzzles")


def test_times_that_are_all_chance_can_not_tell(tmp_path: Path) -> None:
    """Everybody takes about as long for every puzzle, whatever it is graded."""
    proofs = graded(12)
    found = assessed(tmp_path, proofs, sheet([3.0] * 12, [str(n) for n in range(1, 13)], 9, 6))
    assert found.reliability < 0.5
    said = list(sentences(found, BAND_NAMES))
    assert said[1].startswith("The times hardly tell these puzzles apart")


def test_too_few_puzzles_to_tell_whether_the_grades_are_right(tmp_path: Path) -> None:
    """The puzzles differ, but not as graded."""
    proofs = graded(10)
    truth = [levels(proofs)[at] for at in (5, 2, 8, 0, 9, 3, 6, 1, 7, 4)]
    found = assessed(tmp_path, proofs, sheet(truth, [str(n) for n in range(1, 11)], 9, 7))
    assert found.reliability > 0.5
    assert found.low <= 0 <= found.high
    assert "can't tell whether the grades are right" in list(sentences(found, BAND_NAMES))[1]


def test_minutes_of_the_average_solver(tmp_path: Path) -> None:
    """The clubs' median time at level 3 is e^0.7 times e^(3·ln(21/5)/3): 8.5 minutes."""
    proofs = graded(30)
    found = assessed(tmp_path, proofs, sheet(levels(proofs), [proof.entry.id for proof in proofs], 40, 8))
    assert found.minutes(3.0) == pytest.approx(exp(0.7 + 3 * PER_BAND), rel=0.2)
    assert found.minutes(4.0) / found.minutes(3.0) == pytest.approx((21 / 5) ** (1 / 3))


def test_puzzles_that_nobody_finished_or_that_no_solver_links_are_named(tmp_path: Path) -> None:
    proofs = graded(14)
    at = levels(proofs)
    first = sheet(at[:11], [str(n) for n in range(1, 12)], 9, 9, missed=0.0).splitlines()
    rows = [first[0] + ";12;13;14", *(row + ";-;-;-" for row in first[1:])]
    rows[1] = rows[1].removesuffix(";-;-;-") + ";;-;-"  # Solver 1 tried puzzle 12, and nobody else
    rows.append("Stranger;" + ";".join("-" * 12) + ";9;12")
    found = assessed(tmp_path, proofs, "\n".join(rows))
    assert [proof.entry.id for proof in found.unsolved] == ["puzzle-12"]
    assert [proof.entry.id for proof in found.apart] == ["puzzle-13", "puzzle-14"]
    said = "\n".join(sentences(found, BAND_NAMES))
    assert "Nobody finished “Puzzle L”" in said
    assert "No solver links “Puzzle M” and “Puzzle N” with the other puzzles" in said


def test_a_family_that_is_harder_than_graded_is_told_of(tmp_path: Path) -> None:
    plain = graded(30)
    (pantry,) = (proof for proof in sample_sums())
    proofs = tuple(
        replace(proof, entry=replace(pantry.entry, id=proof.entry.id, title=proof.entry.title)) if at % 2 else proof
        for at, proof in enumerate(plain)
    )
    off = dict.fromkeys(range(1, 30, 2), 0.8)
    found = assessed(tmp_path, proofs, sheet(levels(proofs), [proof.entry.id for proof in proofs], 14, 2, off))
    assert found.families["sums"].bands == pytest.approx(0.8, abs=3 * found.families["sums"].error)
    assert found.families["sums"].bands > 2 * found.families["sums"].error
    assert abs(found.families["classic"].bands) < 0.2
    assert "puzzles whose rules add up or count are" in "\n".join(sentences(found, BAND_NAMES))


def sample_sums() -> tuple[Proof, ...]:
    from tests.layout.sample_book import sample_manifest

    return prove_all([entry for entry in sample_manifest().entries if entry.id == "pantry"])


def test_table_and_data_say_the_same(tmp_path: Path) -> None:
    proofs = graded(12)
    found = assessed(tmp_path, proofs, sheet(levels(proofs), [proof.entry.id for proof in proofs], 10, 3))
    rows, told = table(found)[1:], data(found)
    for row, puzzle, proof in zip(rows, told["puzzles"], proofs, strict=True):
        assert proof.grade
        assert row[1] == proof.entry.title
        assert puzzle["id"] == proof.entry.id
        assert abs(puzzle["graded"] - proof.grade.difficulty) < 2e-3
        assert row[2] == str(puzzle["graded"])[:3]
        assert (int(row[6]), int(row[7])) == (puzzle["attempts"], puzzle["finished"])


@pytest.mark.skipif(not TIMES.exists(), reason="the published times are not here")
def test_published_times_of_classics(tmp_path: Path) -> None:
    """Sixty classics with their published mean times (S.-W. Wang, IEEE Access 12, 2024, CC0), as a club of ten would
    have taken them: the fit ranks them as the means do, and the agreement told is that of grades and means."""
    with TIMES.open(newline="") as lines:
        rows = list(csv.DictReader(lines, delimiter="\t"))[::13][:60]
    (tmp_path / "list.txt").write_text("".join(f"{row['puzzle']}\n" for row in rows))
    from bookmaker.manifest import load

    proofs = prove_all(load(tmp_path / "list.txt").entries)
    seconds = [float(row["mean_seconds"]) for row in rows]
    rng = Random(1)
    lines_ = [",".join(["Solver", *(str(number) for number in range(1, 61))])]
    for solver in range(10):
        pace = rng.gauss(0.0, 0.3)
        times = [exp(log(mean / 60) - pace + rng.gauss(0.0, CHANCE)) for mean in seconds]
        lines_.append(",".join([f"S{solver}", *(f"{minutes:.2f}" for minutes in times)]))
    found = assessed(tmp_path, proofs, "\n".join(lines_), None)
    fitted = [measured.times for measured in found.puzzles]
    assert rank_correlation(fitted, seconds)[0] > 0.9
    grades = [proof.grade.effort for proof in proofs if proof.grade]
    direct = rank_correlation(grades, seconds)[0]
    assert found.low < direct < found.high
    assert abs(found.agreement - direct) < 0.1
