"""Diagonals: one or both of the long diagonals are houses, so they hold every digit once.

Manifest: `both`, `falling` (from the top left) or `rising` (from the bottom left).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Self

from bookmaker.display.items import Line, Point, Stroke
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import Grid, House, HouseRef, boxed_grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.patterns import SeenByAll
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import locked_out
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN
from bookmaker.rules.common.parts import Part, Written
from bookmaker.rules.common.words.speech import lines_said
from bookmaker.solve.problem import Constraint, Different
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, read_choice

REACH = 0.23
"""How far the line runs into each cell from its corner, along each side, in cells; the digit's place stays free."""


@dataclass(frozen=True)
class Diagonals(Rule):
    """Which of the two long diagonals are houses; at least one."""

    kind = "diagonals"
    title = "Diagonals"
    noun = "diagonal"
    typed = ("falling | rising | both",)
    relabels = "any"
    from_zero = True
    lettered = True
    example = "diagonals: both\n"

    falling: bool
    rising: bool

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        word = read_choice(body, "diagonals", collector, ("both", "falling", "rising"))
        return None if word is None else cls(word != "rising", word != "falling")

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(False, False)

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        names = ("falling",) * self.falling + ("rising",) * self.rising
        return tuple(Part(house.cells, name) for name, house in zip(names, self.houses(grid), strict=True))

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        first = grid.cell(0, 0)  # where a falling one begins
        falling = [first in part.cells for part in parts]
        return replace(self, falling=True in falling, rising=False in falling)

    def written(self, grid: Grid) -> Written:
        return "both" if self.falling and self.rising else "falling" if self.falling else "rising"

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return (Different(house.cells) for house in self.houses(grid))

    def houses(self, grid: Grid) -> tuple[House, ...]:
        last = grid.size - 1
        down = tuple(grid.cell(i, i) for i in range(grid.size))
        up = tuple(grid.cell(last - i, i) for i in range(grid.size))
        falling = House("the falling diagonal", down, HouseRef("diagonals", 1, down[0], "falling"))
        rising = House("the rising diagonal", up, HouseRef("diagonals", 2, up[0], "rising"))
        return (falling,) * self.falling + (rising,) * self.rising

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        size = grid.size
        down = {digits[grid.cell(row, row)] for row in range(size)}
        up = {digits[grid.cell(row, size - 1 - row)] for row in range(size)}
        return (not self.falling or len(down) == size) and (not self.rising or len(up) == size)

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return {"n": self.falling + self.rising}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        return lines_said(words, grid, "diagonals-spoken", (house.cells for house in self.houses(grid)))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.2, THIN, cap="round")
        reach = REACH * frame.cell
        for house in self.houses(frame.grid):
            down = 1 if house.cells[0] < house.cells[-1] else -1
            of = (house.name,)
            first, last = frame.centre(house.cells[0]), frame.centre(house.cells[-1])
            half = frame.cell / 2
            yield Mark(Layer.FILL, _stub((first[0] - half, first[1] - half * down), reach, reach * down, pen), of)
            for before, after in pairwise(house.cells):
                x, y = frame.between(before, after)
                yield Mark(Layer.FILL, Line((x - reach, y - reach * down), (x + reach, y + reach * down), pen), of)
            yield Mark(Layer.FILL, _stub((last[0] + half, last[1] + half * down), -reach, -reach * down, pen), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(house.cells, 0.02, firm=True) for house in self.houses(grid))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(falling=True, rising=True), boxed_grid(4, 2, 2), 4, 4)

    def key(self) -> Sample:
        # Three rows are enough to see the mark, though no digits would fit them.
        return Sample(self, Grid(3, ()), 3, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A cell that sees every place a digit has on a diagonal can't hold it."""
        for house in self.houses(position.grid):
            for digit in position.grid.digits:
                places = tuple(cell for cell in house.cells if position.may(cell, digit))
                removed = locked_out(position, house.cells, digit)
                if len(places) > 1 and removed:
                    claim = SeenByAll(digit, house.ref, places)
                    yield Deduction(Rung.PAIR, 2, places, removed, MarkRef.whole(self.kind), claim)


def _stub(corner: Point, across: float, down: float, pen: Stroke) -> Line:
    return Line(corner, (corner[0] + across, corner[1] + down), pen)
