"""Lines on which digits of two sorts alternate: odd and even, low and high. The base that these kinds share.

A kind says which digits are of which sort, by masks; digits of neither never stand on its lines.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise
from typing import Self

from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import OnlyDigits
from bookmaker.rules.common.chain import Chain, ChainRule, Complaint, read_chains
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.enumeration import APART, tried_out
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

Sides = tuple[int, int]
"""The digits of either sort, as masks."""

TRIED = 6
"""So many cells are tried out as a whole."""


@dataclass(frozen=True)
class AlternatingRule(ChainRule):
    """Neighbours along each line are of different sorts."""

    relabels = "reversed"

    @staticmethod
    @abstractmethod
    def sides(size: int) -> Sides:
        """The two sorts of the digits from 1 to `size`."""

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        def objects(chain: Chain) -> Complaint | None:
            if _open_ways(grid, chain, [grid.all_digits] * len(chain), cls.sides(grid.size)):
                return None
            text = f"no digits fit the {cls.noun} {ends_named(grid, chain)}, even in an empty grid"
            return "chain-unfillable", text, APART

        chains = read_chains(body, cls.noun, grid, collector, least=2, objects=objects)
        return None if chains is None else replace(cls.blank(grid), chains=chains)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        one, other = (digits_in(side) for side in self.sides(grid.size))
        pairs = dict.fromkeys(pair for chain in self.chains for pair in pairwise(chain))
        keeps = [(a, b) for a in one for b in other] + [(b, a) for a in one for b in other]
        yield relation(pairs, grid.size, keeps)

    def leads_on(self, digits: Sequence[int], grid: Grid) -> bool:
        return _alternate(self.sides(grid.size))(digits)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.line(self.kind, chain) for chain in self.chains)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Which sort each cell is of, if the line can begin with one sort only; digits of neither; then all
        fillings."""
        grid = position.grid
        for chain in self.chains:
            ways = _open_ways(grid, chain, [position.masks[cell] for cell in chain], self.sides(grid.size))
            if not ways:
                continue
            mark, found = MarkRef.line(self.kind, chain), False
            for start in range(2):
                kept = 0
                for way in ways:
                    kept |= way[start % 2]
                cells = chain[start::2]
                removed = removed_by(position, dict.fromkeys(cells, kept))
                if removed:
                    found = True
                    yield Deduction(Rung.SIMPLE, 2, chain, removed, mark, OnlyDigits(cells, digits_in(kept)))
            if not found and len(chain) <= TRIED:
                yield from tried_out(position, chain, _alternate(self.sides(grid.size)), mark)


def _open_ways(grid: Grid, chain: Chain, masks: Sequence[int], sides: Sides) -> list[Sides]:
    """Which sort the cells at even places may be of, and those between them: every cell has such a digit, and no house
    has more cells of a sort than there are digits."""
    return [
        way
        for way in (sides, sides[::-1])
        if all(mask & way[at % 2] for at, mask in enumerate(masks))
        and all(
            len(set(chain[at::2]).intersection(house.cells)) <= way[at].bit_count()
            for house in grid.houses
            for at in range(2)
        )
    ]


@lru_cache(maxsize=16)
def _alternate(sides: Sides) -> Callable[[Sequence[int]], bool]:
    """Is the last of the digits so far of one sort, and the one before it of the other?"""

    def fits(digits: Sequence[int]) -> bool:
        last = 1 << (digits[-1] - 1)
        before = 1 << (digits[-2] - 1) if len(digits) > 1 else None
        if before is None:
            return bool(last & (sides[0] | sides[1]))
        return bool((last & sides[0] and before & sides[1]) or (last & sides[1] and before & sides[0]))

    return fits
