"""Cases for same-sum lines."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid

SENTENCES = (
    (
        "same-sum-line: r2c2 r3c3 r4c4 r5c3 r6c2",
        "Along the same-sum line, any three cells in succession add up to the same total.",
    ),
    (
        "same-sum-line: {lines: [r2c2-r6c6, r9c1-r6c4 r5c3], stretch: 4}",
        "Along each same-sum line, any four cells in succession add up to the same total.",
    ),
)

MISUSES = (
    ("same-sum-line: r1c1-r1c4", "same-sum-clash", "r1c1"),
    ("same-sum-line: r1c1-r1c3", "chain-short", "r1c1"),
    ("same-sum-line: {lines: r1c1-r1c3 r2c4, stretch: 1}", "out-of-range", "1}"),
    ("same-sum-line: r1c1 r1c3", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    (
        "same-sum-line: r2c2 r3c3 r4c4 r5c3 r6c2",
        {"r2c2": "123", "r6c2": "9"},
        {"r3c3": "1", "r5c3": "456789"},
    ),
)

CELLS = (4, 6)


def options(grid: Grid, rng: Random) -> dict[str, int]:
    return {"stretch": 3 if rng.random() < 0.7 else 2}
