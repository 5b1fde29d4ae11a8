"""Knight's move: cells a knight's move apart hold different digits, in the whole grid.

Manifest: `knight: yes`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.apart import all_differ, differing
from bookmaker.rules.common.wholegrid import WholeGridRule
from bookmaker.solve.problem import Constraint

MOVES = ((1, -2), (1, 2), (2, -1), (2, 1))
"""The knight's moves that go down; the others go back."""


class Knight(WholeGridRule):
    """Cells a knight's move apart differ."""

    kind = "knight"
    title = "Knight's move"
    noun = "knight's move"
    relabels = "any"
    from_zero = True
    lettered = True
    example = "knight: yes\n"

    @classmethod
    def stands_on(cls, grid: Grid) -> bool:
        return True

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        yield all_differ(grid, MOVES)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for one, other in combinations(grid.cells, 2):
            if digits[one] == digits[other]:
                down, across = abs(grid.row(one) - grid.row(other)), abs(grid.column(one) - grid.column(other))
                if {down, across} == {1, 2}:
                    return False
        return True

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A digit strikes the cells a knight's move away; so do all its places in a house together."""
        return differing(position, MOVES, self.kind)
