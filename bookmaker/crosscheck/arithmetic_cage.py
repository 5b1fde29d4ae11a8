"""A cage's number is what its digits make by the sign: added, multiplied, the less taken from the greater, or the
greater divided by the less; without a sign, by one of them at least."""

from __future__ import annotations

from typing import Any

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.arithmetic_cage import ArithmeticCage


def define(model: Model, x: Digits, rule: ArithmeticCage, grid: Grid) -> None:
    for cells, result in rule.cages:
        inside = [x[cell] for cell in cells]
        if rule.differ:
            model.add_all_different(inside)
        ways: list[Any] = []
        for sign in result.sign or "+×−÷":
            if sign in "−÷" and len(inside) != 2:
                continue
            chosen = model.new_bool_var("")
            ways.append(chosen)
            if sign == "+":
                model.add(sum(inside) == result.number).only_enforce_if(chosen)
            elif sign == "×":
                product = model.new_int_var(1, grid.size ** len(inside), "")
                model.add_multiplication_equality(product, inside)
                model.add(product == result.number).only_enforce_if(chosen)
            else:
                for greater, less in (inside, inside[::-1]):
                    this = model.new_bool_var("")
                    ways.append(this)
                    made = less + result.number if sign == "−" else less * result.number
                    model.add(greater == made).only_enforce_if(this)
                ways.remove(chosen)
        model.add_bool_or(ways)
