"""No digit repeats among the cells at the same place of each box."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.disjoint_groups import DisjointGroups


def define(model: Model, x: Digits, rule: DisjointGroups, grid: Grid) -> None:
    assert grid.box is not None
    height, width = grid.box
    for row in range(height):
        for column in range(width):
            tops, lefts = range(row, grid.size, height), range(column, grid.size, width)
            model.add_all_different([x[r * grid.size + c] for r in tops for c in lefts])
