"""Cases for zipper lines."""

from __future__ import annotations

SENTENCES = (
    (
        "zipper-line: r1c1-r1c4",
        "On the zipper line, any two cells at the same distance from its middle have the same sum.",
    ),
    (
        "zipper-line: r1c1-r1c3",
        "On the zipper line, any two cells at the same distance from its middle have the same sum, which is the digit "
        "in the middle.",
    ),
    (
        "zipper-line: [r1c1-r1c3, r3c1-r3c4]",
        "On each zipper line, any two cells at the same distance from its middle have the same sum, which is the "
        "middle cell's digit if there is a middle cell.",
    ),
)

MISUSES = (
    ("zipper-line: r1c1 r1c2", "chain-short", "r1c1"),
    ("zipper-line: r1c1 r1c3 r1c4", "chain-jumps", "r1c1"),
    ("zipper-line: r1c1 r1c2 r2c2 r1c1", "chain-returns", "r1c1"),
)

DEDUCTIONS = (
    # The middle is the sum of two different digits of one row: at least 3; and each of them at most 8.
    ("zipper-line: r1c1-r1c3", {}, {"r1c2": "12", "r1c1 r1c3": "9"}),
    ("zipper-line: r1c1-r1c4", {"r1c1": "1", "r1c4": "23", "r1c2": "2"}, {"r1c3": "3456789"}),
)

CELLS = (3, 6)
