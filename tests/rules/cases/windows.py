"""Cases for windows."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.windows import Windows
from tests.rules.grids import Solution
from tests.rules.harness import grown_with

SENTENCES = (("windows: yes", "Each shaded window holds every digit once."),)

MISUSES = (
    ("windows: no", "rule-off", "no"),
    ("windows: r2c2", "not-yes", "r2c2"),
    ("windows: [r2c2]", "not-text", "[r2c2]"),
)

DEDUCTIONS = (
    # The nine cells of rows 2 to 4 beside the two windows hold every digit once (common practice, no source).
    ("windows: yes", {"r2c1": "7"}, {"r2c5 r2c9 r3c1 r3c5 r3c9 r4c1 r4c5 r4c9": "7"}),
    ("windows: yes", {"r1c2-r1c4 r5c2-r5c4 r9c2 r9c3": "12345678"}, {"r9c4": "12345678"}),
    # So do the nine cells where rows and columns 1, 5 and 9 cross (common practice, no source).
    ("windows: yes", {"r5c5": "4"}, {"r1c1 r1c5 r1c9 r5c1 r5c9 r9c1 r9c5 r9c9": "4"}),
)


def grow(grid: Grid, rng: Random) -> Solution | None:
    return grown_with(Windows(), grid, rng) if grid.box and grid.box[0] == grid.box[1] else None
