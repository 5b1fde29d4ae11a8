"""Cases for the non-consecutive rule."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.non_consecutive import NonConsecutive
from tests.rules.grids import Solution
from tests.rules.growing import image

SENTENCES = (
    ("non-consecutive: yes", "Cells that share a side never hold consecutive digits."),
    ("non-consecutive: {diagonal: yes}", "Cells that touch, by a side or a corner, never hold consecutive digits."),
)

MISUSES = (
    ("non-consecutive: false", "rule-off", "false"),
    ("non-consecutive: r1c1-r1c2", "not-yes", "r1c1"),
    ("non-consecutive: [yes]", "not-text", "[yes]"),
    ("non-consecutive: {diagonal: maybe}", "unknown-word", "maybe"),
    ("non-consecutive: {diagonals: yes}", "unknown-key", "diagonals"),
)

DEDUCTIONS = (
    ("non-consecutive: yes", {"r5c5": "5"}, {"r4c5 r6c5 r5c4 r5c6": "46"}),
    ("non-consecutive: yes", {"r5c5": "46"}, {"r4c5": "5"}),
    ("non-consecutive: yes", {"r5c5": "456"}, {"r4c5": "5"}),
    # In row 5, 4 stands at r5c4 or r5c6, beside r5c5 both.
    ("non-consecutive: yes", {"r5c1-r5c3 r5c5 r5c7-r5c9": "12356789"}, {"r5c5": "35"}),
    ("non-consecutive: {diagonal: yes}", {"r5c5": "5"}, {"r4c4-r4c6 r6c4-r6c6": "46"}),
    # In row 5, 4 stands at r5c4 or r5c5, which both touch four more cells.
    ("non-consecutive: {diagonal: yes}", {"r5c1-r5c3 r5c6-r5c9": "12356789"}, {"r4c4 r4c5 r6c4 r6c5": "35"}),
)


def grow(grid: Grid, rng: Random) -> Solution | None:
    """Without the option: the middle cell of a box of 2×3 or 3×3 touches all its others, which leaves no grid."""
    return image(NonConsecutive(), grid, rng, True)
