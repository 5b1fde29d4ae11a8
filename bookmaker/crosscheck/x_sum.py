"""Whatever the first digit from that side is, so many digits from there add up to the clue."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.x_sum import XSum


def define(model: Model, x: Digits, rule: XSum, grid: Grid) -> None:
    worth = counting(x, grid)
    for clue in rule.clues:
        line = [worth[cell] for cell in line_from(grid, clue.side, clue.line)]
        for first in range(1, grid.size + 1) if grid.first else range(grid.size):
            here = model.new_bool_var("")
            model.add(line[0] == first).only_enforce_if(here)
            model.add(line[0] != first).only_enforce_if(~here)
            model.add(sum(line[:first]) == clue.value).only_enforce_if(here)
