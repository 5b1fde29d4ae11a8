"""Digits at odd places of the line are smaller than their neighbours on it."""

from __future__ import annotations

from typing import Any

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid


def define(model: Model, x: Digits, rule: Any, grid: Grid) -> None:
    for chain in rule.chains:
        for low in range(0, len(chain), 2):
            for high in (low - 1, low + 1):
                if 0 <= high < len(chain):
                    model.add(x[chain[low]] < x[chain[high]])
