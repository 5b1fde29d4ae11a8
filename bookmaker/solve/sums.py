"""Sums of factor × digit with a least and a most.

In: the factors, the limits, and which cells must differ from each other. Out: a filter. Cells of one factor that
differ from each other make a part, whose sum depends on the set of digits in it only (`sets.py`); from part to part
goes the set of all sums reached so far, held in one whole number, bit s for sum s. The filter is exact but for
digits that must differ across parts. Its steps are remembered one by one: a search changes a few cells at a time, and
other digits often leave a part the same sums.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache

from bookmaker.solve.sets import Passed, fill, narrowed, sets_by_sum

MEMORY = 4096
"""How many answers one sum remembers before it starts afresh."""


@dataclass(frozen=True, slots=True)
class Part:
    """Cells of one factor that hold different digits, from place `start` up to `stop` among the cells of the sum."""

    start: int
    stop: int
    factor: int


@dataclass(frozen=True, slots=True)
class SumWithin:
    """The sum is one of `goal`, bit s for s more than the least that the parts can add up to."""

    digits: int
    parts: tuple[Part, ...]
    goal: int
    memory: dict[tuple[int, ...], tuple[int, ...] | None] = field(default_factory=dict, compare=False, repr=False)

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        digits = self.digits
        pieces = [tuple(masks[part.start : part.stop]) for part in self.parts]
        sums = tuple([_sums(digits, piece)[0] for piece in pieces])
        allowed = self.memory[sums] if sums in self.memory else self._made_up(sums)
        if allowed is None:
            return None
        kept: list[int] = []
        for piece, before, after in zip(pieces, sums, allowed, strict=True):
            kept += piece if after == before else _with_sums(digits, piece, after)
        return kept, 0

    def _made_up(self, sums: tuple[int, ...]) -> tuple[int, ...] | None:
        """Of each part's sums those that the other parts make up to an allowed sum; None if none is left."""
        reached = 1
        steps = []
        for part, of_part in zip(self.parts, sums, strict=True):
            size, factor = part.stop - part.start, part.factor
            ends = size * (size + 1) // 2, size * (2 * self.digits - size + 1) // 2
            floor = min(factor * ends[0], factor * ends[1])
            moves = [(total, factor * total - floor) for total in range(of_part.bit_length()) if of_part >> total & 1]
            steps.append((reached, moves))
            after = 0
            for _, move in moves:
                after |= reached << move
            reached = after
        goal = reached & self.goal
        allowed = []
        for here, moves in reversed(steps):
            earlier = left = 0
            for total, move in moves:
                source = goal >> move & here
                if source:
                    earlier |= source
                    left |= 1 << total
            goal = earlier
            allowed.append(left)
        answer = tuple(reversed(allowed)) if goal else None
        if len(self.memory) >= MEMORY:
            self.memory.clear()
        self.memory[sums] = answer
        return answer


@lru_cache(maxsize=16384)
def _sums(digits: int, masks: tuple[int, ...]) -> tuple[int, Passed]:
    """The sums that different digits of these masks can have, bit s for sum s, and what `fill` met on the way."""
    used, passed = fill(digits, masks)
    sums = 0
    for total, sets in sets_by_sum(digits, len(masks)):
        if sets & used:
            sums |= 1 << total
    return sums, passed


@lru_cache(maxsize=16384)
def _with_sums(digits: int, masks: tuple[int, ...], sums: int) -> tuple[int, ...]:
    """The digits of these masks that are part of one of these sums."""
    live = 0
    for total, sets in sets_by_sum(digits, len(masks)):
        if sums >> total & 1:
            live |= sets
    return tuple(narrowed(_sums(digits, masks)[1], live))


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
        parts.append(Part(len(cells), len(cells) + len(together), factor))
        cells += together
        ends = [factor * total for total, _ in sets_by_sum(digits, len(together))]
        floor += min(ends)
        ceiling += max(ends)
    low, high = max(least, floor) - floor, min(most, ceiling) - floor
    goal = (2 << high) - (1 << low) if low <= high else 0
    return tuple(cells), SumWithin(digits, tuple(parts), goal)
