"""Sums of factor × digit with a least and a most.

In: the factors, the limits, and which cells must differ from each other. Out: a filter. Cells of one factor that
differ from each other make a part, whose sum depends on the set of digits in it only (`sets.py`); from part to part
goes the set of all sums reached so far, held in one whole number, bit s for sum s. The filter is exact but for
digits that must differ across parts; where the limits are far away it does not look closely.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache

from bookmaker.solve.sets import Passed, fill, narrowed, sets_by_sum, union

Steps = tuple[tuple[int, int], ...]
"""Sums in rising order: what each adds beyond the least that any digits add, and all the sets that have it."""

FEW_STEPS = 40
"""With more sums than this over all parts, a close look hardly ever finds more than the limits show."""


@dataclass(frozen=True, slots=True)
class Part:
    """Cells of one factor that hold different digits: `size` of them, from place `start` among the cells of the sum."""

    start: int
    size: int
    factor: int


@dataclass(frozen=True, slots=True)
class SumWithin:
    """The sum lies within `least` and `most`, both counted from the least that any digits add up to."""

    digits: int
    parts: tuple[Part, ...]
    least: int
    most: int

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        found = [
            _choices(self.digits, part.factor, tuple(masks[part.start : part.start + part.size])) for part in self.parts
        ]
        choices = [steps for steps, _ in found]
        if not all(choices) or not self._between_limits(choices):
            return None
        if sum(map(len, choices)) <= FEW_STEPS and not self._made_up(choices):
            return None
        kept: list[int] = []
        for part, (steps, passed), left in zip(self.parts, found, choices, strict=True):
            if len(left) == len(steps):
                kept += masks[part.start : part.start + part.size]
            else:
                kept += narrowed(passed, union(sets for _, sets in left))
        return kept, 0

    def _between_limits(self, choices: list[Steps]) -> bool:
        """Take away steps that even the least or the greatest steps of the others carry past a limit; False if none
        is left."""
        shrunk = True
        while shrunk:
            low = high = 0
            for steps in choices:
                low += steps[0][0]
                high += steps[-1][0]
            up, down = self.most - low, high - self.least
            if up < 0 or down < 0:
                return False
            room = min(up, down)
            shrunk = False
            for i, steps in enumerate(choices):
                first, last = steps[0][0], steps[-1][0]
                if last - first > room:
                    left = tuple([step for step in steps if step[0] - first <= up and last - step[0] <= down])
                    if not left:
                        return False
                    shrunk |= len(left) < len(steps)
                    choices[i] = left
        return True

    def _made_up(self, choices: list[Steps]) -> bool:
        """Take away steps that no steps of the others make up to an allowed sum; False if none is left."""
        reached = 1
        before = []
        for steps in choices:
            before.append(reached)
            after = 0
            for step, _ in steps:
                after |= reached << step
            reached = after
        goal = reached >> self.least << self.least & (2 << self.most) - 1
        for i in range(len(choices) - 1, -1, -1):
            earlier, here = 0, before[i]
            left = []
            for step, sets in choices[i]:
                source = goal >> step & here
                if source:
                    earlier |= source
                    left.append((step, sets))
            goal = earlier
            choices[i] = tuple(left)
        return bool(goal)


@cache
def _steps(digits: int, size: int, factor: int) -> Steps:
    """All the sums of so many different digits times a factor."""
    by_sum = sets_by_sum(digits, size)
    floor = min(factor * by_sum[0][0], factor * by_sum[-1][0])
    return tuple(sorted((factor * total - floor, sets) for total, sets in by_sum))


@lru_cache(maxsize=4096)
def _choices(digits: int, factor: int, masks: tuple[int, ...]) -> tuple[Steps, Passed]:
    """The sums that are left to a part, and what `fill` met on the way."""
    used, passed = fill(digits, masks)
    return tuple([(step, sets & used) for step, sets in _steps(digits, len(masks), factor) if sets & used]), passed


def sum_within(
    factors: dict[int, int], least: int, most: int, digits: int, differ: Callable[[int, int], bool]
) -> tuple[tuple[int, ...], SumWithin]:
    """The filter for a sum of factor × digit, with its cells in the order in which it reads them."""
    cells: list[int] = []
    parts: list[Part] = []
    floor = ceiling = 0
    left = list(factors)
    while left:
        factor = factors[left[0]]
        together: list[int] = []
        for cell in left:
            if factors[cell] == factor and len(together) < digits and all(differ(cell, other) for other in together):
                together.append(cell)
        left = [cell for cell in left if cell not in together]
        size = len(together)
        by_sum = sets_by_sum(digits, size)
        ends = (factor * by_sum[0][0], factor * by_sum[-1][0])
        parts.append(Part(len(cells), size, factor))
        cells += together
        floor += min(ends)
        ceiling += max(ends)
    return tuple(cells), SumWithin(digits, tuple(parts), max(least, floor) - floor, min(most, ceiling) - floor)
