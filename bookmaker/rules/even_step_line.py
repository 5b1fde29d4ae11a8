"""Even-step lines: neighbours along the line all differ by one and the same amount.

Manifest: a list of chains, each with a step of its own to be found; or a table with `lines` and one `step` for all.
The step is at least 1, so neighbours are never equal.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from typing import Self

from bookmaker.display.items import Point, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Steps
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, lines_and_option, read_chains, unfillable
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.automata import Machine, machine
from bookmaker.rules.common.deducing.candidates import removed_by, sees
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN, Trace, halo, trace
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Constraint, Sum, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, read_whole

STUD = 0.085
"""Half the side of the studs between cells, in cells."""


@dataclass(frozen=True)
class EvenStepLine(ChainRule):
    """Chains, and the step of all of them; 0 where each line's own step is to be found."""

    kind = "even-step-line"
    title = "Even-step lines"
    noun = "even-step line"
    typed = ("lines", "lines: lines, step: whole")
    relabels = "reversed"
    from_zero = True
    example = """\
even-step-line:
  - r1c1-r1c4 r2c5
  - r9c9-r5c9
"""
    options = ("step",)

    step: int = 0

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        lines, option = lines_and_option(body, cls.noun, "step", collector)
        step = 0 if option is None else read_whole(option, "the step", collector, 1, grid.size - 1)
        least = 3 if option is None else 2
        if lines is None or step is None:
            return None

        def objects(chain: Chain) -> Complaint | None:
            return unfillable(grid, chain, cls.noun, _even(step))

        chains = read_chains(lines, cls.noun, grid, collector, least=least, objects=objects)
        return None if chains is None else cls(chains, step)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        steps = {abs(one - other) for one, other in pairwise(digits)}
        return len(steps) < 2 and 0 not in steps and (not self.step or steps <= {self.step})

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        if self.step:
            pairs = dict.fromkeys(pair for chain in self.chains for pair in pairwise(chain))
            keeps = ((a, b) for a in grid.digits for b in grid.digits if abs(a - b) == self.step)
            yield relation(pairs, grid.size, keeps)
            return
        for chain in self.chains:
            yield _machine(grid.size).over(chain)
            for before, cell, after in zip(chain, chain[1:], chain[2:], strict=False):
                if sees(grid, before, after):
                    # The two differ, so the line goes on in one direction and this cell is their mean.
                    yield Sum(((before, 1), (cell, -2), (after, 1)), 0, 0)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            steps = {abs(digits[chain[i]] - digits[chain[i - 1]]) for i in range(1, len(chain))}
            if len(steps) > 1 or 0 in steps or (self.step and self.step not in steps):
                return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return super().arguments(words) | {"step": str(self.step or "none")}

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.2, THIN, join="round")
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            way = trace(frame, chain)
            half = STUD * frame.lane(chain).scale * frame.cell
            yield Mark(Layer.LINE, halo(frame, way.points, pen.width), of)
            yield Mark(Layer.LINE, polyline(way.points, pen), of)
            for (one, other), (before, after) in zip(pairwise(chain), pairwise(way.stops), strict=True):
                ring = frame.ringed(one, other)
                back = ring * frame.cell + 1.2 * half if ring else 0.0
                stud = _stud(way, (before + after) / 2 - back, half)
                yield Mark(Layer.LINE, polyline(stud, None, THIN, closed=True), of, "squares")

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, STUD, tuple(pairwise(chain)), STUD) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """What each possible step leaves along the line; then the whole line tried out."""
        for chain in self.chains:
            swept = ((step, _sweep(position, chain, step)) for step in self._steps(position.grid))
            ways = {step: masks for step, masks in swept if masks}
            if not ways:
                continue
            kept = dict.fromkeys(chain, 0)
            for masks in ways.values():
                for cell, mask in zip(chain, masks, strict=True):
                    kept[cell] |= mask
            removed = removed_by(position, kept)
            mark = MarkRef.line(self.kind, chain)
            if removed:
                yield Deduction(Rung.PAIR, len(chain), chain, removed, mark, Steps(tuple(ways)))
            else:
                yield from tried_out(position, chain, _even(self.step), mark)

    def _steps(self, grid: Grid) -> range:
        return range(self.step, self.step + 1) if self.step else range(1, grid.size)


@lru_cache(maxsize=16)
def _even(step: int) -> Callable[[Sequence[int]], bool]:
    """Have the digits so far one step, and this one unless it is 0?"""

    def fits(digits: Sequence[int]) -> bool:
        return len(digits) < 2 or abs(digits[-1] - digits[-2]) == (step or abs(digits[1] - digits[0])) > 0

    return fits


@lru_cache(maxsize=16)
def _machine(size: int) -> Machine:
    """Reads the line: the step (0 while unknown) and the last digit (0 at the start)."""

    def read(state: tuple[int, int], digit: int) -> tuple[int, int] | None:
        step, last = state
        if not last:
            return 0, digit
        taken = abs(digit - last)
        return (taken, digit) if taken and step in (0, taken) else None

    return machine(range(1, size + 1), (0, 0), read, lambda state: True)


def _sweep(position: Position, chain: Chain, step: int) -> list[int] | None:
    """What each cell can hold if this is the step: swept to the end of the line and back; None if nothing fits."""
    masks = [position.masks[cell] for cell in chain]
    for i in range(1, len(masks)):
        masks[i] &= masks[i - 1] << step | masks[i - 1] >> step
    for i in reversed(range(len(masks) - 1)):
        masks[i] &= masks[i + 1] << step | masks[i + 1] >> step
    return masks if all(masks) else None


def _stud(way: Trace, middle: float, half: float) -> list[Point]:
    """A small square on the line, turned with it."""
    return [
        way.beside(middle - half, half),
        way.beside(middle + half, half),
        way.beside(middle + half, -half),
        way.beside(middle - half, -half),
    ]
