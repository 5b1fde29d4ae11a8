"""The nearest digits from that side have the clue as their sum."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.frame_sum import FrameSum


def define(model: Model, x: Digits, rule: FrameSum, grid: Grid) -> None:
    worth = counting(x, grid)
    for clue in rule.clues:
        count = rule.in_row if clue.side in ("left", "right") else rule.in_column
        near = [worth[cell] for cell in line_from(grid, clue.side, clue.line)[:count]]
        model.add(sum(near) == clue.value)
