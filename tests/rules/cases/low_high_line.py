"""Cases for low-high lines."""

from __future__ import annotations

SENTENCES = (
    (
        "low-high-line: r1c1-r1c4",
        "Along the low-high line, low (1 to 4) and high digits (6 to 9) alternate; there is no 5.",
    ),
    (
        "low-high-line: [r1c1-r1c4, r3c1-r3c4]",
        "Along each low-high line, low (1 to 4) and high digits (6 to 9) alternate; there is no 5.",
    ),
)

MISUSES = (
    # Nine cells of a row would have room for no 5.
    ("low-high-line: r1c1-r1c9", "chain-unfillable", "r1c1"),
    ("low-high-line: r1c1", "chain-short", "r1c1"),
    ("low-high-line: r1c1 r1c3", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    ("low-high-line: r1c1-r1c2", {}, {"r1c1 r1c2": "5"}),
    ("low-high-line: r1c1-r1c4", {"r1c2": "23"}, {"r1c1 r1c3": "12345", "r1c4": "56789"}),
)

FROM_ZERO = (
    # 4 is in the middle of 0 to 8.
    ("low-high-line: r1c1-r1c2", {}, {"r1c1 r1c2": "4"}),
    ("low-high-line: r1c1-r1c2", {"r1c1": "03"}, {"r1c2": "01234"}),
)

CELLS = (2, 6)
