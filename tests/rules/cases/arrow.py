"""Cases for arrows."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.arrow import Arrows
from bookmaker.rules.common.arrowreading import Arrow, arrow_on
from tests.rules.laying import neighbours

SENTENCES = (
    ("arrow: r1c1-r1c3", "Digits along the arrow add up to the digit in its circle."),
    ("arrow: [r1c1-r1c3, r5c5-r3c5]", "Digits along each arrow add up to the digit in its circle."),
    (
        "arrow:\n  - {circle: r1c1 r1c2, shafts: r2c1-r4c1}",
        "Digits along the arrow add up to the number in its oval, which is read from left to right.",
    ),
    (
        "arrow:\n  - {circle: r1c1 r2c1, shafts: r3c1-r5c1}\n  - r5c5-r3c5",
        "Digits along each arrow add up to the number in its circle or oval, which is read from the top down.",
    ),
)

MISUSES = (
    ("arrow: r1c1", "chain-short", "r1c1"),
    ("arrow: r1c1 r5c5", "chain-jumps", "r1c1"),
    ("arrow: r1c1-r1c6", "arrow-sum", "r1c1"),
    ("arrow:\n  - {circle: r1c1 r1c2, shafts: r2c1}", "arrow-sum", "r2c1"),
    ("arrow:\n  - {circle: r1c1, shafts: [r1c2 r1c3, r5c5 r5c6]}", "shaft-apart", "r5c5"),
    ("arrow:\n  - {circle: r1c1 r1c2, shafts: r2c1 r1c1}", "shaft-in-circle", "r2c1"),
    ("arrow:\n  - {circle: r1c1, shafts: r1c1}", "chain-short", "r1c1}"),
    ("arrow:\n  - {circle: r1c1 r2c2, shafts: r2c3}", "oval-crooked", "r1c1"),
    ("arrow:\n  - {circle: r1c1-r1c4, shafts: r2c1}", "oval-long", "r1c1"),
    ("arrow:\n  - {circle: r1c1}", "missing-key", "{"),
    ("arrow:\n  - {circle: r1c1, shafts: []}", "no-chains", "[]"),
    ("arrow: [r1c1-r1c3, r1c1-r1c3]", "chain-twice", "r1c1-r1c3]"),
    ("arrow:\n  - {circle: r1c1, shafts: [r1c2 r1c3, r1c2-r1c3]}", "chain-twice", "{"),
    ("arrow: []", "no-chains", "[]"),
)

DEDUCTIONS = (
    # Three cells of one row add up to at least 6; with 1 + 2 beside it, the third holds at most 6.
    ("arrow: r1c1-r1c4", {}, {"r1c1": "12345", "r1c2-r1c4": "789"}),
    ("arrow: r1c1-r1c3", {"r1c1": "89", "r1c2": "12"}, {"r1c3": "12345"}),
    # Two cells of a box make at most 17, so the oval begins with 1.
    ("arrow:\n  - {circle: r1c1 r1c2, shafts: r2c1 r2c2}", {}, {"r1c1": "23456789", "r1c2": "189"}),
    # Two odd digits make an even circle.
    ("arrow: r5c5-r5c7", {"r5c5": "456789", "r5c6": "13", "r5c7": "357"}, {"r5c5": "579"}),
)

FROM_ZERO = (
    # Three cells of one row add up to 3 at least; with 0 and 1 beside it, the third holds 7 at most.
    ("arrow: r1c1-r1c4", {}, {"r1c1": "012", "r1c2-r1c4": "8"}),
    # No number begins with 0, and two cells of a box make 15 at most.
    ("arrow:\n  - {circle: r1c1 r1c2, shafts: r2c1 r2c2}", {}, {"r1c1": "0"}),
    ("arrow:\n  - {circle: r1c1 r1c2, shafts: r2c1 r2c2}", {"r1c1": "12345678"}, {"r1c1": "2345678", "r1c2": "678"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> Arrows | None:
    arrows: list[Arrow] = []
    taken: set[int] = set()
    for _ in range(400):
        if len(arrows) >= grid.size // 2 + 1:
            break
        circle = _circle(grid, rng)
        number = int("".join(str(grid.worth(solution[cell])) for cell in circle))
        if number < 10 ** (len(circle) - 1) > 1:
            continue
        shafts: list[tuple[int, ...]] = []
        for _ in range(rng.choice((1, 1, 2))):
            used = taken.union(circle, *shafts)
            shaft = _shaft(grid, solution, circle, number, used, rng)
            if shaft is not None:
                shafts.append(shaft)
        if shafts and not taken.intersection(circle):
            arrows.append(arrow_on(grid, circle, shafts))
            taken.update(circle, *shafts)
    return Arrows(tuple(arrows)) if arrows else None


def _circle(grid: Grid, rng: Random) -> tuple[int, ...]:
    cell, length = rng.choice(grid.cells), rng.choice((1,) * 12 + (2,) * 4 + (3,))
    length = length if grid.size <= 9 else 1
    down, across = rng.choice(((0, 1), (1, 0)))
    cells = [grid.at(grid.row(cell) + down * i, grid.column(cell) + across * i) for i in range(length)]
    return tuple(each for each in cells if each is not None) if None not in cells else (cell,)


def _shaft(
    grid: Grid, solution: tuple[int, ...], circle: tuple[int, ...], number: int, used: set[int], rng: Random
) -> tuple[int, ...] | None:
    """A random walk from beside the circle that comes to the number exactly, in as few cells as printed ones have."""
    here, shaft, left = rng.choice(circle), list[int](), number
    while (left > 0 or not shaft) and len(shaft) < (0, 5, 6, 20)[len(circle)]:
        ways = [n for n in neighbours(grid, here, rng.random() < 0.3) if n not in used and n not in shaft]
        if not ways:
            return None
        here = rng.choice(ways)
        shaft.append(here)
        left -= grid.worth(solution[here])
    return tuple(shaft) if left == 0 else None
