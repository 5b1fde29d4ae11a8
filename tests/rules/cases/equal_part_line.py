"""Cases for equal-part lines."""

from __future__ import annotations

SENTENCES = (
    (
        "equal-part-line: r1c2-r1c5",
        "On the equal-part line, the digits of each stretch inside a box add up to the same total.",
    ),
    (
        "equal-part-line: [r1c2-r1c5, r3c2-r3c5]",
        "On each equal-part line, the digits of each stretch inside a box add up to the same total.",
    ),
)

MISUSES = (
    ("equal-part-line: r1c1-r1c3", "one-region", "r1c1"),
    ("equal-part-line: r1c2-r3c2 r3c3 r2c3 r1c3 r1c4", "sums-apart", "r1c2"),
    # Two parts of one cell each would hold one digit twice in a column.
    ("equal-part-line: r6c4-r7c4 r7c3-r8c3 r8c2", "chain-unfillable", "r6c4"),
    ("equal-part-line: r1c1", "chain-short", "r1c1"),
    ("equal-part-line: r1c1 r1c3", "chain-jumps", "r1c1"),
)

DEDUCTIONS = (
    # Three cells of a box make at least 6; one of them holds at most 9 − 3.
    ("equal-part-line: r1c1-r1c4", {}, {"r1c1-r1c3": "789", "r1c4": "12345"}),
    ("equal-part-line: r1c2-r1c5", {"r1c2": "1", "r1c3": "23"}, {"r1c4 r1c5": "456789"}),
)

FROM_ZERO = (
    # Three cells of a box make 3 at least; one of them holds 8 − 1 at most.
    ("equal-part-line: r1c3-r1c6", {}, {"r1c3": "012", "r1c4-r1c6": "8"}),
)

CELLS = (2, 7)
