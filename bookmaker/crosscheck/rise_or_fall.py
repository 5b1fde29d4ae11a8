"""The nearest digits rise or fall from a side with bars; where all are marked, from the others they do neither."""

from __future__ import annotations

from itertools import pairwise

from bookmaker.crosscheck.common import Digits, Model, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.rise_or_fall import RiseOrFall


def define(model: Model, x: Digits, rule: RiseOrFall, grid: Grid) -> None:
    for side in ("left", "right", "top", "bottom"):
        for line in range(grid.size):
            count = rule.in_row if side in ("left", "right") else rule.in_column
            near = [x[cell] for cell in line_from(grid, side, line)[:count]]
            said = [clue.value for clue in rule.clues if (clue.side, clue.line) == (side, line)]
            steps = list(pairwise(near))
            if said:
                for before, after in steps:
                    model.add(after > before if said[0] == 1 else after < before)
            elif rule.all_marked:
                ups = []
                for before, after in steps:
                    up = model.new_bool_var("")
                    model.add(after > before).only_enforce_if(up)
                    model.add(after < before).only_enforce_if(~up)
                    ups.append(up)
                model.add_bool_or(ups)
                model.add_bool_or([~up for up in ups])
