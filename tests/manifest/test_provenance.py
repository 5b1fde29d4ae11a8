"""What a club notes of a puzzle: permission, dates, tags, where it comes from, and the setter's own solution."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest

from bookmaker.manifest.dates import When, when_from
from bookmaker.manifest.permission import unprintable
from tests.manifest.books import GIVENS, HEAD, read, troubles_of

SOLUTION = "237841569186795243594326718315674892469582137728139456642918375853467921971253684"
"""Of the puzzle in `books.py` (McGuire, Tugemann, Civario 2014)."""

WRONG = {
    "state": ("permission: {state: askd}", "unknown-word", "askd"),
    "no state": ("permission: {by: B}", "missing-key", "{by"),
    "unknown": ("permission: {state: own, when: 2024}", "unknown-key", "when"),
    "month": ("shown: 2024-13", "bad-date", "2024-13"),
    "day": ("shown: 2024-02-30", "bad-date", "2024-02-30"),
    "no date": ("shown: last spring", "bad-date", "last"),
    "on": ("permission: {state: own, on: May}", "bad-date", "May"),
    "tag": ("tags: harbour, so/what", "not-a-tag", "so/what"),
    "tags": ("tags: {a: b}", "not-a-tag", "{a"),
    "gap": (f"solution: .{SOLUTION[1:]}", "solution-open", f".{SOLUTION[1:]}"),
    "given": (f"solution: {SOLUTION[:3]}9{SOLUTION[4:]}", "solution-given", f"9{SOLUTION[4:]}"),
    "short": ("solution: 123", "picture-size", "123"),
    "private": ("private: [a]", "not-text", "[a]"),
}


@pytest.mark.parametrize("name", WRONG)
def test_each_slip_is_told_at_its_place(name: str, tmp_path: Path) -> None:
    line, code, at = WRONG[name]
    text = HEAD + f"- id: a\n  {line}\n  givens: {GIVENS}\n"
    (found,) = troubles_of(tmp_path, {"book.yaml": text})
    typed = text.splitlines()[found.place.line - 1]
    assert (found.code, typed[found.place.column - 1 :][: len(at)]) == (code, at)


def test_all_is_read(tmp_path: Path) -> None:
    text = HEAD + (
        "- id: a\n  shown: 2024-05\n  tags: [harbour, two words]\n  source: notebook 3\n  private: ask again\n"
        "  permission: {state: granted, by: Wick, on: 2024, printed: With thanks., note: by post}\n"
        f"  solution: {SOLUTION}\n  givens: {GIVENS}\n"
    )
    (entry,) = read(tmp_path, {"book.yaml": text}).entries
    assert (entry.shown, entry.tags, entry.source, entry.private) == (
        When(2024, 5),
        ("harbour", "two words"),
        "notebook 3",
        "ask again",
    )
    record = entry.consent
    assert (record.state, record.by, record.on, record.note) == ("granted", "Wick", When(2024), "by post")
    assert entry.permission == "With thanks."
    assert entry.solution is not None
    assert entry.solution.digits[0] == 2


def test_a_picture_of_the_solution_is_no_stray_picture(tmp_path: Path) -> None:
    rows = "".join(f"    {SOLUTION[at : at + 9]}\n" for at in range(0, 81, 9))
    (entry,) = read(tmp_path, {"book.yaml": HEAD + f"- id: a\n  givens: {GIVENS}\n  solution: |\n{rows}"}).entries
    assert entry.solution is not None


def test_refused_is_never_printed_and_asked_not_for_the_press(tmp_path: Path) -> None:
    puzzles = "".join(
        f"- id: {state}\n  permission: {{state: {state}}}\n  givens: {GIVENS}\n"
        for state in ("own", "asked", "refused", "granted")
    )
    entries = read(tmp_path, {"book.yaml": HEAD + puzzles}).entries
    assert [(t.code, t.place.line) for t in unprintable(entries, press=False)] == [("refused", 12)]
    assert [t.code for t in unprintable(entries, press=True)] == ["not-granted", "refused"]


def test_dates_as_exact_as_they_are_known() -> None:
    assert [str(when_from(text)) for text in ("2026-03-14", "2026-03", "2026")] == ["2026-03-14", "2026-03", "2026"]
    assert [when_from(text) for text in ("2026-3", "2026-00", "2026-01-00", "26", "2026-13", "")] == [None] * 6
    days = [When(2025, 12, 31), When(2026), When(2026, 1), When(2026, 1, 1), When(2026, 2)]
    assert all(before < after for before, after in pairwise(days))
