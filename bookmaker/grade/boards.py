"""Boards: whole numbers with one bit per cell, as in `puzzle/position.py`."""

from __future__ import annotations

from collections.abc import Iterable, Iterator


def board_of(cells: Iterable[int]) -> int:
    """The board of some cells."""
    board = 0
    for cell in cells:
        board |= 1 << cell
    return board


def cells_on(board: int) -> Iterator[int]:
    """The cells of a board, in order."""
    while board:
        low = board & -board
        yield low.bit_length() - 1
        board ^= low
