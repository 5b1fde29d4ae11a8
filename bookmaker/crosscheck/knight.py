"""Cells two steps apart one way and one step the other hold different digits."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.knight import Knight


def define(model: Model, x: Digits, rule: Knight, grid: Grid) -> None:
    for cell in grid.cells:
        row, column = grid.row(cell), grid.column(cell)
        for r, c in ((row + 1, column + 2), (row + 2, column + 1), (row + 2, column - 1), (row + 1, column - 2)):
            if grid.inside(r, c):
                model.add(x[cell] != x[grid.cell(r, c)])
