"""Which sums a few cells with different digits can have, and which digits support a sum.

In: the number of cells, and the factor of their sum. Out: a `SumSupport`, two functions: from the masks of the cells to
their possible sums, and from sums back to the digits that take part in one of them. A set of sums is an int, in which
bit 0 stands for the least sum that this many different digits can have. For up to three cells each digit of the first
is combined with those of the others: a mask multiplied by a digit's bit has that digit added to each of its digits.
More cells go through the sets of digits that fill them (`sets.py`), or, where there are too many sets, through sums of
digits that may be alike.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache, lru_cache, partial, reduce
from itertools import accumulate
from typing import NamedTuple

from bookmaker.solve.candidates import each_bit, replicate, units_in
from bookmaker.solve.sets import MOST_DIGITS, fill, narrowed, sets_by_sum


class SumSupport(NamedTuple):
    """From the masks of cells to their sums, and from sums to the digits that support them."""

    sums_of: Callable[[Sequence[int]], int]
    """The sums of different digits, one from each mask; 0 if there are none."""
    digits_for: Callable[[Sequence[int], int], Sequence[int]]
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
def sum_support(digits: int, count: int, factor: int) -> SumSupport:
    """The support of sums over `count` cells of a grid with digits 1 to `digits`, each digit times `factor`."""
    few = {1: SumSupport(_one, _of_one), 2: SumSupport(_two, _of_two), 3: SumSupport(_three, _of_three)}
    many = (
        (partial(_any, digits), _of_any)
        if digits > MOST_DIGITS
        else (partial(_many, digits), partial(_of_many, digits))
    )
    plain = few.get(count) or SumSupport(*many)
    if factor == 1:
        return plain
    step, span = abs(factor), count * (digits - count) * abs(factor)

    def turned(sums: int) -> int:
        return mirrored(sums, span) if factor < 0 else sums

    def sums_of(masks: Sequence[int]) -> int:
        sums = plain.sums_of(masks)
        return turned(sums if step == 1 else replicate(1, [step * place for place in each_bit(sums)]))

    def digits_for(masks: Sequence[int], sums: int) -> Sequence[int]:
        sums = turned(sums)
        return plain.digits_for(masks, sums if step == 1 else replicate(1, [place // step for place in each_bit(sums)]))

    return SumSupport(sums_of, digits_for)


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


def _any(digits: int, masks: Sequence[int]) -> int:
    """Sums of digits that may be alike, as far as different ones could have them."""
    count = len(masks)
    sums = reduce(added, masks, 1) >> count * (count - 1) // 2
    return sums & (1 << count * (digits - count) + 1) - 1


def _of_any(masks: Sequence[int], sums: int) -> Sequence[int]:
    """A digit stays if the other cells have digits, perhaps the same, with which it makes one of the sums."""
    count = len(masks)
    sums <<= count * (count - 1) // 2
    before = list(accumulate(masks, added, initial=1))
    after = list(accumulate(reversed(masks), added, initial=1))[::-1]
    kept = []
    for at, mask in enumerate(masks):
        others = added(before[at], after[at + 1])
        kept.append(sum(digit for digit in units_in(mask) if others * digit & sums))
    return kept
