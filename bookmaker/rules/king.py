"""King's move: cells that touch at a corner hold different digits, in the whole grid.

Manifest: `king: yes`. (A king also steps along rows and columns, where digits differ anyway.)
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.apart import all_differ, differing
from bookmaker.rules.common.wholegrid import WholeGridRule
from bookmaker.solve.problem import Constraint

MOVES = ((1, -1), (1, 1))
"""The slanting moves that go down; the others go back."""


class King(WholeGridRule):
    """Cells that touch at a corner differ."""

    kind = "king"
    title = "King's move"
    noun = "king's move"
    relabels = "any"
    from_zero = True
    lettered = True
    example = "king: yes\n"

    @classmethod
    def stands_on(cls, grid: Grid) -> bool:
        return True

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        yield all_differ(grid, MOVES)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cell in grid.cells:
            for beside in (grid.column(cell) - 1, grid.column(cell) + 1):
                below = grid.row(cell) + 1, beside
                if grid.inside(*below) and digits[cell] == digits[grid.cell(*below)]:
                    return False
        return True

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A digit strikes the cells that touch its own at a corner; so do all its places in a house together."""
        return differing(position, MOVES, self.kind)
