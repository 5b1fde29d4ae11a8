"""No digit repeats in a cage, unless that is allowed; where it has a total, that is the sum of its digits."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.cage import Cage


def define(model: Model, x: Digits, rule: Cage, grid: Grid) -> None:
    worth = counting(x, grid)
    for cells, total in rule.cages:
        if not rule.repeats:
            model.add_all_different([x[cell] for cell in cells])
        if total:
            model.add(sum(worth[cell] for cell in cells) == total)
