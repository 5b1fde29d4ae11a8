"""The digits of the cells met on the way from the arrow to the far border add up to the clue."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.diagonal_sum import DiagonalSum

WAYS = {"down-right": (1, 1), "down-left": (1, -1), "up-right": (-1, 1), "up-left": (-1, -1)}


def define(model: Model, x: Digits, rule: DiagonalSum, grid: Grid) -> None:
    worth = counting(x, grid)
    for diagonal in rule.diagonals:
        down, across = WAYS[diagonal.way]
        row, column, terms = grid.row(diagonal.start), grid.column(diagonal.start), []
        while 0 <= row < grid.size and 0 <= column < grid.size:
            terms.append(worth[row * grid.size + column])
            row, column = row + down, column + across
        model.add(sum(terms) == diagonal.total)
