"""Cases for dots."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid

SENTENCES = (
    ("dots: {all-marked: yes}", "Cells that share a side never hold consecutive digits, or a digit and its double."),
    ("dots: {white: r1c1-r1c2}", "The white dot joins consecutive digits."),
    ("dots: {white: r1c1-r1c2 r2c1-r2c2}", "A white dot joins consecutive digits."),
    ("dots: {black: r1c1-r1c2}", "The black dot joins a digit and its double."),
    (
        "dots: {white: r1c1-r1c2 r3c3-r4c3, black: r7c7-r7c8}",
        "A white dot joins consecutive digits and the black dot joins a digit and its double (1 and 2 may have "
        "either).",
    ),
    (
        "dots: {white: r1c1-r1c2, black: r7c7-r7c8 r8c8-r9c8, all-marked: yes}",
        "The white dot joins consecutive digits and a black dot joins a digit and its double (1 and 2 may have "
        "either); neighbours without a dot are neither.",
    ),
    (
        "dots: {white: r1c1-r1c2 r5c5-r5c6, all-marked: yes}",
        "A white dot joins consecutive digits; neighbours without a dot are neither consecutive nor a digit and its "
        "double.",
    ),
)

MISUSES = (
    ("dots:\n  white: r1c1-r1c2\n  black: r3c3-r4c4", "not-neighbours", "r3c3"),
    ("dots:\n  white: r1c1-r1c3", "not-neighbours", "r1c1"),
    ("dots:\n  white: r1c1-r1c1", "not-neighbours", "r1c1"),
    ("dots:\n  white: r1c1 r1c2", "one-of-two", "r1c2"),
    ("dots:\n  white: r1c9-r1c10", "off-grid", "r1c10"),
    ("dots:\n  white: [r1c1-r1c2, r1c2-r1c1]", "mark-twice", "r1c2-r1c1"),
    ("dots:\n  white: r1c1-r1c2\n  black: r1c2-r1c1", "marks-clash", "r1c2-r1c1"),
    ("dots:\n  black: [r1c1-r1c2, r1c2-r1c3, r1c3-r1c4, r1c4-r1c5]", "marks-clash", "r1c4-r1c5"),
    ("dots:\n  white: [r1c1-r1c2, r1c2-r2c2]\n  black: [r1c1-r2c1, r2c1-r2c2]", "marks-clash", "r2c1-r2c2"),
    ("dots:\n  whit: r1c1-r1c2", "unknown-key", "whit"),
    ("dots:\n  white: r1c1-r1c2\n  all-marked: maybe", "unknown-word", "maybe"),
    ("dots:\n  all-marked: no", "no-marks", "all-marked"),
    ("dots:\n  white: []", "no-marks", "[]"),
    ("dots: r1c1-r1c2", "not-a-table", "r1c1"),
)

DEDUCTIONS = (
    ("dots: {white: r1c1-r1c2}", {"r1c1": "15"}, {"r1c2": "135789"}),
    # 5, 7 and 9 have no double and no half among the digits 1 to 9 (common practice, no source).
    ("dots: {black: r1c1-r1c2}", {}, {"r1c1 r1c2": "579"}),
    ("dots: {white: r1c1-r1c2, all-marked: yes}", {"r5c5": "12"}, {"r5c6": "12"}),
    ("dots: {white: r1c1-r1c2, all-marked: yes}", {"r5c5": "24"}, {"r4c5": "24"}),
    # Three in a row by black dots: only 1-2-4 and 2-4-8, either way (common practice, no source).
    ("dots: {black: r1c1-r1c2 r1c2-r1c3}", {}, {"r1c1 r1c3": "35679", "r1c2": "13579"}),
)

FROM_ZERO = (
    ("dots: {black: r1c1-r1c2}", {}, {"r1c1 r1c2": "057"}),
    ("dots: {white: r1c1-r1c2}", {"r1c1": "0"}, {"r1c2": "2345678"}),
)


def options(grid: Grid, rng: Random) -> dict[str, bool]:
    return {"all-marked": rng.random() < 0.5}
