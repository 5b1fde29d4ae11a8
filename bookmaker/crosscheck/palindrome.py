"""The line read forwards is the line read backwards."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.palindrome import Palindrome


def define(model: Model, x: Digits, rule: Palindrome, grid: Grid) -> None:
    for chain in rule.chains:
        for forwards, backwards in zip(chain, reversed(chain), strict=True):
            model.add(x[forwards] == x[backwards])
