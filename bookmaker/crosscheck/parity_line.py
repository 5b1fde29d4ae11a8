"""Any two cells next to each other on a line have an odd sum."""

from __future__ import annotations

from itertools import pairwise

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.parity_line import ParityLine


def define(model: Model, x: Digits, rule: ParityLine, grid: Grid) -> None:
    for chain in rule.chains:
        for one, other in pairwise(chain):
            half = model.new_int_var(0, grid.size, "")
            model.add(x[one] + x[other] == 2 * half + 1)
