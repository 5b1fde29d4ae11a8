"""Small tools for reading a position: sets of digits as masks, and the candidates that a rule takes away.

A mask has bit d - 1 set for digit d, as everywhere in the engine.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

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


def sees(grid: Grid, one: int, other: int) -> bool:
    """Are these two different cells in one row, column or region, so that their digits differ?"""
    if one == other:
        return False
    if grid.row(one) == grid.row(other) or grid.column(one) == grid.column(other):
        return True
    return bool(grid.regions) and grid.region_of[one] == grid.region_of[other]


def all_see_each_other(grid: Grid, cells: Iterable[int]) -> bool:
    """Do these cells, all in one row, column or region or else pairwise, hold different digits for certain?"""
    seen: list[int] = []
    for cell in cells:
        if not all(sees(grid, cell, other) for other in seen):
            return False
        seen.append(cell)
    return True
