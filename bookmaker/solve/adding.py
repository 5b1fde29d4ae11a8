"""What a few different digits add up to.

In: how many cells hold different digits, and what their sum is multiplied by. Out: two ways (`Ways`), from the masks of
the cells to their sums and back from sums to the digits that make them. Sums are one whole number with a bit for each,
the lowest for the least sum that so many different digits can have. Of up to three cells every digit of one is tried
with those of the others: multiplying a mask by the digit's own bit adds the digit to all of its digits at once. More
cells go through the sets of digits that fill them (`sets.py`).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache, lru_cache, partial
from typing import NamedTuple

from bookmaker.solve.fields import each_bit, spread, units_in
from bookmaker.solve.sets import fill, narrowed, sets_by_sum


class Ways(NamedTuple):
    """From digits to sums, and back."""

    there: Callable[[Sequence[int]], int]
    """The sums of different digits, one from each mask; 0 if there are none."""
    back: Callable[[Sequence[int], int], Sequence[int]]
    """The digits of each mask that are part of one of these sums."""


def added(a: int, b: int) -> int:
    """Every sum of one added to every sum of the other."""
    if a.bit_count() > b.bit_count():
        a, b = b, a
    sums = 0
    while a:
        one = a & -a
        sums |= b * one
        a ^= one
    return sums


@lru_cache(maxsize=1 << 16)
def mirrored(sums: int, span: int) -> int:
    """Sums up to `span`, counted down from it."""
    return int(f"{sums:0{span + 1}b}"[::-1], 2)


@cache
def ways(digits: int, count: int, factor: int) -> Ways:
    """The ways of so many cells, of as many `digits` as the grid has."""
    few = {1: Ways(_one, _of_one), 2: Ways(_two, _of_two), 3: Ways(_three, _of_three)}
    plain = few.get(count) or Ways(partial(_many, digits), partial(_of_many, digits))
    if factor == 1:
        return plain
    step, span = abs(factor), count * (digits - count) * abs(factor)

    def turned(sums: int) -> int:
        return mirrored(sums, span) if factor < 0 else sums

    def there(masks: Sequence[int]) -> int:
        sums = plain.there(masks)
        return turned(sums if step == 1 else spread(1, [step * place for place in each_bit(sums)]))

    def back(masks: Sequence[int], sums: int) -> Sequence[int]:
        sums = turned(sums)
        return plain.back(masks, sums if step == 1 else spread(1, [place // step for place in each_bit(sums)]))

    return Ways(there, back)


def _one(masks: Sequence[int]) -> int:
    return masks[0]


def _of_one(masks: Sequence[int], sums: int) -> Sequence[int]:
    return (masks[0] & sums,)


def _two(masks: Sequence[int]) -> int:
    a, b = masks
    sums = 0
    for digit in units_in(a):
        sums |= (b & ~digit) * digit
    return sums >> 1


def _of_two(masks: Sequence[int], sums: int) -> Sequence[int]:
    a, b = masks
    sums <<= 1
    first = second = 0
    for digit in units_in(a):
        found = (b & ~digit) * digit & sums
        if found:
            first |= digit
            second |= found // digit
    return first, second


def _three(masks: Sequence[int]) -> int:
    a, b, c = masks
    sums = 0
    for digit in units_in(a):
        others, last = b & ~digit, c & ~digit
        two = 0
        for other in units_in(others):
            two |= (last & ~other) * other
        sums |= two * digit
    return sums >> 3


def _of_three(masks: Sequence[int], sums: int) -> Sequence[int]:
    a, b, c = masks
    sums <<= 3
    first = second = third = 0
    for digit in units_in(a):
        others, last = b & ~digit, c & ~digit
        for other in units_in(others):
            both = digit * other
            found = (last & ~other) * both & sums
            if found:
                first |= digit
                second |= other
                third |= found // both
    return first, second, third


def _many(digits: int, masks: Sequence[int]) -> int:
    used, _ = fill(digits, masks)
    sums, bit = 0, 1
    for _, sets in sets_by_sum(digits, len(masks)):
        if sets & used:
            sums |= bit
        bit <<= 1
    return sums


def _of_many(digits: int, masks: Sequence[int], sums: int) -> Sequence[int]:
    _, passed = fill(digits, masks)
    live = 0
    for _, sets in sets_by_sum(digits, len(masks)):
        if sums & 1:
            live |= sets
        sums >>= 1
    return narrowed(passed, live)
