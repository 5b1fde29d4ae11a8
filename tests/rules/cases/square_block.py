"""Cases for square blocks."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.deducing.square_sums import MAGIC
from bookmaker.rules.square_block import SquareBlock
from tests.rules.grids import Solution, random_solution
from tests.rules.growing import image

SENTENCES = (
    (
        "square-block: {magic: r2c2-r4c4}",
        "In the square block, rows, columns and both diagonals have the same sum; digits may repeat.",
    ),
    (
        "square-block: {rows: [r2c2-r3c3, r6c2-r7c3]}",
        "In each square block, all rows have the same sum; digits may repeat.",
    ),
    ("square-block: {columns: r2c2-r3c3}", "In the square block, all columns have the same sum; digits may repeat."),
    (
        "square-block: {magic: r2c2-r4c4, columns: r6c1-r7c2, rows: r6c5-r8c7}",
        "In each square block, lines have the same sum: rows, columns and diagonals at a star, rows at level bars and "
        "columns at upright bars; digits may repeat.",
    ),
)

MISUSES = (
    ("square-block: {magic: r2c2-r3c3}", "block-small", "r2c2"),
    ("square-block: {rows: r2c2-r3c4}", "not-a-block", "r2c2"),
    ("square-block: {rows: r2c2-r5c5}", "not-a-block", "r2c2"),
    ("square-block: {rows: r2c2}", "one-of-two", "r2c2"),
    ("square-block: {rows: [r2c2-r3c3, r3c3-r2c2]}", "block-twice", "r3c3-r2c2"),
    ("square-block: {magics: r2c2-r4c4}", "unknown-key", "magics"),
    ("square-block: {rows: []}", "no-areas", "{rows"),
)

DEDUCTIONS = (
    # In a box, three equal rows make 15 each; with 9 and 1 in a row the third digit is 5.
    ("square-block: {rows: r1c1-r3c3}", {"r1c1": "9", "r1c2": "1"}, {"r1c3": "246789"}),
    # The sum of a magic block is three times its middle: with 2 there, no cell is more than 6 − 1 − 1.
    ("square-block: {magic: r3c3-r5c5}", {"r4c4": "2"}, {"r3c3 r5c5": "56789"}),
    # 9 + 8 is too much for a row that holds 1.
    ("square-block: {rows: r3c3-r4c4}", {"r3c3": "9", "r3c4": "8", "r4c3": "8"}, {"r4c4": "12345678"}),
)

FROM_ZERO = (
    # The digits of a box make 36, so each line makes 12: beside an 8 there is 4 at most.
    ("square-block: {magic: r4c4-r6c6}", {"r4c4": "8"}, {"r4c5-r4c6 r5c4 r6c4": "567"}),
)


CORNERS = (0, 1, 10, 11)
"""Where magic blocks begin that a first search soon finds: whole boxes, and over two or four of them."""


def grow(grid: Grid, rng: Random) -> Solution | None:
    """Now and then with a magic block, which a random solution hardly ever has."""
    if grid.size == 9 and rng.random() < 0.6:
        corner = rng.choice(CORNERS)
        cells = tuple(corner + grid.size * row + column for row in range(3) for column in range(3))
        return image(SquareBlock(((cells, MAGIC),)), grid, rng, True)
    return random_solution(grid, rng)


def lay(grid: Grid, solution: Solution, rng: Random) -> SquareBlock | None:
    rule = SquareBlock(())
    parts = [part for cells in rule.places(grid) for part in rule.read_off(cells, grid, solution, rng)]
    magic = [part for part in parts if part.name == MAGIC]
    others = {part.cells: part for part in rng.sample(parts, min(len(parts), 6)) if part.name != MAGIC}
    chosen = {**others, **{part.cells: part for part in magic}}
    return rule.with_parts(tuple(chosen.values()), grid) if chosen else None
