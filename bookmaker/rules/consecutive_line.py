"""Consecutive lines: the digits of a line, in any order, form a run without a gap.

Manifest: a list of chains.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import reduce
from operator import and_, or_
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import circle
from bookmaker.puzzle.bits import digits_in, span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Needed, NoRun
from bookmaker.rules.common.chain import ChainRule, read_chains
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import locked_out, removed_by
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import BODY, THIN, halo, trace
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Combination, Constraint
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

BEAD = 0.075
"""Radius of a bead in cells."""


@dataclass(frozen=True)
class ConsecutiveLine(ChainRule):
    """Chains, each of which holds a run."""

    kind = "consecutive-line"
    title = "Consecutive lines"
    noun = "consecutive line"
    typed = ("lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
consecutive-line:
  - r1c1-r1c4 r2c5
  - r9c9-r5c9
"""

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        why = f"its digits differ, and there are only {grid.size}"
        chains = read_chains(body, cls.noun, grid, collector, most=grid.size, why=why)
        return None if chains is None else cls(chains)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        return len(set(digits)) == len(digits) and max(digits) - min(digits) <= len(digits)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for chain in self.chains:
            yield Combination(chain, frozenset(_runs(grid, len(chain))))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            inside = sorted(digits[cell] for cell in chain)
            if inside != list(range(inside[0], inside[0] + len(chain))):
                return False
        return True

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin(), THIN)
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            radius = BEAD * frame.lane(chain).scale * frame.cell
            way = trace(frame, chain)
            yield Mark(Layer.LINE, halo(frame, way.points, 2 * radius), of)
            for stop in way.steps(2 * radius):
                yield Mark(Layer.LINE, circle(way.at(stop)[0], radius - pen.width / 2, pen, BODY), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, BEAD) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Runs that fit; what all of them hold; the whole line tried out."""
        grid, masks = position.grid, position.masks
        for chain in self.chains:
            mark = MarkRef.line(self.kind, chain)
            open_to = reduce(or_, (masks[cell] for cell in chain))
            fitting = [
                run
                for run in _runs(grid, len(chain))
                if run & open_to == run and all(masks[cell] & run for cell in chain)
            ]
            if not fitting:
                continue
            removed = removed_by(position, dict.fromkeys(chain, reduce(or_, fitting)))
            if removed:
                gone = NoRun(tuple(sorted({digit for _, digit in removed})))
                yield Deduction(Rung.SIMPLE, len(chain), chain, removed, mark, gone)
            for digit in digits_in(reduce(and_, fitting)):
                out = locked_out(position, chain, digit)
                if out:
                    places = tuple(cell for cell in chain if position.may(cell, digit))
                    yield Deduction(Rung.PAIR, 2, chain, out, mark, Needed(digit, places))
            if not removed:
                yield from tried_out(position, chain, _within(len(chain)), mark)


def _runs(grid: Grid, length: int) -> list[int]:
    """The runs of digits of a length, as masks."""
    return [span_mask(low, low + length - 1) for low in range(1, grid.size - length + 2)]


def _within(length: int) -> Callable[[Sequence[int]], bool]:
    """Do the digits so far differ and lie within one run of this length?"""
    return lambda digits: digits[-1] not in digits[:-1] and max(digits) - min(digits) < length
