"""Cases for arithmetic cages."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.arithmetic_cage import ArithmeticCage, Result
from tests.rules.laying import random_area

SENTENCES = (
    (
        "arithmetic-cage: {cells: r1c1 r1c2, result: 12×}",
        "The number in the corner of the arithmetic cage is the product (×) of its digits.",
    ),
    (
        "arithmetic-cage: [{cells: r1c1 r1c2, result: 12x}, {cells: r3c1 r3c2, result: 3-}]",
        "The number in the corner of each arithmetic cage is the product (×) or the difference (−) of its digits.",
    ),
    (
        "arithmetic-cage: {cells: r1c1 r1c2, result: 2}",
        "The number in the corner of the arithmetic cage is the sum, product, difference or quotient of its digits.",
    ),
    (
        "arithmetic-cage: {cells: r1c1-r1c3, result: 6}",
        "The number in the corner of the arithmetic cage is the sum or the product of its digits; digits may repeat "
        "there.",
    ),
    (
        "arithmetic-cage: {cages: [{cells: r1c1-r1c3, result: 24*}, {cells: r5c1 r5c2, result: 6}], differ: yes}",
        "The number in the corner of each arithmetic cage is the product (×) of its digits; without a sign it is the "
        "sum, product, difference or quotient of its digits; digits differ there.",
    ),
)

MISUSES = (
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 11×}", "cage-result", "11×"),
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 9-}", "cage-result", "9-"),
    # Two cells side by side never hold 1 and 1, or 3 and 3.
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 1×}", "cage-result", "1×"),
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 1÷}", "cage-result", "1÷"),
    ("arithmetic-cage: {cells: r1c1-r1c3, result: 3-}", "two-cells", "3-"),
    ("arithmetic-cage: {cells: r1c1-r1c3, result: 2÷}", "two-cells", "2÷"),
    ("arithmetic-cage: {cells: r1c1 r1c2, result: twelve}", "not-a-result", "twelve"),
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 0+}", "not-a-result", "0+"),
    ("arithmetic-cage: r1c1 r1c2", "no-figure", "r1c1"),
    (
        "arithmetic-cage:\n  - {cells: r1c1 r1c2, result: 3+}\n  - {cells: r1c2 r1c3, result: 4+}",
        "cages-overlap",
        "r1c2 r1c3",
    ),
    ("arithmetic-cage: {cells: r1c1 r5c5, result: 3+}", "cage-split", "r1c1"),
    ("arithmetic-cage: {cells: r1c1 r1c2, total: 3}", "unknown-key", "total"),
    ("arithmetic-cage: {cages: [{cells: r1c2-r1c4 r2c4, result: 4×}], differ: yes}", "cage-result", "4×"),
)

DEDUCTIONS = (
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 35×}", {}, {"r1c1 r1c2": "1234689", "r1c3-r1c9 r2c1": "57"}),
    # 42 = 2 · 3 · 7 = 1 · 6 · 7: every choice has the 7.
    ("arithmetic-cage: {cells: r1c1-r1c3, result: 42×}", {}, {"r1c1-r1c3": "4589", "r1c4-r1c9 r2c1": "7"}),
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 8-}", {}, {"r1c1 r1c2": "2345678"}),
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 4÷}", {"r1c1": "2356789"}, {"r1c1": "35679", "r1c2": "35679"}),
    # 3 without a sign: 1 + 2, 1 × 3, n − (n − 3), 3 ÷ 1, 6 ÷ 2, 9 ÷ 3; of a 7 only 7 − 4 is left.
    ("arithmetic-cage: {cells: r1c1 r1c2, result: 3}", {"r1c1": "7"}, {"r1c2": "1235689"}),
    # 4 = 1 · 1 · 4 = 1 · 2 · 2, and 2 · 2 · 1 with the 1 between them; r1c3 differs from both, so it is 1 or 4.
    ("arithmetic-cage: {cells: r1c3-r1c4 r2c4, result: 4×}", {}, {"r1c3 r1c4 r2c4": "356789"}),
    (
        "arithmetic-cage:\n  - {cells: r1c1-r1c4, result: 21+}\n  - {cells: r1c5-r1c8, result: 20+}",
        {},
        {"r1c9": "12356789"},
    ),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> ArithmeticCage | None:
    free, differ = set(grid.cells), rng.random() < 0.3
    cages = []
    for _ in range(grid.size + grid.size // 2):
        area = random_area(
            grid,
            rng,
            rng.choice((2, 2, 3, 4)),
            free,
            lambda cell, area: not differ or solution[cell] not in {solution[a] for a in area},
        )
        free -= area
        made = list(ArithmeticCage((), differ).read_off(tuple(area), grid, solution, rng)) if len(area) > 1 else []
        if made:
            part = rng.choice(made)
            cages.append((part.cells, Result(part.value[0], part.name)))
    return ArithmeticCage(tuple(cages), differ) if cages else None
