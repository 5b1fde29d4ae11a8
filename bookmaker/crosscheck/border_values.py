"""A number between two cells is their sum, difference, product or quotient."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, beside_and_below, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.border_values import BorderValues


def define(model: Model, x: Digits, rule: BorderValues, grid: Grid) -> None:
    def having(sort: str, number: int) -> list[tuple[int, int]]:
        pairs = [(a, b) for a in digits for b in digits]
        match sort:
            case "sum":
                return [(a, b) for a, b in pairs if b == number - a]
            case "difference":
                return [(a, b) for a, b in pairs if b in (a - number, a + number)]
            case "product":
                return [(a, b) for a, b in pairs if number == a * b]
            case _:
                return [(a, b) for a, b in pairs if a and b and (a == number * b or b == number * a)]

    digits, worth = range(1, grid.size + 1) if grid.first else range(grid.size), counting(x, grid)
    written = dict(rule.values)
    for pair in beside_and_below(grid):
        both = [worth[cell] for cell in pair]
        if pair in written:
            model.add_allowed_assignments(both, having(*written[pair]))
        elif rule.all_marked:
            for value in set(written.values()):
                model.add_forbidden_assignments(both, having(*value))
