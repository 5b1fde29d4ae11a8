"""No digit repeats on a diagonal."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.diagonals import Diagonals


def define(model: Model, x: Digits, rule: Diagonals, grid: Grid) -> None:
    last = grid.size - 1
    if rule.falling:
        model.add_all_different([x[i * grid.size + i] for i in range(grid.size)])
    if rule.rising:
        model.add_all_different([x[i * grid.size + last - i] for i in range(grid.size)])
