"""Cases for parity lines."""

from __future__ import annotations

SENTENCES = (
    ("parity-line: r1c1-r1c4", "Along the parity line, odd and even digits alternate."),
    ("parity-line: [r1c1-r1c4, r3c1-r3c4]", "Along each parity line, odd and even digits alternate."),
)

MISUSES = (
    # Five cells at odd places in row 1, and five at even ones in row 2: there are only four even digits.
    ("parity-line: r1c1 r2c2 r1c3 r2c4 r1c5 r2c6 r1c7 r2c8 r1c9 r2c9", "chain-unfillable", "r1c1"),
    ("parity-line: r1c1", "chain-short", "r1c1"),
    ("parity-line: r1c1 r1c3", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    ("parity-line: r1c1-r1c4", {"r1c2": "246"}, {"r1c1 r1c3": "2468", "r1c4": "13579"}),
    # Nine cells of a row: five odd digits at the odd places.
    ("parity-line: r1c1-r1c9", {}, {"r1c1": "2468", "r1c2": "13579", "r1c9": "2468"}),
)

CELLS = (2, 6)
