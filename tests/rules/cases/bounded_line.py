"""Cases for bounded lines."""

from __future__ import annotations

SENTENCES = (
    (
        "bounded-line: r1c1-r1c4",
        "Digits along the bounded line lie strictly between the two bracketed digits at its ends.",
    ),
    (
        "bounded-line: [r1c1-r1c4, r3c1-r3c4]",
        "Digits along each bounded line lie strictly between the two bracketed digits at its ends.",
    ),
)

MISUSES = (
    ("bounded-line: r1c1 r1c2", "chain-short", "r1c1"),
    ("bounded-line: r2c1 r1c1-r1c8 r2c9", "chain-long", "r2c1"),
    ("bounded-line: r1c1 r1c3 r1c4", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    # Two cells of a row lie between the ends, so the ends are three apart and the line holds neither 1 nor 9 (common
    # practice, no source).
    ("bounded-line: r1c1-r1c4", {}, {"r1c2 r1c3": "19"}),
    ("bounded-line: r1c1-r1c4", {"r1c1": "5", "r1c4": "34689"}, {"r1c4": "346", "r1c2 r1c3": "123459"}),
    ("bounded-line: r1c1-r1c3", {"r1c2": "789"}, {"r1c2": "9"}),
)
