"""The first digit from that side says at which place of the line the clue's digit stands."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.numbered_room import NumberedRoom


def define(model: Model, x: Digits, rule: NumberedRoom, grid: Grid) -> None:
    for clue in rule.clues:
        line = [x[cell] for cell in line_from(grid, clue.side, clue.line)]
        model.add_element(line[0] - 1, line, clue.value)
