"""Cases for pointing cells."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid

MISUSES = (
    ("pointing: r1c1", "not-a-table", "r1c1"),
    ("pointing:\n  rihgt: r1c1", "unknown-key", "rihgt"),
    ("pointing:\n  digit: 9", "no-marks", "digit"),
    ("pointing:\n  digit: 10\n  right: r1c1", "not-a-digit", "10"),
    ("pointing:\n  right: r1c1 r1c9", "points-outside", "r1c9"),
    ("pointing:\n  up: r1c5", "points-outside", "r1c5"),
    ("pointing:\n  right: r1c1-r1c3 r2c1 r1c2", "mark-twice", "r1c2"),
    ("pointing:\n  right: r2c1-r2c3\n  down: r3c1 r2c2", "marks-clash", "r2c2"),
    ("pointing:\n  right: r2c10", "off-grid", "r2c10"),
)

SENTENCES = (
    (
        "pointing: {right: r1c1}",
        "The digit in a cell with an arrow tells how many cells along the arrow the 9 stands, the next cell being the "
        "first.",
    ),
    (
        "pointing: {right: r1c1, up: r5c5 r6c6, digit: 7}",
        "Each digit in a cell with an arrow tells how many cells along the arrow the 7 stands, the next cell being the "
        "first.",
    ),
)

DEDUCTIONS = (
    # Eight cells ahead, and the 9 is one of them.
    ("pointing: {right: r1c1}", {}, {"r1c1": "9"}),
    ("pointing: {right: r1c6}", {}, {"r1c6": "456789", "r1c1-r1c5": "9"}),
    ("pointing: {down: r4c1, digit: 3}", {"r5c1-r6c1": "1245"}, {"r4c1": "1236789", "r7c1": "3"}),
    ("pointing: {left: r1c9, digit: 2}", {"r1c9": "48"}, {"r1c2-r1c4 r1c6-r1c8": "2"}),
)

FROM_ZERO = (
    ("pointing: {right: r1c1, digit: 0}", {}, {"r1c1": "0"}),
    # The 0 stands two cells on, or three.
    ("pointing: {right: r1c1, digit: 0}", {"r1c1": "023"}, {"r1c1 r1c2 r1c5-r1c9": "0"}),
)


def options(grid: Grid, rng: Random) -> dict[str, int]:
    return {"digit": rng.choice(grid.digits)}
