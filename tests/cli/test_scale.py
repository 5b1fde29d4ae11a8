"""One scale through all families: in a book in order of difficulty no band ever falls."""

from __future__ import annotations

import json
from itertools import groupby, pairwise
from pathlib import Path
from typing import Any

from bookmaker.rules import kinds
from bookmaker.starter import write_starter
from tests.cli.running import run

DEMO = Path(__file__).resolve().parents[2] / "demo_book"


def proven(book: Path) -> list[dict[str, Any]]:
    """The puzzles of `bookmaker proof --json`, whose table must show the same bands and figures in the same order."""
    report: list[dict[str, Any]] = json.loads(run("proof", book, "--json", "-").stdout)["puzzles"]
    rows = run("proof", book).stdout.splitlines()[1:]
    for row, puzzle in zip(rows, report, strict=True):
        assert f"  {puzzle['band_name']} " in row
        assert f" {str(puzzle['difficulty'])[:3]}  " in row
        assert int(puzzle["difficulty"]) == puzzle["band"]
    return report


def rises(puzzles: list[dict[str, Any]]) -> bool:
    """Does neither the band nor the difficulty fall from one to the next?"""
    return all(a["band"] <= b["band"] and a["difficulty"] <= b["difficulty"] for a, b in pairwise(puzzles))


def test_no_band_falls_within_a_chapter_of_the_demo_book() -> None:
    puzzles = proven(DEMO)
    chapters = [list(members) for _, members in groupby(puzzles, key=lambda puzzle: puzzle["chapter"])]
    assert len(chapters) > 3
    assert all(map(rises, chapters))
    assert {puzzle["band"] for puzzle in puzzles} == {1, 2, 3, 4, 5}
    assert all(puzzle["permission"] for puzzle in puzzles)


def test_no_band_falls_in_a_book_of_one_puzzle_of_every_kind(tmp_path: Path) -> None:
    """The books of `bookmaker start --kind` bound together; by raw effort, bands would fall."""
    for kind in sorted(kinds()):
        file, _ = write_starter(tmp_path / kind, kind)
        head, puzzle = file.read_text().split("puzzles:\n")
        (tmp_path / f"{kind}.yaml").write_text(puzzle)
    includes = "".join(f"  - include: {kind}.yaml\n" for kind in sorted(kinds()))
    (tmp_path / "book.yaml").write_text(f"{head}puzzles:\n{includes}")
    puzzles = proven(tmp_path)
    assert len(puzzles) == len(kinds())
    assert rises(puzzles)
    assert not rises(sorted(puzzles, key=lambda puzzle: puzzle["effort"]))


def test_the_report_has_chapter_permission_and_date_of_each_puzzle(tmp_path: Path) -> None:
    given = "53..7....6..195....98....6.8...6...34..8.3..17...2...6.6....28....419..5....8..79"  # PuLP's worked example
    puzzle = f"{{id: one, givens: '{given}', shown: 2026-03-14, permission: hers}}"
    chapters = f"chapters: [{{title: Early, puzzles: [{puzzle}]}}]"
    (tmp_path / "book.yaml").write_text(f"book: {{title: T}}\n{chapters}\n")
    (told,) = proven(tmp_path)
    assert (told["chapter"], told["permission"], told["shown"]) == ("Early", "hers", "2026-03-14")
    (tmp_path / "book.yaml").write_text(
        f"book: {{title: T, permission: ours}}\npuzzles: [{{id: one, givens: '{given}'}}]\n"
    )
    (told,) = proven(tmp_path)
    assert (told["chapter"], told["permission"], told["shown"]) == (None, "ours", None)
