"""A cell holds none of the digits that are struck out, or none but those that are not."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.limits import Limits


def define(model: Model, x: Digits, rule: Limits, grid: Grid) -> None:
    for limit in rule.limits:
        for digit in grid.digits:
            written = limit.digits >> (digit - 1) & 1 == 1
            if written == limit.forbidden:
                model.add(x[limit.cell] != digit)
