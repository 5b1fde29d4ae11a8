"""Comparisons taken one by one, beside the heights worked out anew for all of them together."""

from graphlib import CycleError
from random import Random

import pytest

from bookmaker.rules.common.comparison import Stairs, tallest
from bookmaker.rules.common.neighbours import Pair


def fits(comparisons: list[Pair], most: int) -> bool:
    try:
        return tallest(comparisons) <= most
    except CycleError:
        return False


@pytest.mark.parametrize("seed", range(60))
def test_one_more_comparison_is_taken_just_if_all_together_can_be_true(seed: int) -> None:
    rng = Random(seed)
    most, cells = rng.randint(2, 5), range(rng.randint(3, 9))
    stairs, taken, answers = Stairs(most), [], set()
    for _ in range(30):
        one, other = rng.sample(cells, 2)
        wanted = fits([*taken, (one, other)], most)
        answers.add(wanted)
        assert stairs.takes((one, other)) == wanted
        if wanted:
            taken.append((one, other))
    assert answers == {True, False}
