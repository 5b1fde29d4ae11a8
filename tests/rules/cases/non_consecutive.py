"""Cases for the non-consecutive rule."""

from __future__ import annotations

from functools import cache
from itertools import islice
from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.non_consecutive import NonConsecutive
from bookmaker.solve import solutions
from tests.rules.grids import Solution

SENTENCES = (("non-consecutive: yes", "Cells that share a side never hold consecutive digits."),)

MISUSES = (
    ("non-consecutive: false", "rule-off", "false"),
    ("non-consecutive: r1c1-r1c2", "not-yes", "r1c1"),
    ("non-consecutive: [yes]", "not-text", "[yes]"),
)

DEDUCTIONS = (
    ("non-consecutive: yes", {"r5c5": "5"}, {"r4c5 r6c5 r5c4 r5c6": "46"}),
    ("non-consecutive: yes", {"r5c5": "46"}, {"r4c5": "5"}),
    ("non-consecutive: yes", {"r5c5": "456"}, {"r4c5": "5"}),
    # In row 5, 4 stands at r5c4 or r5c6, beside r5c5 both.
    ("non-consecutive: yes", {"r5c1-r5c3 r5c5 r5c7-r5c9": "12356789"}, {"r5c5": "35"}),
)


@cache
def _found(grid: Grid) -> tuple[Solution, ...]:
    """A few solutions far apart; from a shuffled search each would take seconds."""
    problem = problem_of(Puzzle(grid, (0,) * len(grid.cells), (NonConsecutive(),)))
    return tuple(islice(solutions(problem), 0, 800, 40))


def grow(grid: Grid, rng: Random) -> Solution | None:
    """A solution seen from another side, its digits perhaps counted downwards; both keep the rule."""
    if not _found(grid):
        return None
    solution, last = rng.choice(_found(grid)), grid.size - 1
    top, left = rng.choice((0, last)), rng.choice((0, last))
    if rng.random() < 0.5:
        solution = tuple(grid.size + 1 - digit for digit in solution)
    return tuple(solution[grid.cell(abs(top - grid.row(cell)), abs(left - grid.column(cell)))] for cell in grid.cells)
