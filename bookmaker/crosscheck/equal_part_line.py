"""The line is walked from its start; each stay in a region has the same sum."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from bookmaker.crosscheck.common import Digits, Model, counting
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.equal_part_line import EqualPartLine


def define(model: Model, x: Digits, rule: EqualPartLine, grid: Grid) -> None:
    for chain in rule.chains:
        total = model.new_int_var(0, grid.size * grid.size, "")
        for visit in visits(grid, chain, counting(x, grid)):
            model.add(visit == total)


def visits(grid: Grid, chain: Sequence[int], values: Sequence[Any]) -> list[Any]:
    """The sum of each visit to a region, by walking along the line."""
    sums: list[Any] = []
    before = None
    for cell in chain:
        here = [cell in region for region in grid.regions]
        if here != before:
            sums.append(0)
        before = here
        sums[-1] = sums[-1] + values[cell]
    return sums
