"""From its side a line rises for as many digits as the clue says, and no further."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.rising_run import RisingRun


def define(model: Model, x: Digits, rule: RisingRun, grid: Grid) -> None:
    for clue in rule.clues:
        line = [x[cell] for cell in line_from(grid, clue.side, clue.line)]
        for at in range(1, clue.value):
            model.add(line[at] > line[at - 1])
        if clue.value < grid.size:
            model.add(line[clue.value] < line[clue.value - 1])
