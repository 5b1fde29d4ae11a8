"""Cases for resting thermometers."""

from __future__ import annotations

SENTENCES = (
    (
        "resting-thermometer: r1c1-r1c4",
        "Along the resting thermometer, digits never fall from the bulb to the tip; they rise or stay the same.",
    ),
    (
        "resting-thermometer: [r1c1-r1c4, r3c1-r3c5]",
        "Along each resting thermometer, digits never fall from the bulb to the tip; they rise or stay the same.",
    ),
)

MISUSES = (
    ("resting-thermometer: r1c1 r3c3", "chain-jumps", "r1c1"),
    ("resting-thermometer:\n  - r1c1-r1c4\n  - r5c5", "chain-short", "r5c5"),
    # Nine rises in a row and column of ten cells that see each other one by one (worked out here).
    ("resting-thermometer: r1c1-r1c9 r2c9", "chain-long", "r1c1"),
    ("resting-thermometer: []", "no-chains", "[]"),
    ("resting-thermometer: [r1c1-r1c5, r1c5-r6c5]", "thermometers-clash", "r1c5-r6c5"),
)

DEDUCTIONS = (
    # Along one row it rises like any thermometer: cell i of n holds at least i and at most 9 − n + i (common practice,
    # no source).
    ("resting-thermometer: r1c1-r1c6", {}, {"r1c1": "56789", "r1c3": "12789", "r1c6": "12345"}),
    # r3c3 and r4c4 may be equal; r1c1, r2c2 and r3c3 share a box and may not.
    ("resting-thermometer: r1c1-r4c4", {}, {"r1c1": "89", "r3c3": "12", "r4c4": "12"}),
)

CELLS = (3, 8)
