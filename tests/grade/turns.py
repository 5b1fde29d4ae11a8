"""The symmetries of the classic grid, drawn at random: what must not change a grade."""

from __future__ import annotations

import random
from collections.abc import Sequence


def turned(digits: Sequence[int], source: random.Random) -> tuple[int, ...]:
    """Digits of 81 cells relabelled, with bands, stacks, rows and columns swapped, perhaps transposed."""
    return turn(digits, *draw(source))


def draw(source: random.Random) -> tuple[list[int], list[int]]:
    """A relabelling of 0..9 that keeps 0, and for each new cell the old one."""
    names = [0, *source.sample(range(1, 10), 9)]
    rows = [3 * band + row for band in source.sample(range(3), 3) for row in source.sample(range(3), 3)]
    columns = [3 * stack + column for stack in source.sample(range(3), 3) for column in source.sample(range(3), 3)]
    cells = [(row, column) for row in rows for column in columns]
    if source.random() < 0.5:
        cells = [(rows[j], columns[i]) for i in range(9) for j in range(9)]
    return names, [9 * row + column for row, column in cells]


def turn(digits: Sequence[int], names: Sequence[int], cells: Sequence[int]) -> tuple[int, ...]:
    """The digits after a drawn symmetry."""
    return tuple(names[digits[cell]] for cell in cells)
