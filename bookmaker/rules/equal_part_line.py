"""Equal-part lines: the parts of a line, one for each visit to a region, have the same sum.

Manifest: a list of chains. A line that leaves a box and comes back has two parts in it.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import accumulate, combinations, groupby, pairwise
from typing import Self

from bookmaker.display.items import Item
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import CommonSum
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, read_chains, unfillable
from bookmaker.rules.common.contract import Deduction, Relabelling, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.deducing.sums import open_limits, sum_limits, worth_from
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, PlaceClaim
from bookmaker.rules.common.drawing.strokes import BODY, Trace, fitting, halo, trace, tube
from bookmaker.rules.common.words.speech import line_said
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Constraint, Sum
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

BREADTH = 0.15
"""Breadth of the line in cells."""

DASH, GAP = 0.36, 0.14
"""Lengths of the dashes and of the gaps between them in cells."""


@dataclass(frozen=True)
class EqualPartLine(ChainRule):
    """Chains, each through at least two regions."""

    kind = "equal-part-line"
    title = "Equal-part lines"
    noun = "equal-part line"
    typed = ("lines",)
    needs_regions = True
    from_zero = True
    example = """\
equal-part-line:
  - r2c2-r2c6
  - r9c9-r6c9 r5c8
"""

    home: str = "box"
    """What the grid's regions are called: a box, or a region where they are irregular."""

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        def objects(chain: Chain) -> Complaint | None:
            parts = _parts(grid, chain)
            if len(parts) == 1:
                where = grid.region_name(grid.region_of[chain[0]])
                return "one-region", f"the equal-part line never leaves {where}", "it needs at least two stretches"
            low = max(parts, key=lambda part: open_limits(grid, part)[0])
            high = min(parts, key=lambda part: open_limits(grid, part)[1])
            least, most = open_limits(grid, low)[0], open_limits(grid, high)[1]
            if least <= most:
                return unfillable(grid, chain, cls.noun, _equal_sums(tuple(map(len, parts)), grid.worth(1)))
            text = (
                f"the sums of the equal-part line can't be equal: its stretch at {grid.name(low[0])} adds up to at "
                f"least {least}, its stretch at {grid.name(high[0])} to at most {most}"
            )
            return "sums-apart", text, ""

        chains = read_chains(body, cls.noun, grid, collector, objects=objects)
        return None if chains is None else replace(cls.blank(grid), chains=chains)

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls((), "box" if grid.box else "region")

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for chain in self.chains:
            for one, other in combinations(_parts(grid, chain), 2):
                apart = grid.raised(0, len(one)) - grid.raised(0, len(other))
                yield Sum((*((cell, 1) for cell in one), *((cell, -1) for cell in other)), apart, apart)

    def relabelling(self, grid: Grid) -> Relabelling:
        alike = all(len({len(part) for part in _parts(grid, chain)}) == 1 for chain in self.chains)
        return "reversed" if alike else "none"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for chain in self.chains:
            sums: list[int] = []
            home = None
            for cell in chain:
                region = next(index for index, cells in enumerate(grid.regions) if cell in cells)
                if region != home:
                    sums.append(0)
                    home = region
                sums[-1] += grid.worth(digits[cell])
            if len(set(sums)) > 1:
                return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return super().arguments(words) | {"home": self.home}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for chain in self.chains:
            parts = [
                words.say("equal-part-line-part", number=str(n), line=line_said(words, grid, part))
                for n, part in enumerate(_parts(grid, chain), start=1)
            ]
            yield words.say("equal-part-line-spoken", parts="; ".join(parts))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        grid = frame.grid
        gap = GAP * frame.cell
        for chain in self.chains:
            of = (f"the {self.noun} {ends_named(frame.grid, chain)}",)
            width = BREADTH * frame.lane(chain).scale * frame.cell
            rim = min(frame.thin() + 0.2, 0.3 * width)
            way = trace(frame, chain)
            yield Mark(Layer.LINE, halo(frame, way.points, width), of)
            borders = [
                (way.stops[i] + way.stops[i + 1]) / 2
                for i, (before, after) in enumerate(pairwise(chain))
                if grid.region_of[before] != grid.region_of[after]
            ]
            # Half a gap more at both ends, so that the first and last dash begin and end in the middle of a cell.
            for start, end in pairwise((-gap / 2, *borders, way.length + gap / 2)):
                for item in _dashes(way, start, end, gap, width, rim):
                    yield Mark(Layer.LINE, item, of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Along(chain, BREADTH / 2) for chain in self.chains)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((1, 2, 3),)), CLASSIC, 1, 4)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Limits of the common sum and what they leave for each cell; then the whole line tried out."""
        grid = position.grid
        for chain in self.chains:
            parts = _parts(grid, chain)
            limits = [sum_limits(position, part) for part in parts]
            least, most = max(low for low, _ in limits), min(high for _, high in limits)
            if least > most:
                continue
            kept: dict[int, int] = {}
            for part in parts:
                for cell in part:
                    low, high = sum_limits(position, [other for other in part if other != cell])
                    kept[cell] = worth_from(grid, least - high, most - low)
            removed = removed_by(position, kept)
            mark = MarkRef.line(self.kind, chain)
            if removed:
                claim = CommonSum(tuple(range(least, most + 1)))
                yield Deduction(Rung.PAIR, len(parts), chain, removed, mark, claim)
            else:
                yield from tried_out(position, chain, _equal_sums(tuple(map(len, parts)), grid.worth(1)), mark)


def _dashes(way: Trace, start: float, end: float, gap: float, width: float, rim: float) -> Iterator[Item]:
    """Dashes with an outline along one part of the line, evenly spaced, half a gap before and after them."""
    count = fitting(end - start, gap + DASH / GAP * gap)
    period = (end - start) / count
    for index in range(count):
        begin, stop = start + index * period + gap / 2, start + (index + 1) * period - gap / 2
        yield tube(way.between(begin, stop), width, rim, BODY, round_ends=False)[0]
        yield tube(way.between(begin + rim, stop - rim), width, rim, BODY, round_ends=False)[1]


def _parts(grid: Grid, chain: Chain) -> list[Chain]:
    """The stretches of a chain within one region, in order."""
    return [tuple(cells) for _, cells in groupby(chain, grid.region_of.__getitem__)]


@lru_cache(maxsize=64)
def _equal_sums(lengths: tuple[int, ...], least: int) -> Callable[[Sequence[int]], bool]:
    """Of the digits so far along the line, cut into parts of these lengths: may all parts come to one sum? `least` is
    what the first digit is worth."""
    ends = list(accumulate(lengths))

    def fits(digits: Sequence[int]) -> bool:
        if len(digits) <= lengths[0]:
            return True
        part = bisect_left(ends, len(digits))
        total = sum(digits[: lengths[0]]) + (lengths[part] - lengths[0]) * (1 - least)
        left = total - sum(digits[ends[part - 1] :])
        return left == 0 if len(digits) == ends[part] else left > 0

    return fits
