"""Cases for consecutive bars."""

from __future__ import annotations

SENTENCES = (
    (
        "consecutive-bars: r1c1-r1c2",
        "The bar joins consecutive digits; neighbours without a bar between them are not consecutive.",
    ),
    (
        "consecutive-bars: [r1c1-r1c2, r5c5-r6c5]",
        "A bar joins consecutive digits; neighbours without a bar between them are not consecutive.",
    ),
)

MISUSES = (
    ("consecutive-bars: [r1c1-r1c2, r3c3-r4c4]", "not-neighbours", "r3c3"),
    ("consecutive-bars: r1c1-r1c2 r1c2-r1c1", "mark-twice", "r1c2-r1c1"),
    ("consecutive-bars: r1c1-r1c2-r1c3", "one-of-two", "r1c1"),
    ("consecutive-bars: r1c1", "one-of-two", "r1c1"),
    ("consecutive-bars: [r1c1-r1c2, r1c2-r2c2, r2c2-r2c1, r2c1-r1c1]", "marks-clash", "r2c1-r1c1"),
    ("consecutive-bars: []", "no-marks", "[]"),
    ("consecutive-bars: ''", "no-marks", "''"),
    ("consecutive-bars:\n  - [r1c1, r1c2]", "not-a-border", "[r1c1"),
)

DEDUCTIONS = (
    ("consecutive-bars: r1c1-r1c2", {"r1c1": "15"}, {"r1c2": "135789"}),
    ("consecutive-bars: r1c1-r1c2", {"r5c5": "5"}, {"r4c5 r6c5 r5c4 r5c6": "456"}),
    ("consecutive-bars: r1c1-r1c2", {"r5c5": "46"}, {"r5c6": "5"}),
    # Three in a row climb or fall by ones.
    ("consecutive-bars: r1c1-r1c2 r1c2-r1c3", {"r1c1": "12"}, {"r1c2": "1456789", "r1c3": "1256789"}),
)
