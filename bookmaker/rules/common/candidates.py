"""Small tools for reading a position: sets of digits as masks, and the candidates that a rule takes away.

A mask has bit d - 1 set for digit d, as everywhere in the engine.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from functools import lru_cache

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position


def digits_in(mask: int) -> Iterator[int]:
    """The digits of a mask, least first."""
    while mask:
        low = mask & -mask
        yield low.bit_length()
        mask ^= low


def mask_of(digits: Iterable[int]) -> int:
    """The mask of some digits."""
    mask = 0
    for digit in digits:
        mask |= 1 << (digit - 1)
    return mask


def lowest(mask: int) -> int:
    """The least digit of a mask that is not empty."""
    return (mask & -mask).bit_length()


def highest(mask: int) -> int:
    """The greatest digit of a mask that is not empty."""
    return mask.bit_length()


def span_mask(least: int, most: int) -> int:
    """The mask of the digits `least`..`most`; empty where they cross."""
    return ((1 << most) - 1) & ~((1 << (max(least, 1) - 1)) - 1) if most >= max(least, 1) else 0


def removed_by(position: Position, kept: Mapping[int, int]) -> tuple[tuple[int, int], ...]:
    """The candidates (cell, digit) that go when each cell of `kept` keeps only the digits of its mask."""
    return tuple((cell, digit) for cell, mask in kept.items() for digit in digits_in(position.masks[cell] & ~mask))


@lru_cache(maxsize=64)
def peers(grid: Grid) -> tuple[int, ...]:
    """For each cell the board of cells in its row, column or region, itself left out."""
    boards = [0] * len(grid.cells)
    for house in grid.houses:
        board = sum(1 << cell for cell in house.cells)
        for cell in house.cells:
            boards[cell] |= board & ~(1 << cell)
    return tuple(boards)


def sees(grid: Grid, one: int, other: int) -> bool:
    """Are these two different cells in one row, column or region, so that their digits differ?"""
    return bool(peers(grid)[one] >> other & 1)


def locked_out(position: Position, cells: Iterable[int], digit: int) -> tuple[tuple[int, int], ...]:
    """Candidates elsewhere that see every place of a digit that one of these cells must hold."""
    seen = peers(position.grid)
    board = position.boards[digit]
    for cell in cells:
        board &= ~(1 << cell)
        if position.may(cell, digit):
            board &= seen[cell]
    return tuple((cell - 1, digit) for cell in digits_in(board))
