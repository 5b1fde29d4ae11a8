"""The digits of a line differ, and the greatest is as far above the least as a run of them needs."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.consecutive_line import ConsecutiveLine


def define(model: Model, x: Digits, rule: ConsecutiveLine, grid: Grid) -> None:
    for chain in rule.chains:
        low, high = model.new_int_var(1, grid.size, ""), model.new_int_var(1, grid.size, "")
        model.add_all_different([x[cell] for cell in chain])
        model.add_min_equality(low, [x[cell] for cell in chain])
        model.add_max_equality(high, [x[cell] for cell in chain])
        model.add(high - low == len(chain) - 1)
