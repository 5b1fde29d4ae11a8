"""The estimator against clubs whose truth is known, and against formulas from elsewhere."""

from __future__ import annotations

from dataclasses import replace
from math import exp, sqrt
from statistics import fmean

import pytest

from bookmaker.times.assessment import rank_correlation
from bookmaker.times.pace import fit, inverse, tail
from tests.times.clubs import CHANCE, club


def test_spreads_and_order_of_twelve_solvers_and_thirty_puzzles_are_recovered() -> None:
    rhos, chances, spreads, paces = [], [], [], []
    for seed in range(6):
        made = club(seed, 12, 30)
        found = fit(made.times, 30, 12)
        rhos.append(rank_correlation(found.intensities, made.intensities)[0])
        chances.append(found.chance)
        spreads.append(found.puzzle_spread)
        paces.append(rank_correlation(found.paces, made.paces)[0])
    assert min(rhos) >= 0.9
    assert fmean(chances) == pytest.approx(CHANCE, rel=0.07)
    assert fmean(spreads) == pytest.approx(0.5, rel=0.2)
    assert fmean(paces) >= 0.9


def test_standard_errors_cover_the_truth() -> None:
    """Nineteen in twenty lie within 1.96 of them, once the common level is taken off; a binomial bound around that."""
    within = total = 0
    for seed in range(10, 18):
        made = club(seed, 10, 20)
        found = fit(made.times, 20, 10)
        level = fmean(x - y for x, y in zip(found.intensities, made.intensities, strict=True))
        for x, y, error in zip(found.intensities, made.intensities, found.errors, strict=True):
            within += abs(x - y - level) < 1.96 * error
            total += 1
    assert within / total > 0.95 - 3 * sqrt(0.95 * 0.05 / total)


def test_who_did_not_finish_counts() -> None:
    """With a third of the times censored the hard puzzles stay hard; were those times taken at their word or left out,
    these would seem easier. Four clubs together."""
    off: dict[str, list[float]] = {"censored": [], "at their word": [], "left out": []}
    for seed in range(20, 24):
        made = club(seed, 15, 25, limit=9.0)
        assert sum(not time.finished for time in made.times) > 0.3 * len(made.times)
        ways = {
            "censored": made.times,
            "at their word": [replace(time, finished=True) for time in made.times],
            "left out": [time for time in made.times if time.finished],
        }
        solved = sorted({time.puzzle for time in ways["left out"]}, key=lambda at: made.intensities[at])
        for way, times in ways.items():
            found = fit(times, 25, 15)
            apart = [found.intensities[at] - made.intensities[at] for at in solved]
            off[way].append(fmean(apart[-6:]) - fmean(apart[:-6]))
    assert abs(fmean(off["censored"])) < 0.1
    assert fmean(off["at their word"]) < -0.2
    assert fmean(off["left out"]) < -0.2


def test_mean_beyond_a_point_by_numerical_integration() -> None:
    """Simpson's rule on the density from z to z + 12; and far out its known expansion, z + 1/z."""
    for z in (-2.0, 0.0, 1.5, 4.0):
        grid = [z + step / 500 for step in range(6001)]
        weights = [1 if at in (0, 6000) else 4 if at % 2 else 2 for at in range(6001)]
        beyond = [weight * exp(-x * x / 2) for weight, x in zip(weights, grid, strict=True)]
        mean = sum(x * share for x, share in zip(grid, beyond, strict=True)) / sum(beyond)
        assert tail(z) == pytest.approx(mean, rel=1e-6)
    assert tail(30.0) == pytest.approx(30 + 1 / 30, rel=1e-4)
    assert tail(30.001) == pytest.approx(tail(30.0), rel=1e-3)


def test_inverse_of_a_matrix() -> None:
    """Hilbert's of order 3, inverse known in whole numbers (9, -36, 30; -36, 192, -180; 30, -180, 180)."""
    hilbert = [[1 / (i + j + 1) for j in range(3)] for i in range(3)]
    known = [[9, -36, 30], [-36, 192, -180], [30, -180, 180]]
    for row, expected in zip(inverse(hilbert), known, strict=True):
        assert row == pytest.approx(expected)


def test_rank_correlation_of_a_textbook_case() -> None:
    """Ten students by mathematics and music, -0.103: M. G. Kendall, Rank Correlation Methods (1948), from memory."""
    mathematics, music = [7, 4, 3, 10, 6, 2, 9, 8, 1, 5], [5, 7, 3, 10, 1, 9, 6, 2, 8, 4]
    rho, low, high = rank_correlation(mathematics, music)
    assert round(rho, 3) == -0.103
    assert -1 < low < rho < high < 1
    assert rank_correlation([1, 1, 2], [5, 5, 9]) == (pytest.approx(1.0), -1.0, 1.0)
    assert rank_correlation([3, 3, 3, 3, 3], [1, 2, 3, 4, 5]) == (0.0, -1.0, 1.0)
