"""Cases for diagonal sums."""

from __future__ import annotations

MISUSES = (
    ("diagonal-sum:\n  r1c3: 23", "not-a-list", "r1c3"),
    ("diagonal-sum: []", "no-clues", "[]"),
    ("diagonal-sum:\n  - 23 r1c3 down-right", "diagonal-form", "23"),
    ("diagonal-sum:\n  - many from r1c3 down-right", "not-a-number", "many"),
    ("diagonal-sum:\n  - 23 from c3r1 down-right", "not-a-cell", "c3r1"),
    ("diagonal-sum:\n  - 23 from r0c3 down-right", "off-grid", "r0c3"),
    ("diagonal-sum:\n  - 23 from r1c3 down-rihgt", "unknown-word", "down-rihgt"),
    ("diagonal-sum:\n  - 23 from r2c3 down-right", "not-at-that-edge", "r2c3"),
    ("diagonal-sum:\n  - 23 from r1c1 up-right", "diagonal-short", "up-right"),
    ("diagonal-sum:\n  - 23 from r9c9 down-left", "diagonal-short", "down-left"),
    ("diagonal-sum:\n  - 2 from r1c8 down-right", "sum-cannot-be", "2"),
    # Three cells of one box: 1 + 2 + 3 at least, 7 + 8 + 9 at most.
    ("diagonal-sum:\n  - 25 from r1c7 down-right", "sum-cannot-be", "25"),
    ("diagonal-sum:\n  - 5 from r1c7 down-right", "sum-cannot-be", "5"),
    ("diagonal-sum:\n  - 20 from r1c7 down-right\n  - 21 from r3c9 up-left", "diagonal-twice", "21"),
)

SENTENCES = (
    (
        "diagonal-sum: 23 from r1c3 down-right",
        "The number with an arrow outside the grid is the sum of the digits on the diagonal along which the arrow "
        "points; they may repeat where the other rules allow it.",
    ),
    (
        "diagonal-sum: [23 from r1c3 down-right, 12 from r1c3 down-left]",
        "Each number with an arrow outside the grid is the sum of the digits on the diagonal along which the "
        "arrow points; they may repeat where the other rules allow it.",
    ),
)

DEDUCTIONS = (
    ("diagonal-sum: 3 from r1c8 down-right", {}, {"r1c8 r2c9": "3456789"}),
    # The other two hold 1 and 2 at least.
    ("diagonal-sum: 7 from r1c7 down-right", {}, {"r1c7 r2c8 r3c9": "56789"}),
    ("diagonal-sum: 17 from r9c2 up-left", {"r9c2": "89"}, {"r8c1": "1234567"}),
)
