"""Of two cells that touch, at a corner too where that is said, neither is twice the other."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting, touching
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.no_doubles import NoDoubles


def define(model: Model, x: Digits, rule: NoDoubles, grid: Grid) -> None:
    worth = counting(x, grid)
    for one, other in touching(grid, rule.diagonal):
        model.add(worth[one] != 2 * worth[other])
        model.add(worth[other] != 2 * worth[one])
