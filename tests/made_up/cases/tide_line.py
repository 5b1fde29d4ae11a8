"""Cases for tide lines."""

from __future__ import annotations

MISUSES = (
    ("tide-line: r1c1 r3c3", "chain-jumps", "r1c1"),
    ("tide-line: r5c5", "chain-short", "r5c5"),
)

SENTENCES = (
    ("tide-line: r1c1-r1c4", "Along the tide line, digits rise and fall by turns from the ring on."),
    ("tide-line: [r1c1-r1c4, r3c1-r3c5]", "Along each tide line, digits rise and fall by turns from the ring on."),
)

DEDUCTIONS = (
    ("tide-line: r1c1-r1c3", {}, {"r1c1": "9", "r1c2": "1", "r1c3": "9"}),
    ("tide-line: r1c1-r1c3", {"r1c1": "45"}, {"r1c2": "1234", "r1c3": "9"}),
)

CELLS = (3, 6)
