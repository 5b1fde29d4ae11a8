"""Cases for rising runs."""

from __future__ import annotations

MISUSES = (
    ("rising-run: 3", "not-a-table", "3"),
    ("rising-run:\n  topp: . 3 . . . . . . .", "unknown-key", "topp"),
    ("rising-run:\n  top: 3", "clue-count", "3"),
    ("rising-run:\n  top: . 3 . three . . . . .", "not-a-number", "three"),
    ("rising-run:\n  top: . 3 . 10 . . . . .", "out-of-range", "10"),
    ("rising-run:\n  top: . 3 . 0 . . . . .", "out-of-range", "0"),
    # Five from the left put a rise between the fourth and fifth cell, six from the right a fall.
    ("rising-run:\n  left: . 5 . . . . . . .\n  right: . 6 . . . . . . .", "clues-contradict", "6"),
    # Four from the left end before the fifth, which would be smaller and, from the right, greater.
    ("rising-run:\n  left: . 4 . . . . . . .\n  right: . 5 . . . . . . .", "clues-contradict", "5"),
)

SENTENCES = (
    (
        "rising-run:\n  right: . 3 . . . . . . .",
        "The number after small steps outside the grid tells how many digits of its row rise from that side before "
        "one falls, the first included.",
    ),
    (
        "rising-run:\n  top: . 3 . . . . . . 2",
        "Each number after small steps outside the grid tells how many digits of its column rise from that side "
        "before one falls, the first included.",
    ),
)

DEDUCTIONS = (
    ("rising-run:\n  left: 9 . . . . . . . .", {}, {"r1c1": "23456789", "r1c9": "12345678"}),
    ("rising-run:\n  left: 1 . . . . . . . .", {}, {"r1c1": "1", "r1c2": "9"}),
    # Three rising, and a fourth below the third.
    ("rising-run:\n  top: 3 . . . . . . . .", {}, {"r1c1": "89", "r2c1": "19", "r3c1": "12", "r4c1": "9"}),
    # The third digit of the row is the first of the column, and a greater one follows.
    ("rising-run:\n  left: 3 . . . . . . . .\n  top: . . 2 . . . . . .", {}, {"r2c3": "123"}),
    ("rising-run:\n  top: 3 . . . . . . . .", {"r4c1": "78"}, {"r3c1": "1234567"}),
)
