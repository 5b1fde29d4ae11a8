"""Sets as whole numbers: digits as a mask, cells as a board.

A mask has bit d - 1 set for digit d, a board bit c for cell c. The engine sees a grid in the same way.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import cache


@cache
def digits_in(mask: int) -> tuple[int, ...]:
    """The digits of a mask, least first. Kept, for masks are few."""
    return tuple(bit + 1 for bit in range(mask.bit_length()) if mask >> bit & 1)


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


def cells_on(board: int) -> Iterator[int]:
    """The cells of a board, in order."""
    while board:
        low = board & -board
        yield low.bit_length() - 1
        board ^= low


def board_of(cells: Iterable[int]) -> int:
    """The board of some cells."""
    board = 0
    for cell in cells:
        board |= 1 << cell
    return board
