"""Cases for frame sums."""

from __future__ import annotations

MISUSES = (
    ("frame-sum: 12", "not-a-table", "12"),
    ("frame-sum:\n  side: . 12 . . . . . . .", "unknown-key", "side"),
    ("frame-sum:\n  left: 12 12", "clue-count", "12 12"),
    ("frame-sum:\n  left: . 12 . x . . . . .", "not-a-number", "x"),
    ("frame-sum:\n  left: . 0 . . . . . . .", "out-of-range", "0"),
    # Three digits make 6 at least and 24 at most.
    ("frame-sum:\n  left: . 12 . 5 . . . . .", "value-cannot-be", "5"),
    ("frame-sum:\n  left: . 25 . . . . . . .", "value-cannot-be", "25"),
    ("frame-sum:\n  left: . 20 . . . . . . .\n  cells: 1", "out-of-range", "1"),
    ("frame-sum:\n  cells: 2", "no-clues", "cells"),
    # 7 is 1, 2 and 4; 8 is 1, 2, 5 or 1, 3, 4: all have the 1.
    ("frame-sum:\n  left: . 7 . . . . . . .\n  right: . 8 . . . . . . .", "clues-contradict", "8"),
)

SENTENCES = (
    (
        "frame-sum:\n  right: . 12 . . . . . . .",
        "The number after a small + outside the grid is the sum of the first three digits of its row from that side.",
    ),
    (
        "frame-sum:\n  top: . 12 . . . . . . 20",
        "Each number after a small + outside the grid is the sum of the first three digits of its column from that "
        "side.",
    ),
    (
        "frame-sum:\n  top: . 12 . . . . . . 9\n  left: 7 . . . . . . . .\n  cells: 2",
        "Each number after a small + outside the grid is the sum of the first two digits of its row or column from "
        "that side.",
    ),
)

DEDUCTIONS = (
    ("frame-sum:\n  left: 6 . . . . . . . .", {}, {"r1c1-r1c3": "456789", "r2c1-r2c3": "123", "r1c4-r1c9": "123"}),
    ("frame-sum:\n  bottom: 23 . . . . . . . .", {}, {"r7c1-r9c1": "123457"}),
    # 7 needs the 4.
    ("frame-sum:\n  left: 7 . . . . . . . .", {"r1c1-r1c2": "12", "r1c3": "124"}, {"r1c3": "12"}),
    # 10 and 12 leave 23 for the third row of the box: 6, 8 and 9.
    ("frame-sum:\n  left: 10 12 . . . . . . .", {}, {"r3c1-r3c3": "123457"}),
    # 10 and 12 leave 23 for the middle of the row.
    ("frame-sum:\n  left: 10 . . . . . . . .\n  right: 12 . . . . . . . .", {}, {"r1c4-r1c6": "123457"}),
)
