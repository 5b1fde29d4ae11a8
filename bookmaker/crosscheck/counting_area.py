"""Each digit of the corner stands in as many cells as it is written; or so many digits stand there at all."""

from __future__ import annotations

from typing import Any

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.counting_area import CountingArea


def define(model: Model, x: Digits, rule: CountingArea, grid: Grid) -> None:
    for cells, tally in rule.cages:
        held: list[Any] = []
        for digit in range(1, grid.size + 1):
            here = [model.new_bool_var("") for _ in cells]
            for cell, holds in zip(cells, here, strict=True):
                model.add(x[cell] == digit).only_enforce_if(holds)
                model.add(x[cell] != digit).only_enforce_if(~holds)
            if digit in tally.digits:
                model.add(sum(here) == tally.digits.count(digit))
            some = model.new_bool_var("")
            model.add_max_equality(some, here)
            held.append(some)
        if tally.different:
            model.add(sum(held) == tally.different)
