"""Peaks and hollows: a cell greater, or smaller, than every cell that shares a side with it.

Manifest: `greater` and `smaller` are lists of cells.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Self

from bookmaker.display.shapes import polyline
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


@dataclass(frozen=True)
class Peaks(SortedRule):
    """`greater` and `smaller` are cells."""

    kind = "peaks"
    title = "Peaks and hollows"
    noun = "peak"
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
        for cells, way, more in ((self.greater, "outwards", "greater"), (self.smaller, "inwards", "smaller")):
            if cells:
                cell = the_or_each(len(cells), "cell")
                compared = f"a {more} digit {than}" if not said else f"a {more} one"
                said.append(f"{cell} with triangles pointing {way} holds {compared}")
        return sentence_case(", and ".join(said)) + "."

    @classmethod
    def primer(cls) -> str:
        return (
            "Triangles that point out of a cell say that its digit is greater than those of all cells beside, above "
            "and below it; triangles that point into it say that it is smaller. The two neighbours in its row differ, "
            "so a marked cell away from the edge is at least 3 where it is the greatest, and usually far more."
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        grid = frame.grid
        base, near, far = 0.09 * frame.cell, 0.045 * frame.cell, 0.17 * frame.cell
        for cells, foot, tip in ((self.greater, far, near), (self.smaller, near, far)):
            for cell in cells:
                (x, y) = frame.centre(cell)
                for other in grid.orthogonal(cell):
                    ux, uy = grid.column(other) - grid.column(cell), grid.row(other) - grid.row(cell)
                    half = frame.cell / 2
                    corners = [
                        (x + ux * (half - depth) + uy * aside, y + uy * (half - depth) + ux * aside)
                        for depth, aside in ((foot, base), (tip, 0.0), (foot, -base))
                    ]
                    yield Mark(Layer.CAGE, polyline(corners, None, 0.0, closed=True))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(greater=(10,), smaller=(12,)), CLASSIC, 3, 4)

    def key(self) -> Sample:
        if self.greater and self.smaller:
            return self.sample()
        return Sample(Peaks(greater=(10,)) if self.greater else Peaks(smaller=(10,)), CLASSIC, 3, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A peak is more than the least of its neighbours, each of them less than its greatest; hollows likewise."""
        return bounds(position, self._comparisons(position.grid), "the triangles leave", "the triangles leave")

    def _comparisons(self, grid: Grid) -> tuple[Pair, ...]:
        """Pairs of which the first holds the greater digit."""
        down = [(cell, other) for cell in self.greater for other in grid.orthogonal(cell)]
        up = [(other, cell) for cell in self.smaller for other in grid.orthogonal(cell)]
        return tuple(dict.fromkeys(down + up))
