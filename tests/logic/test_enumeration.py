"""Marks that are read as a whole leave what some filling of their cells uses, and nothing else."""

from __future__ import annotations

import random
from itertools import product

import pytest

from bookmaker.logic.enumeration import Whole, narrow
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.solve.problem import Combination, Count, DifferentCount, Sum

CELLS, DIGITS = (3, 0, 4, 1), 5
"""The cells of a mark, in an order of their own, and one on the board that it does not read."""


def drawn(kind: type[Whole], rng: random.Random) -> Whole:
    least = rng.randint(1, 4)
    most = least + rng.randint(0, 1)
    if kind is Combination:
        return Combination(CELLS, frozenset(mask_of(rng.sample(range(1, DIGITS + 1), len(CELLS))) for _ in range(2)))
    if kind is Sum:
        return Sum(tuple((cell, rng.choice((1, 1, -1, 2))) for cell in CELLS), 3 * least, 3 * most)
    if kind is Count:
        return Count(CELLS, rng.randrange(1, 1 << DIGITS), least, most)
    return DifferentCount(CELLS, least, most)


def keeps(made: Whole, digits: tuple[int, ...]) -> bool:
    match made:
        case Combination(_, sets):
            return len(set(digits)) == len(digits) and mask_of(digits) in sets
        case Sum(terms, least, most):
            return least <= sum(factor * digit for (_, factor), digit in zip(terms, digits, strict=True)) <= most
        case Count(_, mask, least, most):
            return least <= sum(mask >> digit - 1 & 1 for digit in digits) <= most
        case DifferentCount(_, least, most):
            return least <= len(set(digits)) <= most
    raise AssertionError(made)


@pytest.mark.parametrize("kind", [Combination, Sum, Count, DifferentCount])
def test_what_some_filling_uses_is_left(kind: type[Whole]) -> None:
    rng = random.Random(kind.__name__)
    outcomes = set()
    for _ in range(300):
        made = drawn(kind, rng)
        masks = [mask_of(rng.sample(range(1, DIGITS + 1), rng.randint(1, 3))) for _ in range(max(CELLS) + 1)]
        before = list(masks)
        right = [found for found in product(*[digits_in(masks[cell]) for cell in CELLS]) if keeps(made, found)]
        assert narrow(made, masks) == bool(right)
        if right:
            for cell, used in zip(CELLS, zip(*right, strict=True), strict=True):
                before[cell] = mask_of(set(used))
            assert masks == before
        outcomes.add(bool(right))
    assert outcomes == {False, True}
