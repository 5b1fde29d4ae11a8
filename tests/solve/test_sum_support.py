"""Sums of different digits, against all the ways to choose them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from bookmaker.solve.sets import MOST_DIGITS
from bookmaker.solve.sum_support import added, sum_support

DIGITS = 7


def different(masks: Sequence[int]) -> Iterator[tuple[int, ...]]:
    """Every choice of different digits, one from each mask."""
    choices = ([digit for digit in range(1, DIGITS + 1) if mask >> digit - 1 & 1] for mask in masks)
    return (chosen for chosen in product(*choices) if len(set(chosen)) == len(chosen))


def floor(count: int, factor: int) -> int:
    """The least that so many different digits of the grid come to."""
    return min(factor * sum(range(1, count + 1)), factor * sum(range(DIGITS + 1 - count, DIGITS + 1)))


@st.composite
def cells(draw: st.DrawFn) -> tuple[list[int], int]:
    masks = draw(st.lists(st.integers(0, (1 << DIGITS) - 1), min_size=1, max_size=5))
    return masks, draw(st.sampled_from((1, -1, 2, -3, 10)))


@given(cells())
def test_sums_are_those_of_every_choice_of_different_digits(case: tuple[list[int], int]) -> None:
    masks, factor = case
    sums = {factor * sum(chosen) - floor(len(masks), factor) for chosen in different(masks)}
    assert sum_support(DIGITS, len(masks), factor).sums_of(masks) == sum(1 << total for total in sums)


@given(cells(), st.data())
def test_digits_are_those_of_the_choices_that_give_one_of_the_sums(
    case: tuple[list[int], int], data: st.DataObject
) -> None:
    masks, factor = case
    there, back = sum_support(DIGITS, len(masks), factor)
    every = there(masks)
    some = [place for place in range(every.bit_length()) if every >> place & 1 and data.draw(st.booleans())]
    expected = [0] * len(masks)
    for chosen in different(masks):
        if factor * sum(chosen) - floor(len(masks), factor) in some:
            for place, digit in enumerate(chosen):
                expected[place] |= 1 << digit - 1
    assert list(back(masks, sum(1 << place for place in some))) == expected


@given(st.sets(st.integers(0, 40)), st.sets(st.integers(0, 40)))
def test_sums_are_added_each_to_each(one: set[int], other: set[int]) -> None:
    both = {a + b for a in one for b in other}
    assert added(sum(1 << a for a in one), sum(1 << b for b in other)) == sum(1 << total for total in both)


LARGE = MOST_DIGITS + 5


@given(st.lists(st.integers(1, LARGE), min_size=4, max_size=7, unique=True), st.data())
def test_with_many_digits_no_choice_is_lost_and_filled_cells_are_judged_right(
    chosen: list[int], data: st.DataObject
) -> None:
    count = len(chosen)
    there, back = sum_support(LARGE, count, 1)
    place = sum(chosen) - sum(range(1, count + 1))
    filled = [1 << digit - 1 for digit in chosen]
    assert there(filled) == 1 << place
    assert list(back(filled, 1 << place)) == filled
    assert list(back(filled, 2 << place)) == [0] * count
    masks = [mask | data.draw(st.integers(0, (1 << LARGE) - 1)) for mask in filled]
    assert there(masks) >> place & 1
    kept = list(back(masks, 1 << place))
    assert all(mask & digit for mask, digit in zip(kept, filled, strict=True))
    assert list(back(kept, 1 << place)) == kept
