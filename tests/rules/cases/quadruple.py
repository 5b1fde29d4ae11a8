"""Cases for corner quadruples."""

from __future__ import annotations

SENTENCES = (
    ("quadruple: {r1c1-r2c2: 5}", "The digit in the ring is among those of the four cells around it."),
    (
        "quadruple: {r1c1-r2c2: 5, r5c5-r6c6: 7}",
        "The digit in each ring is among those of the four cells around it.",
    ),
    (
        "quadruple: {r1c1-r2c2: 5, r5c5-r6c6: 78}",
        "The digits in each ring are among those of the four cells around it.",
    ),
    (
        "quadruple: {r3c3-r4c4: 5 5}",
        "The digits in the ring are among those of the four cells around it, repeats included.",
    ),
)

MISUSES = (
    ("quadruple:\n  r2c3-r2c4: 1 2", "not-a-corner", "r2c3"),
    ("quadruple:\n  r2c3-r4c5: 1 2", "not-a-corner", "r2c3"),
    ("quadruple:\n  r2c3: 1 2", "one-of-two", "r2c3"),
    ("quadruple:\n  r9c9-r10c10: 1 2", "off-grid", "r10c10"),
    ("quadruple:\n  r2c3-r3c4: 1 2\n  r2c4-r3c3: 5", "corner-twice", "r2c4-r3c3"),
    ("quadruple:\n  r2c3-r3c4: 1 2 3 4 5", "quadruple-long", "1 2 3 4 5"),
    ("quadruple:\n  r3c3-r4c4: 5 5 5", "quadruple-repeat", "5 5 5"),
    ("quadruple:\n  r1c1-r2c2: 5 5", "quadruple-repeat", "5 5"),
    ("quadruple:\n  r3c3-r4c4: 5 A", "not-a-digit", "A"),
    ("quadruple:\n  r3c3-r4c4: ''", "no-digits", "''"),
    ("quadruple:\n  r3c3-r4c4: one 2", "not-a-digit", "one"),
    ("quadruple:\n  r3c3-r4c4: [1, 2]", "not-digits", "[1"),
    ("quadruple: r3c3-r4c4", "not-quadruples", "r3c3"),
)

DEDUCTIONS = (
    ("quadruple: {r3c3-r4c4: 1 2 5 9}", {}, {"r3c3 r3c4 r4c3 r4c4": "34678"}),
    ("quadruple: {r3c3-r4c4: 1}", {"r3c3 r3c4 r4c3": "23456789"}, {"r4c4": "23456789"}),
    # Both places for 1 lie in row 3, so it stands nowhere else there.
    ("quadruple: {r3c3-r4c4: 1}", {"r4c3 r4c4": "23456789"}, {"r3c1 r3c2 r3c5-r3c9": "1"}),
    # A digit written twice stands in two cells across the corner.
    ("quadruple: {r3c3-r4c4: 1 1}", {"r3c3": "23456789"}, {"r3c4 r4c3": "23456789", "r4c4": "1"}),
    # Three digits leave room for one stranger.
    ("quadruple: {r3c3-r4c4: 1 2 3}", {"r3c3": "456"}, {"r3c4 r4c3 r4c4": "456789"}),
)
