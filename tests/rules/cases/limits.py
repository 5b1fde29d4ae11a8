"""Cases for limits."""

from __future__ import annotations

SENTENCES = (
    ("limits: {r1c1: 1 2 5}", "The cell with small digits in its corner holds one of them."),
    ("limits: {r1c1-r1c3: low}", "A cell with small digits in its corner holds one of them."),
    ("limits: {r1c1: not 5}", "The cell with small digits struck through in its corner holds none of them."),
    ("limits: {r1c1 r2c2: not low}", "A cell with small digits struck through in its corner holds none of them."),
    (
        "limits: {r1c1: not 5, r2c2: high}",
        "A cell with small digits in its corner holds one of them, or none where they are struck through.",
    ),
)

MISUSES = (
    ("limits:\n  r1c1: 1 2\n  r3c3 r1c1: not 5", "limit-twice", "r1c1: not 5"),
    ("limits:\n  r1c1: 1-9", "limit-all", "1-9"),
    ("limits:\n  r1c1: not 123456789", "limit-all", "not"),
    ("limits:\n  r1c1: 1 2 1", "digit-twice", "1 2 1"),
    ("limits:\n  r1c1: 5-2", "backward-range", "5-2"),
    ("limits:\n  r1c1 r9c1: 1 2\n  r5c1: not 3-9", "limits-crowd", "r5c1"),
    ("limits:\n  r1c1: lowish", "unknown-word", "lowish"),
    ("limits:\n  r1c1: 1 0 2", "not-a-digit", "0"),
    ("limits:\n  r1c1: 'not  '", "no-digits", "  '"),
    ("limits:\n  r1c1: [1, 2]", "not-digits", "[1"),
    ("limits:\n  r1c10: 1 2", "off-grid", "r1c10"),
    ("limits: r1c1", "not-limits", "r1c1"),
    ("limits: {}", "not-limits", "{}"),
)

DEDUCTIONS = (
    ("limits: {r1c1: 1 2 5}", {}, {"r1c1": "346789"}),
    ("limits: {r1c1: not 5}", {}, {"r1c1": "5"}),
    ("limits: {r1c1: low, r1c2: not high}", {}, {"r1c1": "56789", "r1c2": "6789"}),
    # Four low cells of a row use up the four low digits.
    ("limits: {r1c1-r1c4: low}", {}, {"r1c5-r1c9": "1234"}),
    ("limits: {r1c1: 3 7, r2c2: 37}", {}, {"r1c2 r3c3": "37"}),
)
