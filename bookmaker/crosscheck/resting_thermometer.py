"""No digit is less than the one before it."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.resting_thermometer import RestingThermometer


def define(model: Model, x: Digits, rule: RestingThermometer, grid: Grid) -> None:
    for chain in rule.chains:
        for i in range(1, len(chain)):
            model.add(x[chain[i - 1]] <= x[chain[i]])
