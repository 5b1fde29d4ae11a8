"""Cases for the king's move."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.king import King
from tests.rules.grids import Solution
from tests.rules.harness import grown_with

SENTENCES = (("king: yes", "Cells that touch at a corner hold different digits."),)

MISUSES = (
    ("king: no", "rule-off", "no"),
    ("king: 5", "not-yes", "5"),
    ("king: [yes]", "not-text", "[yes]"),
)

DEDUCTIONS = (
    ("king: yes", {"r3c3": "7"}, {"r4c4 r2c4 r4c2 r2c2": "7"}),
    # In row 3, 1 stands at r3c3 or r3c5, both touching r4c4.
    ("king: yes", {"r3c1 r3c2 r3c4 r3c6-r3c9": "23456789"}, {"r4c4 r2c4": "1"}),
)


def grow(grid: Grid, rng: Random) -> Solution | None:
    return grown_with(King(), grid, rng)
