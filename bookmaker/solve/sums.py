"""Sums of factor × digit with a least and a most.

In: the factors, the limits, and which cells must differ from each other. Out: a filter. Cells of one factor that
differ from each other make a part, whose sum depends on the set of digits in it only (`sets.py`). The sums that a
part, or some parts together, can have are one whole number with a field of a few bits for each sum: multiplying two
of them adds every sum of one to every sum of the other. Where the limits leave room for whatever each part may add
up to, nothing is multiplied: of long sums that is mostly so. Otherwise the filter is exact but for digits that must
differ across parts.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import NamedTuple

from bookmaker.solve.fields import spread
from bookmaker.solve.sets import Passed, fill, narrowed, sets_by_sum


class Part(NamedTuple):
    """Cells of one factor that hold different digits, from place `start` up to `stop` among the cells of the sum."""

    start: int
    stop: int
    factor: int
    span: int
    """Bits from the field of the part's least sum to that of its greatest."""


class Sums(NamedTuple):
    """What a part can add up to, counted from the least that so many cells can."""

    here: int
    """A bit for each sum, in its field."""
    rest: int
    """The same counted down from the greatest: what each sum leaves of the part's span."""
    low: int
    high: int
    passed: Passed
    """What `fill` met on the way."""


@dataclass(frozen=True, slots=True)
class SumWithin:
    """The parts add up to `least`..`most`, counted from the least that they can."""

    digits: int
    parts: tuple[Part, ...]
    least: int
    most: int
    goal: int
    """A bit for each sum from `least` to `most`, in its field."""
    width: int
    """Bits of a field: room for how often a sum can come about, and one more."""
    lows: int
    """The lowest bit of every field, in a product too."""
    carry: int
    """Added to a product, it carries into the top bit of every field but the empty ones."""

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        digits, width, least, most = self.digits, self.width, self.least, self.most
        low = high = widest = 0
        found = []
        for start, stop, factor, _ in self.parts:
            sums = _sums(digits, width, factor, tuple(masks[start:stop]))
            here, _, lowest, highest, _ = sums
            if not here:
                return None
            found.append(sums)
            low += lowest
            high += highest
            if highest - lowest > widest:
                widest = highest - lowest
        if low > most or high < least:
            return None
        if low + widest <= most and high - widest >= least:
            return list(masks), 0
        return self._exactly(masks, found)

    def _exactly(self, masks: Sequence[int], found: Sequence[Sums]) -> tuple[list[int], int] | None:
        digits, width, lows, carry = self.digits, self.width, self.lows, self.carry
        top = width - 1
        spare, before = 1, 0  # what the parts before leave of their spans, and these spans
        steps = []
        for part, sums in zip(self.parts, found, strict=True):
            steps.append((part, sums, spare, before))
            spare = spare * sums[1] + carry >> top & lows
            before += part[3]
        # What is wanted of a part and those before it. To take a sum from it, add what the sum leaves of the span and
        # take the span.
        wanted = self.goal
        kept: list[int] = []
        for (start, stop, factor, span), (here, rest, _, _, _), spare, before in reversed(steps):
            left = (wanted * spare + carry >> top & lows) >> before & here
            if not left:
                return None
            piece = masks[start:stop]
            kept[:0] = piece if left == here else _with_sums(digits, width, factor, tuple(piece), left)
            wanted = (wanted * rest + carry >> top & lows) >> span
        return kept, 0


@lru_cache(maxsize=16384)
def _sums(digits: int, width: int, factor: int, masks: tuple[int, ...]) -> Sums:
    """What a part whose cells have these masks can add up to."""
    used, passed = fill(digits, masks)
    by_sum = sets_by_sum(digits, len(masks))
    step, last = abs(factor), len(by_sum) - 1
    found = [place if factor > 0 else last - place for place, (_, sets) in enumerate(by_sum) if sets & used]
    if not found:
        return Sums(0, 0, 0, 0, passed)
    here = spread(1, (step * place * width for place in found))
    rest = spread(1, (step * (last - place) * width for place in found))
    return Sums(here, rest, step * min(found), step * max(found), passed)


@lru_cache(maxsize=16384)
def _with_sums(digits: int, width: int, factor: int, masks: tuple[int, ...], sums: int) -> tuple[int, ...]:
    """The digits of these masks that are part of one of these sums."""
    by_sum = sets_by_sum(digits, len(masks))
    live = 0
    for place, (_, sets) in enumerate(by_sum if factor > 0 else reversed(by_sum)):
        if sums >> abs(factor) * place * width & 1:
            live |= sets
    return tuple(narrowed(_sums(digits, width, factor, masks).passed, live))


def sum_within(
    factors: dict[int, int], least: int, most: int, digits: int, differ: Callable[[int, int], bool]
) -> tuple[tuple[int, ...], SumWithin]:
    """The filter for a sum of factor × digit, with its cells in the order in which it reads them."""
    groups: list[list[int]] = []
    left = list(factors)
    while left:
        together: list[int] = []
        for cell in left:
            alike = factors[cell] == factors[left[0]] and len(together) < digits
            if alike and all(differ(cell, other) for other in together):
                together.append(cell)
        left = [cell for cell in left if cell not in together]
        groups.append(together)
    ends = [[factors[group[0]] * total for total, _ in sets_by_sum(digits, len(group))] for group in groups]
    floor, span = sum(min(sums) for sums in ends), sum(max(sums) - min(sums) for sums in ends)
    width = (span + 1).bit_length() + 1
    parts: list[Part] = []
    cells: list[int] = []
    for group, sums in zip(groups, ends, strict=True):
        parts.append(Part(len(cells), len(cells) + len(group), factors[group[0]], (max(sums) - min(sums)) * width))
        cells += group
    low, high = max(least - floor, 0), min(most - floor, span)
    goal = _row(width, high + 1) ^ _row(width, low) if low <= high else 0
    lows = _row(width, 2 * span + 1)
    carry = (lows << width - 1) - lows
    return tuple(cells), SumWithin(digits, tuple(parts), low, high, goal, width, lows, carry)


@cache
def _row(width: int, fields: int) -> int:
    """The lowest bit of each of so many fields."""
    return spread(1, range(0, fields * width, width))
