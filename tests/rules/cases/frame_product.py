"""Cases for frame products."""

from __future__ import annotations

MISUSES = (
    ("frame-product: 12", "not-a-table", "12"),
    ("frame-product:\n  side: . 12 . . . . . . .", "unknown-key", "side"),
    ("frame-product:\n  left: 12 12", "clue-count", "12 12"),
    ("frame-product:\n  left: . 12 . x . . . . .", "not-a-number", "x"),
    ("frame-product:\n  left: . 0 . . . . . . .", "out-of-range", "0"),
    # Three digits make 6 at least and 504 at most; 11 divides none of what they make.
    ("frame-product:\n  left: . 12 . 5 . . . . .", "value-cannot-be", "5"),
    ("frame-product:\n  left: . 22 . . . . . . .", "value-cannot-be", "22"),
    ("frame-product:\n  left: . 576 . . . . . . .", "value-cannot-be", "576"),
    ("frame-product:\n  left: . 12 . . . . . . .\n  cells: few", "not-a-number", "few"),
    ("frame-product:\n  cells: 2", "no-clues", "cells"),
    # Both need the 5.
    ("frame-product:\n  left: . 10 . . . . . . .\n  right: . 20 . . . . . . .", "clues-contradict", "20"),
)

SENTENCES = (
    (
        "frame-product:\n  right: . 12 . . . . . . .",
        "The number after a dot outside the grid is the product of the first three digits of its row from that side.",
    ),
    (
        "frame-product:\n  top: . 120 . . . . . . 1680\n  cells: 4",
        "Each number after a dot outside the grid is the product of the first four digits of its column from that "
        "side.",
    ),
)

DEDUCTIONS = (
    # 35 is 1, 5 and 7.
    ("frame-product:\n  left: 35 . . . . . . . .", {}, {"r1c1-r1c3": "234689", "r2c1-r2c3": "157"}),
    # 64 is 2, 4 and 8; 72 is 1-8-9, 2-4-9, 3-4-6.
    ("frame-product:\n  bottom: 64 . . . . . . . .", {}, {"r7c1-r9c1": "135679"}),
    ("frame-product:\n  bottom: 72 . . . . . . . .", {}, {"r7c1-r9c1": "57"}),
    ("frame-product:\n  bottom: 72 . . . . . . . .", {"r9c1": "3"}, {"r8c1 r7c1": "125789"}),
)

FROM_ZERO = (("frame-product:\n  left: 0 . . . . . . . .", {}, {"r1c4-r1c9": "0"}),)
