"""Cells that hold different digits, together one of some sets: cages, houses, lines that make a run.

In: the allowed sets. Out: a filter that is exact: a digit stays only if some filling uses it. It goes from cell to
cell with the *set of all sets* of digits used so far, held in one whole number: bit u is set if the digits of mask
u can fill the cells passed. Writing digit d moves every set without d by 2^(d - 1) places: one shift for all.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache

from bookmaker.solve.candidates import replicate

ANY_SET = -1
"""All sets of digits."""

MOST_DIGITS = 16
"""With more digits than this, each step with a set of all sets takes milliseconds: `OneOfFewSets` and sums whose digits
may be alike take its place. They rule out less, and are as exact where the cells are filled."""

SETS_MOVED = 1200
"""So many sets of digits are moved in one unit of effort (`Meter.effort`), fitted to times with 9 to 20 digits."""

Moves = tuple[tuple[int, int, int], ...]
"""For each digit of a mask: the sets that lack it, how far placement it moves them, and its bit."""

Passed = list[tuple[int, Moves]]
"""What `fill` met at each cell: the sets of digits used before it, and the moves from there."""


def set_cost(digits: int) -> int:
    """The effort for each cell with which a set of all sets of so many digits is moved."""
    return (1 << digits) // SETS_MOVED


@cache
def set_of_sets(sets: frozenset[int]) -> int:
    """Some sets of digits as one whole number with a bit for each."""
    return replicate(1, sets)


@cache
def sets_by_sum(digits: int, size: int) -> tuple[tuple[int, int], ...]:
    """Each sum that so many different digits can have, with all the sets that have it."""
    least = size * (size + 1) // 2
    return tuple((total, _with_sum(digits, size, total)) for total in range(least, least + size * (digits - size) + 1))


@cache
def _with_sum(digits: int, size: int, total: int) -> int:
    """The sets that have a sum: those without the greatest digit, and those with it."""
    least = size * (size + 1) // 2
    if not 0 <= size <= digits or not least <= total <= least + size * (digits - size):
        return 0
    if not digits:
        return 1
    without, rest = _with_sum(digits - 1, size, total), _with_sum(digits - 1, size - 1, total - digits)
    return without | rest << (1 << digits - 1)


@cache
def _sets_without(digits: int) -> tuple[int, ...]:
    """For each digit, from 1 at index 0, the set of all sets of digits that lack it: a pattern that comes again with
    every set of the greater digits, so it is doubled for each of these."""
    found = []
    for bit in range(digits):
        lacking = (1 << (1 << bit)) - 1
        for greater in range(bit + 1, digits):
            lacking |= lacking << (1 << greater)
        found.append(lacking)
    return tuple(found)


@cache
def _moves(digits: int, mask: int) -> Moves:
    without = _sets_without(digits)
    return tuple((without[bit], 1 << bit, 1 << bit) for bit in range(digits) if mask >> bit & 1)


def fill(digits: int, masks: Sequence[int]) -> tuple[int, Passed]:
    """All sets that can fill the cells, and for `narrowed` what was met on the way."""
    used = 1
    passed: Passed = []
    for mask in masks:
        moves = _moves(digits, mask)
        passed.append((used, moves))
        after = 0
        for lacking, shift, _ in moves:
            after |= (used & lacking) << shift
        used = after
    return used, passed


def narrowed(passed: Passed, live: int) -> list[int]:
    """The digits of each cell that lead to one of the sets in `live`, some of those that `fill` found."""
    kept = []
    for here, moves in reversed(passed):
        before = mask = 0
        for lacking, shift, digit in moves:
            source = live >> shift & lacking & here
            if source:
                before |= source
                mask |= digit
        live = before
        kept.append(mask)
    kept.reverse()
    return kept


@dataclass(frozen=True, slots=True)
class OneOfTheSets:
    """All different, and together one of the sets in `allowed`. `digits` is how many digits there are."""

    digits: int
    allowed: int

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        used, passed = fill(self.digits, masks)
        live = used & self.allowed
        if not live:
            return None
        needed = 0
        for bit, lacking in enumerate(_sets_without(self.digits)):
            if not live & lacking:
                needed |= 1 << bit
        return narrowed(passed, live), needed


@dataclass(frozen=True, slots=True)
class OneOfFewSets:
    """All different, and together one of these sets; found by trying each of them."""

    sets: frozenset[int]

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        found = 0
        for mask in masks:
            found |= mask
        either, needed = 0, -1
        for allowed in self.sets:
            if not allowed & ~found and all(mask & allowed for mask in masks):
                either |= allowed
                needed &= allowed
        return ([mask & either for mask in masks], needed) if either else None
