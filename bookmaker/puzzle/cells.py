"""Cells as people type them: `r3c5`, runs `r1c1-r1c9`, and pictures of a grid in text.

In: a `Word` with its place. Out: cells, or a trouble at the exact character.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from bookmaker.placed import Word
from bookmaker.puzzle.grid import Grid
from bookmaker.trouble import Desk, Place, quoted

_CELL = re.compile(r"[rR]([0-9]{1,4})[cC]([0-9]{1,4})")
_RUN = re.compile(r"[^\s,;]+")
_DASHES = str.maketrans("‐‑‒–—−", "------")
"""A dash from a word processor is as good as one from the keyboard."""

_HOW = "cells are written r3c5 (row 3, column 5), straight runs r1c1-r1c9"


def read_cell(word: Word, grid: Grid, desk: Desk) -> int | None:
    """Exactly one cell."""
    cells = read_cells(word, grid, desk)
    if cells is None:
        return None
    if len(cells) == 1:
        return cells[0]
    desk.error(word.place, "one-cell", f"{quoted(word.value)} names {_cells(len(cells))} where one is wanted")
    return None


def read_cells(word: Word, grid: Grid, desk: Desk) -> tuple[int, ...] | None:
    """Cells in the order typed: names and runs with spaces or commas between; None after any trouble."""
    cells = read_placed_cells(word, grid, desk)
    return None if cells is None else tuple(cell for cell, _ in cells)


def read_placed_cells(word: Word, grid: Grid, desk: Desk) -> tuple[tuple[int, Place], ...] | None:
    """The same, each cell with the place of the name or run it was typed in."""
    cells: list[tuple[int, Place]] = []
    sound = True
    for match in _RUN.finditer(word.value):
        run = _run(match.group(), word, match.start(), grid, desk)
        if run is None:
            sound = False
        else:
            place = word.at_offset(match.start())
            cells.extend((cell, place) for cell in run)
        if len(cells) > 2 * len(grid.cells):
            desk.error(word.place, "many-cells", f"more cells are named here than the grid has ({len(grid.cells)})")
            return None
    if sound and not cells:
        desk.error(word.place, "no-cells", "no cell is named here", _HOW)
        return None
    return tuple(cells) if sound else None


def _run(text: str, word: Word, offset: int, grid: Grid, desk: Desk) -> list[int] | None:
    """The cells of one run that stands at an offset of the word."""
    ends: list[tuple[int, int]] = []
    at = offset
    for part in text.translate(_DASHES).split("-"):
        place = word.at_offset(at)
        at += len(part) + 1
        match = _CELL.fullmatch(part)
        if match is None:
            said = f"{quoted(part)} is not a cell" if part else f"a cell is missing in {quoted(text)}"
            desk.error(place, "not-a-cell", said, _HOW)
            return None
        row, column = int(match[1]) - 1, int(match[2]) - 1
        if not grid.inside(row, column):
            said = f"{part} is off the grid, which has {grid.size} rows and {grid.size} columns"
            desk.error(place, "off-grid", said, "" if row >= 0 <= column else "rows and columns are counted from 1")
            return None
        ends.append((row, column))
    cells = [grid.cell(*ends[0])]
    for one, other in pairwise(ends):
        steps = _straight(one, other)
        if not steps:
            hint = "a run goes along a row, a column or a diagonal; where it bends, name the corner too"
            desk.error(word.at_offset(offset), "crooked-run", f"{quoted(text)} is not a straight run", hint)
            return None
        down, across = (other[0] - one[0]) // steps, (other[1] - one[1]) // steps
        cells.extend(grid.cell(one[0] + down * i, one[1] + across * i) for i in range(1, steps + 1))
    return cells


def _straight(one: tuple[int, int], other: tuple[int, int]) -> int:
    """Steps of a straight way from one row and column to another; 0 where there is none."""
    down, across = abs(other[0] - one[0]), abs(other[1] - one[1])
    return max(down, across) if not down or not across or down == across else 0


def read_picture(word: Word, grid_size: int, what: str, desk: Desk) -> tuple[tuple[str, int, int], ...] | None:
    """A text picture of a grid, free spacing: for each cell its character with the line and column it stands at.

    Spaces, tabs within a line and the ruling characters `|`, `+`, `-`, `_` only help the eye. Rows may also run on
    in one line if the count is right.
    """
    rows = [row for line, text in enumerate(word.value.splitlines()) if (row := tuple(_row(line, text)))]
    found = tuple(cell for row in rows for cell in row)
    wanted = grid_size * grid_size
    if len(found) == wanted and all(len(row) % grid_size == 0 for row in rows):
        return found
    hint = f"draw {grid_size} rows of {grid_size}, with a dot for an empty cell"
    widths = {len(row) for row in rows}
    if len(rows) <= 1:
        said = f"in {what}, the number of cells is {len(found)} and should be {wanted}"
        desk.error(word.at(*rows[0][0][1:]) if rows else word.place, "picture-size", said, hint)
    elif widths == {grid_size}:
        said = f"in {what}, the number of rows is {len(rows)} and should be {grid_size}"
        desk.error(word.at(*rows[-1][0][1:]), "picture-size", said, hint)
    elif len(widths) == 1:
        said = f"in {what}, each row has {_cells(widths.pop())} and should have {grid_size}"
        desk.error(word.at(*rows[0][0][1:]), "picture-size", said, hint)
    else:
        for number, row in enumerate(rows, start=1):
            if len(row) != grid_size:
                said = f"in {what}, row {number} has {_cells(len(row))} and should have {grid_size}"
                desk.error(word.at(*row[0][1:]), "picture-size", said, hint)
    return None


def _cells(number: int) -> str:
    return "1 cell" if number == 1 else f"{number} cells"


def _row(line: int, text: str) -> Iterator[tuple[str, int, int]]:
    """The cells drawn in one line of a picture."""
    return ((char, line, column) for column, char in enumerate(text) if not char.isspace() and char not in "|+-_")
