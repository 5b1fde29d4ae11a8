"""Sets of sets of digits, against all of them one by one."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations, product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bookmaker.solve.sets import OneOfFewSets, OneOfTheSets, set_of_sets, sets_by_sum

DIGITS = 6


def mask_of(digits: Sequence[int]) -> int:
    return sum(1 << digit - 1 for digit in digits)


@pytest.mark.parametrize("size", range(DIGITS + 1))
def test_sets_by_sum_are_all_of_them(size: int) -> None:
    by_sum: dict[int, int] = {}
    for chosen in combinations(range(1, DIGITS + 1), size):
        by_sum[sum(chosen)] = by_sum.get(sum(chosen), 0) | 1 << mask_of(chosen)
    assert dict(sets_by_sum(DIGITS, size)) == by_sum
    assert [total for total, _ in sets_by_sum(DIGITS, size)] == sorted(by_sum)


@given(st.data())
def test_a_digit_stays_where_a_filling_uses_it(data: st.DataObject) -> None:
    """The filter through all sets is exact; the one that tries each of a few loses nothing, and judges filled cells."""
    size = data.draw(st.integers(1, 4))
    masks = data.draw(st.lists(st.integers(1, (1 << DIGITS) - 1), min_size=size, max_size=size))
    every = [mask_of(chosen) for chosen in combinations(range(1, DIGITS + 1), size)]
    sets = data.draw(st.frozensets(st.sampled_from(every), min_size=1, max_size=6))
    choices = [[digit for digit in range(1, DIGITS + 1) if mask >> digit - 1 & 1] for mask in masks]
    fillings = [one for one in product(*choices) if len(set(one)) == size and mask_of(one) in sets]
    exact = OneOfTheSets(DIGITS, set_of_sets(sets)).narrow(masks)
    rough = OneOfFewSets(sets).narrow(masks)
    if not fillings:
        assert exact is None
        assert rough is None or max(len(choice) for choice in choices) > 1
        return
    assert exact is not None and rough is not None
    assert exact[0] == [mask_of(sorted({one[at] for one in fillings})) for at in range(size)]
    assert all(mine & ~its == 0 for mine, its in zip(exact[0], rough[0], strict=True))
    assert rough[1] & ~exact[1] == 0
    assert OneOfFewSets(sets).narrow(rough[0]) == rough
