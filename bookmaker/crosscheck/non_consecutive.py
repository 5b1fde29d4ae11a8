"""No two cells that touch, at a corner too where that is said, differ by one."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, touching
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.non_consecutive import NonConsecutive


def define(model: Model, x: Digits, rule: NonConsecutive, grid: Grid) -> None:
    for one, other in touching(grid, rule.diagonal):
        model.add(x[one] - x[other] != 1)
        model.add(x[other] - x[one] != 1)
