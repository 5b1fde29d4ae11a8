"""Cases for cages."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.cage import Cage
from tests.rules.laying import random_area

PICTURE = """\
cage:
  picture: |
    a a . . . . . . .
    . b b . . . . . .
    . b . . . . . . .
    . . . . . . . . .
    . . . . . . . . .
    . . . . . . . . .
    . . . . . . . . .
    . . . . . . . . .
    . . . . . . . . .
"""

SENTENCES = (
    (
        "cage:\n  - {cells: r1c1 r1c2, total: 5}",
        "Inside the cage, digits differ and add up to the total in its corner.",
    ),
    (PICTURE + "  totals: {a: 3, b: 20}", "Inside each cage, digits differ and add up to the total in its corner."),
    (
        PICTURE + "  totals:\n    b: 20",
        "Inside each cage, digits differ and add up to the total in its corner, if there is one.",
    ),
    (PICTURE, "Inside each cage, digits differ."),
    ("cage: r1c1-r1c3", "Inside the cage, digits differ."),
    (
        "cage: {cages: [{cells: r1c3-r1c4 r2c4, total: 8}], repeats: yes}",
        "Digits in the cage add up to the total in its corner, and may repeat there.",
    ),
    (
        PICTURE + "  totals: {a: 3, b: 20}\n  repeats: yes",
        "Digits in each cage add up to the total in its corner, and may repeat there.",
    ),
)

MISUSES = (
    ("cage:\n  - {cells: r1c1 r1c2, total: 30}", "cage-total", "30"),
    ("cage:\n  - {cells: r1c1-r1c4, total: 9}", "cage-total", "9}"),
    (PICTURE + "  totals: {a: 30}", "cage-total", "30"),
    (PICTURE + "  totals: {c: 30}", "unknown-letter", "c: 30"),
    (PICTURE + "  totals: {a: many}", "not-a-number", "many"),
    (PICTURE + "  totals: a 3", "not-a-table", "a 3"),
    (PICTURE.replace("b . . . . . . .\n    . . .", ". . . . . . . .\n    . b .", 1), "cage-split", "b b"),
    ("cage:\n  - r1c1 r1c2\n  - r1c2 r1c3", "cages-overlap", "r1c2 r1c3"),
    ("cage: r1c1-r1c9 r2c9", "cage-large", "r1c1"),
    ("cage: r1c1 r5c5", "cage-split", "r1c1"),
    ("cage: r1c1 r1c1", "cell-twice", "r1c1"),
    ("cage:\n  - {cell: r1c1, total: 5}", "unknown-key", "cell:"),
    ("cage:\n  totals: {a: 3}", "missing-key", "totals"),
    ("cage: []", "no-areas", "[]"),
    ("cage: {cages: [r1c1 r1c2], repeats: yes}", "cage-asks-nothing", "r1c1 r1c2"),
    ("cage: {cages: [{cells: r1c1-r1c2 r2c2, total: 3}], repeats: yes}", "cage-total", "3}"),
    ("cage: {repeats: yes}", "missing-key", "{repeats"),
)

DEDUCTIONS = (
    # 2 cells that make 3 and 3 that make 24 have one combination each (coefficients of a Gaussian binomial,
    # checked with sympy in tests/rules/test_common.py).
    ("cage:\n  - {cells: r1c1 r1c2, total: 3}", {}, {"r1c1 r1c2": "3456789", "r1c3-r1c9 r2c1": "12"}),
    ("cage:\n  - {cells: r1c1-r1c3, total: 24}", {}, {"r1c1-r1c3": "123456", "r1c4-r1c9 r3c3": "789"}),
    ("cage:\n  - {cells: r1c1 r2c1, total: 10}", {"r1c1": "123"}, {"r2c1": "456"}),
    # A row adds up to 45 (common practice, no source): the two cages take 21 + 20, which leaves 4 in the last cell.
    (
        "cage:\n  - {cells: r1c1-r1c4, total: 21}\n  - {cells: r1c5-r1c8, total: 20}",
        {},
        {"r1c9": "12356789"},
    ),
    # What sticks out of the row: 15 + 32 = 47 is two more than 45.
    (
        "cage:\n  - {cells: r1c1-r1c5, total: 15}\n  - {cells: r1c6-r1c9 r2c9, total: 32}",
        {},
        {"r2c9": "13456789"},
    ),
    # 4 over a corner: 1 and 2 beside each other and the 1 again; 2 + 1 + 1 since r1c2 differs from both.
    (
        "cage: {cages: [{cells: r3c3-r3c4 r4c4, total: 4}], repeats: yes}",
        {},
        {"r3c4": "3456789", "r3c3 r4c4": "23456789"},
    ),
    ("cage: {cages: [{cells: r3c3-r3c4 r4c4, total: 6}], repeats: yes}", {}, {"r3c3 r4c4": "56789"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> Cage | None:
    free = set(grid.cells)
    repeats = rng.random() < 0.3
    cages = []
    for _ in range(grid.size + grid.size // 2):
        area = random_area(
            grid,
            rng,
            rng.randint(2, 5),
            free,
            lambda cell, area: repeats or solution[cell] not in {solution[a] for a in area},
        )
        free -= area
        if len(area) > 1:
            total = sum(grid.worth(solution[cell]) for cell in area) if repeats or rng.random() < 0.85 else 0
            cages.append((tuple(sorted(area)), total))
    return Cage(tuple(cages), repeats)
