"""Letters in the cells of the check row: which digits a solver copies to the foot of a contest sheet."""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, Path, Stroke, Text
from bookmaker.layout.art.gridart import frame_for
from bookmaker.layout.art.gridtold import LETTERS
from bookmaker.layout.setting.text import FONTS
from bookmaker.rules import boxes_beside
from bookmaker.rules.common.drawing.places import Box, InCell

TALL, WIDE = 0.14, 0.2
"""How high the x of a letter is, and how wide its place, as shares of the cell."""

SEATS = (0.84, 0.83), (0.84, 0.17), (0.16, 0.83), (0.16, 0.17), (0.5, 0.87), (0.5, 0.13), (0.86, 0.5), (0.14, 0.5)
"""Where the middle of a letter may stand in its cell: in a corner that no mark has taken."""

HALO = 0.3
"""Width per em of the white stroke around a letter, half of it outside: marks keep clear of it."""


def check_letters(puzzle: BookPuzzle, cell: float) -> Group:
    """The letters of the check row in their cells, from the grid's top left corner; none outside a contest."""
    return Group(tuple(_letters(puzzle, cell)), name=f"check {puzzle.id}")


def _letters(puzzle: BookPuzzle, cell: float) -> Iterator[Item]:
    frame = frame_for(puzzle.puzzle.grid, cell)
    size = TALL * cell / FONTS.x_height(frame.bold)
    half = WIDE / 2
    seats = tuple(Box(x - half, y - half, x + half, y + half) for x, y in SEATS)
    boxes = boxes_beside(puzzle.puzzle.rules, puzzle.puzzle.grid, [InCell(at, seats, late=True) for at in puzzle.check])
    for at, letter, box in zip(puzzle.check, LETTERS, boxes, strict=False):
        x, y = frame.corner(at)
        x, y = x + (box.left + half) * cell, y + (box.top + half + TALL / 2) * cell
        shape = FONTS.outline(letter, frame.bold, size, -FONTS.width(letter, frame.bold, size) / 2)
        yield Group((Path(shape, Stroke(HALO * size, 1.0, join="round")),), x, y)
        yield Text(x, y, letter, frame.bold, size, anchor="middle")
