"""Fortress cells: shaded cells are greater than the unshaded cells that share a side with them.

Manifest: lists of cells, or a picture with a letter for each shaded cell.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import hypot
from random import Random
from typing import Self

from bookmaker.display.items import Line, Point, Stroke
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.area import loops, outline, read_areas
from bookmaker.rules.common.comparison import bounds
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Outlined, PlaceClaim
from bookmaker.rules.common.drawing.strokes import fitting
from bookmaker.rules.common.neighbours import Pair
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

GREY = 0.87
"""Of the ground."""

INSET, WALL, MERLON = 0.06, 0.07, 0.11
"""Of the battlements: how far inside the cells' edges their middle runs, how heavy they are, and how long one merlon
is, in cells."""

LEAST = 0.45
"""So much of them has to be left beside other marks."""


@dataclass(frozen=True)
class Fortress(Rule):
    """`cells` are in the grid's order; those that hang together are one fortress."""

    kind = "fortress"
    title = "Fortress cells"
    noun = "fortress"
    typed = ("lines", "picture")
    relabels = "none"
    from_zero = True
    example = """\
fortress:
  - r2c2-r2c4 r3c3
  - r7c6 r8c6
"""
    form = Form.AREA
    usual_cells = (1, 4)

    cells: tuple[int, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        areas = read_areas(body, "the fortress", grid, collector, least=1)
        if areas is None:
            return None
        found: set[int] = set()
        for area in areas:
            twice = next((cell for cell in area.cells if cell in found), None)
            if twice is not None:
                collector.error(area.place, "cell-twice", f"{grid.name(twice)} is shaded twice")
                return None
            found.update(area.cells)
        if len(found) == len(grid.cells):
            collector.error(body.place, "fortress-large", "every cell is shaded, so there is nothing to compare")
            return None
        return cls(tuple(sorted(found)))

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(tuple(sorted(piece))) for piece in grid.pieces(self.cells))

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, cells=tuple(sorted({cell for part in parts for cell in part.cells})))

    def written(self, grid: Grid) -> Written:
        return [runs(grid, part.cells, slanting=False) for part in self.parts(grid)]

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        part = Part(tuple(sorted(cells)))
        if self.keeps(part, grid, digits):
            yield part

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        pairs = self._comparisons(grid)
        if pairs:
            yield relation(pairs, grid.size, ((a, b) for a in grid.digits for b in grid.digits if a > b))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cell in self.cells:
            row, column = grid.row(cell), grid.column(cell)
            for r, c in ((row - 1, column), (row + 1, column), (row, column - 1), (row, column + 1)):
                beside = grid.cell(r, c) if grid.inside(r, c) else cell
                if beside not in self.cells and digits[beside] >= digits[cell]:
                    return False
        return True

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        return (words.say("fortress-spoken", cells=cells_said(words, grid, part.cells)) for part in self.parts(grid))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        for part in self.parts(frame.grid):
            of = (f"the fortress at {frame.grid.name(part.cells[0])}",)
            inset = frame.inset(part.cells, INSET)
            yield Mark(Layer.GROUND, outline(frame, part.cells, 0.0, fill=GREY), of)
            for corners in loops(frame.grid, part.cells, inset):
                for start, end in zip(corners, (*corners[1:], corners[0]), strict=True):
                    yield Mark(Layer.CAGE, _battlements(frame, start, end), of, "battlements", LEAST)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Outlined(part.cells, INSET) for part in self.parts(grid))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((1, 9, 10)), CLASSIC, 3, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.at(self.kind, part.cells) for part in self.parts(grid))

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Each shaded cell is more than the least around it, each cell around less than the greatest in it."""
        grid = position.grid
        home = {cell: part.cells for part in self.parts(grid) for cell in part.cells}

        def refer(pairs: Sequence[Pair]) -> MarkRef:
            areas = list(dict.fromkeys(home[greater] for greater, _ in pairs))
            if len(areas) == 1:
                return MarkRef.at(self.kind, areas[0])
            return MarkRef.joined(self.kind, [area[0] for area in areas])

        return bounds(position, self._comparisons(grid), refer)

    def _comparisons(self, grid: Grid) -> list[Pair]:
        """Pairs of a shaded cell and an unshaded one beside it."""
        shaded = set(self.cells)
        return [(cell, other) for cell in self.cells for other in grid.orthogonal(cell) if other not in shaded]


def _battlements(frame: Frame, start: Point, end: Point) -> Line:
    """One side of a fortress, which begins and ends with half a merlon so that corners are closed."""
    (ax, ay), (bx, by) = ((v * frame.cell for v in start), (v * frame.cell for v in end))
    pen, merlon = WALL * frame.cell, MERLON * frame.cell
    length = hypot(bx - ax, by - ay)
    ux, uy = (bx - ax) / length * pen / 2, (by - ay) / length * pen / 2
    period = (length + pen - merlon) / fitting(length + pen - merlon, 2 * merlon)
    return Line((ax - ux, ay - uy), (bx + ux, by + uy), Stroke(pen, 0.0, (merlon, period - merlon)))
