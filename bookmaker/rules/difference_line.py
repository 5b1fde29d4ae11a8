"""Difference lines: neighbours along the line differ by at least n, 5 unless said.

Manifest: a list of chains, or a table with `lines` and the difference under `least`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.bits import digits_in, highest, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Beside, TooNear
from bookmaker.reasons.marks import Line
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, lines_and_option, read_chains, unfillable
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import removed_by, sees
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN, fitting, halo, trace
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Allowed, Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, read_whole

USUAL = 5
"""The least difference unless the manifest says otherwise."""

TOOTH = 0.17
"""Length of a tooth of the saw along the line, in cells."""

SWING = 0.08
"""How far the teeth swing to either side, in cells."""


@dataclass(frozen=True)
class DifferenceLine(ChainRule):
    """Chains, and how much neighbours on them differ at least."""

    kind = "difference-line"
    title = "Difference lines"
    noun = "difference line"
    typed = ("lines", "lines: lines, least: whole")
    relabels = "reversed"
    from_zero = True
    example = """\
difference-line:
  lines:
    - r1c1-r1c4 r2c5
    - r9c9-r5c9
  least: 5                # may be left out when it is 5
"""
    options = ("least",)

    least: int = USUAL

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        lines, option = lines_and_option(body, cls.noun, "least", collector)
        least = USUAL if option is None else read_whole(option, "the least difference", collector, 1, grid.size - 1)
        if option is None and grid.size <= USUAL:
            text = f"digits from {grid.symbols[0]} to {grid.symbols[-1]} never differ by {USUAL}, the usual difference"
            collector.error(
                body.place, "difference-large", text, "write “lines:” and a smaller difference, such as “least: 2”"
            )
            return None
        if lines is None or least is None:
            return None

        def objects(chain: Chain) -> Complaint | None:
            return unfillable(grid, chain, cls.noun, _leaps(least))

        chains = read_chains(lines, cls.noun, grid, collector, objects=objects)
        return None if chains is None else cls(chains, least)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        return len(digits) < 2 or abs(digits[-2] - digits[-1]) >= self.least

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        pairs = dict.fromkeys(pair for chain in self.chains for pair in pairwise(chain))
        keeps = ((a, b) for a in grid.digits for b in grid.digits if abs(a - b) >= self.least)
        yield relation(pairs, grid.size, keeps)
        # Between two cells that see each other a digit needs two different partners.
        inner = (three for chain in self.chains for three in zip(chain, chain[1:], chain[2:], strict=False))
        midst = tuple(cell for before, cell, after in inner if sees(grid, before, after))
        if midst:
            partners = {a: sum(abs(a - b) >= self.least for b in grid.digits) for a in grid.digits}
            mask = mask_of(digit for digit, count in partners.items() if count > 1)
            yield from (Allowed((cell,), mask) for cell in midst)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            for i in range(len(chain) - 1):
                low, high = sorted((digits[chain[i]], digits[chain[i + 1]]))
                if high - low < self.least:
                    return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return super().arguments(words) | {"least": str(self.least)}

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.3, THIN, cap="round", join="round")
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            swing = SWING * frame.lane(chain).scale * frame.cell
            way = trace(frame, chain)
            teeth = []
            for start, end in pairwise(way.stops):
                # Whole teeth from cell to cell, so that every bend of the line looks the same.
                half = (end - start) / (2 * fitting(end - start, TOOTH * frame.cell))
                count = round((end - start) / half)
                teeth += [way.beside(start + (i + 0.5) * half, swing if i % 2 else -swing) for i in range(count)]
            yield Mark(Layer.LINE, halo(frame, way.points, 2 * swing), of)
            yield Mark(Layer.LINE, polyline([way.points[0], *teeth, way.points[-1]], pen), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, SWING + 0.02) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Digits without a partner far enough away beside them; then the whole line tried out."""
        for chain in self.chains:
            found = list(self._partners(position, chain))
            yield from found
            if not found:
                yield from tried_out(position, chain, _leaps(self.least), self._refer(chain))

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(map(self._refer, self.chains))

    def _refer(self, chain: Chain) -> MarkRef:
        """The line with its difference, which is not printed on it but said in its rule."""
        return MarkRef(self.kind, chain, Line(chain[0], chain[-1]), str(self.least))

    def _partners(self, position: Position, chain: Chain) -> Iterator[Deduction]:
        """A digit needs a partner in each neighbour, and two different ones where the neighbours see each other."""
        grid, masks = position.grid, position.masks
        for index, cell in enumerate(chain):
            beside = [chain[i] for i in (index - 1, index + 1) if 0 <= i < len(chain)]
            stays = 0
            for digit in digits_in(masks[cell]):
                far = mask_of(d for d in grid.digits if abs(d - digit) >= self.least)
                open_to = [masks[other] & far for other in beside]
                apart = len(beside) == 2 and sees(grid, *beside)
                lone = apart and open_to[0] == open_to[1] and open_to[0].bit_count() == 1
                if all(open_to) and not lone:
                    stays |= 1 << (digit - 1)
            removed = removed_by(position, {cell: stays})
            if removed:
                claim = self._claim(position, cell, tuple(digit for _, digit in removed), beside)
                yield Deduction(Rung.SIMPLE, len(beside), (cell, *beside), removed, self._refer(chain), claim)

    def _claim(self, position: Position, cell: int, gone: tuple[int, ...], beside: Sequence[int]) -> Beside | TooNear:
        """Why some digits of a cell go: for the one beside it that is written, or for what those can hold that
        matter."""
        masks = position.masks
        near = {d: mask_of(e for e in position.grid.digits if abs(d - e) < self.least) for d in gone}
        alone = [[other for other in beside if not masks[other] & ~near[digit]] for digit in gone]
        matter = [other for other in beside if not all(alone) or any(other in found[:1] for found in alone)]
        if len(matter) == 1 and position.placed >> matter[0] & 1:
            return Beside(cell, gone, matter[0], highest(masks[matter[0]]))
        return TooNear(cell, gone, tuple(matter))


@lru_cache(maxsize=16)
def _leaps(least: int) -> Callable[[Sequence[int]], bool]:
    """Is the last step of the digits so far wide enough?"""
    return lambda digits: len(digits) < 2 or abs(digits[-1] - digits[-2]) >= least
