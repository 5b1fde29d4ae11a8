"""Cells at the same place of each copy hold the same digit."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.clone import Clone


def define(model: Model, x: Digits, rule: Clone, grid: Grid) -> None:
    for group in rule.groups:
        for twins in zip(*group, strict=True):
            for one in twins:
                model.add(x[one] == x[twins[0]])
