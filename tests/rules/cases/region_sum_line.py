"""Cases for region-sum lines."""

from __future__ import annotations

from random import Random
from typing import Any

from bookmaker.audit.region_sum_line import visits
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.region_sum_line import RegionSumLine
from tests.rules.laying import random_chains

SENTENCES = (
    (
        "region-sum-line: r1c2-r1c5",
        "On the region-sum line, the digits of each visit to a box add up to the same sum.",
    ),
    (
        "region-sum-line: [r1c2-r1c5, r3c2-r3c5]",
        "On each region-sum line, the digits of each visit to a box add up to the same sum.",
    ),
)

MISUSES = (
    ("region-sum-line: r1c1-r1c3", "one-region", "r1c1"),
    ("region-sum-line: r1c2-r3c2 r3c3 r2c3 r1c3 r1c4", "sums-apart", "r1c2"),
    # Two parts of one cell each would hold one digit twice in a column.
    ("region-sum-line: r6c4-r7c4 r7c3-r8c3 r8c2", "chain-unfillable", "r6c4"),
    ("region-sum-line: r1c1", "chain-short", "r1c1"),
    ("region-sum-line: r1c1 r1c3", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    # Three cells of a box make at least 6; one of them holds at most 9 − 3.
    ("region-sum-line: r1c1-r1c4", {}, {"r1c1-r1c3": "789", "r1c4": "12345"}),
    ("region-sum-line: r1c2-r1c5", {"r1c2": "1", "r1c3": "23"}, {"r1c4 r1c5": "456789"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> RegionSumLine | None:
    def equal(chain: Any) -> bool:
        sums = visits(grid, chain, solution)
        return len(sums) > 1 and len(set(sums)) == 1

    chains = random_chains(grid, rng, grid.size // 2, range(2, 8), whole=equal, tries=600)
    return RegionSumLine(chains) if chains else None
