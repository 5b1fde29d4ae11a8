"""Cases for counting areas."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.counting_area import CountingArea
from tests.rules.laying import random_area

SENTENCES = (
    (
        "counting-area: {cells: r1c3-r1c4 r2c4, count: 7 7}",
        "In the counting area, each digit in the corner stands exactly as often as it is written there.",
    ),
    (
        "counting-area: [{cells: r1c3-r1c4 r2c4, count: 7}, {cells: r5c1-r5c3, count: 1 2}]",
        "In each counting area, each digit in the corner stands exactly as often as it is written there.",
    ),
    (
        "counting-area: {cells: r1c3-r1c4 r2c4, count: 2 different}",
        "The number in the corner of the counting area is how many different digits it holds.",
    ),
    (
        "counting-area: [{cells: r1c3-r1c4 r2c4, count: 2 different}, {cells: r5c1-r5c3, count: 1 2}]",
        "In each counting area, each digit in the corner stands exactly as often as it is written there; a number "
        "with ≠ is how many different digits the area holds.",
    ),
)

MISUSES = (
    ("counting-area: {cells: r1c1-r1c3, count: 7 7}", "area-count", "7 7"),
    ("counting-area: {cells: r1c1-r1c3, count: 2 different}", "area-count", "2 different"),
    ("counting-area: {cells: r1c1 r1c2, count: 1 2 3}", "area-crowd", "1 2 3"),
    ("counting-area: {cells: r1c1 r1c2, count: 3 different}", "area-crowd", "3 different"),
    ("counting-area: {cells: r1c1 r1c2, count: 0}", "not-a-digit", "0"),
    ("counting-area: {cells: r1c1 r1c2, count: two diferent}", "not-digits", "two diferent"),
    ("counting-area: {cells: r1c1 r1c2, count: 12 different}", "out-of-range", "12"),
    ("counting-area: r1c1 r1c2", "no-figure", "r1c1"),
    ("counting-area: {cells: r1c1 r5c5, count: 1}", "cage-split", "r1c1"),
)

DEDUCTIONS = (
    # Two sevens over a corner of two boxes can only be at the ends.
    ("counting-area: {cells: r1c3-r1c4 r2c4, count: 7 7}", {}, {"r1c3 r2c4": "12345689", "r1c4": "7"}),
    ("counting-area: {cells: r1c1-r1c3, count: 7}", {"r1c2": "7"}, {"r1c1 r1c3": "7"}),
    ("counting-area: {cells: r1c1-r1c3, count: 1 2 3}", {}, {"r1c1-r1c3": "456789"}),
    ("counting-area: {cells: r1c1-r1c3, count: 4}", {"r1c1 r1c3": "123"}, {"r1c2": "12356789"}),
    (
        "counting-area: {cells: r1c3-r1c4 r2c3-r2c4, count: 2 different}",
        {"r1c3": "1", "r1c4": "2"},
        {"r2c3 r2c4": "3456789"},
    ),
)

FROM_ZERO = (
    # A zero is counted by its sign; over a corner of two boxes, two of them can only be at the ends.
    ("counting-area: {cells: r1c3-r1c4 r2c4, count: 0 0}", {}, {"r1c3 r2c4": "12345678"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> CountingArea | None:
    free, parts = set(grid.cells), []
    for _ in range(grid.size):
        area = random_area(grid, rng, rng.randint(3, 7), free, lambda cell, area: True)
        free -= area
        if len(area) > 1:
            parts.append(rng.choice(list(CountingArea(()).read_off(tuple(area), grid, solution, rng))))
    return CountingArea(()).with_parts(parts, grid)
