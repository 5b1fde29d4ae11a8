"""Cases for the ban on doubles."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.no_doubles import NoDoubles
from tests.rules.grids import Solution
from tests.rules.growing import image

SENTENCES = (
    ("no-doubles: yes", "Cells that share a side never hold a digit and its double."),
    ("no-doubles: {diagonal: yes}", "Cells that touch, by a side or a corner, never hold a digit and its double."),
)

MISUSES = (
    ("no-doubles: false", "rule-off", "false"),
    ("no-doubles: 2", "not-yes", "2"),
    ("no-doubles: {diagonal: 2}", "unknown-word", "2}"),
)

DEDUCTIONS = (
    ("no-doubles: yes", {"r5c5": "4"}, {"r4c5 r6c5 r5c4 r5c6": "28"}),
    ("no-doubles: yes", {"r5c5": "28"}, {"r4c5": "4"}),
    # In row 5, 3 stands at r5c4 or r5c6, beside r5c5 both.
    ("no-doubles: yes", {"r5c1-r5c3 r5c5 r5c7-r5c9": "12456789"}, {"r5c5": "6"}),
    ("no-doubles: {diagonal: yes}", {"r5c5": "3"}, {"r4c4-r4c6 r6c4-r6c6": "6"}),
)

FROM_ZERO = (
    ("no-doubles: yes", {"r5c5": "4"}, {"r4c5 r6c5 r5c4 r5c6": "28"}),
    ("no-doubles: {diagonal: yes}", {"r5c5": "0"}, {"r4c4 r4c6 r6c4 r6c6": "0"}),
)


def grow(grid: Grid, rng: Random) -> Solution | None:
    """Without the option: the middle cell of a box of 2×3 or 3×3 touches all its others, which leaves no grid."""
    return image(NoDoubles(), grid, rng, False)
