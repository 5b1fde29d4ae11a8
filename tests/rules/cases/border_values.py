"""Cases for border values."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid

SENTENCES = (
    ("border-values: {sum 7: r1c1-r1c2}", "The number on a border is the sum (+) of the two digits beside it."),
    (
        "border-values: {difference 2: r1c1-r1c2 r3c3-r4c3}",
        "Each number on a border is the difference (−) of the two digits beside it.",
    ),
    (
        "border-values: {quotient 3: r5c1-r5c2, product 12: r3c3-r4c3, sum 9: r1c1-r1c2}",
        "Each number on a border is the sum (+), the product (×) or the quotient (/) of the two digits beside it.",
    ),
    (
        "border-values: {sum 7: r1c1-r1c2, sum 9: r1c3-r1c4, difference 3: r3c3-r4c3, all-marked: yes}",
        "Each number on a border is the sum (+) or the difference (−) of the two digits beside it; neighbours without "
        "a number never add up to 7 or 9 or differ by 3.",
    ),
    (
        "border-values: {product 12: r1c1-r1c2, quotient 2: r3c3-r4c3, all-marked: yes}",
        "Each number on a border is the product (×) or the quotient (/) of the two digits beside it; neighbours "
        "without a number never multiply to 12 or have the quotient 2.",
    ),
)

MISUSES = (
    ("border-values:\n  sum 7: r1c1-r1c3", "not-neighbours", "r1c1"),
    ("border-values:\n  sum 7: r1c1", "one-of-two", "r1c1"),
    ("border-values:\n  sum 7: r1c1-r1c2 r1c2-r1c1", "mark-twice", "r1c2-r1c1"),
    ("border-values:\n  sum 7: r1c1-r1c2\n  product 12: r1c2-r1c1", "marks-clash", "r1c2-r1c1"),
    # 9 + 8 is the largest sum; no two digits multiply to 13; 9 / 1 is the largest quotient.
    ("border-values:\n  sum 18: r1c1-r1c2", "mark-large", "r1c1"),
    ("border-values:\n  product 13: r1c1-r1c2", "mark-large", "r1c1"),
    ("border-values:\n  product 0: r1c1-r1c2", "mark-large", "r1c1"),
    ("border-values:\n  quotient 10: r1c1-r1c2", "mark-large", "r1c1"),
    # 16 is 9 and 7, 17 is 9 and 8: three in a row would be 7, 9, 8 and then 9 once more.
    ("border-values:\n  sum 16: r1c1-r1c2\n  sum 17: r1c2-r1c3 r1c3-r1c4", "marks-clash", "r1c3-r1c4"),
    ("border-values:\n  sums 7: r1c1-r1c2", "unknown-value", "sums"),
    ("border-values:\n  sum 0: r1c1-r1c2", "unknown-value", "sum 0"),
    ("border-values:\n  sum 7: r1c1-r1c2\n  all-marked: maybe", "unknown-word", "maybe"),
    ("border-values:\n  all-marked: yes", "no-marks", "all-marked"),
    ("border-values:\n  sum 7: []", "no-marks", "[]"),
    ("border-values: r1c1-r1c2", "not-a-table", "r1c1"),
)

DEDUCTIONS = (
    ("border-values: {sum 7: r1c1-r1c2}", {}, {"r1c1 r1c2": "789"}),
    # No digit twice in a row: 5 + 5 is no 10.
    ("border-values: {sum 10: r1c1-r1c2}", {}, {"r1c1 r1c2": "5"}),
    ("border-values: {difference 5: r1c1-r1c2}", {}, {"r1c1 r1c2": "5"}),
    ("border-values: {product 12: r1c1-r1c2}", {}, {"r1c1 r1c2": "15789"}),
    ("border-values: {quotient 3: r1c1-r1c2}", {}, {"r1c1 r1c2": "4578"}),
    ("border-values: {quotient 3: r1c1-r1c2}", {"r1c1": "3"}, {"r1c2": "2345678"}),
    ("border-values: {sum 9: r1c1-r1c2, difference 3: r5c5-r5c6, all-marked: yes}", {"r7c7": "6"}, {"r7c8": "39"}),
    # 12 and 24 share 3, 4 or 6; 3-4-6, 4-3-8, 2-6-4 and their like.
    ("border-values: {product 12: r1c1-r1c2, product 24: r1c2-r1c3}", {}, {"r1c1": "156789", "r1c2": "125789"}),
    # The four sums of the row come to 40, which leaves 5.
    (
        "border-values: {sum 10: r1c1-r1c2 r1c3-r1c4 r1c5-r1c6 r1c7-r1c8}",
        {},
        {"r1c9": "12346789"},
    ),
)

FROM_ZERO = (
    ("border-values: {product 0: r1c1-r1c2}", {"r1c1": "12345678"}, {"r1c2": "12345678"}),
    ("border-values: {quotient 3: r1c1-r1c2}", {}, {"r1c1 r1c2": "04578"}),
    ("border-values: {sum 5: r1c1-r1c2}", {"r1c1": "0"}, {"r1c2": "1234678"}),
)


def options(grid: Grid, rng: Random) -> dict[str, bool]:
    return {"all-marked": rng.random() < 0.5}
