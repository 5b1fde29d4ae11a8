"""Each shaft's digits add up to the number that the circle's digits write, read as printed, which is no 0 and more."""

from __future__ import annotations

from typing import Any

from bookmaker.crosscheck.common import Digits, Model, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.arrow import Arrows


def define(model: Model, x: Digits, rule: Arrows, grid: Grid) -> None:
    worth = counting(x, grid)
    for arrow in rule.arrows:
        number: Any = 0
        for cell in arrow.circle:
            number = number * 10 + worth[cell]
        for shaft in arrow.shafts:
            model.add(sum(worth[cell] for cell in shaft) == number)
        if len(arrow.circle) > 1:
            model.add(worth[arrow.circle[0]] != 0)
