"""Whatever the first digit from that side is, so many digits from there add up to the clue."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.x_sum import XSum


def define(model: Model, x: Digits, rule: XSum, grid: Grid) -> None:
    for clue in rule.clues:
        line = [x[cell] for cell in line_from(grid, clue.side, clue.line)]
        for first in grid.digits:
            here = model.new_bool_var("")
            model.add(line[0] == first).only_enforce_if(here)
            model.add(line[0] != first).only_enforce_if(~here)
            model.add(sum(line[:first]) == clue.value).only_enforce_if(here)
