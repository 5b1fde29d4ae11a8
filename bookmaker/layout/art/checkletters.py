"""Letters in the cells of the check row: which digits a solver copies to the foot of a contest sheet."""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.book.model import BookPuzzle
from bookmaker.display.items import Group, Item, Path, Stroke, Text
from bookmaker.layout.art.gridart import frame_for
from bookmaker.layout.setting.text import FONTS

LETTERS = "abcde"

SEAT, TALL = (0.84, 0.83), 0.14
"""Where the middle of a letter stands in its cell, and how high its x is, as shares of the cell."""

HALO = 0.3
"""Width per em of the white stroke around a letter, half of it outside: marks keep clear of it."""


def check_letters(puzzle: BookPuzzle, cell: float) -> Group:
    """The letters of the check row in their cells, from the grid's top left corner; none outside a contest."""
    return Group(tuple(_letters(puzzle, cell)), name=f"check {puzzle.id}")


def _letters(puzzle: BookPuzzle, cell: float) -> Iterator[Item]:
    frame = frame_for(puzzle.puzzle.grid, cell)
    size = TALL * cell / FONTS.x_height(frame.bold)
    for at, letter in zip(puzzle.check, LETTERS, strict=False):
        x, y = frame.corner(at)
        x, y = x + SEAT[0] * cell, y + (SEAT[1] + TALL / 2) * cell
        shape = FONTS.outline(letter, frame.bold, size, -FONTS.width(letter, frame.bold, size) / 2)
        yield Group((Path(shape, Stroke(HALO * size, 1.0, join="round")),), x, y)
        yield Text(x, y, letter, frame.bold, size, anchor="middle")
