"""Sums of factor × digit with a least and a most.

In: the factors and the limits. Out: a filter. If the limits leave every cell its least and its greatest digit, it
finds nothing; else it is exact as far as the sum goes (digits may repeat): it goes from cell to cell with the set of
all sums reached so far, held in one whole number, bit s for sum s.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache


@cache
def _moves(factor: int, digits: int, mask: int) -> tuple[tuple[int, int], ...]:
    """For each digit of a mask, in order of what it adds: what it adds beyond the least any digit adds, and its bit."""
    floor = min(factor, factor * digits)
    moves = ((factor * digit - floor, 1 << digit - 1) for digit in range(1, digits + 1) if mask >> digit - 1 & 1)
    return tuple(sorted(moves))


@dataclass(frozen=True, slots=True)
class SumWithin:
    """The sum of factor × digit, one factor a cell, lies between two limits.

    `least` and `most` are counted from the least that any digits can add up to.
    """

    digits: int
    factors: tuple[int, ...]
    least: int
    most: int

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        digits = self.digits
        moves = [_moves(factor, digits, mask) for factor, mask in zip(self.factors, masks, strict=True)]
        low = high = widest = 0
        for of_cell in moves:
            if not of_cell:
                return None
            first, last = of_cell[0][0], of_cell[-1][0]
            low += first
            high += last
            if last - first > widest:
                widest = last - first
        room = min(self.most - low, high - self.least)
        if room < 0:
            return None
        if widest <= room:
            return list(masks), 0
        return self._exactly(moves)

    def _exactly(self, moves: list[tuple[tuple[int, int], ...]]) -> tuple[list[int], int] | None:
        reached = 1
        passed = []
        for of_cell in moves:
            passed.append((reached, of_cell))
            after = 0
            for shift, _ in of_cell:
                after |= reached << shift
            reached = after
        live = reached >> self.least << self.least & (2 << self.most) - 1
        if not live:
            return None
        kept = []
        for here, of_cell in reversed(passed):
            before = mask = 0
            for shift, digit in of_cell:
                source = live >> shift & here
                if source:
                    before |= source
                    mask |= digit
            live = before
            kept.append(mask)
        kept.reverse()
        return kept, 0


def sum_within(factors: Sequence[int], least: int, most: int, digits: int) -> SumWithin:
    """The filter for a sum of factor × digit, one factor a cell."""
    floor = sum(min(factor, factor * digits) for factor in factors)
    ceiling = sum(max(factor, factor * digits) for factor in factors) - floor
    return SumWithin(digits, tuple(factors), max(least - floor, 0), min(most - floor, ceiling))
