"""Even digits leave nothing when halved, odd ones leave one."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.parity import Parity


def define(model: Model, x: Digits, rule: Parity, grid: Grid) -> None:
    for cell in rule.even:
        model.add_modulo_equality(0 if grid.first else 1, x[cell], 2)
    for cell in rule.odd:
        model.add_modulo_equality(1 if grid.first else 0, x[cell], 2)
