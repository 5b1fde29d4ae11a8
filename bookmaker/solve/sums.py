"""Sums of factor × digit with a least and a most.

In: the factors and the limits. Out: a filter that is exact as far as the sum goes (digits may repeat): it goes from
cell to cell with the set of all sums reached so far, held in one whole number, bit s for sum s.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class SumWithin:
    """`steps[i][d - 1]` is what digit d in cell i adds, counted from the least it can add; `goal` has the bits of
    the sums that are allowed, counted likewise."""

    steps: tuple[tuple[int, ...], ...]
    goal: int

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        reached = 1
        passed = [reached]
        for mask, step in zip(masks, self.steps, strict=True):
            after = 0
            while mask:
                digit = mask.bit_length() - 1
                mask ^= 1 << digit
                after |= reached << step[digit]
            reached = after
            passed.append(reached)
        live = reached & self.goal
        if not live:
            return None
        kept = list(masks)
        for i in range(len(masks) - 1, -1, -1):
            before, mask, here, step = 0, masks[i], passed[i], self.steps[i]
            while mask:
                digit = mask.bit_length() - 1
                mask ^= 1 << digit
                source = live >> step[digit] & here
                if source:
                    before |= source
                else:
                    kept[i] ^= 1 << digit
            live = before
        return kept, 0


def sum_within(factors: Sequence[int], least: int, most: int, digits: int) -> SumWithin:
    """The filter for a sum of factor × digit, one factor a cell."""
    floors = [min(factor, factor * digits) for factor in factors]
    steps = tuple(
        tuple(factor * digit - floor for digit in range(1, digits + 1))
        for factor, floor in zip(factors, floors, strict=True)
    )
    floor = sum(floors)
    ceiling = floor + sum(max(step) for step in steps)
    low, high = max(least, floor), min(most, ceiling)
    goal = (1 << high - floor + 1) - (1 << low - floor) if low <= high else 0
    return SumWithin(steps, goal)
