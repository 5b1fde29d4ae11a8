"""Two cells that touch, at a corner too where that is said, have none of the sums."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting, touching
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.barred_sums import BarredSums


def define(model: Model, x: Digits, rule: BarredSums, grid: Grid) -> None:
    worth = counting(x, grid)
    for one, other in touching(grid, rule.diagonal):
        for total in rule.sums:
            model.add(sum((worth[one], worth[other])) != total)
