"""Each written digit stands in as many of the four cells as it is written there, or in more."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.quadruple import Quadruple


def define(model: Model, x: Digits, rule: Quadruple, grid: Grid) -> None:
    for ring in rule.rings:
        for digit in set(ring.digits):
            holds = []
            for cell in ring.cells:
                here = model.new_bool_var("")
                model.add(x[cell] == digit).only_enforce_if(here)
                model.add(x[cell] != digit).only_enforce_if(~here)
                holds.append(here)
            model.add(sum(holds) >= ring.digits.count(digit))
