"""Cases for clones."""

from __future__ import annotations

PICTURE = """\
clone: |
  . A A . . . . . .
  . . A . . . b . .
  . . . . . . b . .
  . . . A A . . . .
  . . . . A . . . .
  . . . . . . . . .
  . . . . . . . . .
  . b . . . . . . .
  . b . . . . . . .
"""

SENTENCES = (
    ("clone:\n  A: [r1c1 r1c2, r5c5 r5c6]", "The two hatched areas hold the same digits in the same places."),
    (
        "clone:\n  A: [r1c1 r1c2, r5c5 r5c6, r9c8 r9c9]",
        "The three hatched areas hold the same digits in the same places.",
    ),
    (PICTURE, "Hatched areas with the same letter hold the same digits in the same places."),
)

MISUSES = (
    ("clone:\n  A: [r1c1 r1c2, r5c5 r6c5]", "clone-shape", "r5c5"),
    ("clone:\n  A: [r1c1 r1c2, r4c4 r5c4]\n  B: [r1c2 r2c2, r7c7 r8c7]", "clone-overlap", "r1c2 r2c2"),
    ("clone:\n  A: [r1c1 r1c2, r1c5 r1c6]", "clone-clash", "r1c5"),
    ("clone:\n  A: [r1c1 r2c1, r2c2 r3c2]", "clone-clash", "r2c2"),
    ("clone:\n  A: [r1c1 r1c2]", "clone-alone", "r1c1"),
    ("clone:\n  first: [r1c1 r1c2, r5c5 r5c6]", "clone-letter", "first"),
    ("clone:\n  A: [r1c1 r1c2, r5c5 r5c10]", "off-grid", "r5c10"),
    ("clone:\n  A: [r1c1 r1c1, r5c5 r5c6]", "cell-twice", "r1c1"),
    ("clone: r1c1 r1c2", "not-clones", "r1c1"),
    ("clone: [r1c1 r1c2, r5c5 r5c6]", "not-clones", "[r1c1"),
    (PICTURE.replace("b . .\n", "b b .\n", 1), "clone-shape", "b b"),
    (PICTURE.replace(". . . A A", ". . . . .").replace(". . . . A", ". . . . ."), "clone-alone", "A A"),
)

DEDUCTIONS = (
    ("clone:\n  A: [r1c1 r1c2, r5c5 r5c6]", {"r1c1": "123", "r5c5": "2345"}, {"r1c1": "1", "r5c5": "45"}),
    (PICTURE, {"r2c3": "5"}, {"r5c5": "12346789"}),
)

CELLS = (2, 6)
