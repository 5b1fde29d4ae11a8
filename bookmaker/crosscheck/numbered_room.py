"""The first digit from that side says at which place of the line the clue's digit stands."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.numbered_room import NumberedRoom


def define(model: Model, x: Digits, rule: NumberedRoom, grid: Grid) -> None:
    worth = counting(x, grid)
    for clue in rule.clues:
        cells = line_from(grid, clue.side, clue.line)
        model.add(worth[cells[0]] >= 1)
        model.add_element(worth[cells[0]] - 1, [x[cell] for cell in cells], clue.value)
