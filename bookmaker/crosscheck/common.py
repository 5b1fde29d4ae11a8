"""What the definitions share: the model's types, and a few facts of the grid, stated again so that a slip shows."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Literal, TypeAlias

from bookmaker.puzzle.grid import Grid

if TYPE_CHECKING:  # optional: the extra “audit”
    from ortools.sat.python import cp_model

Model: TypeAlias = "cp_model.CpModel"

Digits: TypeAlias = "list[cp_model.IntVar]"
"""A variable for the digit of each cell."""


def counting(x: Digits, grid: Grid) -> list[cp_model.LinearExprT]:
    """What the digit of each cell counts for in a sum: one less where digits begin with 0."""
    return [digit if grid.first else digit - 1 for digit in x]


def beside_and_below(grid: Grid) -> Iterator[tuple[int, int]]:
    """Every two cells that share a side, once: each cell with the one to its right and the one below it."""
    for row, column in _places(grid):
        for beside in ((row, column + 1), (row + 1, column)):
            if grid.inside(*beside):
                yield grid.cell(row, column), grid.cell(*beside)


def share_a_side(grid: Grid, one: int, other: int) -> bool:
    """Is one cell right beside, above or below the other?"""
    return abs(grid.row(one) - grid.row(other)) + abs(grid.column(one) - grid.column(other)) == 1


def _places(grid: Grid) -> Iterator[tuple[int, int]]:
    """Row and column of every cell."""
    return ((row, column) for row in range(grid.height) for column in range(grid.width) if grid.inside(row, column))


def line_from(grid: Grid, side: Literal["left", "right", "top", "bottom"], line: int) -> list[int]:
    """The cells of a row or column in the order in which they are met from a side."""
    n = grid.size
    match side:
        case "left":
            return [line * n + at for at in range(n)]
        case "right":
            return [line * n + at for at in reversed(range(n))]
        case "top":
            return [at * n + line for at in range(n)]
        case "bottom":
            return [at * n + line for at in reversed(range(n))]


def touching(grid: Grid, diagonal: bool) -> Iterator[tuple[int, int]]:
    """Every two cells that share a side and, with `diagonal`, those that share a corner alone; each pair once."""
    yield from beside_and_below(grid)
    for row, column in _places(grid) if diagonal else ():
        for left_or_right in (column - 1, column + 1):
            if grid.inside(row + 1, left_or_right):
                yield grid.cell(row, column), grid.cell(row + 1, left_or_right)
