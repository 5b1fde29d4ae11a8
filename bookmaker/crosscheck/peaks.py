"""Against each cell that shares a side with it, a peak is greater and a hollow is smaller."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, share_a_side
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.peaks import Peaks


def define(model: Model, x: Digits, rule: Peaks, grid: Grid) -> None:
    for cell in grid.cells:
        for other in grid.cells:
            if share_a_side(grid, cell, other):
                if cell in rule.greater:
                    model.add(x[cell] > x[other])
                if cell in rule.smaller:
                    model.add(x[cell] < x[other])
