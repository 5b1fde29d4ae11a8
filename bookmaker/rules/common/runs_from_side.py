"""How long a line goes on as it begins: the base of the kinds whose clues count digits from a side.

In: numbers at the sides of the grid. Out: the rule; a kind says which two digits in a row go on, and draws its sign.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Collection, Iterator, Sequence
from itertools import pairwise
from typing import ClassVar

from bookmaker.display.items import Path, Point, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.rules.common.clue import Clue
from bookmaker.rules.common.contract import Sample
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.outside import OutsideRule, number_clue
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector, Place

ACROSS, GAP = 0.2, 0.06
"""Width of the sign before a number, and white between them, in cells."""


class RunRule(OutsideRule):
    """Each clue's value is how many digits go on from its side, the nearest included."""

    room = (0.72, 0.62)
    strokes: ClassVar[tuple[tuple[Point, ...], ...]]
    """The sign, in cells from its middle."""

    @staticmethod
    @abstractmethod
    def goes_on(before: int, after: int) -> bool:
        """Does the run of a line go on from one digit to the next?"""

    @staticmethod
    @abstractmethod
    def longest(size: int) -> int:
        """How long a run can be."""

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        value = number_clue(text, place, f"a {cls.noun}", collector, 1, cls.longest(grid.size))
        return () if value is None else (value,)

    @classmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        return (next((at for at, (a, b) in enumerate(pairwise(line), 1) if not cls.goes_on(a, b)), len(line)),)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """Relations between neighbours: within the run they go on, at its end they do not."""
        inside, ends = [], []
        for clue in self.clues:
            steps = list(pairwise(clue.cells(grid)))
            inside += steps[: clue.value - 1]
            ends += steps[clue.value - 1 : clue.value]
        for pairs, wanted in ((inside, True), (ends, False)):
            if pairs:
                keeps = ((a, b) for a in grid.digits for b in grid.digits if a != b and self.goes_on(a, b) is wanted)
                yield relation(pairs, grid.size, keeps)

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.cell * 0.045, INK, join="miter")
        for clue in self.clues:
            of = (f"the {self.noun} {clue.value} {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            text = str(clue.value)
            half = len(text) * 0.25 / 2 * frame.cell
            figures = clue_figures(frame, (x + (ACROSS + GAP) / 2 * frame.cell, y), text, 0.5)
            yield Mark(Layer.BORDER, figures, of)
            middle = x - half - GAP / 2 * frame.cell
            for stroke in self.strokes:
                yield Mark(Layer.BORDER, _drawn(stroke, middle, y, frame.cell, pen), of)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, 2),)), CLASSIC, 1, 3)


def _drawn(stroke: Sequence[Point], x: float, y: float, cell: float, pen: Stroke) -> Path:
    return polyline([(x + across * cell, y + down * cell) for across, down in stroke], pen)
