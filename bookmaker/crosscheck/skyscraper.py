"""A digit is seen if it is the greatest of those up to it; the clue counts them."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.skyscraper import Skyscraper


def define(model: Model, x: Digits, rule: Skyscraper, grid: Grid) -> None:
    for clue in rule.clues:
        line = [x[cell] for cell in line_from(grid, clue.side, clue.line)]
        seen = []
        for at, digit in enumerate(line):
            greatest, here = model.new_int_var(1, grid.size, ""), model.new_bool_var("")
            model.add_max_equality(greatest, line[: at + 1])
            model.add(digit == greatest).only_enforce_if(here)
            model.add(digit != greatest).only_enforce_if(~here)
            seen.append(here)
        model.add(sum(seen) == clue.value)
