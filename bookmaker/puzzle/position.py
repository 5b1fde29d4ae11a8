"""A puzzle half solved: which digits may still stand where.

One whole number per digit, one bit per cell (the engine's own way of seeing a grid): `boards[d]` has bit c set
where digit d may still stand in cell c; `boards[0]` is unused. A cell with one digit left may be placed or not:
`placed` is the board of cells already written down by the solver.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TypeAlias

from bookmaker.puzzle.grid import Grid

Candidate: TypeAlias = tuple[int, int]
"""A cell, and a digit that may stand in it or is written there."""


@dataclass(frozen=True)
class Position:
    """Candidates of every cell. `boards` has size + 1 members; `placed` is a board."""

    grid: Grid
    boards: tuple[int, ...]
    placed: int = 0

    @cached_property
    def masks(self) -> tuple[int, ...]:
        """For each cell the set of its digits as a mask (digit d is bit d - 1)."""
        masks = [0] * self.grid.numbered
        for digit in self.grid.digits:
            board, bit = self.boards[digit], 1 << (digit - 1)
            while board:
                low = board & -board
                masks[low.bit_length() - 1] |= bit
                board ^= low
        return tuple(masks)

    def on(self, grid: Grid) -> Position:
        """The same as one of several overlapping grids shows it."""
        return self if grid is self.grid else Position(grid, self.boards, self.placed)

    def may(self, cell: int, digit: int) -> bool:
        """May this digit still stand in this cell?"""
        return bool(self.boards[digit] >> cell & 1)
