"""Cases for sum marks."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid

SENTENCES = (
    ("sum-marks: {all-marked: yes}", "Cells that share a side never add up to 5 or to 10."),
    ("sum-marks: {V: r1c1-r1c2}", "The V joins digits that add up to 5."),
    ("sum-marks: {X: r1c1-r1c2 r5c5-r6c5}", "An X joins digits that add up to 10."),
    (
        "sum-marks: {V: r1c1-r1c2 r5c1-r6c1, X: r5c5-r6c5}",
        "A V joins digits that add up to 5 and the X joins digits that add up to 10.",
    ),
    (
        "sum-marks: {X: r5c5-r6c5, all-marked: yes}",
        "The X joins digits that add up to 10; neighbours without a mark add up to neither 5 nor 10.",
    ),
)

MISUSES = (
    ("sum-marks:\n  V: r1c1-r2c2", "not-neighbours", "r1c1"),
    ("sum-marks:\n  V: r1c1-r1c2 r5c5-r5c6\n  X: r5c6-r5c5", "marks-clash", "r5c6-r5c5"),
    ("sum-marks:\n  X: [r1c1-r1c2, r1c2-r1c3]", "marks-clash", "r1c2-r1c3"),
    ("sum-marks:\n  X: [r5c5-r5c6, r5c5-r5c6]", "mark-twice", "r5c5-r5c6]"),
    ("sum-marks:\n  v: r1c1-r1c2", "unknown-key", "v:"),
    ("sum-marks:\n  V: r1c1-r0c1", "off-grid", "r0c1"),
    ("sum-marks:\n  V: {r1c1: 5}", "not-a-list", "{r1c1"),
    ("sum-marks:\n  all-marked: no", "no-marks", "all-marked"),
)

DEDUCTIONS = (
    ("sum-marks: {X: r1c1-r1c2}", {}, {"r1c1 r1c2": "5"}),
    ("sum-marks: {V: r1c1-r1c2}", {"r1c1": "12789"}, {"r1c1": "789", "r1c2": "1256789"}),
    ("sum-marks: {V: r1c1-r1c2, all-marked: yes}", {"r5c5": "2"}, {"r5c6 r4c5": "38"}),
    ("sum-marks: {V: r1c1-r1c2, all-marked: yes}", {"r5c5": "28"}, {"r6c5": "28"}),
    # A V and an X meet: 4-1-9, 3-2-8, 2-3-7, 1-4-6.
    ("sum-marks: {V: r1c1-r1c2, X: r1c2-r1c3}", {}, {"r1c3": "12345"}),
)

FROM_ZERO = (
    ("sum-marks: {V: r1c1-r1c2}", {}, {"r1c1 r1c2": "678"}),
    ("sum-marks: {X: r1c1-r1c2}", {}, {"r1c1 r1c2": "015"}),
    ("sum-marks: {V: r1c1-r1c2}", {"r1c1": "0"}, {"r1c2": "1234678"}),
)


def options(grid: Grid, rng: Random) -> dict[str, bool]:
    return {"all-marked": rng.random() < 0.5}
