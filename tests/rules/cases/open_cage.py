"""Cases for open cages."""

from __future__ import annotations

from itertools import combinations
from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.open_cage import OpenCage
from tests.rules.laying import random_area

SENTENCES = (
    ("open-cage: {cells: r1c1 r1c2, total: even}", "Digits in the open cage differ; their total is even."),
    (
        "open-cage: [{cells: r1c1 r1c2, total: even}, {cells: r2c1 r2c2, total: odd}]",
        "Digits in each open cage differ; their total is even at a square and odd at a circle.",
    ),
    (
        "open-cage: [{cells: r1c1 r1c2, total: A}, {cells: r2c1 r2c2, total: A}]",
        "Digits in each open cage differ; cages with the same letter have the same total.",
    ),
    (
        "open-cage: [{cells: r1c1 r1c2, total: A}, {cells: r2c1 r2c2, total: A}, {cells: r4c1 r4c2, total: odd}]",
        "Digits in each open cage differ; their total is odd at a circle; cages with the same letter have the same "
        "total.",
    ),
)

MISUSES = (
    ("open-cage: {cells: r1c1 r1c2, total: 12}", "not-an-open-total", "12"),
    ("open-cage: {cells: r1c1 r1c2, total: a}", "not-an-open-total", "a}"),
    ("open-cage: r1c1 r1c2", "no-figure", "r1c1"),
    ("open-cage: [{cells: r1c1 r1c2, total: A}, {cells: r2c1 r2c2, total: B}]", "letter-alone", "A}"),
    # Two cells make 17 at most, six at least 21.
    ("open-cage: [{cells: r1c1 r1c2, total: A}, {cells: r2c1-r2c6, total: A}]", "totals-apart", "A}]"),
    ("open-cage: {cells: r1c1-r1c9, total: even}", "cage-parity", "even"),
    ("open-cage: {cells: r1c1 r5c5, total: odd}", "cage-split", "r1c1"),
)

DEDUCTIONS = (
    ("open-cage: {cells: r1c1-r1c3, total: even}", {"r1c1": "135", "r1c2": "2468"}, {"r1c3": "2468"}),
    ("open-cage: {cells: r1c1 r1c2, total: odd}", {"r1c1": "1357"}, {"r1c2": "13579"}),
    # Three cells make 6 at least, two of them 3; two make 17 at most.
    (
        "open-cage: [{cells: r1c1 r1c2, total: A}, {cells: r3c1-r3c5, total: A}]",
        {},
        {"r3c1-r3c5": "89", "r1c1 r1c2": "12345"},
    ),
)

FROM_ZERO = (
    # Five cells make 10 at least, and no digit is greater than 8.
    ("open-cage: [{cells: r1c1 r1c2, total: A}, {cells: r3c1-r3c5, total: A}]", {}, {"r1c1 r1c2": "01"}),
    ("open-cage: {cells: r1c1 r1c2, total: odd}", {"r1c1": "1"}, {"r1c2": "1357"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> OpenCage | None:
    free, cages = set(grid.cells), []
    for _ in range(grid.size + grid.size // 2):
        area = random_area(
            grid, rng, rng.randint(2, 4), free, lambda cell, area: solution[cell] not in {solution[a] for a in area}
        )
        free -= area
        if len(area) > 1:
            cages.append(tuple(sorted(area)))
    totals = [sum(grid.worth(solution[cell]) for cell in cage) for cage in cages]
    values = ["odd" if total % 2 else "even" for total in totals]
    letters = iter("ABCDEFGHJK")
    for one, other in combinations(range(len(cages)), 2):
        both = {values[one], values[other]}
        if totals[one] == totals[other] and both <= {"even", "odd"} and rng.random() < 0.4:
            values[one] = values[other] = next(letters)
    return OpenCage(tuple(zip(cages, values, strict=True))) if cages else None
