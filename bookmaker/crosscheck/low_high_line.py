"""Cells of a line are below the middle of the digits and above it in turn."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.low_high_line import LowHighLine


def define(model: Model, x: Digits, rule: LowHighLine, grid: Grid) -> None:
    for chain in rule.chains:
        starts_low = model.new_bool_var("")
        for at, cell in enumerate(chain):
            low, high = (starts_low, ~starts_low) if at % 2 == 0 else (~starts_low, starts_low)
            model.add(2 * x[cell] < grid.size + 1).only_enforce_if(low)
            model.add(2 * x[cell] > grid.size + 1).only_enforce_if(high)
