"""A mark that another would hide is a diagnostic at its rule, whatever is made of the puzzle."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

import pytest

from bookmaker.book import make_book
from bookmaker.book.contents import Book, BookPuzzle
from bookmaker.layout import compose, compose_handout, load_layout
from bookmaker.layout.art.checkletters import check_letters
from bookmaker.layout.art.gridart import painted
from bookmaker.layout.art.insight import out_of_sight
from bookmaker.manifest import load
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.solve.verdict import Undecided
from bookmaker.source.diagnostics import BookErrors, Place
from tests.cli.running import run
from tests.layout.sample_book import sample_book
from tests.rules.stacks import CELLS, stacked, twin

HERE = Place("here")


def lost(*rules: Rule, cell: float = 20.0) -> list[str]:
    puzzle = Puzzle(CLASSIC, (0,) * 81, rules)
    placed = [(rule, HERE) for rule in rules]
    return [diagnostic.text for diagnostic in out_of_sight(painted(puzzle, cell), "it", HERE, placed)]


LINES = [kind for kind in kinds() if twin(kind) is not None]


def test_two_lines_along_one_stretch_are_in_sight_and_all_of_them_are_not() -> None:
    assert lost(stacked(LINES[0]), stacked(LINES[1])) == []
    assert len(LINES) >= 9
    assert lost(*map(stacked, LINES))


@pytest.mark.parametrize("puzzle", sample_book().puzzles, ids=lambda puzzle: puzzle.id)
def test_the_sample_book_hides_nothing(puzzle: BookPuzzle) -> None:
    rules = [*zip(puzzle.puzzle.rules, puzzle.rule_places, strict=True)]
    assert out_of_sight(painted(puzzle.puzzle, 26.0), puzzle.title, puzzle.place, rules) == []


def crowded_book(folder: Path) -> Path:
    """A puzzle whose lines all run along row 1, in a file of its own."""
    names = [
        kind
        for kind in LINES
        if kind not in ("arrow",)
        and kinds()[kind].__name__ not in ("Palindrome", "RegionSumLine", "EqualPartLine", "SameSumLine")
    ]
    rules = "\n".join(f"      {name}: r1c1-r1c3" for name in names)
    head = "book: {title: Crowd, permission: mine, hints: no}\npuzzles:\n  - id: crowd\n    rules:\n"
    (folder / "book.yaml").write_text(f"{head}{rules}\n", encoding="utf-8")
    return folder / "book.yaml"


def unproven(file: Path) -> Book:
    manifest = load(file)
    proofs = [Proof(entry, Undecided(0), None) for entry in manifest.entries]
    return make_book(manifest, proofs, draft=True)


@pytest.mark.parametrize(
    ("make", "layout"), [(compose, "a4-book"), (compose, "a4-book-six"), (compose_handout, "a4-handout")]
)
def test_a_hidden_mark_is_a_trouble_at_its_rule(make, layout: str, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    book = unproven(crowded_book(tmp_path))
    with pytest.raises(BookErrors) as caught:
        list(make(book, load_layout(layout)).pages)
    lines = (tmp_path / "book.yaml").read_text(encoding="utf-8").splitlines()
    for diagnostic in caught.value.diagnostics:
        assert diagnostic.code == "mark-hidden"
        kind = lines[diagnostic.place.line - 1].strip().partition(":")[0]
        assert kinds()[kind].noun in diagnostic.text
        assert "would be hidden by" in diagnostic.text and "% of it would be seen" in diagnostic.text


def test_it_is_told_where_a_picture_is_asked_for(tmp_path: Path) -> None:
    result = run("picture", crowded_book(tmp_path), "crowd", "--out", tmp_path / "crowd.png")
    assert result.exit_code == 1
    assert re.search(r"book\.yaml:\d+:7: “crowd”: the ", result.stderr)
    assert "would be hidden by" in result.stderr
    assert not (tmp_path / "crowd.png").exists()


def letters_over(cells: Sequence[int]) -> list[str]:
    """What is lost under the letters of a check row in these cells."""
    limits = stacked("limits")
    puzzle = replace(sample_book().puzzles[0], puzzle=Puzzle(CLASSIC, (0,) * 81, (limits,)), check=tuple(cells))
    drawn = painted(puzzle.puzzle, 20.0)
    return [one.text for one in out_of_sight(drawn, "it", HERE, [(limits, HERE)], check_letters(puzzle, 20.0))]


def test_letters_of_a_check_row_hide_no_limit() -> None:
    assert letters_over(CELLS) == []
