"""Sums of factor × digit with a least and a most.

In: the factors, the limits, and which cells must differ from each other. Out: a filter. Cells of one factor that
differ from each other make a part, whose sum depends on the set of digits in it only (`sets.py`); from part to part
goes the set of all sums reached so far, held in one whole number, bit s for sum s. The filter is exact but for
digits that must differ across parts; if the limits leave every part its least and its greatest sum, it finds nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from bookmaker.solve.sets import Moves, fill, narrowed, sets_by_sum


@dataclass(frozen=True, slots=True)
class Part:
    """Cells of one factor that hold different digits: where they stand among the cells of the sum, from `start` on.

    `steps` has for each sum of so many digits what it adds beyond the least that any adds, and its sets.
    """

    start: int
    size: int
    steps: tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class SumWithin:
    """The sum lies between two limits, counted from the least that any digits can add up to."""

    digits: int
    parts: tuple[Part, ...]
    least: int
    most: int

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        filled: list[list[tuple[int, Moves]]] = []
        choices: list[list[tuple[int, int]]] = []
        low = high = widest = 0
        for part in self.parts:
            used, passed = fill(self.digits, masks[part.start : part.start + part.size])
            steps = [(step, sets & used) for step, sets in part.steps if sets & used]
            if not steps:
                return None
            filled.append(passed)
            choices.append(steps)
            first, last = steps[0][0], steps[-1][0]
            low += first
            high += last
            widest = max(widest, last - first)
        room = min(self.most - low, high - self.least)
        if room < 0:
            return None
        if widest <= room:
            return list(masks), 0
        live = self._live(choices)
        if live is None:
            return None
        kept: list[int] = []
        for passed, sets in zip(filled, live, strict=True):
            kept += narrowed(passed, sets)
        return kept, 0

    def _live(self, choices: list[list[tuple[int, int]]]) -> list[int] | None:
        """For each part the sets whose sums can be made up to an allowed sum by the other parts."""
        reached = 1
        before = []
        for steps in choices:
            before.append(reached)
            after = 0
            for step, _ in steps:
                after |= reached << step
            reached = after
        goal = reached >> self.least << self.least & (2 << self.most) - 1
        if not goal:
            return None
        live = []
        for here, steps in zip(reversed(before), reversed(choices), strict=True):
            sets = earlier = 0
            for step, of_step in steps:
                source = goal >> step & here
                if source:
                    earlier |= source
                    sets |= of_step
            goal = earlier
            live.append(sets)
        live.reverse()
        return live


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
        by_sum = sets_by_sum(digits, len(together))
        ends = (factor * by_sum[0][0], factor * by_sum[-1][0])
        steps = sorted((factor * total - min(ends), sets) for total, sets in by_sum)
        parts.append(Part(len(cells), len(together), tuple(steps)))
        cells += together
        floor += min(ends)
        ceiling += max(ends)
    return tuple(cells), SumWithin(digits, tuple(parts), max(least, floor) - floor, min(most, ceiling) - floor)
