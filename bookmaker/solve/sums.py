"""Sums of factor × digit with a least and a most.

In: the cells in parts, their factors, and the limits. Out: a `Local`. Cells of one factor that hold different digits
make a part, whose sums are worked out digit by digit (`sum_support.py`). Sums are one whole number with a bit for each,
counted from the least that there can be. Where the limits leave room for whatever each part may add up to, the parts
are not put together: of long sums that is mostly so. Otherwise what is left is exact but for digits that must differ
across parts. A part remembers its sums, for the candidates of a few cells come back even more often than those of all.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from bookmaker.solve.candidates import CandidateLayout
from bookmaker.solve.local import MEMORY, Local, refilled
from bookmaker.solve.sum_support import added, mirrored, sum_support

Sums = tuple[int, int, int, int, list[int]]
"""What a part can add up to, counted from the least that so many cells can; the least and the greatest of that; the
same counted down from the greatest, which is what each sum leaves of the part's span; and the masks of the cells."""


class Part:
    """Cells of one factor that hold different digits. `bits` are their candidates, `known` maps those left to the
    sums that they have, and `span` is how far the greatest sum of so many cells lies above the least."""

    __slots__ = ("_at", "_digits_for", "_full", "_sums_of", "bits", "known", "span")

    def __init__(self, layout: CandidateLayout, cells: Sequence[int], factor: int) -> None:
        self.bits = layout.bits(cells)
        self.known: dict[int, Sums] = {}
        self.span = len(cells) * (layout.digits - len(cells)) * abs(factor)
        self._at = [layout.places[cell] for cell in cells]
        self._full = layout.full
        self._sums_of, self._digits_for = sum_support(layout.digits, len(cells), factor)

    def add_up(self, here: int) -> Sums:
        """The sums of these candidates, to be known from now on."""
        if len(self.known) >= MEMORY:
            self.known.clear()
        full = self._full
        masks = [here >> at & full for at in self._at]
        found = self._sums_of(masks)
        low, high = (found & -found).bit_length() - 1, found.bit_length() - 1
        sums = self.known[here] = (found, low, high, mirrored(found, self.span), masks)
        return sums

    def cut(self, here: int, masks: list[int], sums: int) -> int:
        """Those of these candidates that are part of one of the sums."""
        return refilled(self._at, masks, self._digits_for(masks, sums), here)


class SumWithin(Local):
    """The parts add up to `least`..`most`."""

    __slots__ = ("_goal", "_least", "_most", "_parts")

    def __init__(
        self, layout: CandidateLayout, parts: Sequence[Sequence[int]], factors: Mapping[int, int], least: int, most: int
    ) -> None:
        super().__init__(layout, [cell for part in parts for cell in part])
        floor = span = 0
        self._parts = []
        for cells in parts:
            count, factor = len(cells), factors[cells[0]]
            floor += factor * count * (count + 1 if factor > 0 else 2 * layout.digits + 1 - count) // 2
            part = Part(layout, cells, factor)
            span += part.span
            self._parts.append((part, part.bits, part.known))
        self._least, self._most = max(least - floor, 0), min(most - floor, span)
        self._goal = (1 << self._most + 1) - (1 << self._least) if self._least <= self._most else 0

    def narrow(self, here: int) -> tuple[int, int] | None:
        low = high = widest = settled = 0
        still: list[tuple[Part, int, Sums]] = []
        for part, bits, known in self._parts:
            mine = here & bits
            sums = known.get(mine) or part.add_up(mine)
            found, lowest, highest, _, _ = sums
            if not found:
                return None
            low += lowest
            high += highest
            if lowest == highest:
                settled += lowest
            else:
                still.append((part, mine, sums))
                if highest - lowest > widest:
                    widest = highest - lowest
        if low > self._most or high < self._least:
            return None
        if low + widest > self._most or high - widest < self._least:
            left = self._exactly(here, still, self._goal >> settled)
            return None if left is None else (left, self.layout.everything)
        return here, self.layout.everything

    @staticmethod
    def _exactly(here: int, still: Sequence[tuple[Part, int, Sums]], wanted: int) -> int | None:
        """What is left of the candidates if the parts that have a choice, at least one, give a sum in `wanted`."""
        (first, mine, (found, _, _, spare, masks)), *others = still
        span = first.span
        steps = []  # each with what the parts before it leave of their spans, and these spans
        for step in others:
            steps.append((step, spare, span))
            if step is not others[-1]:
                part, _, (_, _, _, rest, _) = step
                spare, span = added(spare, rest), span + part.span
        # What is wanted of a part and those before it. To take a sum from it, add what the sum leaves of the span and
        # take the span.
        for (part, those, (sums, _, _, rest, digits)), spare, span in reversed(steps):
            left = added(wanted, spare) >> span & sums
            if not left:
                return None
            if left != sums:
                here ^= those ^ part.cut(those, digits, left)
            wanted = added(wanted, rest) >> part.span
        left = wanted & found
        if not left:
            return None
        return here if left == found else here ^ mine ^ first.cut(mine, masks, left)


def in_parts(layout: CandidateLayout, factors: Mapping[int, int], peers: Sequence[int]) -> list[list[int]]:
    """The cells in parts: of one factor, no more than there are digits, and all different from each other."""
    parts: list[list[int]] = []
    left = list(factors)
    while left:
        factor, together = factors[left[0]], 0
        part: list[int] = []
        rest: list[int] = []
        for cell in left:
            alike = factors[cell] == factor and len(part) < layout.digits
            if alike and peers[cell] & together == together:
                part.append(cell)
                together |= layout.units[layout.places[cell]]
            else:
                rest.append(cell)
        parts.append(part)
        left = rest
    return parts
