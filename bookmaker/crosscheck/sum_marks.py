"""V stands between digits with the sum 5, X between those with the sum 10."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, beside_and_below, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.sum_marks import SumMarks


def define(model: Model, x: Digits, rule: SumMarks, grid: Grid) -> None:
    worth = counting(x, grid)
    for one, other in beside_and_below(grid):
        total = sum((worth[one], worth[other]))
        if (one, other) in rule.five:
            model.add(total == 5)
        elif (one, other) in rule.ten:
            model.add(total == 10)
        elif rule.all_marked:
            model.add(total != 5)
            model.add(total != 10)
