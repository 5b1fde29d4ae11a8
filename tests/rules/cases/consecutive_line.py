"""Cases for consecutive lines."""

from __future__ import annotations

SENTENCES = (
    (
        "consecutive-line: r1c1-r1c4",
        "The digits on the consecutive line form a run with no gaps or repeats, in any order.",
    ),
    (
        "consecutive-line: [r1c1-r1c4, r3c1-r3c4]",
        "The digits on each consecutive line form a run with no gaps or repeats, in any order.",
    ),
)

MISUSES = (
    ("consecutive-line: r1c1-r1c9 r2c9", "chain-long", "r1c1"),
    ("consecutive-line: r1c1", "chain-short", "r1c1"),
    ("consecutive-line: r1c1 r1c3", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    # Any run of five of the nine digits holds 5.
    ("consecutive-line: r1c1-r1c5", {}, {"r1c6-r1c9": "5"}),
    ("consecutive-line: r1c1-r1c3", {"r1c1": "9"}, {"r1c2 r1c3": "123456", "r1c4-r1c9": "8"}),
    ("consecutive-line: r3c3 r4c4 r5c5", {"r3c3": "2", "r5c5": "34"}, {"r4c4": "56789"}),
)

CELLS = (2, 5)
