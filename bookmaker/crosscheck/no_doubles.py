"""Of two cells that touch, at a corner too where that is said, neither is twice the other."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, touching
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.no_doubles import NoDoubles


def define(model: Model, x: Digits, rule: NoDoubles, grid: Grid) -> None:
    for one, other in touching(grid, rule.diagonal):
        model.add(x[one] != 2 * x[other])
        model.add(x[other] != 2 * x[one])
