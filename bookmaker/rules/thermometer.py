"""Thermometers: digits rise strictly from the bulb to the tip.

Manifest: a list of chains from the bulb; several chains may start in one bulb (they branch) or share cells.
Facts of the trade (common practice, no source): cell i of n holds at least i and at most size − n + i.
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
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.rising import Step, strict_steps, too_high
from bookmaker.rules.common.drawing.frame import Frame, Mark
from bookmaker.rules.common.drawing.glass import glass_claims, thermometers
from bookmaker.rules.common.drawing.places import PlaceClaim
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node


@dataclass(frozen=True)
class Thermometer(ChainRule):
    """`chains` start at the bulb."""

    kind = "thermometer"
    title = "Thermometers"
    noun = "thermometer"
    typed = ("lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
thermometer:
  - r1c1-r1c4 r2c5
  - r9c9-r5c9
"""
    directed = True

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        steps: list[Step] = []

        def objects(chain: Chain) -> Complaint | None:
            steps.extend(strict_steps(chain))
            cell = too_high(steps, grid.size)
            if cell is None:
                return None
            text = f"with the thermometers before it, this one would rise above {grid.symbols[-1]} at {grid.name(cell)}"
            return "thermometers-clash", text, "follow the cells they share from bulb to tip"

        why = f"only {grid.size} digits can rise along it"
        chains = read_chains(body, cls.noun, grid, collector, most=grid.size, why=why, objects=objects)
        return None if chains is None else cls(chains)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        return len(digits) < 2 or digits[-2] < digits[-1]

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        pairs = dict.fromkeys(pair for chain in self.chains for pair in pairwise(chain))
        yield relation(pairs, grid.size, ((a, b) for a in grid.digits for b in grid.digits if a < b))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        return all(digits[chain[i]] < digits[chain[i + 1]] for chain in self.chains for i in range(len(chain) - 1))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        return thermometers(frame, self.chains, filled=True, noun=self.noun)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return glass_claims(self.chains, filled=True)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Bounds along a chain: each cell is more than the least before it and less than the most after it."""
        grid, masks = position.grid, position.masks
        for chain in self.chains:
            least, floor = list[int](), 0
            for cell in chain:
                floor = max(floor + 1, lowest(masks[cell]))
                least.append(floor)
            most, ceiling = list[int](), grid.size + 1
            for cell in reversed(chain):
                ceiling = min(ceiling - 1, highest(masks[cell]))
                most.insert(0, ceiling)
            spans = {cell: span_mask(low, high) for cell, low, high in zip(chain, least, most, strict=True)}
            removed = removed_by(position, spans)
            if removed:
                bounds = Bounds(tuple(zip(chain, least, most, strict=True)))
                yield Deduction(Rung.SIMPLE, len(chain), chain, removed, MarkRef.line(self.kind, chain), bounds)
