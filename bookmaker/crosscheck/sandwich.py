"""A cell counts if exactly one of the least and the greatest digit was met before it, and it is neither of them."""

from __future__ import annotations

from bookmaker.crosscheck.common import Digits, Model, counting, line_from
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.sandwich import Sandwich


def define(model: Model, x: Digits, rule: Sandwich, grid: Grid) -> None:
    worth = counting(x, grid)
    crusts = (1, grid.size) if grid.first else (0, grid.size - 1)
    for clue in rule.clues:
        line = [worth[cell] for cell in line_from(grid, clue.side, clue.line)]
        is_crust = [[model.new_bool_var("") for _ in line] for _ in range(2)]
        for flags, crust in zip(is_crust, crusts, strict=True):
            for flag, digit in zip(flags, line, strict=True):
                model.add(digit == crust).only_enforce_if(flag)
                model.add(digit != crust).only_enforce_if(~flag)
        counted = []
        for at, digit in enumerate(line):
            between, share = model.new_bool_var(""), model.new_int_var(0, grid.size, "")
            here = sum(flags[at] for flags in is_crust)
            before = sum(sum(flags[:at]) for flags in is_crust)
            one = model.new_bool_var("")
            model.add(before == 1).only_enforce_if(one)
            model.add(before != 1).only_enforce_if(~one)
            model.add(between == 0).only_enforce_if(~one)
            model.add(between + here == 1).only_enforce_if(one)
            model.add(share == digit).only_enforce_if(between)
            model.add(share == 0).only_enforce_if(~between)
            counted.append(share)
        model.add(sum(counted) == clue.value)
