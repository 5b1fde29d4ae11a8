"""Peaks and hollows: a cell greater, or smaller, than every cell that shares a side with it.

Manifest: `greater` and `smaller` are lists of cells.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Self

from bookmaker.display.items import Curve, Move, Path, Stroke
from bookmaker.display.shapes import ARC, polyline
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.cellmarks import read_cell_marks
from bookmaker.rules.common.comparison import bounds
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Box, InCell, PlaceClaim
from bookmaker.rules.common.neighbours import Pair
from bookmaker.rules.common.parts import Form
from bookmaker.rules.common.sorts import SortedRule
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

WEIGHT, PAD = 0.05, 0.025
"""Weight of the stroke of roofs and bowls, and how far it reaches beyond their lines, in cells."""

ROOFS = Box(0.275, 0.045, 0.725, 0.2), Box(0.32, 0.15, 0.68, 0.265)
"""Where a roof may stand: over the digit, or lower and smaller where something is on the border."""

BOWLS = Box(0.275, 0.8, 0.725, 0.955), Box(0.32, 0.735, 0.68, 0.85)
"""The same for bowls, under it."""


@dataclass(frozen=True)
class Peaks(SortedRule):
    """`greater` and `smaller` are cells."""

    kind = "peaks"
    title = "Peaks and hollows"
    noun = "peak"
    typed = ("greater: lines, smaller: lines",)
    relabels = "reversed"
    from_zero = True
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
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        marks = read_cell_marks(body, "peaks", ("greater", "smaller"), grid, collector)
        if marks is None:
            return None
        sound = True
        for name, cells in marks.items():
            taken: list[int] = []
            for cell, place in cells:
                if not grid.orthogonal(cell):
                    said = f"no cell shares a side with {grid.name(cell)}, so it is not {name} than any"
                    collector.error(place, "peaks-alone", said, "leave it out")
                    sound = False
                beside = next((other for other in taken if other in grid.orthogonal(cell)), None)
                if beside is not None:
                    text = f"{grid.name(beside)} and {grid.name(cell)} share a side, so they can't both be {name}"
                    collector.error(place, "peaks-touch", f"{text} than every neighbour")
                    sound = False
                taken.append(cell)
        return cls(*(tuple(cell for cell, _ in cells) for cells in marks.values())) if sound else None

    def true_sorts(self, cells: tuple[int, ...], grid: Grid, digits: Sequence[int]) -> Iterator[str]:
        near = [digits[other] for other in grid.orthogonal(cells[0])]
        if not near:
            return  # black cells all around it
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
                if not grid.inside(r, c):
                    continue
                if cell in self.greater and digits[grid.cell(r, c)] >= digits[cell]:
                    return False
                if cell in self.smaller and digits[grid.cell(r, c)] <= digits[cell]:
                    return False
        return True

    def sentence(self, words: Catalogue) -> str:
        sorts = "both" if self.greater and self.smaller else "greater" if self.greater else "smaller"
        return words.say(f"peaks-sentence-{sorts}", greater=len(self.greater), smaller=len(self.smaller))

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for cells, sort in ((self.greater, "greater"), (self.smaller, "smaller")):
            if cells:
                yield words.say(f"peaks-spoken-{sort}", n=len(cells), cells=cells_said(words, grid, cells))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(max(frame.thin(), WEIGHT * frame.cell), cap="butt", join="miter")
        for cell in self.greater + self.smaller:
            x, y = frame.corner(cell)
            roof = cell in self.greater
            box = frame.box(InCell(cell, ROOFS if roof else BOWLS))
            left, right = x + (box.left + PAD) * frame.cell, x + (box.right - PAD) * frame.cell
            top, foot = y + (box.top + PAD) * frame.cell, y + (box.bottom - PAD) * frame.cell
            middle = (left + right) / 2
            if roof:
                name, drawn = "roof", polyline(((left, foot), (middle, top), (right, foot)), pen)
            else:
                # A quarter of the way up its sides a bowl is still upright: two arcs that meet at the bottom.
                half, rise = right - middle, foot - top
                down = Curve((left, top + ARC * rise), (middle - ARC * half, foot), (middle, foot))
                up = Curve((middle + ARC * half, foot), (right, top + ARC * rise), (right, top))
                name, drawn = "bowl", Path((Move((left, top)), down, up), pen)
            yield Mark(Layer.FIGURE, drawn, (f"the {name} of {frame.grid.name(cell)}",))

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        yield from (InCell(cell, ROOFS) for cell in self.greater)
        yield from (InCell(cell, BOWLS) for cell in self.smaller)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(greater=(10,), smaller=(12,)), CLASSIC, 3, 4)

    def key(self) -> Sample:
        if self.greater and self.smaller:
            return self.sample()
        return Sample(Peaks(greater=(10,)) if self.greater else Peaks(smaller=(10,)), CLASSIC, 3, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A peak is more than the least of its neighbours, each of them less than its greatest; hollows likewise."""
        return bounds(position, self._comparisons(position.grid), self._refer)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(self._at(cell) for cell in (*self.greater, *self.smaller))

    def _at(self, cell: int) -> MarkRef:
        return MarkRef.at(self.kind, (cell,), variety="greater" if cell in self.greater else "smaller")

    def _refer(self, pairs: Sequence[Pair]) -> MarkRef:
        """The marked cell, or the cells, that some comparisons come from."""
        marked = dict.fromkeys(
            cell for greater, smaller in pairs for cell in ((greater,) if greater in self.greater else (smaller,))
        )
        return self._at(next(iter(marked))) if len(marked) == 1 else MarkRef.joined(self.kind, marked)

    def _comparisons(self, grid: Grid) -> tuple[Pair, ...]:
        """Pairs of which the first holds the greater digit."""
        down = [(cell, other) for cell in self.greater for other in grid.orthogonal(cell)]
        up = [(other, cell) for cell in self.smaller for other in grid.orthogonal(cell)]
        return tuple(dict.fromkeys(down + up))
