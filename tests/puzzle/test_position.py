"""Candidates seen by digit and by cell are the same candidates."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import boxed_grid
from bookmaker.puzzle.position import Position


def test_masks_mirror_boards() -> None:
    grid, rng = boxed_grid(6, 2, 3), Random(6)
    boards = (0, *(rng.getrandbits(36) for _ in grid.digits))
    position = Position(grid, boards)
    assert len(position.masks) == 36
    for cell in grid.cells:
        for digit in grid.digits:
            assert position.may(cell, digit) == bool(position.masks[cell] & 1 << (digit - 1))
