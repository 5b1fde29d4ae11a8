"""Cases for first-seen digits."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.clue import Clue
from bookmaker.rules.first_seen import FirstSeen
from tests.rules.ends import clues_at_ends

MISUSES = (
    ("first-seen: 5", "not-a-table", "5"),
    ("first-seen:\n  side: . 5 . . . . . . .", "unknown-key", "side"),
    ("first-seen:\n  left: 5 5 5", "clue-count", "5 5 5"),
    ("first-seen:\n  left: . 5 . x . . . . .", "not-a-digit", "x"),
    ("first-seen:\n  left: . 50 . . . . . . .", "not-a-digit", "50"),
    ("first-seen:\n  left: . 1234 . . . . . . .", "too-many-digits", "1234"),
    ("first-seen:\n  left: . 12 . . . . . . .\n  cells: 1", "too-many-digits", "12"),
    ("first-seen:\n  left: . 1 . . . . . . .\n  cells: 9", "out-of-range", "9"),
    ("first-seen:\n  left: . 1 . . . . . . .\n  cells: few", "not-a-number", "few"),
    ("first-seen:\n  cells: 2", "no-clues", "cells"),
    ("first-seen:\n  left: . 121 . . . . . . .", "digit-twice", "121"),
    ("first-seen:\n  left: . 5 . . . . . . .\n  right: . 25 . . . . . . .", "clues-contradict", "25"),
    # Rows 1 and 3 look into the same box.
    ("first-seen:\n  left: 5 . 56 . . . . . .", "clues-contradict", "56"),
)

SENTENCES = (
    (
        "first-seen:\n  left: . . . 5 . . . . .\n  cells: 4",
        "The digit beside four small squares outside the grid appears in the first four cells of its row from that "
        "side.",
    ),
    (
        "first-seen:\n  left: . . . 5 . . . . .\n  cells: 1",
        "The digit beside one small square outside the grid appears in the first cell of its row from that side.",
    ),
    (
        "first-seen:\n  left: . . . 5 . . . . .",
        "The digit beside three small squares outside the grid appears in the first three cells of its row from "
        "that side.",
    ),
    (
        "first-seen:\n  left: . . . 57 . . . . .",
        "Each digit beside three small squares outside the grid appears in the first three cells of its row from "
        "that side.",
    ),
    (
        "first-seen:\n  left: . . . 5 . . . . .\n  top: 7 . . . . . . . .",
        "Each digit beside three small squares outside the grid appears in the first three cells of its row or "
        "column from that side.",
    ),
)

DEDUCTIONS = (
    ("first-seen:\n  left: 5 . . . . . . . .\n  cells: 2", {}, {"r1c3-r1c9": "5"}),
    ("first-seen:\n  bottom: 14 . . . . . . . .\n  cells: 2", {}, {"r1c1-r7c1": "14", "r8c1-r9c1": "2356789"}),
    ("first-seen:\n  left: 5 . . . . . . . .", {}, {"r1c4-r1c9": "5"}),
    ("first-seen:\n  bottom: 149 . . . . . . . .", {}, {"r1c1-r6c1": "149", "r7c1-r9c1": "235678"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> FirstSeen | None:
    in_column, in_row = grid.box or (3, 3)
    clues = [
        Clue(side, line, solution[cell])
        for side, line, cells in clues_at_ends(grid, rng, 0.4)
        for seen in (in_row if side in ("left", "right") else in_column,)
        for cell in rng.sample(cells[:seen], rng.randint(1, seen))
    ]
    return FirstSeen(tuple(clues), in_row, in_column) if clues else None
