"""One step, given or not, is how far apart all cells one after the other on the line are."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.even_step_line import EvenStepLine


def define(model: Model, x: Digits, rule: EvenStepLine, grid: Grid) -> None:
    for chain in rule.chains:
        step = model.new_int_var(rule.step or 1, rule.step or grid.size, "")
        for i in range(1, len(chain)):
            model.add_abs_equality(step, x[chain[i]] - x[chain[i - 1]])
