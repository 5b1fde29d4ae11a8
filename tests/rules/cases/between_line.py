"""Cases for between lines."""

from __future__ import annotations

SENTENCES = (
    (
        "between-line: r1c1-r1c4",
        "Digits on the line between two circles are greater than the digit in one circle and smaller than that in the "
        "other.",
    ),
    (
        "between-line: [r1c1-r1c4, r3c1-r3c4]",
        "Digits on each line between two circles are greater than the digit in one circle and smaller than that in the "
        "other.",
    ),
)

MISUSES = (
    ("between-line: r1c1 r1c2", "chain-short", "r1c1"),
    ("between-line: r2c1 r1c1-r1c8 r2c9", "chain-long", "r2c1"),
    ("between-line: r1c1 r1c3 r1c4", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    # Two cells of a row lie between the ends, so the ends are three apart and the line holds neither 1 nor 9.
    ("between-line: r1c1-r1c4", {}, {"r1c2 r1c3": "19"}),
    ("between-line: r1c1-r1c4", {"r1c1": "5", "r1c4": "34689"}, {"r1c4": "346", "r1c2 r1c3": "123459"}),
    ("between-line: r1c1-r1c3", {"r1c2": "789"}, {"r1c2": "9"}),
)
