"""Cases for even-step lines."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid

SENTENCES = (
    (
        "even-step-line: r1c1-r1c4",
        "Along the even-step line, all neighbouring digits differ by the same amount; work it out.",
    ),
    (
        "even-step-line: [r1c1-r1c4, r3c1-r3c3]",
        "Along each even-step line, all neighbouring digits differ by the same amount; work it out for each line.",
    ),
    (
        "even-step-line:\n  lines: r1c1-r1c4\n  step: 2",
        "Along the even-step line, neighbouring digits differ by exactly 2.",
    ),
)

MISUSES = (
    ("even-step-line:\n  lines: r1c1-r1c4\n  step: 3", "chain-unfillable", "r1c1"),
    ("even-step-line: [r1c1-r1c9, r2c1-r2c9 r1c9]", "chain-unfillable", "r2c1"),
    ("even-step-line: r1c1 r1c2", "chain-short", "r1c1"),
    ("even-step-line:\n  lines: r1c1-r1c4\n  step: 0", "out-of-range", "0"),
    ("even-step-line:\n  lines: r1c1-r1c4\n  steps: 2", "unknown-key", "steps"),
    ("even-step-line: r1c1 r1c3 r1c4", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    ("even-step-line:\n  lines: r3c3 r3c4 r4c4\n  step: 5", {}, {"r3c3 r3c4 r4c4": "5"}),
    # 1 and 4 are three apart, so is the next: 7, as 1 is taken in this row.
    ("even-step-line: r1c1-r1c3", {"r1c1": "1", "r1c2": "4"}, {"r1c3": "234589"}),
    # Three different digits of one row go on in one direction.
    ("even-step-line: r1c1-r1c3", {"r1c1": "1", "r1c2": "45", "r1c3": "789"}, {"r1c3": "8"}),
)

CELLS = (3, 6)


def options(grid: Grid, rng: Random) -> dict[str, int]:
    return {"step": step} if (step := rng.choice((0, 0, 1, 2))) else {}
