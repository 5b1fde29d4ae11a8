"""Palindromes: a line reads the same from both ends.

Manifest: a list of chains. Two cells at the same distance from the ends hold the same digit, so they must not share a
row, a column or a region.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import polyline
from bookmaker.puzzle.grid import Grid, boxed_grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import SameDigit
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, read_chains
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import alike, sees
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN, halo, trace, tube
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

GAUGE = 0.15
"""Breadth of the two strokes together, in cells."""

BAR = 0.17
"""Half the length of the bar across each end, in cells."""

BEYOND = 0.27
"""How far the line runs on past the middle of its last cells, so that a digit there leaves the bar in sight."""


@dataclass(frozen=True)
class Palindrome(ChainRule):
    """Chains from end to end."""

    kind = "palindrome"
    title = "Palindromes"
    noun = "palindrome"
    typed = ("lines",)
    relabels = "any"
    from_zero = True
    lettered = True
    example = """\
palindrome:
  - r3c2 r3c3 r4c4 r5c4
  - r6c8-r4c6 r3c6 r2c5
"""
    from_the_middle = True

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        def objects(chain: Chain) -> Complaint | None:
            for one, other in _mirrored(chain):
                if sees(grid, one, other):
                    text = f"the palindrome asks for the same digit in {grid.name(one)} and {grid.name(other)}"
                    return "palindrome-clash", text, "they share a row, column or region, so they must differ"
            return None

        chains = read_chains(body, cls.noun, grid, collector, objects=objects)
        return None if chains is None else cls(chains)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        return digits[0] == digits[-1]

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        pairs = dict.fromkeys(pair for chain in self.chains for pair in _mirrored(chain))
        yield relation(pairs, grid.size, ((digit, digit) for digit in grid.digits))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        words = [[digits[cell] for cell in chain] for chain in self.chains]
        return all(word == list(reversed(word)) for word in words)

    def marks(self, frame: Frame) -> Iterator[Mark]:
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            scale = frame.lane(chain).scale
            width, bar = GAUGE * scale * frame.cell, BAR * scale * frame.cell
            pen = min(frame.thin() + 0.2, 0.3 * width)
            way = trace(frame, chain).beyond(BEYOND * frame.cell, BEYOND * frame.cell)
            yield Mark(Layer.LINE, halo(frame, way.points, width), of)
            for item in tube(way.points, width, pen, 1.0, round_ends=False):
                yield Mark(Layer.LINE, item, of)
            for end in (0.0, way.length):
                ends = (way.beside(end, bar), way.beside(end, -bar))
                yield Mark(Layer.CAGE, polyline(ends, Stroke(2 * pen, THIN)), of, "bars")

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, 0.7 * BAR) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        # Bent, so that its ends stand in different rows, columns and boxes, as they must.
        return Sample(cls(((4, 1, 2),)), boxed_grid(4, 2, 2), 2, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Two mirrored cells have the same candidates."""
        for chain in self.chains:
            for one, other in _mirrored(chain):
                removed = alike(position, (one, other))
                if removed:
                    mark = MarkRef.line(self.kind, chain)
                    yield Deduction(Rung.SIMPLE, 2, (one, other), removed, mark, SameDigit((one, other)))


def _mirrored(chain: Chain) -> Iterator[tuple[int, int]]:
    """The cells at the same distance from the two ends, outermost first."""
    return ((chain[i], chain[-1 - i]) for i in range(len(chain) // 2))
