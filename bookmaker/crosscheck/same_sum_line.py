"""Each stretch of so many cells has the sum of the line's first."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.same_sum_line import SameSumLine


def define(model: Model, x: Digits, rule: SameSumLine, grid: Grid) -> None:
    for chain in rule.chains:
        sums = [sum(x[cell] for cell in chain[at : at + rule.stretch]) for at in range(len(chain) - rule.stretch + 1)]
        for other in sums[1:]:
            model.add(other == sums[0])
