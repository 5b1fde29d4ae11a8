"""No two cells that share a side differ by one."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, beside_and_below
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.non_consecutive import NonConsecutive


def define(model: Model, x: Digits, rule: NonConsecutive, grid: Grid) -> None:
    for one, other in beside_and_below(grid):
        model.add(x[one] - x[other] != 1)
        model.add(x[other] - x[one] != 1)
