"""The scale of difficulty: one number through all families, its first digit the band."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bookmaker.grade.bands import CUTS, FAMILIES, bounded, difficulty_of, family_of, figure, level, level_of
from tests.makers.corpus import corpus

efforts = st.floats(0.0, 1e6, allow_nan=False)


@pytest.mark.parametrize("family", FAMILIES)
def test_the_difficulty_is_the_band_exactly_where_a_band_begins(family: str) -> None:
    assert list(CUTS[family]) == sorted(set(CUTS[family]))
    assert [difficulty_of(effort, family) for effort in (0.0, *CUTS[family])] == [1, 2, 3, 4, 5]
    puzzle, _ = next(corpus(family, 1))
    assert family_of(puzzle) == family


@given(efforts, efforts, st.sampled_from(FAMILIES))
def test_more_effort_is_never_less_difficult(one: float, other: float, family: str) -> None:
    low, high = sorted((one, other))
    assert 1 <= difficulty_of(low, family) <= difficulty_of(high, family) < 6


@pytest.mark.parametrize("family", FAMILIES)
def test_there_is_no_step_and_no_kink_at_the_ends(family: str) -> None:
    """Between the outer bands and those beside them neither the difficulty nor its slope by log effort jumps."""
    for cut in (CUTS[family][0], CUTS[family][-1]):
        below, at, above = (difficulty_of(cut * factor, family) for factor in (1 - 1e-6, 1.0, 1 + 1e-6))
        assert above - below < 1e-4
        assert above - at == pytest.approx(at - below, rel=1e-3)


@given(st.floats(0.1, 1e4), st.sampled_from(FAMILIES))
def test_a_difficulty_tells_its_level(effort: float, family: str) -> None:
    reached = level_of(effort, family)
    assert level(bounded(reached)) == pytest.approx(reached, abs=1e-4)


@given(efforts, st.sampled_from(FAMILIES), st.integers(1, 3))
def test_what_is_printed_begins_with_the_band(effort: float, family: str, places: int) -> None:
    difficulty = difficulty_of(effort, family)
    printed = figure(difficulty, places)
    assert printed[0] == str(int(difficulty))
    assert len(printed) == 2 + places
    assert 0 <= difficulty - float(printed) < 10.0**-places + 1e-9
