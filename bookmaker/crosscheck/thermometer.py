"""Each digit exceeds the one before it by at least one."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.thermometer import Thermometer


def define(model: Model, x: Digits, rule: Thermometer, grid: Grid) -> None:
    for chain in rule.chains:
        for i in range(1, len(chain)):
            model.add(x[chain[i]] >= x[chain[i - 1]] + 1)
