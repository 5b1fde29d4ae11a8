"""The filter for the number of different digits, against all fillings one by one."""

from __future__ import annotations

from itertools import combinations, product

from hypothesis import given
from hypothesis import strategies as st

from bookmaker.solve.different_counts import DifferentWithin

DIGITS = 5

Masks = list[int]
MASKS = st.lists(st.integers(1, (1 << DIGITS) - 1), min_size=1, max_size=5)


def fillings(masks: Masks) -> list[tuple[int, ...]]:
    """Each with the bits of its digits."""
    return list(product(*[[1 << at for at in range(DIGITS) if mask >> at & 1] for mask in masks]))


def used(found: list[tuple[int, ...]]) -> Masks:
    return [sum(set(bits)) for bits in zip(*found, strict=True)]


@given(st.data())
def test_what_a_filling_uses_stays_and_what_is_filled_is_judged(data: st.DataObject) -> None:
    masks = data.draw(MASKS)
    pairs = list(combinations(range(len(masks)), 2))
    apart = data.draw(st.sets(st.sampled_from(pairs)) if pairs else st.just(set()))
    least = data.draw(st.integers(0, 5))
    most = least + data.draw(st.integers(0, 2))
    differing = [sum(1 << b for b in range(len(masks)) if {(a, b), (b, a)} & apart) for a in range(len(masks))]
    narrowing = DifferentWithin(least, most, tuple(differing))
    right = [
        bits
        for bits in fillings(masks)
        if least <= len(set(bits)) <= most and all(bits[a] != bits[b] for a, b in apart)
    ]
    answer = narrowing.narrow(masks)
    if answer is None:
        assert not right
        return
    kept, needed = answer
    assert all(mine & ~its == 0 for mine, its in zip(kept, masks, strict=True))
    assert narrowing.narrow(kept) == answer
    assert all(needed & ~sum(set(bits)) == 0 for bits in right)
    if right:
        assert all(its & ~mine == 0 for its, mine in zip(used(right), kept, strict=True))
    if all(mask.bit_count() == 1 for mask in masks):
        assert least <= len(set(masks)) <= most


@given(MASKS, st.integers(1, 5))
def test_where_there_must_be_so_many_nothing_is_left_that_no_filling_uses(masks: Masks, least: int) -> None:
    right = [bits for bits in fillings(masks) if len(set(bits)) >= least]
    answer = DifferentWithin(least, DIGITS, (0,) * len(masks)).narrow(masks)
    assert (answer and answer[0]) == (used(right) if right else None)


def test_cells_that_must_repeat_take_the_digits_of_others() -> None:
    """Two cells without a digit in common fill the number; a third one that sees one of them repeats the other."""
    narrowing = DifferentWithin(1, 2, (0b100, 0b000, 0b001))
    assert narrowing.narrow([0b00011, 0b01100, 0b11111]) == ([0b00011, 0b01100, 0b01100], 0)
    assert DifferentWithin(1, 1, (0, 0, 0)).narrow([0b00011, 0b01100, 0b11111]) is None


def test_cells_that_see_each_other_count_one_each() -> None:
    assert DifferentWithin(1, 2, (0b110, 0b101, 0b011)).narrow([0b111] * 3) is None
    assert DifferentWithin(1, 2, (0b010, 0b001, 0b000)).narrow([0b111] * 3) == ([0b111] * 3, 0)


def test_digits_of_which_none_can_be_spared_are_needed() -> None:
    assert DifferentWithin(3, 5, (0,) * 4).narrow([0b011, 0b111, 0b011, 0b001]) == ([0b011, 0b100, 0b011, 0b001], 0b111)
