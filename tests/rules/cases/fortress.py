"""Cases for fortress cells."""

from __future__ import annotations

CELLS = (1, 4)

MISUSES = (
    ("fortress: r1c1-r1c10", "off-grid", "r1c10"),
    ("fortress: []", "no-areas", "[]"),
    ("fortress:\n  - r1c1 r1c2\n  - r2c2 r1c2", "cell-twice", "r2c2 r1c2"),
    ("fortress: r1c1 r1c1", "cell-twice", "r1c1"),
    ("fortress: r1c1-r1c9 r2c1-r2c9 r3c1-r3c9 r4c1-r4c9 r5c1-r5c9 r6c1-r6c9 r7c1-r7c9 r8c1-r8c9 r9c1-r9c9",
     "fortress-large", "r1c1"),
)  # fmt: skip

SENTENCES = (
    (
        "fortress: [r1c1, r5c5 r5c6]",
        "Each digit in a shaded cell, inside the battlements, is greater than those in the unshaded cells that share a "
        "side with it.",
    ),
)

DEDUCTIONS = (
    # Between two different digits of its row: at least 3. The four around it are not 9.
    ("fortress: r5c5", {}, {"r5c5": "12", "r4c5 r6c5 r5c4 r5c6": "9"}),
    ("fortress: r5c5 r5c6", {"r4c6": "45"}, {"r5c6": "1234"}),
    # A cell between two shaded ones of its row is two below the highest digit.
    ("fortress: [r5c4, r5c6]", {}, {"r5c5": "89"}),
)
