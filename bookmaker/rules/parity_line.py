"""Parity lines: odd and even digits alternate.

Manifest: a list of chains. Whether a line begins with an odd or an even digit is to be found.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import circle, polyline
from bookmaker.puzzle.bits import mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.rules.common.alternating import AlternatingRule, Sides
from bookmaker.rules.common.contract import Sample
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN, halo, trace
from bookmaker.rules.common.words.wording import ends_named

SIGN = 0.095
"""How far the signs between cells reach from the middle of the line, in cells."""


@dataclass(frozen=True)
class ParityLine(AlternatingRule):
    """Chains of odd and even digits in turn."""

    kind = "parity-line"
    title = "Parity lines"
    noun = "parity line"
    typed = ("lines",)
    from_zero = True
    example = """\
parity-line:
  - r1c1-r1c4 r2c5
  - r9c9-r6c9
"""

    @staticmethod
    def sides(size: int) -> Sides:
        return mask_of(range(1, size + 1, 2)), mask_of(range(2, size + 1, 2))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            for i in range(len(chain) - 1):
                if digits[chain[i]] % 2 == digits[chain[i + 1]] % 2:
                    return False
        return True

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.2, THIN, join="round")
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            way = trace(frame, chain)
            half = SIGN * frame.lane(chain).scale * frame.cell
            yield Mark(Layer.LINE, halo(frame, way.points, pen.width), of)
            yield Mark(Layer.LINE, polyline(way.points, pen), of)
            for at, ((one, other), (before, after)) in enumerate(
                zip(pairwise(chain), pairwise(way.stops), strict=True)
            ):
                ring = frame.ringed(one, other)
                middle = (before + after) / 2 - (ring * frame.cell + 1.2 * half if ring else 0.0)
                corners = [way.beside(middle + x * half, y * half) for x, y in ((-1, 1), (1, 1), (1, -1), (-1, -1))]
                square = polyline(corners, pen, 1.0, closed=True)
                sign = square if at % 2 else circle(way.at(middle)[0], 1.1 * half, pen, 1.0)
                yield Mark(Layer.LINE, sign, of, "signs")

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, SIGN, tuple(pairwise(chain)), SIGN) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)
