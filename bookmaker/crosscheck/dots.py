"""A white dot stands between digits that differ by one, a black one where one is twice the other."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, beside_and_below
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.dots import Dots


def define(model: Model, x: Digits, rule: Dots, grid: Grid) -> None:
    digits = range(1, grid.size + 1)
    consecutive = [(a, b) for a in digits for b in digits if a == b + 1 or b == a + 1]
    double = [(a, b) for a in digits for b in digits if a == b + b or b == a + a]
    for one, other in beside_and_below(grid):
        if (one, other) in rule.white:
            model.add_allowed_assignments([x[one], x[other]], consecutive)
        elif (one, other) in rule.black:
            model.add_allowed_assignments([x[one], x[other]], double)
        elif rule.all_marked:
            model.add_forbidden_assignments([x[one], x[other]], consecutive + double)
