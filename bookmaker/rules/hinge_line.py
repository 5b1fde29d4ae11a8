"""Hinge lines: two cells at the same distance from the middle have one and the same sum along the whole line.

Manifest: a list of chains of at least three cells. If there is a middle cell, its digit is that sum.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache, reduce
from itertools import combinations
from operator import and_
from typing import Self, TypeAlias

from bookmaker.display.items import Point, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import CommonSum
from bookmaker.rules.common.chain import Chain, ChainRule, read_chains
from bookmaker.rules.common.contract import Deduction, Relabelling, Sample
from bookmaker.rules.common.deducing.automata import Machine, machine
from bookmaker.rules.common.deducing.candidates import removed_by, sees
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN, halo, trace
from bookmaker.rules.common.words.speech import cell_said, line_said
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Constraint, Sum
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

TOOTH = 0.13
"""Length of a tooth, in cells. They point to the two sides of the line in turn, like the knuckles of a hinge."""

SPACING = 0.16
"""From tooth to tooth in cells."""

DIAMOND, STUD = 0.42, 0.15
"""Half the diagonal of the diamond around a middle cell's digit, and of the one between two cells, in cells."""


State: TypeAlias = tuple[int | None, int | None]


@dataclass(frozen=True)
class HingeLine(ChainRule):
    """Chains from end to end."""

    kind = "hinge-line"
    title = "Hinge lines"
    noun = "hinge line"
    typed = ("lines",)
    example = """\
hinge-line:
  - r1c1-r1c4 r2c5
  - r9c9-r6c9
"""
    from_the_middle = True
    from_zero = True

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        chains = read_chains(body, cls.noun, grid, collector, least=3)
        return None if chains is None else cls(chains)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        half, worth = len(digits) // 2, [*map(grid.worth, digits)]
        middle = worth[half] if len(digits) % 2 else worth[half - 1] + worth[half]
        return half == 0 or worth[0] + worth[-1] == middle

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for chain in self.chains:
            yield _machine(grid, len(chain) % 2 == 1).over(_from_the_middle(chain))

    def meaning(self, grid: Grid) -> Iterator[Constraint]:
        """The sums of any two pairs are equal, and equal to the middle cell if there is one."""
        for chain in self.chains:
            pairs = [(chain[i], chain[-1 - i]) for i in range(len(chain) // 2)]
            sums = [*pairs, (chain[len(pairs)],)] if len(chain) % 2 else pairs
            for one, other in combinations(sums, 2):
                apart = grid.raised(0, len(one)) - grid.raised(0, len(other))
                yield Sum((*((cell, 1) for cell in one), *((cell, -1) for cell in other)), apart, apart)

    def relabelling(self, grid: Grid) -> Relabelling:
        return "none" if any(len(chain) % 2 for chain in self.chains) else "reversed"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            count = len(chain)
            worth = [grid.worth(digits[cell]) for cell in chain]
            sums = {worth[i] + worth[count - 1 - i] for i in range(count // 2)}
            if count % 2 == 1:
                sums.add(worth[count // 2])
            if len(sums) > 1:
                return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        odd = sum(len(chain) % 2 for chain in self.chains)
        middles = "all" if odd == len(self.chains) else "some" if odd else "none"
        return super().arguments(words) | {"middles": middles}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for chain in self.chains:
            middle = [cell_said(words, grid, cell) for cell in chain[(len(chain) - 1) // 2 : len(chain) // 2 + 1]]
            line = line_said(words, grid, chain)
            yield words.say("hinge-line-spoken", middle=words.listed(middle), line=line)

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.2, THIN, join="round")
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            tooth = TOOTH * frame.lane(chain).scale * frame.cell
            way, half = trace(frame, chain), len(chain) // 2
            odd = len(chain) % 2 == 1
            middle = way.stops[half] if odd else (way.stops[half - 1] + way.stops[half]) / 2
            if not odd and (ring := frame.ringed(chain[half - 1], chain[half])):
                # Where a ring covers the middle of the line, its diamond stands just before it.
                middle -= (ring + STUD) * frame.cell
            centre, (ux, uy) = way.at(middle)
            size = (DIAMOND if odd else STUD) * frame.cell
            _, (vx, vy) = way.at(middle - size / 4)
            # A line that comes in slantwise meets the diamond's side, not its corner.
            start, end = middle - size / (abs(vx) + abs(vy)), middle + size / (abs(ux) + abs(uy))
            yield Mark(Layer.LINE, halo(frame, way.points, 2 * tooth), of)
            yield Mark(Layer.LINE, polyline(way.between(0, start), pen), of)
            yield Mark(Layer.LINE, polyline(way.between(end, way.length), pen), of)
            for at, stop in enumerate(way.steps(SPACING * frame.cell)):
                if not start - pen.width < stop < end + pen.width:
                    tip = way.beside(stop, tooth if at % 2 else -tooth)
                    yield Mark(Layer.LINE, polyline((way.at(stop)[0], tip), pen), of)
            yield Mark(Layer.LINE, polyline(_diamond(centre, size), pen, closed=True), of, "diamond")

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for chain in self.chains:
            half = len(chain) // 2
            middle = ((chain[half - 1], chain[half]),) if len(chain) % 2 == 0 else ()
            yield Along(chain, TOOTH + 0.01, middle, STUD)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 2),)), CLASSIC, 1, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Sums that every pair can have, and the digits that go with them; then the whole line tried out."""
        grid, masks = position.grid, position.masks
        for chain in self.chains:
            pairs = [(chain[i], chain[-1 - i]) for i in range(len(chain) // 2)]
            sums = [_pair_sums(position, one, other) for one, other in pairs]
            middle = chain[len(chain) // 2]
            if len(chain) % 2:
                sums.append({grid.worth(digit) for digit in digits_in(masks[middle])})
            common = reduce(and_, sums)
            if not common:
                continue
            kept = {middle: mask_of(grid.raised(total, 1) for total in common)} if len(chain) % 2 else {}
            for one, other in pairs:
                for cell, partner in ((one, other), (other, one)):
                    kept[cell] = mask_of(
                        digit
                        for digit in digits_in(masks[cell])
                        if any(
                            0 < (other := grid.raised(total, 2) - digit) <= grid.size
                            and masks[partner] >> (other - 1) & 1
                            and not (other == digit and sees(grid, cell, partner))
                            for total in common
                        )
                    )
            removed = removed_by(position, kept)
            mark = MarkRef.line(self.kind, chain)
            if removed:
                yield Deduction(Rung.PAIR, len(sums), chain, removed, mark, CommonSum(tuple(sorted(common))))
            else:
                cells = _from_the_middle(chain)
                yield from tried_out(position, cells, _one_sum(len(chain) % 2, grid.worth(1)), mark)


def _from_the_middle(chain: Chain) -> Chain:
    """The middle cell if there is one, then pair after pair outwards."""
    half = len(chain) // 2
    pairs = zip(reversed(chain[:half]), chain[len(chain) - half :], strict=True)
    return (*chain[half : len(chain) - half], *(cell for pair in pairs for cell in pair))


@lru_cache(maxsize=64)
def _machine(grid: Grid, odd: bool) -> Machine:
    """Reads the line from the middle. State: the sum, and what the digit is worth that waits for its partner, if these
    are known."""

    def step(state: State, digit: int) -> State | None:
        (total, waiting), worth = state, grid.worth(digit)
        if odd and total is None:
            return worth, None
        if waiting is None:
            return total, worth
        return (waiting + worth, None) if total in (None, waiting + worth) else None

    start: State = (None, None)
    return machine(grid.digits, start, step, lambda state: state[0] is not None and state[1] is None)


@lru_cache(maxsize=4)
def _one_sum(odd: int, least: int) -> Callable[[Sequence[int]], bool]:
    """The same reading for digits so far: has each whole pair the sum of the first, or of the middle? `least` is what
    the first digit is worth."""

    def fits(digits: Sequence[int]) -> bool:
        if len(digits) < 2 or (len(digits) - odd) % 2:
            return not odd or len(digits) < 2 or digits[-1] + least <= digits[0]
        total = digits[0] + 1 - least if odd else digits[0] + digits[1]
        return digits[-2] + digits[-1] == total

    return fits


def _pair_sums(position: Position, one: int, other: int) -> set[int]:
    apart, less = sees(position.grid, one, other), position.grid.raised(0, 2)
    return {
        a + b - less
        for a in digits_in(position.masks[one])
        for b in digits_in(position.masks[other])
        if not (apart and a == b)
    }


def _diamond(at: Point, size: float) -> list[Point]:
    x, y = at
    return [(x, y - size), (x + size, y), (x, y + size), (x - size, y)]
