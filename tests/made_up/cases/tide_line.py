"""Cases for tide lines."""

from __future__ import annotations

from random import Random
from typing import Any

from bookmaker.rules.tide_line import TideLine  # type: ignore[import-not-found, import-untyped, unused-ignore]

from bookmaker.puzzle.grid import Grid
from tests.rules.laying import random_chains

MISUSES = (
    ("tide-line: r1c1 r3c3", "chain-jumps", "r1c1"),
    ("tide-line: r5c5", "chain-short", "r5c5"),
)

SENTENCES = (
    ("tide-line: r1c1-r1c4", "Along the tide line, digits rise and fall by turns from the ring on."),
    ("tide-line: [r1c1-r1c4, r3c1-r3c5]", "Along each tide line, digits rise and fall by turns from the ring on."),
)

DEDUCTIONS = (
    ("tide-line: r1c1-r1c3", {}, {"r1c1": "9", "r1c2": "1", "r1c3": "9"}),
    ("tide-line: r1c1-r1c3", {"r1c1": "45"}, {"r1c2": "1234", "r1c3": "9"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> Any:
    def swings(chain: Any) -> bool:
        if len(chain) < 2 or solution[chain[-1]] == solution[chain[-2]]:
            return len(chain) < 2
        return bool((solution[chain[-2]] < solution[chain[-1]]) == (len(chain) % 2 == 0))

    chains = random_chains(grid, rng, grid.size, range(3, grid.size + 1), swings)
    return TideLine(chains) if chains else None
