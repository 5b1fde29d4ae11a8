"""The nearest digits from that side have the clue as their product."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.frame_product import FrameProduct


def define(model: Model, x: Digits, rule: FrameProduct, grid: Grid) -> None:
    worth = counting(x, grid)
    for clue in rule.clues:
        count = rule.in_row if clue.side in ("left", "right") else rule.in_column
        near = [worth[cell] for cell in line_from(grid, clue.side, clue.line)[:count]]
        so_far = near[0]
        for digit in near[1:]:
            product = model.new_int_var(0, grid.size**count, "")
            model.add_multiplication_equality(product, so_far, digit)
            so_far = product
        model.add(so_far == clue.value)
