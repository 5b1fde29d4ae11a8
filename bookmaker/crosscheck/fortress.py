"""Of two cells that share a side, a shaded one is greater than an unshaded one."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, beside_and_below
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.fortress import Fortress


def define(model: Model, x: Digits, rule: Fortress, grid: Grid) -> None:
    shaded = [cell in rule.cells for cell in grid.cells]
    for one, other in beside_and_below(grid):
        if shaded[one] and not shaded[other]:
            model.add(x[one] >= x[other] + 1)
        elif shaded[other] and not shaded[one]:
            model.add(x[other] >= x[one] + 1)
