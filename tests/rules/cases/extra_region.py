"""Cases for extra regions."""

from __future__ import annotations

PICTURE = """\
extra-region: |
  . . . . . . . . .
  . a a a . . . . .
  . a a a . . . . .
  . a a a . . . . .
  . . . . . . . . .
  . . . . . b b . .
  . . . . . . b . .
  . . . . . . . . .
  . . . . . . . . .
"""

SENTENCES = (
    ("extra-region: r2c2-r2c4 r3c2-r3c4 r4c2-r4c4", "The shaded region holds every digit once."),
    (
        "extra-region: [r2c2-r2c4 r3c2-r3c4 r4c2-r4c4, r6c6-r6c8 r7c6-r7c8 r8c6-r8c8]",
        "Each shaded region holds every digit once.",
    ),
    ("extra-region: r1c1 r1c2 r2c1", "No digit repeats in the shaded region."),
    (
        "extra-region: r1c1 r2c2 r3c1",
        "No digit repeats in the shaded region; all its pieces have the same letter.",
    ),
    (
        "extra-region: [r1c1 r2c2 r3c1, r7c7-r7c9]",
        "No digit repeats within any shaded region; pieces of one region have the same letter.",
    ),
    (PICTURE, "No digit repeats within any shaded region."),
)

MISUSES = (
    ("extra-region: r1c1-r1c9 r2c1", "region-large", "r1c1-r1c9"),
    ("extra-region:\n  - r1c1 r2c2\n  - r5c5", "area-small", "r5c5"),
    ("extra-region:\n  - r1c1 r2c2\n  - r2c2 r1c1", "region-twice", "r2c2 r1c1"),
    ("extra-region: r1c1 r2c2 r1c1", "cell-twice", "r1c1"),
    ("extra-region: r1c1-r1c10", "off-grid", "r1c10"),
    ("extra-region: []", "no-areas", "[]"),
    ("extra-region:\n  a: r1c1 r2c2", "not-a-list", "a:"),
    (PICTURE.replace(" a", " .").replace(" b", " ."), "no-areas", "|"),
    (PICTURE.replace(". a a a . . . . .\n", ". a a a . . . .\n", 1), "picture-size", ". a a a"),
)

DEDUCTIONS = (
    ("extra-region: r1c1 r2c2 r4c4", {"r1c1": "3"}, {"r2c2 r4c4": "3"}),
    ("extra-region: r1c1 r5c2 r4c4 r9c9", {"r1c1 r5c2": "36"}, {"r4c4 r9c9": "36"}),
    ("extra-region: r1c1 r5c2 r4c4 r9c9", {"r1c1": "36", "r5c2": "68", "r4c4": "38"}, {"r9c9": "368"}),
)

CELLS = (3, 9)
