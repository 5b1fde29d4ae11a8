"""Cases for peaks and hollows."""

from __future__ import annotations

SENTENCES = (
    (
        "peaks: {greater: r1c1}",
        "The cell with a roof holds a greater digit than all cells that share a side with it.",
    ),
    (
        "peaks: {smaller: r1c1 r5c5}",
        "Each cell with a bowl holds a smaller digit than all cells that share a side with it.",
    ),
    (
        "peaks: {greater: r1c1 r3c3, smaller: r5c5}",
        "Each cell with a roof holds a greater digit than all cells that share a side with it, and the cell with "
        "a bowl a smaller one.",
    ),
)

MISUSES = (
    ("peaks:\n  greater: r5c5 r5c6", "peaks-touch", "r5c6"),
    ("peaks:\n  smaller: r5c5 r8c8 r4c5", "peaks-touch", "r4c5"),
    ("peaks:\n  greater: r5c5\n  smaller: [r7c7, r5c5]", "marks-clash", "r5c5]"),
    ("peaks:\n  greater: [r5c5, r5c5]", "mark-twice", "r5c5]"),
    ("peaks:\n  higher: r5c5", "unknown-key", "higher"),
    ("peaks:\n  greater: r0c5", "off-grid", "r0c5"),
    ("peaks: {}", "no-marks", "{}"),
    ("peaks: r5c5", "not-a-table", "r5c5"),
)

DEDUCTIONS = (
    # Two neighbours in one row hold 1 and 2 at the least.
    ("peaks: {greater: r5c5}", {}, {"r5c5": "12", "r4c5 r6c5 r5c4 r5c6": "9"}),
    ("peaks: {smaller: r5c5}", {"r4c5": "456"}, {"r5c5": "6789", "r5c4": "1"}),
    ("peaks: {greater: r1c1}", {"r1c1": "345"}, {"r1c2 r2c1": "56789"}),
)
