"""Cells as people type them: `r3c5`, runs `r1c1-r1c9`, and pictures of a grid in text.

In: a `Word` with its place. Out: cells, or a trouble at the exact character.
"""

from __future__ import annotations

import re

from bookmaker.placed import Word
from bookmaker.puzzle.grid import Grid
from bookmaker.trouble import Desk

_CELL = re.compile(r"[rR](\d+)[cC](\d+)")
_RUN = re.compile(r"\S+")


def read_cell(word: Word, grid: Grid, desk: Desk) -> int | None:
    """Exactly one cell."""
    cells = read_cells(word, grid, desk)
    if cells is None:
        return None
    if len(cells) == 1:
        return cells[0]
    desk.error(word.place, "one-cell", f"“{word.value}” names {len(cells)} cells where one is wanted")
    return None


def read_cells(word: Word, grid: Grid, desk: Desk) -> tuple[int, ...] | None:
    """Cells in the order typed: names and runs with spaces (or commas) between; None after any trouble."""
    cells: list[int] = []
    sound = True
    for line_number, line in enumerate(word.value.splitlines() or [""]):
        for match in _RUN.finditer(line.replace(",", " ")):
            run = _run(match.group(), word, line_number, match.start(), grid, desk)
            if run is None:
                sound = False
            else:
                cells.extend(run)
    if sound and not cells:
        desk.error(word.place, "no-cells", "no cell is named here", "cells are written r3c5: row 3, column 5")
        return None
    return tuple(cells) if sound else None


def _run(text: str, word: Word, line: int, column: int, grid: Grid, desk: Desk) -> list[int] | None:
    place = word.at(line, column)
    ends: list[tuple[int, int]] = []
    offset = column
    for part in text.split("-"):
        match = _CELL.fullmatch(part)
        if match is None:
            desk.error(place, "not-a-cell", f"“{text}” is not a cell", "cells are written r3c5, runs r1c1-r1c9")
            return None
        row, col = int(match[1]) - 1, int(match[2]) - 1
        if not grid.inside(row, col):
            size = grid.size
            text_here = f"{part} is off the grid, which has {size} rows and {size} columns"
            desk.error(word.at(line, offset), "off-grid", text_here)
            return None
        ends.append((row, col))
        offset += len(part) + 1
    cells = [grid.cell(*ends[0])]
    for (row, col), (to_row, to_col) in zip(ends, ends[1:], strict=False):
        down, across = to_row - row, to_col - col
        steps = max(abs(down), abs(across))
        if steps == 0 or (down and across and abs(down) != abs(across)):
            hint = "a run goes along a row, a column or a diagonal; name the cells one by one where it bends"
            desk.error(place, "crooked-run", f"“{text}” is not a straight run", hint)
            return None
        cells.extend(grid.cell(row + down * i // steps, col + across * i // steps) for i in range(1, steps + 1))
    return cells


def read_picture(word: Word, grid_size: int, what: str, desk: Desk) -> tuple[tuple[str, int, int], ...] | None:
    """A text picture of a grid, free spacing: for each cell its character with the line and column it stands at.

    Spaces, tabs within a line and the ruling characters `|`, `+`, `-` only help the eye. Rows may also run on in
    one line if the count is right.
    """
    found = [
        (character, line, column)
        for line, text in enumerate(word.value.splitlines())
        for column, character in enumerate(text)
        if character not in " \t|+-_"
    ]
    wanted = grid_size * grid_size
    if len(found) == wanted:
        return tuple(found)
    rows = [sum(1 for _, at, _ in found if at == line) for line in range(len(word.value.splitlines()))]
    odd = next((line for line, count in enumerate(rows) if count not in (0, grid_size)), None)
    place = word.place if odd is None or len(rows) == 1 else word.at(odd, 0)
    detail = f"; this row has {rows[odd]}" if odd is not None and len(rows) > 1 else ""
    hint = f"draw {grid_size} rows of {grid_size}, with a dot for an empty cell"
    desk.error(place, "picture-size", f"{what} should show {wanted} cells and shows {len(found)}{detail}", hint)
    return None
