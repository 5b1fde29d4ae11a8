"""Two cells that touch, at a corner too where that is said, have none of the sums."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, touching
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.barred_sums import BarredSums


def define(model: Model, x: Digits, rule: BarredSums, grid: Grid) -> None:
    for one, other in touching(grid, rule.diagonal):
        for total in rule.sums:
            model.add(x[one] + x[other] != total)
