"""Resting thermometers: from the bulb to the tip, digits never fall.

Manifest: a list of chains from the bulb, as for thermometers. Digits may repeat where rows, columns and regions allow
it, so between cells that see each other they rise.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Self

from bookmaker.puzzle.bits import highest, lowest, span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Bounds
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, read_chains
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import removed_by, sees
from bookmaker.rules.common.deducing.rising import Step, resting_steps, too_high
from bookmaker.rules.common.drawing.frame import Frame, Mark
from bookmaker.rules.common.drawing.glass import glass_claims, thermometers
from bookmaker.rules.common.drawing.places import PlaceClaim
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node


@dataclass(frozen=True)
class RestingThermometer(ChainRule):
    """`chains` start at the bulb."""

    kind = "resting-thermometer"
    title = "Resting thermometers"
    noun = "resting thermometer"
    typed = ("lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
resting-thermometer:
  - r1c1 r2c2-r5c5
  - r9c9-r6c9 r5c8
"""
    directed = True

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        steps: list[Step] = []

        def objects(chain: Chain) -> Complaint | None:
            alone = list(resting_steps(grid, chain))
            steps.extend(alone)
            cell = too_high(steps, grid.size)
            if cell is None:
                return None
            above = f"would rise above {grid.symbols[-1]} at {grid.name(cell)}"
            hint = "digits rise between any two of its cells in one row, column or region"
            if too_high(alone, grid.size) is not None:
                return "chain-long", f"the resting thermometer {above}", hint
            return "thermometers-clash", f"with the resting thermometers before it, this one {above}", hint

        chains = read_chains(body, cls.noun, grid, collector, objects=objects)
        return None if chains is None else cls(chains)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        return len(digits) < 2 or digits[-2] <= digits[-1]

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        pairs = dict.fromkeys(pair for chain in self.chains for pair in pairwise(chain))
        for rises in (True, False):
            some = [pair for pair in pairs if sees(grid, *pair) is rises]
            if some:
                keeps = ((a, b) for a in grid.digits for b in grid.digits if a < b or (a == b and not rises))
                yield relation(some, grid.size, keeps)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        return all(digits[chain[i]] <= digits[chain[i + 1]] for chain in self.chains for i in range(len(chain) - 1))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        return thermometers(frame, self.chains, filled=False, noun=self.noun)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return glass_claims(self.chains, filled=False)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Bounds along a chain, one more for each step between cells that see each other."""
        grid, masks = position.grid, position.masks
        top = grid.size + 1
        for chain in self.chains:
            least = _floors(grid, chain, [lowest(masks[cell]) for cell in chain])
            back = chain[::-1]
            most = [top - floor for floor in _floors(grid, back, [top - highest(masks[cell]) for cell in back])][::-1]
            spans = {cell: span_mask(low, high) for cell, low, high in zip(chain, least, most, strict=True)}
            removed = removed_by(position, spans)
            if removed:
                bounds = Bounds(tuple(zip(chain, least, most, strict=True)))
                yield Deduction(Rung.SIMPLE, len(chain), chain, removed, MarkRef.line(self.kind, chain), bounds)


def _floors(grid: Grid, chain: Chain, lows: Sequence[int]) -> list[int]:
    """The least each cell can hold: no less than the cell before, more than every earlier cell that it sees."""
    floors: list[int] = []
    for index, (cell, low) in enumerate(zip(chain, lows, strict=True)):
        before = floors[-1:]
        seen = (floors[i] + 1 for i in range(index) if sees(grid, chain[i], cell))
        floors.append(max((low, *before, *seen)))
    return floors
