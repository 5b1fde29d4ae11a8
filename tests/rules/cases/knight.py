"""Cases for the knight's move."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.knight import Knight
from tests.rules.grids import Solution
from tests.rules.harness import grown_with

SENTENCES = (
    (
        "knight: yes",
        "Cells a knight’s move apart (two steps along a row or column, then one to the side) hold different digits.",
    ),
)

MISUSES = (
    ("knight: no", "rule-off", "no"),
    ("knight: r1c1", "not-yes", "r1c1"),
    ("knight:\n  on: yes", "not-text", "on"),
)

DEDUCTIONS = (
    ("knight: yes", {"r5c5": "7"}, {"r3c4 r3c6 r4c3 r4c7 r6c3 r6c7 r7c4 r7c6": "7"}),
    # In the centre box 1 stands at r4c4 or r4c6, a knight's move from r2c5 both.
    ("knight: yes", {"r4c5 r5c4-r5c6 r6c4-r6c6": "23456789"}, {"r2c5": "1"}),
)


def grow(grid: Grid, rng: Random) -> Solution | None:
    return grown_with(Knight(), grid, rng)
