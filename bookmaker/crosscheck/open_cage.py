"""No digit repeats in a cage; half the total, or half of one less, is a whole number; one letter is one total."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.open_cage import OpenCage


def define(model: Model, x: Digits, rule: OpenCage, grid: Grid) -> None:
    most, worth = grid.size * grid.size, counting(x, grid)
    totals: dict[str, object] = {}
    for cells, value in rule.cages:
        inside = [worth[cell] for cell in cells]
        model.add_all_different(x[cell] for cell in cells)
        if value in ("even", "odd"):
            half = model.new_int_var(0, most, "")
            model.add(sum(inside) == 2 * half + (1 if value == "odd" else 0))
        elif value:
            if value not in totals:
                totals[value] = model.new_int_var(0, most, value)
            model.add(sum(inside) == totals[value])
