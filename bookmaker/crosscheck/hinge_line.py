"""The first and the last, the second and the second to last, and so on have one sum; a lone middle cell is that sum."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.hinge_line import HingeLine


def define(model: Model, x: Digits, rule: HingeLine, grid: Grid) -> None:
    worth = counting(x, grid)
    for chain in rule.chains:
        total = model.new_int_var(0, 2 * grid.size, "")
        left, right = list(chain), list(chain)[::-1]
        for i in range(len(chain)):
            if left[i] == right[i]:
                model.add(worth[left[i]] == total)
            else:
                model.add(sum((worth[left[i]], worth[right[i]])) == total)
