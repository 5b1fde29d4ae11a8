"""Either the first end is the least and the last the greatest of the line, strictly, or the other way round."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.bounded_line import BoundedLine


def define(model: Model, x: Digits, rule: BoundedLine, grid: Grid) -> None:
    for chain in rule.chains:
        first, last = x[chain[0]], x[chain[-1]]
        rising = model.new_bool_var("")
        for cell in chain[1:-1]:
            model.add(first < x[cell]).only_enforce_if(rising)
            model.add(x[cell] < last).only_enforce_if(rising)
            model.add(first > x[cell]).only_enforce_if(~rising)
            model.add(x[cell] > last).only_enforce_if(~rising)
        # The direction follows from the ends, so that no solution is counted twice.
        model.add(first < last).only_enforce_if(rising)
        model.add(first > last).only_enforce_if(~rising)
