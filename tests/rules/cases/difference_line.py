"""Cases for difference lines."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid

SENTENCES = (
    ("difference-line: r1c1-r1c4", "Along the difference line, neighbouring digits differ by at least 5."),
    (
        "difference-line:\n  lines: [r1c1-r1c4, r3c1-r3c4]\n  least: 4",
        "Along each difference line, neighbouring digits differ by at least 4.",
    ),
)

MISUSES = (
    ("difference-line:\n  lines: r1c1-r1c4\n  least: 9", "out-of-range", "9"),
    ("difference-line:\n  lines: r1c1-r1c4\n  least: much", "not-a-number", "much"),
    ("difference-line:\n  line: r1c1-r1c4", "unknown-key", "line: r1"),
    ("difference-line: r1c1 r1c3", "chain-jumps", "r1c1"),
    ("difference-line:\n  lines: [r1c1-r1c2, r5c5-r5c7]\n  least: 8", "chain-unfillable", "r5c5"),
    ("difference-line: r1c1-r1c9", "chain-unfillable", "r1c1"),
    ("difference-line: r1c1", "chain-short", "r1c1"),
)

DEDUCTIONS = (
    # 5 differs from no digit by 5; 4 only stands beside 9 and 6 beside 1, so neither between two cells of one row.
    ("difference-line: r1c1-r1c3", {}, {"r1c1-r1c3": "5", "r1c2": "46"}),
    ("difference-line: r1c1-r1c2", {"r1c1": "34"}, {"r1c2": "1234567"}),
    # At 4 it is again 5 that has two partners, 1 and 9.
    (
        "difference-line:\n  lines: r1c1-r1c3\n  least: 4",
        {"r1c1": "5", "r1c3": "2345"},
        {"r1c2": "2345678"},
    ),
)


def options(grid: Grid, rng: Random) -> dict[str, int]:
    return {"least": 5 if grid.size == 9 and rng.random() < 0.7 else grid.size // 2}
