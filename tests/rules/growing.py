"""Solutions under rules of the whole grid that a random solution hardly ever keeps, and their images."""

from __future__ import annotations

from functools import cache
from itertools import islice
from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import Rule
from bookmaker.solve import solutions
from tests.rules.grids import Solution


@cache
def found(rule: Rule, grid: Grid) -> tuple[Solution, ...]:
    """A few solutions far apart; from a shuffled search each would take seconds."""
    problem = problem_of(Puzzle(grid, (0,) * len(grid.cells), (rule,)))
    return tuple(islice(solutions(problem), 0, 800, 40))


def image(rule: Rule, grid: Grid, rng: Random, reverse: bool) -> Solution | None:
    """A solution seen from another side, its digits perhaps counted downwards where the rule lets them be `reverse`."""
    if not found(rule, grid):
        return None
    solution, last = rng.choice(found(rule, grid)), grid.size - 1
    top, left = rng.choice((0, last)), rng.choice((0, last))
    if reverse and rng.random() < 0.5:
        solution = tuple(grid.size + 1 - digit for digit in solution)
    return tuple(solution[grid.cell(abs(top - grid.row(cell)), abs(left - grid.column(cell)))] for cell in grid.cells)
