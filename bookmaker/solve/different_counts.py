"""How many different digits some cells hold.

In: the limits, and which of the cells hold different digits in any case. Out: a filter by bounds, for to be exact is
NP-hard (C. Bessiere, E. Hebrard, B. Hnich, Z. Kiziltan and T. Walsh, “Filtering algorithms for the NValue constraint”,
Constraints 11, 2006). There are at least as many different digits as cells that are pairwise different, because they
have no candidate in common or see each other: such cells are gathered greedily. There are at most as many as a greatest
matching of cells and digits has pairs. Where a bound meets a limit, the candidates that go against it are struck.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bookmaker.solve.candidates import units_in


@dataclass(frozen=True, slots=True)
class DifferentWithin:
    """The cells hold between `least` and `most` different digits. `differing[i]` has bit j if the cells i and j differ
    in any case."""

    least: int
    most: int
    differing: tuple[int, ...]

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        kept = list(masks)
        while True:
            before = kept[:]
            if not (self._at_most(kept) and _at_least(kept, self.least)):
                return None
            if kept == before:
                union = _union(kept)
                return kept, union if union.bit_count() == self.least else 0

    def _at_most(self, masks: list[int]) -> bool:
        """Strike what makes for too many different digits; False where there is no way but that."""
        differing = self.differing
        chosen: list[int] = []
        for cell in sorted(range(len(masks)), key=lambda cell: masks[cell].bit_count()):
            if all(differing[cell] >> other & 1 or not masks[cell] & masks[other] for other in chosen):
                chosen.append(cell)
        if len(chosen) == self.most:  # the other cells repeat what these hold
            for cell in set(range(len(masks))).difference(chosen):
                masks[cell] &= _union([masks[other] for other in chosen if not differing[cell] >> other & 1])
        return len(chosen) <= self.most and all(masks)


def _union(masks: Sequence[int]) -> int:
    union = 0
    for mask in masks:
        union |= mask
    return union


def _at_least(masks: list[int], least: int) -> bool:
    """Strike what leaves fewer different digits than that; False where there cannot be so many.

    Where a greatest matching has no pair to spare, a pair stays if some greatest matching has it: one that lies on a
    cycle of pairs in and out of the matching by turns, or on such a path of even length from an end that has no partner
    (C. Berge, “Two theorems in graph theory”, 1957; J.-C. Régin, “A filtering algorithm for constraints of difference
    in CSPs”, AAAI 1994).
    """
    holder: dict[int, int] = {}
    single = [cell for cell in range(len(masks)) if not _matched(cell, masks, holder, [0])]
    if len(holder) != least:
        return len(holder) > least
    onward = {unit: masks[cell] for unit, cell in holder.items()}
    held = _union(tuple(holder))
    spared = _reached(_union([masks[cell] for cell in single]), onward)
    for unit, cell in holder.items():
        if not spared & unit:
            for other in units_in(masks[cell] & held & ~unit):
                if not _reached(other, onward) & (unit | ~held):
                    masks[cell] ^= other
    return True


def _matched(cell: int, masks: Sequence[int], holder: dict[int, int], tried: list[int]) -> bool:
    """Find a digit for one more cell, while those before it may change theirs; `tried` has the digits asked for."""
    for unit in units_in(masks[cell]):
        if unit not in holder:
            holder[unit] = cell
            return True
    for unit in units_in(masks[cell]):
        if not tried[0] & unit:
            tried[0] |= unit
            if _matched(holder[unit], masks, holder, tried):
                holder[unit] = cell
                return True
    return False


def _reached(digits: int, onward: dict[int, int]) -> int:
    """The digits, and those that the cells that hold them in the matching could have instead, and so on."""
    reached = 0
    while fresh := digits & ~reached:
        reached |= fresh
        for unit in units_in(fresh):
            digits |= onward.get(unit, 0)
    return reached
