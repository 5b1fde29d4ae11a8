"""Consecutive bars: a bar stands between all neighbours with consecutive digits, and between no others.

Manifest: a list of pairs. All are marked, so that a border without a bar counts as well.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from random import Random
from typing import Self

from bookmaker.display.items import Rect, Stroke
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.border import crowded, read_borders
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import OnBorder, PlaceClaim
from bookmaker.rules.common.neighbours import BorderMarks, MarkKind, Pair, neighbour_relation, neighbours, pair_of
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.words.speech import borders_said
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.solve.problem import Constraint
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

LENGTH, WIDTH = 0.5, 0.13
"""Of a bar, along the border and across it, in cells."""


@dataclass(frozen=True)
class ConsecutiveBars(Rule):
    """`bars` are pairs of cells that share a side, in the grid's order."""

    kind = "consecutive-bars"
    title = "Consecutive bars"
    noun = "consecutive bar"
    typed = ("lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
consecutive-bars:         # every pair of neighbours with consecutive digits
  - r1c8-r1c9 r2c5-r2c6 r2c8-r3c8 r3c1-r4c1 r3c5-r3c6
  - r4c2-r5c2 r4c3-r4c4 r4c4-r4c5 r4c6-r4c7 r6c2-r7c2
  - r6c9-r7c9 r7c1-r7c2 r8c6-r9c6 r9c1-r9c2
"""
    form = Form.BORDER

    bars: tuple[Pair, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        borders = read_borders(
            body, _BAR.called, grid, collector, "where no neighbours are consecutive, write “non-consecutive: yes”"
        )
        if borders is None or crowded([(border, _BAR) for border in borders], grid, collector):
            return None
        return cls(tuple(border.pair for border in borders))

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    @property
    def marks_all(self) -> bool:
        return True

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(map(Part, self.bars))

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, bars=tuple(pair_of(part) for part in parts))

    def asked_by(self, part: Part, grid: Grid) -> Iterator[Constraint]:
        yield neighbour_relation([pair_of(part)], grid, _BAR.keeps)

    def keeps(self, part: Part, grid: Grid, digits: Sequence[int]) -> bool:
        return any(self.read_off(part.cells, grid, digits, Random(0)))

    def asked_besides(self, grid: Grid) -> Iterator[Constraint]:
        return self._marked().asked_where_missing(grid)

    def written(self, grid: Grid) -> Written:
        return " ".join(runs(grid, pair) for pair in self.bars)

    def places(self, grid: Grid) -> tuple[Pair, ...]:
        return neighbours(grid)

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        if abs(digits[cells[0]] - digits[cells[1]]) == 1:
            yield Part(tuple(cells))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return self._marked().asked(grid)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cell in grid.cells:
            for other in grid.orthogonal(cell):
                if cell < other:
                    is_consecutive = digits[other] in (digits[cell] - 1, digits[cell] + 1)
                    if is_consecutive != ((cell, other) in self.bars):
                        return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return {"n": len(self.bars)}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        return borders_said(words, grid, "consecutive-bars-spoken", self.bars)

    def marks(self, frame: Frame) -> Iterator[Mark]:
        rim = Stroke(frame.thin() + 0.2)
        for one, other in self.bars:
            (x, y), scale = frame.seat(one, other)
            length, width = LENGTH * scale * frame.cell, WIDTH * scale * frame.cell
            across, down = (width, length) if other == one + 1 else (length, width)
            bar = Rect(x - across / 2, y - down / 2, across, down, rim, 1.0)
            yield Mark(Layer.BORDER, bar, (f"the bar between {cells_listed(frame.grid, (one, other))}",))

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (OnBorder(pair, LENGTH + 0.03, WIDTH + 0.03) for pair in self.bars)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1),)), CLASSIC, 1, 2)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return self._marked().references(grid)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Digits without a partner at a bar, or at a missing one; and strings of bars worked through."""
        return self._marked().deductions(position)

    def _marked(self) -> BorderMarks:
        return BorderMarks(self.kind, ((_BAR, self.bars),), all_marked=True)


_BAR = MarkKind("the bar", lambda a, b: abs(a - b) == 1, "bar")
