"""V stands between digits with the sum 5, X between those with the sum 10."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, beside_and_below
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.sum_marks import SumMarks


def define(model: Model, x: Digits, rule: SumMarks, grid: Grid) -> None:
    for one, other in beside_and_below(grid):
        if (one, other) in rule.five:
            model.add(x[one] + x[other] == 5)
        elif (one, other) in rule.ten:
            model.add(x[one] + x[other] == 10)
        elif rule.all_marked:
            model.add(x[one] + x[other] != 5)
            model.add(x[one] + x[other] != 10)
