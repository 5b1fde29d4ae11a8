"""A white dot stands between digits that differ by one, a black one where one is twice the other."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, beside_and_below, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.dots import Dots


def define(model: Model, x: Digits, rule: Dots, grid: Grid) -> None:
    digits, worth = range(1, grid.size + 1) if grid.first else range(grid.size), counting(x, grid)
    consecutive = [(a, b) for a in digits for b in digits if a == b + 1 or b == a + 1]
    double = [(a, b) for a in digits for b in digits if a == b + b or b == a + a]
    for one, other in beside_and_below(grid):
        if (one, other) in rule.white:
            model.add_allowed_assignments([worth[one], worth[other]], consecutive)
        elif (one, other) in rule.black:
            model.add_allowed_assignments([worth[one], worth[other]], double)
        elif rule.all_marked:
            model.add_forbidden_assignments([worth[one], worth[other]], consecutive + double)
