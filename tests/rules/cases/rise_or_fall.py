"""Cases for rising or falling."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid

MISUSES = (
    ("rise-or-fall: upwards", "not-a-table", "upwards"),
    ("rise-or-fall:\n  side: . rise . . . . . . .", "unknown-key", "side"),
    ("rise-or-fall:\n  left: rise fall", "clue-count", "rise fall"),
    ("rise-or-fall:\n  left: . rises . . . . . . .", "unknown-word", "rises"),
    ("rise-or-fall:\n  left: . fall . . . . . . .\n  cells: 2", "out-of-range", "2"),
    ("rise-or-fall:\n  left: . fall . . . . . . .\n  all-marked: maybe", "unknown-word", "maybe"),
    ("rise-or-fall:\n  all-marked: no", "no-clues", "all-marked"),
    ("rise-or-fall:\n  lft: . fall . . . . . . .\n  all-marked: yes", "unknown-key", "lft"),
    # r1c1 < r1c2 < r2c2 < r2c1 < r1c1.
    (
        "rise-or-fall:\n  left: rise fall . . . . . . .\n  top: fall rise . . . . . . .",
        "clues-contradict",
        "rise . . . . . . .",
    ),
    # Six from each end of a row of nine share four, which can't rise both ways.
    (
        "rise-or-fall:\n  cells: 6\n  left: . . . . . . . fall fall\n  right: . . . . . . . fall .",
        "clues-contradict",
        "fall .",
    ),
)

SENTENCES = (
    (
        "rise-or-fall:\n  left: . rise . . . . . . .",
        "Where three bars outside the grid grow towards it, the first three digits of that row rise from that side.",
    ),
    (
        "rise-or-fall:\n  top: . fall . . . . fall . .",
        "Where three bars outside the grid shrink towards it, the first three digits of that column fall from that "
        "side.",
    ),
    (
        "rise-or-fall:\n  top: . fall . . . . rise . .\n  left: . rise . . . . . . .\n  cells: 4",
        "Where four bars outside the grid grow towards it, the first four digits of that row or column rise from that "
        "side; where they shrink, they fall.",
    ),
    (
        "rise-or-fall:\n  top: . fall . . . . rise . .\n  all-marked: yes",
        "Where three bars outside the grid grow towards it, the first three digits of that column rise from that "
        "side; where they shrink, they fall; from a side without bars, the first three digits of a row or column "
        "neither all rise nor all fall.",
    ),
    (
        "rise-or-fall: {all-marked: yes}",
        "From no side do the first three digits of a row or column all rise or all fall.",
    ),
)

DEDUCTIONS = (
    ("rise-or-fall:\n  left: rise . . . . . . . .", {}, {"r1c1": "89", "r1c2": "19", "r1c3": "12"}),
    ("rise-or-fall:\n  bottom: fall . . . . . . . .", {"r8c1": "45"}, {"r9c1": "1234", "r7c1": "56789"}),
    # Two falls over a corner cell: three cells below it in each direction.
    ("rise-or-fall:\n  left: fall . . . . . . . .\n  top: fall . . . . . . . .", {}, {"r1c1": "123"}),
    # Between 3 and 5 the third would go on.
    ("rise-or-fall: {all-marked: yes}", {"r1c1": "3", "r1c2": "5"}, {"r1c3": "6789"}),
    ("rise-or-fall: {all-marked: yes}", {"r1c2": "8", "r1c3": "9"}, {"r1c1": "1234567"}),
)


def options(grid: Grid, rng: Random) -> dict[str, bool]:
    return {"all-marked": rng.random() < 0.4}
