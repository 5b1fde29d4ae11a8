"""Two cells that share a side differ by one exactly where a bar stands between them."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, beside_and_below
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.consecutive_bars import ConsecutiveBars


def define(model: Model, x: Digits, rule: ConsecutiveBars, grid: Grid) -> None:
    for one, other in beside_and_below(grid):
        apart = model.new_int_var(1, grid.size, "")
        model.add_abs_equality(apart, x[one] - x[other])
        if (one, other) in rule.bars:
            model.add(apart == 1)
        else:
            model.add(apart >= 2)
