"""No digit repeats in an inner box."""

from __future__ import annotations

from math import isqrt

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.windows import Windows


def define(model: Model, x: Digits, rule: Windows, grid: Grid) -> None:
    side = isqrt(grid.size)
    starts = [1 + (side + 1) * i for i in range(side - 1)]
    for top in starts:
        for left in starts:
            model.add_all_different([x[(top + r) * grid.size + left + c] for r in range(side) for c in range(side)])
