"""Small tools for reading a position: which cells see each other, and the candidates that a rule takes away."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache, reduce
from operator import and_

from bookmaker.puzzle.bits import board_of, cells_on, digits_in
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Candidate, Position


def removed_by(position: Position, kept: Mapping[int, int]) -> tuple[Candidate, ...]:
    """The candidates (cell, digit) that go when each cell of `kept` keeps only the digits of its mask."""
    return tuple((cell, digit) for cell, mask in kept.items() for digit in digits_in(position.masks[cell] & ~mask))


def alike(position: Position, cells: Sequence[int]) -> tuple[Candidate, ...]:
    """The candidates that go where all these cells hold one digit: what one of them can't hold, none can."""
    common = reduce(and_, (position.masks[cell] for cell in cells))
    return removed_by(position, dict.fromkeys(cells, common))


@lru_cache(maxsize=64)
def peers(grid: Grid) -> tuple[int, ...]:
    """For each cell the board of cells in its row, column or region, itself left out."""
    boards = [0] * grid.numbered
    for house in grid.houses:
        board = board_of(house.cells)
        for cell in house.cells:
            boards[cell] |= board & ~(1 << cell)
    return tuple(boards)


def sees(grid: Grid, one: int, other: int) -> bool:
    """Are these two different cells in one row, column or region, so that their digits differ?"""
    return bool(peers(grid)[one] >> other & 1)


def locked_out(position: Position, cells: Iterable[int], digit: int) -> tuple[Candidate, ...]:
    """Candidates elsewhere that see every place of a digit that one of these cells must hold."""
    seen = peers(position.grid)
    board = position.boards[digit]
    for cell in cells:
        board &= ~(1 << cell)
        if position.may(cell, digit):
            board &= seen[cell]
    return tuple((cell, digit) for cell in cells_on(board))
