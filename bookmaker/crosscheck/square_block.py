"""The rows of a block, its columns, or all its lines and diagonals add up to one unknown number."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.square_block import SquareBlock


def define(model: Model, x: Digits, rule: SquareBlock, grid: Grid) -> None:
    for cells, sort in rule.blocks:
        side, in_order = {4: 2, 9: 3}[len(cells)], sorted(cells)
        at = [[x[cell] for cell in in_order[row * side : (row + 1) * side]] for row in range(side)]
        total = model.new_int_var(2, 3 * grid.size, "")
        if sort in ("rows", "magic"):
            for row in at:
                model.add(sum(row) == total)
        if sort in ("columns", "magic"):
            for column in zip(*at, strict=True):
                model.add(sum(column) == total)
        if sort == "magic":
            model.add(at[0][0] + at[1][1] + at[2][2] == total)
            model.add(at[0][2] + at[1][1] + at[2][0] == total)
