"""Each shaft's digits add up to the number that the circle's digits write, read as printed."""

from __future__ import annotations

from typing import Any

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.arrow import Arrows


def define(model: Model, x: Digits, rule: Arrows, grid: Grid) -> None:
    for arrow in rule.arrows:
        number: Any = 0
        for cell in arrow.circle:
            number = number * 10 + x[cell]
        for shaft in arrow.shafts:
            model.add(sum(x[cell] for cell in shaft) == number)
