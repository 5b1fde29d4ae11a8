"""From its side a line has as many digits of one parity as the clue says, and no more."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.parity_run import ParityRun


def define(model: Model, x: Digits, rule: ParityRun, grid: Grid) -> None:
    for clue in rule.clues:
        odd = []
        for cell in line_from(grid, clue.side, clue.line)[: clue.value + 1]:
            odd.append(model.new_bool_var(""))
            half = model.new_int_var(0, grid.size, "")
            model.add(x[cell] == 2 * half + odd[-1])
        for one in odd[1 : clue.value]:
            model.add(one == odd[0])
        if clue.value < grid.size:
            model.add(odd[clue.value] != odd[0])
