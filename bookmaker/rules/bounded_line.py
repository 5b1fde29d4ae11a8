"""Bounded lines: every digit along the line lies strictly between the digits at its two ends.

Manifest: a list of chains from end to end. Which end holds the greater digit is for the solver to find.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Self

from bookmaker.display.items import Point, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.puzzle.bits import digits_in, span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Enclosed
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, read_chains
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.automata import Machine, machine
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, Around, PlaceClaim
from bookmaker.rules.common.drawing.strokes import HALF_SEEN, THIN, Trace, halo, trace
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Constraint
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

REACH, ARM, HOOK = 0.36, 0.26, 0.1
"""Of the brackets around the digit at an end, in cells: their distance from its middle, half their length, and how far
their hooks reach towards it."""


@dataclass(frozen=True)
class BoundedLine(ChainRule):
    """Chains from end to end."""

    kind = "bounded-line"
    title = "Bounded lines"
    noun = "bounded line"
    typed = ("lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
bounded-line:
  - r1c1-r1c4 r2c5
  - r9c9-r6c9
"""

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        def objects(chain: Chain) -> Complaint | None:
            crowd = _most_different(grid, chain[1:-1])
            if crowd + 2 <= grid.size:
                return None
            text = f"the bounded line needs {crowd} different digits between its ends, which leaves none for the ends"
            return "chain-long", text, f"there are only {grid.size} digits"

        chains = read_chains(body, cls.noun, grid, collector, least=3, objects=objects)
        return None if chains is None else cls(chains)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for chain in self.chains:
            yield _machine(grid.size).over((chain[0], chain[-1], *chain[1:-1]))

    def meaning(self, grid: Grid) -> Iterator[Constraint]:
        """Each cell between the two ends, whichever of these was typed first."""
        for chain in self.chains:
            for cell in chain[1:-1]:
                yield _triple(grid.size).over((chain[0], cell, chain[-1]))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            one, other = digits[chain[0]], digits[chain[-1]]
            for cell in chain[1:-1]:
                if not (one < digits[cell] < other or other < digits[cell] < one):
                    return False
        return True

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.3, THIN, join="miter")
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            way = trace(frame, chain)
            scales = [frame.radius(cell, REACH) / REACH for cell in (chain[0], chain[-1])]
            start, end = (REACH * scale * frame.cell for scale in scales)
            shaft = way.between(start, way.length - end)
            yield Mark(Layer.LINE, halo(frame, shaft, pen.width), of)
            yield Mark(Layer.LINE, polyline(shaft, pen), of)
            # The brackets stand around the middle of the cell, though the line may run beside it.
            centres = Trace([frame.centre(cell) for cell in chain])
            for at, scale in zip((0.0, centres.length), scales, strict=True):
                for side in (-1, 1):
                    bracket = polyline(_bracket(centres, at, side, frame.cell * scale), pen)
                    yield Mark(Layer.LINE, bracket, of, "brackets", HALF_SEEN)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for chain in self.chains:
            yield Along(chain, 0.03)
            yield from (Around(cell, REACH, 1) for cell in (chain[0], chain[-1]))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Pairs of ends that leave room for the line; then the whole line tried out."""
        grid, masks = position.grid, position.masks
        for chain in self.chains:
            one, other, inner = chain[0], chain[-1], chain[1:-1]
            crowd = _most_different(grid, inner)
            kept = dict.fromkeys(chain, 0)
            for a in digits_in(masks[one]):
                for b in digits_in(masks[other]):
                    room = span_mask(min(a, b) + 1, max(a, b) - 1)
                    if room.bit_count() >= crowd and all(masks[cell] & room for cell in inner):
                        kept[one] |= 1 << (a - 1)
                        kept[other] |= 1 << (b - 1)
                        for cell in inner:
                            kept[cell] |= room
            mark = MarkRef.line(self.kind, chain)
            removed = removed_by(position, kept)
            if removed and all(kept.values()):
                claim = Enclosed((one, other), inner)
                yield Deduction(Rung.SIMPLE, len(chain), chain, removed, mark, claim)
            elif not removed:
                yield from tried_out(position, (one, other, *inner), _fits, mark)


def _bracket(way: Trace, end: float, side: int, cell: float) -> tuple[Point, ...]:
    """One of the two brackets around an end of the line, across its way: behind it (-1) or before it (1)."""
    (x, y), (ux, uy) = way.at(end)

    def point(along: float, aside: float) -> Point:
        return x + cell * (ux * along - uy * aside), y + cell * (uy * along + ux * aside)

    hook, bar = side * (REACH - HOOK), side * REACH
    return point(hook, -ARM), point(bar, -ARM), point(bar, ARM), point(hook, ARM)


@lru_cache(maxsize=16)
def _machine(size: int) -> Machine:
    """Reads the two ends, then everything between them."""

    def step(state: tuple[int, ...], digit: int) -> tuple[int, ...] | None:
        if len(state) < 2:
            return tuple(sorted((*state, digit)))
        return state if state[0] < digit < state[1] else None

    start: tuple[int, ...] = ()
    return machine(range(1, size + 1), start, step, lambda state: len(state) == 2)


@lru_cache(maxsize=16)
def _triple(size: int) -> Machine:
    """Reads one end, a cell between the two, and the other end."""

    def step(state: tuple[int, ...], digit: int) -> tuple[int, ...] | None:
        if len(state) < 2:
            return *state, digit
        return (*state, digit) if len(state) == 2 and _fits((state[0], digit, state[1])) else None

    start: tuple[int, ...] = ()
    return machine(range(1, size + 1), start, step, lambda state: len(state) == 3)


def _fits(digits: Sequence[int]) -> bool:
    """The two ends first, then the cells between them."""
    return len(digits) < 3 or min(digits[:2]) < digits[-1] < max(digits[:2])


def _most_different(grid: Grid, cells: Sequence[int]) -> int:
    """How many of these cells, at most, stand in one row, column or region, so that their digits differ."""
    return max((sum(cell in house.cells for cell in cells) for house in grid.houses), default=0)
