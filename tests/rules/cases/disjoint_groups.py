"""Cases for disjoint groups."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.disjoint_groups import DisjointGroups
from tests.rules.grids import Solution
from tests.rules.harness import grown_with

SENTENCES = (
    (
        "disjoint-groups: yes",
        "Cells at the same position in their boxes, such as all the top left ones, hold every digit once.",
    ),
)

MISUSES = (
    ("disjoint-groups: no", "rule-off", "no"),
    ("disjoint-groups: 9", "not-yes", "9"),
    ("disjoint-groups: [yes]", "not-text", "[yes]"),
)

DEDUCTIONS = (
    # The top left and top centre cells of the boxes have their 1 in rows 1 and 4; the top right ones have it in row 7.
    (
        "disjoint-groups: yes",
        {"r7c1 r7c4 r7c7 r7c2 r7c5 r7c8": "23456789"},
        {"r1c3 r1c6 r1c9 r4c3 r4c6 r4c9": "1"},
    ),
)


def grow(grid: Grid, rng: Random) -> Solution | None:
    return grown_with(DisjointGroups(), grid, rng)
