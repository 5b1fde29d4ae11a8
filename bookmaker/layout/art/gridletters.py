"""The letters that overlapping grids are called by, drawn beside them.

In: a grid, the size of its cells and the room that clues take outside it. Out: a letter for each grid, in a place
between the grids where only cells of its own are near; where there is none, over its first column or under its last.
"""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.display.items import Text
from bookmaker.puzzle.grid import Grid
from bookmaker.rules import margins_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.drawing.frame import Frame, Margins

HIGH, MOST, GREY = 0.46, 10.0, 0.35
"""Height of a letter as a share of the cell, in points at the most, and its ink."""

LANE = 0.75
"""Room for letters over or under all grids, in cells."""

Place = tuple[int, int]
"""A row and a column of all that is printed."""


def beyond(puzzle: RuledPuzzle) -> Margins:
    """Room at each side of the grid, in cells, for its clues, and for letters that have no place between the grids."""
    rows = [row for row, _ in letter_places(puzzle.grid)]
    lane = Margins(top=LANE * (-1 in rows), bottom=LANE * (puzzle.grid.height in rows))
    return margins_of(puzzle.rules, puzzle.grid) + lane


def grid_letters(puzzle: RuledPuzzle, frame: Frame) -> Iterator[Text]:
    """The letters; none where there is only one grid."""
    clues, high = margins_of(puzzle.rules, puzzle.grid), puzzle.grid.height
    for letter, (row, column) in zip(puzzle.grid.square_letters, letter_places(puzzle.grid), strict=False):
        middle = row + 0.5
        if row == -1:
            middle = -clues.top - LANE / 2
        elif row == high:
            middle = high + clues.bottom + LANE / 2
        at = (column + 0.5) * frame.cell, middle * frame.cell
        text = frame.figures(at, letter, min(HIGH, MOST / frame.cell), bold=True)
        yield Text(text.x, text.y, text.text, text.font, text.size, colour=GREY, anchor="middle")


def letter_places(grid: Grid) -> tuple[Place, ...]:
    """Where the letter of each grid stands; beside all of them only above the first row or below the last."""
    return tuple(_place(square, grid) for square in grid.squares) if grid.overlaps else ()


def _place(square: Grid, grid: Grid) -> Place:
    (top, left), (bottom, right) = (square.place(square.cells[at]) for at in (0, -1))
    corners = [(bottom + 1, left), (top - 1, left), (bottom + 1, right), (top - 1, right), (top, left - 1)]
    edges = [(row, column) for row in (top - 1, bottom + 1) for column in range(left, right + 1)]
    edges += [(row, column) for row in range(top, bottom + 1) for column in (left - 1, right + 1)]
    own = {square.place(cell) for cell in square.cells}
    for row, column in (*corners, (top, right + 1), *edges):
        near = {(row + down, column + across) for down in (-1, 0, 1) for across in (-1, 0, 1)}
        between = 0 <= row < grid.height and 0 <= column < grid.width and not grid.inside(row, column)
        if between and all(place in own for place in near if grid.inside(*place)):
            return row, column
    return (-1, left) if top == 0 else (grid.height, right)
