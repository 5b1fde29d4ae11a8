"""Cases for equal-part lines."""

from __future__ import annotations

from random import Random
from typing import Any

from bookmaker.audit.equal_part_line import visits
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.equal_part_line import EqualPartLine
from tests.rules.laying import random_chains

SENTENCES = (
    (
        "equal-part-line: r1c2-r1c5",
        "On the equal-part line, the digits of each stretch inside a box add up to the same total.",
    ),
    (
        "equal-part-line: [r1c2-r1c5, r3c2-r3c5]",
        "On each equal-part line, the digits of each stretch inside a box add up to the same total.",
    ),
)

MISUSES = (
    ("equal-part-line: r1c1-r1c3", "one-region", "r1c1"),
    ("equal-part-line: r1c2-r3c2 r3c3 r2c3 r1c3 r1c4", "sums-apart", "r1c2"),
    # Two parts of one cell each would hold one digit twice in a column.
    ("equal-part-line: r6c4-r7c4 r7c3-r8c3 r8c2", "chain-unfillable", "r6c4"),
    ("equal-part-line: r1c1", "chain-short", "r1c1"),
    ("equal-part-line: r1c1 r1c3", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    # Three cells of a box make at least 6; one of them holds at most 9 − 3.
    ("equal-part-line: r1c1-r1c4", {}, {"r1c1-r1c3": "789", "r1c4": "12345"}),
    ("equal-part-line: r1c2-r1c5", {"r1c2": "1", "r1c3": "23"}, {"r1c4 r1c5": "456789"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> EqualPartLine | None:
    def equal(chain: Any) -> bool:
        sums = visits(grid, chain, solution)
        return len(sums) > 1 and len(set(sums)) == 1

    chains = random_chains(grid, rng, grid.size // 2, range(2, 8), whole=equal, tries=600)
    return EqualPartLine(chains) if chains else None
