"""Low-high lines: low and high digits alternate.

Manifest: a list of chains. Low is what is less than the middle of all digits, high what is greater; the middle digit
itself, where there is one, never stands on a line (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.bits import span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.rules.common.alternating import AlternatingRule, Sides
from bookmaker.rules.common.contract import Sample
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN, halo, trace
from bookmaker.rules.common.words.wording import ends_named

SWING = 0.085
"""How far the battlement swings to either side, in cells."""

TEETH = 3
"""Whole battlements from cell to cell, each up and down once."""


@dataclass(frozen=True)
class LowHighLine(AlternatingRule):
    """Chains of low and high digits in turn."""

    kind = "low-high-line"
    title = "Low-high lines"
    noun = "low-high line"
    typed = ("lines",)
    example = """\
low-high-line:
  - r1c1-r1c4 r2c5
  - r9c9-r6c9
"""

    from_zero = True

    symbols: str = CLASSIC.symbols
    """The signs of the grid's digits, of which the rule names some."""

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls((), grid.symbols)

    @staticmethod
    def sides(size: int) -> Sides:
        return span_mask(1, size // 2), span_mask(size - size // 2 + 1, size)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        middle = (grid.size + 1) / 2
        for chain in self.chains:
            for i in range(len(chain) - 1):
                low, high = sorted((digits[chain[i]], digits[chain[i + 1]]))
                if not low < middle < high:
                    return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        half, odd = divmod(len(self.symbols), 2)
        low, high = self.symbols[:half], self.symbols[half + odd :]
        ends = {"least": low[0], "low": low[-1], "high": high[0], "most": high[-1]}
        return super().arguments(words) | ends | {"middle": self.symbols[half] if odd else "none"}

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.2, THIN)
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            swing = SWING * frame.lane(chain).scale * frame.cell
            way = trace(frame, chain)
            points = [way.points[0]]
            for start, end in pairwise(way.stops):
                tooth = (end - start) / (2 * TEETH)
                for at in range(2 * TEETH):
                    low, high = start + at * tooth, start + (at + 1) * tooth
                    aside = swing if at % 2 else -swing
                    points += [way.beside(low + 0.01, aside), way.beside(high - 0.01, aside)]
            yield Mark(Layer.LINE, halo(frame, way.points, 2 * swing), of)
            yield Mark(Layer.LINE, polyline([*points, way.points[-1]], pen), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, SWING + 0.02) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)
