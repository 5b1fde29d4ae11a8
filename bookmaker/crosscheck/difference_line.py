"""Cells one after the other on the line are at least so far apart."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.difference_line import DifferenceLine


def define(model: Model, x: Digits, rule: DifferenceLine, grid: Grid) -> None:
    for chain in rule.chains:
        for i in range(1, len(chain)):
            apart = model.new_int_var(rule.least, grid.size, "")
            model.add_abs_equality(apart, x[chain[i]] - x[chain[i - 1]])
