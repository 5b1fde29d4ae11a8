"""Cases for diagonals."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.diagonals import Diagonals
from tests.rules.grids import Solution, random_solution
from tests.rules.harness import grown_with

SENTENCES = (
    ("diagonals: both", "Each of the two marked diagonals holds every digit once."),
    ("diagonals: falling", "The marked diagonal holds every digit once."),
)

MISUSES = (
    ("diagonals: risen", "unknown-word", "risen"),
    ("diagonals:\n  - both", "not-text", "- both"),
)

DEDUCTIONS = (
    # r2c4 and r4c2 see both places of 1 on the falling diagonal.
    ("diagonals: falling", {"r1c1 r3c3 r5c5-r9c9": "23456789"}, {"r2c4 r4c2": "1"}),
    ("diagonals: both", {"r1c1-r9c9": "123456789", "r2c2-r8c8": "23456789"}, {"r1c9 r9c1": "1"}),
)


def grow(grid: Grid, rng: Random) -> Solution | None:
    if rng.random() < 0.2:
        return random_solution(grid, rng)
    return grown_with(Diagonals(falling=True, rising=rng.random() < 0.7), grid, rng)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> Diagonals | None:
    kept = [which for which in ((True, True), (True, False), (False, True)) if Diagonals(*which).holds(grid, solution)]
    return Diagonals(*kept[0]) if kept else None
