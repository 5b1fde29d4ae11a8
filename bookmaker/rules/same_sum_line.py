"""Same-sum lines: every stretch of n cells along the line has the same sum, 3 unless said.

Manifest: a list of chains, or a table with `lines` and the cells of a stretch under `stretch`. From one stretch to the
next a digit leaves and one comes, so that the two are equal: digits come again after n cells.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations, pairwise
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import SameDigit
from bookmaker.reasons.marks import Line
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, lines_and_option, read_chains
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import alike, sees
from bookmaker.rules.common.deducing.enumeration import APART
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN, fitting, halo, trace
from bookmaker.rules.common.words.wording import cells_listed, ends_named
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, read_whole

USUAL = 3
"""The cells of a stretch unless the manifest says otherwise."""

SLEEPER, SPACING = 0.09, 0.1
"""How far the sleepers reach to either side, and how far one lies from the next, in cells."""


@dataclass(frozen=True)
class SameSumLine(ChainRule):
    """Chains, and how many cells a stretch has."""

    kind = "same-sum-line"
    title = "Same-sum lines"
    noun = "same-sum line"
    typed = ("lines", "lines: lines, stretch: whole")
    relabels = "any"
    from_zero = True
    example = """\
same-sum-line:
  lines:
    - r2c2-r6c6
    - r9c1-r6c4 r5c3
  stretch: 4              # may be left out when it is 3
"""
    options = ("stretch",)
    usual_cells = (5, 7)

    stretch: int = USUAL

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        lines, option = lines_and_option(body, cls.noun, "stretch", collector)
        stretch = USUAL if option is None else read_whole(option, "the stretch", collector, 2, grid.size - 1)
        if lines is None or stretch is None:
            return None

        def objects(chain: Chain) -> Complaint | None:
            for group in _groups(chain, stretch):
                for one, other in combinations(group, 2):
                    if sees(grid, one, other):
                        text = f"the {cls.noun} asks for the same digit at {cells_listed(grid, (one, other))}"
                        return "same-sum-clash", f"{text}, which can't be equal", APART
            return None

        chains = read_chains(lines, cls.noun, grid, collector, least=stretch + 1, objects=objects)
        return None if chains is None else cls(chains, stretch)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        return len(digits) <= self.stretch or digits[-1] == digits[-1 - self.stretch]

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        pairs = [pair for chain in self.chains for group in _groups(chain, self.stretch) for pair in pairwise(group)]
        yield relation(dict.fromkeys(pairs), grid.size, ((digit, digit) for digit in grid.digits))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            starts = range(len(chain) - self.stretch + 1)
            sums = {sum(digits[cell] for cell in chain[at : at + self.stretch]) for at in starts}
            if len(sums) > 1:
                return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return super().arguments(words) | {"stretch": self.stretch, "number": words.number(self.stretch)}

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.2, THIN, join="round")
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            way, half = trace(frame, chain), SLEEPER * frame.lane(chain).scale * frame.cell
            yield Mark(Layer.LINE, halo(frame, way.points, 2 * half), of)
            yield Mark(Layer.LINE, polyline(way.points, pen), of)
            for start, end in pairwise(way.stops):
                # Whole sleepers from cell to cell, so that none lies right on a bend.
                count = fitting(end - start, SPACING * frame.cell)
                for at in range(count):
                    stop = start + (end - start) * (at + 0.5) / count
                    ends = way.beside(stop, half), way.beside(stop, -half)
                    yield Mark(Layer.LINE, polyline(ends, pen), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, SLEEPER + 0.02) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((1, 2, 11, 12),)), CLASSIC, 2, 4)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(map(self._refer, self.chains))

    def _refer(self, chain: Chain) -> MarkRef:
        """The line with its stretch, which is not printed on it but said in its rule."""
        return MarkRef(self.kind, chain, Line(chain[0], chain[-1]), str(self.stretch))

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Cells that hold one digit keep what each of them can hold."""
        for chain in self.chains:
            for group in _groups(chain, self.stretch):
                removed = alike(position, group)
                if removed:
                    yield Deduction(Rung.SIMPLE, len(group), group, removed, self._refer(chain), SameDigit(group))


def _groups(chain: Chain, stretch: int) -> Iterator[Chain]:
    """The cells that hold one digit, where there are two or more."""
    return (group for at in range(stretch) if len(group := chain[at::stretch]) > 1)
