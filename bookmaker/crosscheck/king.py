"""Cells one step apart down and across hold different digits."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.king import King


def define(model: Model, x: Digits, rule: King, grid: Grid) -> None:
    for one in grid.cells:
        for other in grid.cells:
            down, across = grid.row(other) - grid.row(one), grid.column(other) - grid.column(one)
            if down == 1 and across in (-1, 1):
                model.add(x[one] != x[other])
