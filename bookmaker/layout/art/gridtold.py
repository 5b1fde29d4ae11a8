"""A grid for readers who do not see it: a table whose cells say what stands in them, and its marks in words.

In: the items that a grid is drawn with. Out: the same items in the same order, in elements. The marks with the lines
are one figure, whose words are those of the rules; the digits are the content of a table with a head for each row and
column.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from functools import lru_cache

from bookmaker.book.contents import BookPuzzle
from bookmaker.book.reading import grid_read
from bookmaker.display.items import Group, Item, Tagged, Text, tagged
from bookmaker.display.recurring import Recurring
from bookmaker.display.tags import OUR_LANGUAGE, Role, Tag
from bookmaker.language import Catalogue, catalogue
from bookmaker.layout.art.gridletters import beyond
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.speech import cell_said

LETTERS = "abcde"
"""What the cells of a check row are called."""

DIGITS = 8192
"""Cells with digits that are kept: nine in each of 81 cells, for a few sizes of grids."""


def grid_told(
    puzzle: RuledPuzzle,
    cell: float,
    art: Iterable[Item],
    digits: Mapping[int, tuple[Item, ...]],
    order: int = 0,
    marks: bool = True,
    said: Mapping[int, str] | None = None,
    language: str = "en",
) -> tuple[Item, ...]:
    """The items of a grid, `art` and then what is drawn of the digits by their cells, in elements of this order.
    The art has no words without `marks`; `said` is what cells say in which nothing is drawn, if they are not empty."""
    grid, words = puzzle.grid, catalogue(language)
    around, wide, high = beyond(puzzle), grid.width * cell, grid.height * cell
    told = ". ".join(grid_read(words, puzzle)) if marks else ""
    drawn = tuple(art)
    if told:
        across, down = wide + (around.left + around.right) * cell, high + (around.top + around.bottom) * cell
        box = -around.left * cell, -around.top * cell, across, down
        drawn = (tagged((Tag(Role.FIGURE, f"{told}.", order, language=OUR_LANGUAGE, box=box),), *drawn),)
    table = Tag(Role.TABLE, "", order, language=OUR_LANGUAGE, box=(0.0, 0.0, wide, high))
    return *drawn, tagged((table,), *_rows(words, puzzle, digits, said or {}))


def check_told(words: Catalogue, puzzle: BookPuzzle, letters: Group, order: int = 0) -> Tagged:
    """The letters of a check row that are drawn in a grid: which cell has which."""
    grid = puzzle.puzzle.grid
    cells = "; ".join(
        f"{letter}: {cell_said(words, grid, at)}" for letter, at in zip(LETTERS, puzzle.check, strict=False)
    )
    return tagged((Tag(Role.FIGURE, words.say("check-cells", cells=cells), order, language=OUR_LANGUAGE),), letters)


def candidates_said(words: Catalogue, grid: Grid, position: Position) -> dict[int, str]:
    """For each cell without a digit the candidates that it has."""
    said = {}
    for at in grid.cells:
        if not position.placed >> at & 1:
            left = [grid.symbol(digit) for digit in grid.digits if position.may(at, digit)]
            said[at] = words.say("cell-empty")
            if left:
                said[at] = words.say("cell-candidates", n=len(left), digits=" ".join(left))
    return said


def _rows(
    words: Catalogue, puzzle: RuledPuzzle, digits: Mapping[int, tuple[Item, ...]], said: Mapping[int, str]
) -> Iterator[Tagged]:
    grid, givens = puzzle.grid, puzzle.givens
    yield _heads(words, grid.width)
    given_cell, filled_cell = _digit_cell(words, True), _digit_cell(words, False)
    empty, none = _silent(words.say("cell-empty")), _silent(words.say("cell-none"))
    for row in range(grid.height):
        cells = [_row_head(words, row)]
        for at in grid.across(row):
            if at is None:
                cells.append(none)
            elif drawn := digits.get(at):
                cells.append(given_cell(drawn) if givens[at] else filled_cell(drawn))
            else:
                cells.append(_silent(told) if (told := said.get(at)) else empty)
        yield Tagged(tuple(cells), tag=_ROW)


_ROW = Tag(Role.ROW)


@lru_cache(maxsize=8)
def _digit_cell(words: Catalogue, given: bool) -> Recurring[tuple[Item, ...], Tagged]:
    """Cells with a digit that is given, or with another; grids of one size share theirs."""

    def made(drawn: tuple[Item, ...]) -> Tagged:
        digit = drawn[-1]
        said = words.say("cell-given", digit=digit.text) if given and isinstance(digit, Text) else ""
        return Tagged(drawn, tag=_cell(said))

    return Recurring(made, DIGITS)


@lru_cache(maxsize=32)
def _heads(words: Catalogue, size: int) -> Tagged:
    """The row of the columns' heads; the corner over the heads of the rows says nothing."""
    heads = (_head(Role.COLUMN_HEAD, words.say("column-numbered", number=str(column + 1))) for column in range(size))
    return Tagged((_head(Role.COLUMN_HEAD, ""), *heads), tag=_ROW)


@lru_cache(maxsize=64)
def _row_head(words: Catalogue, row: int) -> Tagged:
    return _head(Role.ROW_HEAD, words.say("row-numbered", number=str(row + 1)))


@lru_cache(maxsize=64)
def _head(role: Role, words: str) -> Tagged:
    return Tagged((), tag=Tag(role, words))


@lru_cache(maxsize=64)
def _cell(words: str) -> Tag:
    return Tag(Role.CELL, words)


@lru_cache(maxsize=512)
def _silent(words: str) -> Tagged:
    """A cell in which nothing is drawn."""
    return Tagged((), tag=_cell(words))
