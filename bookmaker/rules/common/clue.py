"""A clue outside the grid: where it stands, and the line that it looks along.

In: its side and line. Out: the cells before it, from the nearest on; the clue as a mark of its rule.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal, TypeAlias

from bookmaker.puzzle.grid import Grid, House
from bookmaker.reasons import MarkRef
from bookmaker.reasons.marks import Outside
from bookmaker.source.diagnostics import Place

Side: TypeAlias = Literal["left", "right", "top", "bottom"]

SIDES = ("left", "right", "top", "bottom")


@dataclass(frozen=True, slots=True)
class Clue:
    """A number or digit at a side; `line` is its row (left, right) or column (top, bottom), from 0."""

    side: Side
    line: int
    value: int

    @property
    def along_row(self) -> bool:
        """Does it look along a row, not along a column?"""
        return self.side in ("left", "right")

    def refer(self, kind: str, grid: Grid, value: str = "") -> MarkRef:
        """The clue as a mark of a rule's kind, printed as `value`, which is its number where nothing is said."""
        line = self.looks_along(grid).ref
        return MarkRef(kind, self.cells(grid), Outside(self.side, line.number, line.square), value or str(self.value))

    def looks_along(self, grid: Grid) -> House:
        """Its row or column."""
        return (grid.rows if self.along_row else grid.columns)[self.line]

    @property
    def house(self) -> str:
        """The house that it looks along: “row 3”."""
        return f"{'row' if self.along_row else 'column'} {self.line + 1}"

    @property
    def where(self) -> str:
        """How a step tells where it stands: “left of row 3”, “above column 4”."""
        return {"left": "left of ", "right": "right of ", "top": "above ", "bottom": "below "}[self.side] + self.house

    def cells(self, grid: Grid) -> tuple[int, ...]:
        """The whole row or column, beginning with the cell next to the clue."""
        cells = self.looks_along(grid).cells
        return cells if self.side in ("left", "top") else cells[::-1]


Placed: TypeAlias = Mapping[Clue, Place]
"""Clues in the order of the file, each with the place it was typed at."""


def clue_along(cells: Sequence[int], value: int, grid: Grid) -> Clue:
    """The clue that looks along these cells."""
    first, second = cells[:2]
    row, column = grid.row(first), grid.column(first)
    if grid.row(second) == row:
        return Clue("left" if first < second else "right", row, value)
    return Clue("top" if first < second else "bottom", column, value)


def lines_seen(clues: Iterable[Clue]) -> str:
    """What the clues look along, for a message: “row”, “column” or “both”."""
    rows = {clue.along_row for clue in clues}
    return "both" if len(rows) == 2 else "row" if True in rows else "column"
