"""Cells that hold different digits, together one of some sets: cages, houses, lines of a run.

In: the allowed sets. Out: a filter that is exact: a digit stays only if some filling uses it. It goes from cell to
cell with the *set of all sets* of digits used so far, held in one whole number: bit u is set if the digits of mask
u can fill the cells passed. Writing digit d moves every set without d by 2^(d - 1) places: one shift for all.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache

from bookmaker.solve.fields import spread

ANY_SET = -1
"""All sets of digits."""


@cache
def sets_without(digits: int) -> tuple[int, ...]:
    """For each digit, from 1 at index 0, the set of all sets of digits that lack it."""
    tables = []
    for digit in range(digits):
        block = (1 << (1 << digit)) - 1
        tables.append(spread(block, range(0, 1 << digits, 2 << digit)))
    return tuple(tables)


@cache
def set_of_sets(sets: frozenset[int]) -> int:
    """Some sets of digits as one whole number with a bit for each."""
    return spread(1, sets)


@dataclass(frozen=True, slots=True)
class OneOfTheSets:
    """All different, and together one of the sets in `allowed`. `digits` is how many digits there are."""

    digits: int
    allowed: int

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        without = sets_without(self.digits)
        used = 1
        passed = [used]
        for mask in masks:
            after = 0
            while mask:
                digit = mask.bit_length() - 1
                after |= (used & without[digit]) << (1 << digit)
                mask ^= 1 << digit
            used = after
            passed.append(used)
        live = used & self.allowed
        if not live:
            return None
        needed = 0
        for digit, lacking in enumerate(without):
            if not live & lacking:
                needed |= 1 << digit
        kept = list(masks)
        for i in range(len(masks) - 1, -1, -1):
            before, mask, here = 0, masks[i], passed[i]
            while mask:
                digit = mask.bit_length() - 1
                mask ^= 1 << digit
                source = (live & ~without[digit]) >> (1 << digit) & here
                if source:
                    before |= source
                else:
                    kept[i] ^= 1 << digit
            live = before
        return kept, needed
