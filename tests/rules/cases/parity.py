"""Cases for even and odd cells."""

from __future__ import annotations

SENTENCES = (
    ("parity: {even: r1c1}", "The cell with a square holds an even digit."),
    ("parity: {even: r1c1 r2c2}", "Each cell with a square holds an even digit."),
    ("parity: {odd: r1c1}", "The cell with a circle holds an odd digit."),
    (
        "parity: {even: r1c1, odd: r2c2 r3c3}",
        "The cell with a square holds an even digit, and each cell with a circle an odd one.",
    ),
)

MISUSES = (
    ("parity:\n  even: r1c1\n  odd: [r2c2, r1c1]", "marks-clash", "r1c1]"),
    ("parity:\n  even: [r1c1 r2c2, r1c1]", "mark-twice", "r1c1]"),
    ("parity:\n  even: r1c1-r1c5", "parity-crowd", "r1c1-r1c5"),
    ("parity:\n  odd: r1c1-r1c3 r2c1-r2c3", "parity-crowd", "r2c1-r2c3"),
    ("parity:\n  uneven: r1c1", "unknown-key", "uneven"),
    ("parity:\n  even: {r1c1: yes}", "not-a-list", "{r1c1"),
    ("parity:\n  even: [[r1c1]]", "not-cells", "[r1c1]"),
    ("parity: {}", "no-marks", "{}"),
    ("parity: r1c1", "not-a-table", "r1c1"),
    ("parity:\n  odd: r1c0", "off-grid", "r1c0"),
)

DEDUCTIONS = (
    ("parity: {even: r1c1, odd: r2c2}", {}, {"r1c1": "13579", "r2c2": "2468"}),
    # Four even cells use up the even digits of row 1; five odd ones the odd digits of column 9.
    ("parity: {even: r1c1-r1c4}", {}, {"r1c5-r1c9": "2468"}),
    ("parity: {odd: r1c9-r4c9}", {"r9c9": "3"}, {"r5c9-r8c9": "13579"}),
)
