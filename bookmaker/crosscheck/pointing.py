"""Whatever the digit of a pointing cell, so many cells on in its direction stands the digit pointed at."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.pointing import Pointing


def define(model: Model, x: Digits, rule: Pointing, grid: Grid) -> None:
    n, worth = grid.size, counting(x, grid)
    for cells, step in ((rule.left, -1), (rule.right, 1), (rule.up, -n), (rule.down, n)):
        for cell in cells:
            column, row = cell % n, cell // n
            ahead = {-1: column, 1: n - 1 - column, -n: row, n: n - 1 - row}[step]
            model.add(worth[cell] <= ahead)
            model.add(worth[cell] >= 1)
            for far in range(1, ahead + 1):
                here = model.new_bool_var("")
                model.add(worth[cell] == far).only_enforce_if(here)
                model.add(worth[cell] != far).only_enforce_if(~here)
                model.add(x[cell + far * step] == rule.digit).only_enforce_if(here)
