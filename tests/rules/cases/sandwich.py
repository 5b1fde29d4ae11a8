"""Cases for sandwich sums."""

from __future__ import annotations

MISUSES = (
    ("sandwich: . 12 . . . . . . .", "not-a-table", ". 12"),
    ("sandwich:\n  lfet: . 12 . . . . . . .", "unknown-key", "lfet"),
    ("sandwich:\n  left: . 12 . . . . . .", "clue-count", ". 12"),
    ("sandwich:\n  left:\n    - 12", "not-a-row-of-clues", "- 12"),
    ("sandwich:\n  left: . . . . . . . . .", "no-clues", "left"),
    ("sandwich:\n  top: . 12 . . x . . . .", "not-a-number", "x"),
    ("sandwich:\n  top: . 12 . . -3 . . . .", "not-a-number", "-3"),
    ("sandwich:\n  top: . 12 . . 36 . . . .", "out-of-range", "36"),
    ("sandwich:\n  top: . 12 . . 34 . . . .", "sum-cannot-be", "34"),
    ("sandwich:\n  top: 1 . . . . . . . .", "sum-cannot-be", "1 ."),
    ("sandwich:\n  left: 12 . . . . . . . .\n  right: 13 . . . . . . . .", "clues-contradict", "13"),
)

SENTENCES = (
    (
        "sandwich:\n  left: . 12 . . . . . . .",
        "The number between two bars outside the grid is the sum of the digits between the smallest and the "
        "largest digit of its row.",
    ),
    (
        "sandwich:\n  top: . 12 . . . 0 . . .",
        "Each number between two bars outside the grid is the sum of the digits between the smallest and the "
        "largest digit of its column.",
    ),
    (
        "sandwich:\n  left: . 12 . . . . . . .\n  top: . . . . 35 . . . .",
        "Each number between two bars outside the grid is the sum of the digits between the smallest and the "
        "largest digit of its row or column.",
    ),
)

DEDUCTIONS = (
    # 35 is the sum of 2 to 8: the crusts stand at the ends (common practice, no source).
    ("sandwich:\n  left: 35 . . . . . . . .", {}, {"r1c1 r1c9": "2345678", "r1c2-r1c8": "19"}),
    # 0: the crusts are neighbours, and with 1 at the end 9 is next to it (common practice, no source).
    ("sandwich:\n  left: 0 . . . . . . . .", {"r1c1": "1"}, {"r1c3-r1c9": "9"}),
    # 4 is one digit, for 2 and 3 make too much: the crusts are two apart, with a 4 between them (worked out here).
    ("sandwich:\n  top: 4 . . . . . . . .", {"r1c1": "9"}, {"r2c1": "1", "r4c1-r9c1": "1"}),
    ("sandwich:\n  bottom: 4 . . . . . . . .", {"r9c1": "9", "r7c1": "1"}, {"r8c1": "235678"}),
)

FROM_ZERO = (
    # 28 is the sum of 1 to 7: the crusts stand at the ends.
    ("sandwich:\n  left: 28 . . . . . . . .", {}, {"r1c1 r1c9": "1234567", "r1c2-r1c8": "08"}),
)
