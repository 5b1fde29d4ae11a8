"""Cases for thermometers."""

from __future__ import annotations

from random import Random
from typing import Any

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.thermometer import Thermometer
from tests.rules.laying import random_chain, random_chains

MISUSES = (
    ("thermometer: r1c1 r3c3", "chain-jumps", "r1c1"),
    ("thermometer:\n  - r1c1-r1c4\n  - r5c5", "chain-short", "r5c5"),
    ("thermometer: r2c2 r2c3 r2c2", "chain-returns", "r2c2"),
    ("thermometer: r1c1-r1c9 r2c9", "chain-long", "r1c1-r1c9"),
    ("thermometer: r1c1-r1c10", "off-grid", "r1c10"),
    ("thermometer:\n  bulb: r1c1", "not-a-list", "bulb"),
    ("thermometer: []", "no-chains", "[]"),
    ("thermometer: [r1c1-r1c4, r1c4-r1c1]", "chain-twice", "r1c4-r1c1"),
    # Five cells and then six more from the tip of the first: ten in all rise.
    ("thermometer: [r1c1-r1c5, r1c5-r6c5]", "thermometers-clash", "r1c5-r6c5"),
    ("thermometer: [r1c1-r1c3, r1c3 r2c2 r1c1]", "thermometers-clash", "r1c3 r2c2"),
)

SENTENCES = (
    ("thermometer: r1c1-r1c4", "Along the thermometer, digits rise from the bulb to the tip."),
    ("thermometer: [r1c1-r1c4, r3c1-r3c5]", "Along each thermometer, digits rise from the bulb to the tip."),
)

DEDUCTIONS = (
    # Cell i of n holds at least i and at most 9 − n + i (common practice, no source).
    ("thermometer: r1c1-r1c6", {}, {"r1c1": "56789", "r1c3": "12789", "r1c6": "12345"}),
    ("thermometer: r1c1-r1c3", {"r1c2": "45"}, {"r1c1": "56789", "r1c3": "1234"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> Thermometer | None:
    def rises(chain: Any) -> bool:
        return len(chain) < 2 or solution[chain[-1]] > solution[chain[-2]]

    chains = random_chains(grid, rng, grid.size // 2, range(3, grid.size + 1), rises)
    if chains and rng.random() < 0.5:
        bulb = chains[0][0]
        branch = random_chain(grid, rng, 3, lambda chain: chain[0] == bulb and rises(chain))
        chains += (branch,) if branch and branch != chains[0] else ()
    return Thermometer(chains) if chains else None
