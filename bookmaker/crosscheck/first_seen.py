"""One of the first cells from that side, as many as are looked at there, holds the digit."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.first_seen import FirstSeen


def define(model: Model, x: Digits, rule: FirstSeen, grid: Grid) -> None:
    for clue in rule.clues:
        here = []
        first = rule.in_row if clue.side in ("left", "right") else rule.in_column
        for cell in line_from(grid, clue.side, clue.line)[:first]:
            flag = model.new_bool_var("")
            model.add(x[cell] == clue.value).only_enforce_if(flag)
            here.append(flag)
        model.add_bool_or(here)
