"""Tide lines: from a ring on, digits rise and fall by turns.

Manifest: a list of chains from the ring. No book has any: the kind is made up, for `test_made_up.py` alone.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import circle, polyline
from bookmaker.puzzle.bits import highest, lowest, span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Bounds
from bookmaker.rules.common.chain import Chain, ChainRule, read_chains
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN, middles
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

RING = 0.37


@dataclass(frozen=True)
class TideLine(ChainRule):
    """Chains from the ring."""

    kind = "tide-line"
    title = "Tide lines"
    noun = "tide line"
    example = """\
tide-line:
  - r1c1-r1c5
"""
    directed = True

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        chains = read_chains(body, cls.noun, grid, collector)
        return None if chains is None else cls(chains)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        return all(a != b and (a < b) == (at % 2 == 0) for at, (a, b) in enumerate(pairwise(digits)))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        pairs = [pair if low else pair[::-1] for chain in self.chains for pair, low in _steps(chain)]
        yield relation(dict.fromkeys(pairs), grid.size, ((a, b) for a in grid.digits for b in grid.digits if a < b))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        return all(
            (digits[chain[i]] < digits[chain[i + 1]]) == (i % 2 == 0) and digits[chain[i]] != digits[chain[i + 1]]
            for chain in self.chains
            for i in range(len(chain) - 1)
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        for chain in self.chains:
            of, points = (f"the {self.noun} {ends_named(frame.grid, chain)}",), middles(frame, chain)
            yield Mark(Layer.LINE, polyline(points, Stroke(frame.thin(), THIN)), of)
            yield Mark(Layer.LINE, circle(points[0], RING * frame.cell, Stroke(frame.thin(), THIN)), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, RING) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Each cell is more than the least that its lower neighbours on the line can be, and the other way round."""
        for chain in self.chains:
            least = dict.fromkeys(chain, 1)
            most = dict.fromkeys(chain, position.grid.size)
            for (one, other), rises in _steps(chain):
                low, high = (one, other) if rises else (other, one)
                least[high] = max(least[high], lowest(position.masks[low]) + 1)
                most[low] = min(most[low], highest(position.masks[high]) - 1)
            removed = removed_by(position, {cell: span_mask(least[cell], most[cell]) for cell in chain})
            if removed:
                bounds = Bounds(tuple((cell, least[cell], most[cell]) for cell in chain))
                mark = MarkRef.line(self.kind, chain)
                yield Deduction(Rung.SIMPLE, len(chain), chain, removed, mark, bounds)


def _steps(chain: Chain) -> Iterator[tuple[tuple[int, int], bool]]:
    """Neighbours along the line, and whether digits rise from one to the next."""
    return ((pair, at % 2 == 0) for at, pair in enumerate(pairwise(chain)))
