"""No digit repeats in a region."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.extra_region import ExtraRegion


def define(model: Model, x: Digits, rule: ExtraRegion, grid: Grid) -> None:
    for cells in rule.regions:
        model.add_all_different([x[cell] for cell in cells])
