"""Cases for parity runs."""

from __future__ import annotations

MISUSES = (
    ("parity-run: 3", "not-a-table", "3"),
    ("parity-run:\n  topp: . 3 . . . . . . .", "unknown-key", "topp"),
    ("parity-run:\n  top: 3", "clue-count", "3"),
    ("parity-run:\n  top: . 3 . three . . . . .", "not-a-number", "three"),
    # Of the digits 1 to 9 five are odd.
    ("parity-run:\n  top: . 3 . 6 . . . . .", "out-of-range", "6"),
    ("parity-run:\n  top: . 3 . 0 . . . . .", "out-of-range", "0"),
)

SENTENCES = (
    (
        "parity-run:\n  right: . 3 . . . . . . .",
        "The number after a small = outside the grid tells how many digits of its row, from that side, are all even or "
        "all odd before the parity changes.",
    ),
    (
        "parity-run:\n  top: . 3 . . . . . . 2\n  left: 2 . . . . . . . .",
        "Each number after a small = outside the grid tells how many digits of its row or column, from that side, are "
        "all even or all odd before the parity changes.",
    ),
)

DEDUCTIONS = (
    # Only odd digits can fill five cells, and they leave the even ones for the rest.
    ("parity-run:\n  left: 5 . . . . . . . .", {}, {"r1c1-r1c5": "2468", "r1c6-r1c9": "13579"}),
    ("parity-run:\n  left: 3 . . . . . . . .", {"r1c2": "24"}, {"r1c1 r1c3": "13579", "r1c4": "2468"}),
    ("parity-run:\n  left: 3 . . . . . . . .", {"r1c4": "24"}, {"r1c1-r1c3": "2468"}),
    # Four and three of one sort would be seven, so one run is odd and the other even.
    (
        "parity-run:\n  left: 4 . . . . . . . .\n  right: 3 . . . . . . . .",
        {"r1c1": "13"},
        {"r1c2-r1c4": "2468", "r1c7-r1c9": "13579"},
    ),
)
