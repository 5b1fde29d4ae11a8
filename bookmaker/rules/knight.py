"""Knight's move: cells a knight's move apart hold different digits, in the whole grid.

Manifest: `knight: yes`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Self

from bookmaker.placed import Node
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.apart import all_differ, differing
from bookmaker.rules.common.contract import Deduction, Rule
from bookmaker.rules.common.frame import Frame, Mark
from bookmaker.rules.common.reading import read_yes
from bookmaker.solve.problem import Constraint
from bookmaker.trouble import Desk

MOVES = ((1, -2), (1, 2), (2, -1), (2, 1))
"""The knight's moves that go down; the others go back."""


@dataclass(frozen=True)
class Knight(Rule):
    """Nothing to say but that it holds."""

    kind = "knight"
    title = "Knight's move"
    noun = "knight's move"
    example = "knight: yes\n"

    @classmethod
    def read(cls, body: Node, grid: Grid, desk: Desk) -> Self | None:
        return cls() if read_yes(body, "knight", desk) else None

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        yield all_differ(grid, MOVES)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for one in grid.cells:
            for other in grid.cells:
                down, across = abs(grid.row(one) - grid.row(other)), abs(grid.column(one) - grid.column(other))
                if {down, across} == {1, 2} and digits[one] == digits[other]:
                    return False
        return True

    def sentence(self) -> str:
        return "Cells a knight's move apart (two steps along a row or column, then one aside) hold different digits."

    @classmethod
    def primer(cls) -> str:
        return (
            "Two cells that a knight at chess could jump between, two steps along a row or column and one aside, hold "
            "different digits. A digit in the middle of the grid reaches eight cells in this way, most of them beyond "
            "its box. Look for boxes where a digit has two places left that both strike the same cell."
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        return iter(())

    @classmethod
    def sample(cls) -> None:
        return None

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A digit strikes the cells a knight's move away; so do all its places in a house together."""
        return differing(position, MOVES, "a knight's move")
