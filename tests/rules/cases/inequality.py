"""Cases for inequality signs."""

from __future__ import annotations

SENTENCES = (
    ("inequality: r1c1 > r1c2", "The sign between two cells opens towards the greater digit."),
    ("inequality: r1c1 > r1c2 < r1c3", "Each sign between two cells opens towards the greater digit."),
)

MISUSES = (
    ("inequality:\n  - r1c1 > r1c2\n  - r1c2 > r1c1", "signs-clash", "r1c2 > r1c1"),
    ("inequality: r1c1 > r1c2, r1c2 < r1c1", "mark-twice", "r1c2 < r1c1"),
    ("inequality:\n  - r1c1 > r1c2 > r2c2\n  - r2c2 > r2c1 > r1c1", "signs-circle", "r2c1 > r1c1"),
    ("inequality: r1c1 > r1c2 > r1c3 > r1c4 > r1c5 > r1c6 > r1c7 > r1c8 > r1c9 > r2c9", "signs-climb", "r1c9 >"),
    ("inequality: r1c1 > r2c2", "not-neighbours", "r1c1"),
    ("inequality: r1c1 > r1c2 > r1c5", "not-neighbours", "r1c2"),
    ("inequality: r1c1 = r1c2", "not-a-comparison", "r1c1"),
    ("inequality: r1c1 r1c2", "not-a-comparison", "r1c1"),
    ("inequality: r1c1 >", "not-a-comparison", "r1c1"),
    ("inequality: r1c1 > r1c0", "off-grid", "r1c0"),
    ("inequality: r1c1-r1c2 > r1c3", "one-cell", "r1c1"),
    ("inequality:\n  greater: r1c1", "not-a-list", "greater"),
)

DEDUCTIONS = (
    ("inequality: r1c1 > r1c2", {}, {"r1c1": "1", "r1c2": "9"}),
    ("inequality: r5c5 > r5c6 > r6c6 > r6c5", {}, {"r5c5": "123", "r5c6": "129", "r6c5": "789"}),
    # Two cells below one that see each other hold 1 and 2 at the least.
    ("inequality: r5c4 < r5c5 > r5c6", {}, {"r5c5": "12"}),
    ("inequality: r1c1 > r1c2", {"r1c2": "567"}, {"r1c1": "12345"}),
)
