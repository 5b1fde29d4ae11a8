"""Cases for X-sums."""

from __future__ import annotations

MISUSES = (
    ("x-sum: 12", "not-a-table", "12"),
    ("x-sum:\n  topp: . 12 . . . . . . .", "unknown-key", "topp"),
    ("x-sum:\n  top: 12", "clue-count", "12"),
    ("x-sum:\n  top: . 12 . twelve . . . . .", "not-a-number", "twelve"),
    ("x-sum:\n  top: . 12 . 46 . . . . .", "out-of-range", "46"),
    ("x-sum:\n  top: . 12 . 0 . . . . .", "out-of-range", "0"),
    # 2 needs X = 2 with nothing else; 4 needs X = 2 and another 2, and three digits make at least 6.
    ("x-sum:\n  top: . 12 . 2 . . . . .", "sum-cannot-be", "2 . . . . ."),
    ("x-sum:\n  top: . 12 . 4 . . . . .", "sum-cannot-be", "4"),
    # 45 needs all nine digits, so 9 is first; two 9s would stand in column 1.
    ("x-sum:\n  left: . 45 . . . . . . 45\n  top: 3 . . . . . . . .", "clues-contradict", "45\n"),
    ("x-sum:\n  left: . 1 . . . . . . 1\n  top: 3 . . . . . . . .", "clues-contradict", "1\n"),
)

SENTENCES = (
    (
        "x-sum:\n  right: . 12 . . . . . . .",
        "The number after a small × outside the grid is the sum of the first X digits of its row from that side, "
        "where X is the first of them.",
    ),
    (
        "x-sum:\n  top: . 12 . . . . . . 45",
        "Each number after a small × outside the grid is the sum of the first X digits of its column from that "
        "side, where X is the first of them.",
    ),
)

DEDUCTIONS = (
    ("x-sum:\n  left: 1 . . . . . . . .", {}, {"r1c1": "23456789"}),
    # 2 + 8, 3 + two digits that make 7, 4 + 1 + 2 + 3.
    ("x-sum:\n  top: 10 . . . . . . . .", {}, {"r1c1": "156789", "r2c1": "79"}),
    ("x-sum:\n  bottom: 10 . . . . . . . .", {"r9c1": "2"}, {"r8c1": "1345679"}),
    ("x-sum:\n  left: 45 . . . . . . . .", {}, {"r1c1": "12345678"}),
)

FROM_ZERO = (
    # No digits are added, or all but the 0.
    ("x-sum:\n  left: 0 . . . . . . . .", {}, {"r1c1": "12345678"}),
    ("x-sum:\n  left: 36 . . . . . . . .", {}, {"r1c1": "01234567", "r1c9": "12345678"}),
)
