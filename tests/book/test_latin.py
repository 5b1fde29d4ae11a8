"""Latin squares are puzzles of their own: named and taught as such, and nothing in their book speaks of boxes."""

from __future__ import annotations

import re
from functools import cache
from itertools import chain
from pathlib import Path

import pytest

from bookmaker.book import Book, make_book
from bookmaker.book.contents import Guide, Index, Primer
from bookmaker.book.reading import hints_read
from bookmaker.book.textedition import braille_edition, text_edition
from bookmaker.book.wording import title_of_puzzle
from bookmaker.language import catalogue
from bookmaker.manifest import load
from bookmaker.phrases.phrasebook import Phrasebook
from bookmaker.proof import prove_all
from bookmaker.puzzle.grid import CLASSIC, Grid, irregular_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.tell import tell
from bookmaker.tell.formats import as_text
from tests.listening import listen, told

ENGLISH = catalogue("en")
SQUARES = Path(__file__).parent / "squares.yaml"
OF_BOXES = re.compile(r"\bbox(es)?\b|\bregions?\b", re.IGNORECASE)
NEVER_LATIN = ("disjoint-groups", "equal-part-line", "windows")
"""Kinds that need boxes or regions, and are refused without."""


@cache
def squares() -> Book:
    manifest = load(SQUARES)
    return make_book(manifest, prove_all(manifest.entries))


def test_they_are_named_by_what_they_are() -> None:
    assert [puzzle.title for puzzle in squares().puzzles if puzzle.untitled] == [
        "Latin square",
        "Latin square with arithmetic cages",
        "Latin square with inequalities",
    ]
    (index,) = (part for part in squares().body if isinstance(part, Index))
    assert "Latin square" in {entry.name for group in index.groups for entry in group.entries}
    assert title_of_puzzle(ENGLISH, Puzzle(CLASSIC, (0,) * 81)) == "Classic"


def test_nothing_in_their_book_speaks_of_boxes() -> None:
    (guide,) = (part for part in squares().front if isinstance(part, Guide))
    said = [*guide.paragraphs, text_edition(squares()), braille_edition(squares())]
    said += chain.from_iterable(hints_read(puzzle) for puzzle in squares().puzzles)
    for proof in prove_all(load(SQUARES).entries):
        said.append(as_text(tell(proof)))
    assert not [text for text in said if OF_BOXES.search(text)]


def test_the_primer_teaches_them() -> None:
    (primer,) = (part for part in squares().front if isinstance(part, Primer))
    assert [lesson.title for lesson in primer.lessons] == ["Arithmetic cages", "Inequalities", "Latin squares"]


def test_they_are_heard_as_they_are() -> None:
    for one, puzzle in zip(listen(text_edition(squares())), squares().puzzles, strict=True):
        assert (one.puzzle.grid, one.puzzle.givens) == (puzzle.puzzle.grid, puzzle.puzzle.givens)
        assert list(map(told, one.puzzle.rules)) == list(map(told, puzzle.puzzle.rules))
        assert one.key == puzzle.solution


@pytest.mark.parametrize("kind", sorted(set(kinds()) - set(NEVER_LATIN)))
def test_every_kind_can_be_taught_without_boxes(kind: str) -> None:
    """The box of a border value is no box of a grid, and a shaded region is what the rule itself draws."""
    text = kinds()[kind].primer(ENGLISH, boxes=False)
    assert not re.search(r"(?<!small )\bbox(es)?\b", text, re.IGNORECASE)
    assert len(text) >= 80
    assert text.endswith(".")


def test_kinds_without_a_word_on_boxes_are_taught_as_ever() -> None:
    alike = [kind for kind in kinds().values() if kind.primer(ENGLISH, boxes=False) == kind.primer(ENGLISH)]
    assert {"inequality", "arithmetic-cage", "skyscraper"} <= {kind.kind for kind in alike}


def test_hints_name_the_houses_that_the_grid_has() -> None:
    irregular = irregular_grid(4, [label for label in "abcd" for _ in range(4)])
    said = [Phrasebook(grid).say("hint-what-locked-candidates") for grid in (CLASSIC, irregular, Grid(5, ()))]
    assert [text.partition("another ")[2] for text in said] == [
        "row, column or box.",
        "row, column or region.",
        "row or column.",
    ]
