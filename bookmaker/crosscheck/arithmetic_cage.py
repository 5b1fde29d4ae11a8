"""A cage's number is what its digits make by the sign: added, multiplied, the less taken from the greater, or the
greater divided by the less; without a sign, by one of them at least. All fillings that do are told one by one."""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.arithmetic_cage import ArithmeticCage


def define(model: Model, x: Digits, rule: ArithmeticCage, grid: Grid) -> None:
    for cells, result in rule.cages:
        inside = [x[cell] for cell in cells]
        if rule.differ:
            model.add_all_different(inside)
        low, high = (1, grid.size) if grid.first else (0, grid.size - 1)
        found: set[tuple[int, ...]] = set()
        if len(cells) == 2 and result.sign in ("", "−", "÷"):
            for one in range(low, high + 1):
                for other in range(low, high + 1):
                    if result.sign != "÷" and result.number in (one - other, other - one):
                        found.add((one, other))
                    if (
                        result.sign != "−"
                        and one
                        and other
                        and (one == other * result.number or other == one * result.number)
                    ):
                        found.add((one, other))
        if result.sign in ("", "+"):
            found.update(_adding_up(result.number, len(cells), low, high))
        if result.sign in ("", "×"):
            found.update(_multiplied(result.number, len(cells), max(low, 1), high))
        model.add_allowed_assignments(inside, sorted(tuple(digit + 1 - low for digit in way) for way in found))


def _adding_up(number: int, count: int, low: int, high: int) -> Iterator[tuple[int, ...]]:
    if count == 0:
        yield from [()] * (number == 0)
        return
    for digit in range(low, min(high, number) + 1):
        yield from ((digit, *rest) for rest in _adding_up(number - digit, count - 1, low, high))


def _multiplied(number: int, count: int, low: int, high: int) -> Iterator[tuple[int, ...]]:
    if count == 0:
        yield from [()] * (number == 1)
        return
    for digit in range(low, high + 1):
        if number % digit == 0:
            yield from ((digit, *rest) for rest in _multiplied(number // digit, count - 1, low, high))
