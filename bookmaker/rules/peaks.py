"""Peaks and hollows: a cell greater, or smaller, than every cell that shares a side with it.

Manifest: `greater` and `smaller` are lists of cells.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Self

from bookmaker.display.items import Curve, Move, Path, Stroke
from bookmaker.display.shapes import ARC, polyline
from bookmaker.placed import Node
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.cellmarks import read_cell_marks
from bookmaker.rules.common.comparison import bounds
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.frame import Frame, Layer, Mark
from bookmaker.rules.common.neighbours import Pair
from bookmaker.rules.common.parts import Form
from bookmaker.rules.common.sorts import SortedRule
from bookmaker.rules.common.wording import sentence_case, the_or_each
from bookmaker.solve.problem import Constraint, relation
from bookmaker.trouble import Desk

NEAR, RISE, HALF, WEIGHT = 0.325, 0.105, 0.2, 0.05
"""Of roofs and bowls, in cells: how far eaves and rim lie from the middle of the cell, the height, half the width, and
the weight of the stroke."""


@dataclass(frozen=True)
class Peaks(SortedRule):
    """`greater` and `smaller` are cells."""

    kind = "peaks"
    title = "Peaks and hollows"
    noun = "peak"
    relabels = "reversed"
    example = """\
peaks:
  greater: r2c3 r5c5
  smaller: r8c2
"""
    form = Form.CELL
    sorts = (("greater", "greater"), ("smaller", "smaller"))

    greater: tuple[int, ...] = ()
    smaller: tuple[int, ...] = ()

    @classmethod
    def read(cls, body: Node, grid: Grid, desk: Desk) -> Self | None:
        marks = read_cell_marks(body, "peaks", ("greater", "smaller"), grid, desk)
        if marks is None:
            return None
        sound = True
        for name, cells in marks.items():
            taken: list[int] = []
            for cell, place in cells:
                beside = next((other for other in taken if other in grid.orthogonal(cell)), None)
                if beside is not None:
                    text = f"{grid.name(beside)} and {grid.name(cell)} share a side, so they can't both be {name}"
                    desk.error(place, "peaks-touch", f"{text} than every neighbour")
                    sound = False
                taken.append(cell)
        return cls(*(tuple(cell for cell, _ in cells) for cells in marks.values())) if sound else None

    def true_sorts(self, cells: tuple[int, ...], grid: Grid, digits: Sequence[int]) -> Iterator[str]:
        near = [digits[other] for other in grid.orthogonal(cells[0])]
        if digits[cells[0]] > max(near):
            yield "greater"
        elif digits[cells[0]] < min(near):
            yield "smaller"

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        yield relation(self._comparisons(grid), grid.size, ((a, b) for a in grid.digits for b in grid.digits if a > b))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cell in grid.cells:
            row, column = grid.row(cell), grid.column(cell)
            for r, c in ((row - 1, column), (row + 1, column), (row, column - 1), (row, column + 1)):
                if not (0 <= r < grid.size and 0 <= c < grid.size):
                    continue
                if cell in self.greater and digits[r * grid.size + c] >= digits[cell]:
                    return False
                if cell in self.smaller and digits[r * grid.size + c] <= digits[cell]:
                    return False
        return True

    def sentence(self) -> str:
        than = "than all cells that share a side with it"
        said: list[str] = []
        for cells, mark, more in ((self.greater, "roof", "greater"), (self.smaller, "bowl", "smaller")):
            if cells:
                cell = the_or_each(len(cells), "cell")
                compared = f"a {more} digit {than}" if not said else f"a {more} one"
                said.append(f"{cell} with a {mark} {'' if said else 'holds '}{compared}")
        return sentence_case(", and ".join(said)) + "."

    @classmethod
    def primer(cls) -> str:
        return (
            "A small roof over a digit means that it is greater than the digits beside, above and below it; a bowl "
            "under it means that it is smaller. The two neighbours in its row differ, so away from the edge a digit "
            "under a roof is at least 3, and usually far more."
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(max(frame.thin(), WEIGHT * frame.cell), cap="butt", join="miter")
        half, rise = HALF * frame.cell, RISE * frame.cell
        for cell in self.greater:
            x, y = frame.centre(cell)
            eaves = y - NEAR * frame.cell
            yield Mark(Layer.CAGE, polyline(((x - half, eaves), (x, eaves - rise), (x + half, eaves)), pen))
        for cell in self.smaller:
            x, y = frame.centre(cell)
            rim = y + NEAR * frame.cell
            # A quarter of the way up its sides a bowl is still upright: two arcs that meet at the bottom.
            left = Curve((x - half, rim + ARC * rise), (x - ARC * half, rim + rise), (x, rim + rise))
            right = Curve((x + ARC * half, rim + rise), (x + half, rim + ARC * rise), (x + half, rim))
            yield Mark(Layer.CAGE, Path((Move((x - half, rim)), left, right), pen))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(greater=(10,), smaller=(12,)), CLASSIC, 3, 4)

    def key(self) -> Sample:
        if self.greater and self.smaller:
            return self.sample()
        return Sample(Peaks(greater=(10,)) if self.greater else Peaks(smaller=(10,)), CLASSIC, 3, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A peak is more than the least of its neighbours, each of them less than its greatest; hollows likewise."""
        return bounds(
            position, self._comparisons(position.grid), "the roofs and bowls leave", "the roofs and bowls leave"
        )

    def _comparisons(self, grid: Grid) -> tuple[Pair, ...]:
        """Pairs of which the first holds the greater digit."""
        down = [(cell, other) for cell in self.greater for other in grid.orthogonal(cell)]
        up = [(other, cell) for cell in self.smaller for other in grid.orthogonal(cell)]
        return tuple(dict.fromkeys(down + up))
