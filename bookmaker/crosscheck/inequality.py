"""The greater digit exceeds the lesser by at least one."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.inequality import Inequality


def define(model: Model, x: Digits, rule: Inequality, grid: Grid) -> None:
    for greater, lesser in rule.pairs:
        model.add(x[greater] - x[lesser] >= 1)
