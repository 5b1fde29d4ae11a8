"""Ornament: made of the book's own puzzles, the same for the same book and never for another."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

import pytest

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, Page, Text
from bookmaker.layout import load_theme, theme_names
from bookmaker.layout.art.ornament import Field, ornament
from bookmaker.layout.art.pieces import Cell, Shape, pieces_of
from bookmaker.layout.art.vignette import frieze
from bookmaker.rules import kinds
from bookmaker.rules.common.parts import Form
from tests.layout.flat import flat
from tests.layout.sample_book import sample_book

THEME = load_theme("harbour-night")
FIELD = Field(10.0, (0, 0), (29, 19))


def puzzles() -> tuple[BookPuzzle, ...]:
    return sample_book().puzzles


@pytest.mark.parametrize("name", theme_names())
def test_the_same_puzzles_give_the_same_and_others_another(name: str) -> None:
    theme = load_theme(name)
    made = ornament(puzzles(), theme, theme.cover, FIELD)
    assert made == ornament(puzzles(), theme, theme.cover, FIELD)
    first = puzzles()[0]
    given = next(at for at, digit in enumerate(first.puzzle.givens) if digit)
    fewer = tuple(0 if at == given else digit for at, digit in enumerate(first.puzzle.givens))
    changed = replace(first, puzzle=replace(first.puzzle, givens=fewer))
    assert made != ornament((changed, *puzzles()[1:]), theme, theme.cover, FIELD)
    assert made != ornament(puzzles()[1:], theme, theme.cover, FIELD)


def test_what_is_made_of_the_same_puzzles_differs_by_its_salt() -> None:
    foreword, credits = (frieze(puzzles(), THEME, 200.0, 70.0, 9, salt) for salt in ("foreword", "credits"))
    assert foreword.art != credits.art and foreword.high == credits.high > 0


def test_titles_and_numbers_change_nothing() -> None:
    renamed = tuple(replace(puzzle, title="Other", number=puzzle.number + 5) for puzzle in puzzles())
    assert ornament(puzzles(), THEME, THEME.cover, FIELD) == ornament(renamed, THEME, THEME.cover, FIELD)


def test_every_form_of_mark_has_a_shape() -> None:
    """A kind whose marks can be told apart is seen in the ornament."""
    seen = {}
    for puzzle in puzzles():
        for rule in puzzle.puzzle.rules:
            if rule.parts(puzzle.puzzle.grid):
                seen[rule.kind] = {piece.shape for piece in pieces_of(puzzle).all} - {Shape.FIGURE, Shape.TRAIL}
    assert seen and all(seen.values())
    assert {kind.form for kind in kinds().values()} <= set(Form)


def test_rising_chains_rise_by_one_and_share_no_cell() -> None:
    classic = next(puzzle for puzzle in puzzles() if not puzzle.puzzle.rules)
    chains = [piece for piece in pieces_of(classic).all if piece.shape is Shape.CHAIN]
    assert chains
    grid, digits = classic.puzzle.grid, classic.solution
    for chain in chains:
        cells = [grid.cell(row, column) for column, row in chain.cells]
        steps = [digits[b] - digits[a] for a, b in pairwise(cells)]
        assert set(steps) == {1} and all(grid.touching(a, b) for a, b in pairwise(cells))
    taken = [cell for chain in chains for cell in chain.cells]
    assert len(taken) == len(set(taken))


def test_pieces_keep_to_the_cells_that_are_shown() -> None:
    def shown(cell: Cell) -> bool:
        return 3 <= cell[0] < 20 and 2 <= cell[1] < 12

    field = replace(FIELD, shown=shown)
    for name in ("eelgrass", "harbour-night", "plum-mosaic"):
        theme = load_theme(name)
        drawn = ornament(puzzles(), theme, theme.cover, field)
        boxes = [one.box for one in flat(Page(300.0, 200.0, (drawn,), ""))]
        assert len(boxes) > 10
        for left, top, right, bottom in boxes:
            assert left >= 30 and top >= 20 and right <= 200 and bottom <= 120


def test_no_figure_of_the_ornament_can_be_read_as_text() -> None:
    def texts(items: tuple[Item, ...]) -> Iterator[str]:
        for item in items:
            if isinstance(item, Group):
                yield from texts(item.items)
            elif isinstance(item, Text):
                yield item.text

    assert [*texts((ornament(puzzles(), THEME, THEME.cover, FIELD),))] == []
