"""Cases for hinge lines."""

from __future__ import annotations

SENTENCES = (
    (
        "hinge-line: r1c1-r1c4",
        "On the hinge line, any two cells at the same distance from its middle add up to the same total.",
    ),
    (
        "hinge-line: r1c1-r1c3",
        "On the hinge line, any two cells at the same distance from its middle add up to the same total, which is "
        "the digit in the middle.",
    ),
    (
        "hinge-line: [r1c1-r1c3, r3c1-r3c4]",
        "On each hinge line, any two cells at the same distance from its middle add up to the same total, which "
        "is the digit in the middle cell if there is one.",
    ),
)

MISUSES = (
    ("hinge-line: r1c1 r1c2", "chain-short", "r1c1"),
    ("hinge-line: r1c1 r1c3 r1c4", "chain-jumps", "r1c1"),
    ("hinge-line: r1c1 r1c2 r2c2 r1c1", "chain-returns", "r1c1"),
)

DEDUCTIONS = (
    # The middle is the sum of two different digits of one row: at least 3; and each of them at most 8.
    ("hinge-line: r1c1-r1c3", {}, {"r1c2": "12", "r1c1 r1c3": "9"}),
    ("hinge-line: r1c1-r1c4", {"r1c1": "1", "r1c4": "23", "r1c2": "2"}, {"r1c3": "3456789"}),
)

FROM_ZERO = (
    # Two different digits of a row make 1 at least; 0 and 8 make 8.
    ("hinge-line: r1c1-r1c3", {}, {"r1c2": "0"}),
    ("hinge-line: r1c1-r1c3", {"r1c2": "7", "r1c1": "0"}, {"r1c3": "0123456"}),
)

CELLS = (3, 6)
