"""Cells as people type them: `r3c5`, and runs `r1c1-r1c9`.

In: a `Word` with its place. Out: cells, or a diagnostic at the exact character.
"""

from __future__ import annotations

import re
from itertools import pairwise, product

from bookmaker.puzzle.grid import Grid
from bookmaker.source.diagnostics import Collector, Place, quoted
from bookmaker.source.placed import Word

_CELL = re.compile(r"[rR]([0-9]{1,4})[cC]([0-9]{1,4})")
_RUN = re.compile(r"[^\s,;]+")
_DASHES = str.maketrans("‐‑‒–—−", "------")
"""A dash from a word processor is as good as one from the keyboard."""

_SPACED = re.compile(r"(?<=[0-9])[ \t]+(?=[-‐‑‒–—−][ \t]*[rR][0-9])|(?<=[-‐‑‒–—−])[ \t]+(?=[rR][0-9])")
"""Space around the dash of a run."""

_HOW = "cells are written r3c5 (row 3, column 5), straight runs r1c1-r1c9"


def read_cell(word: Word, grid: Grid, collector: Collector) -> int | None:
    """Exactly one cell."""
    cells = read_cells(word, grid, collector)
    if cells is None:
        return None
    if len(cells) == 1:
        return cells[0]
    collector.error(word.place, "one-cell", f"{quoted(word.value)} names {len(cells)} cells where one is wanted")
    return None


def read_cells(word: Word, grid: Grid, collector: Collector) -> tuple[int, ...] | None:
    """Cells in the order typed: names and runs with spaces or commas between; None after any diagnostic."""
    cells = read_placed_cells(word, grid, collector)
    return None if cells is None else tuple(cell for cell, _ in cells)


def read_placed_cells(word: Word, grid: Grid, collector: Collector) -> tuple[tuple[int, Place], ...] | None:
    """The same, each cell with the place of the name or run it was typed in."""
    cells: list[tuple[int, Place]] = []
    sound = True
    word = closed_up(word)
    for match in _RUN.finditer(word.value):
        run = _run(match.group(), word, match.start(), grid, collector)
        if run is None:
            sound = False
        else:
            place = word.at_offset(match.start())
            cells.extend((cell, place) for cell in run)
        if len(cells) > 2 * len(grid.cells):
            collector.error(
                word.place, "many-cells", f"more cells are named here than the grid has ({len(grid.cells)})"
            )
            return None
    if sound and not cells:
        collector.error(word.place, "no-cells", "no cell is named here", _HOW)
        return None
    return tuple(cells) if sound else None


def read_rectangle(word: Word, one: int, other: int, grid: Grid, collector: Collector) -> tuple[int, ...] | None:
    """All cells of the rectangle between two corners, row by row; `word` is what names them."""
    rows, columns = (sorted(ends) for ends in zip(grid.place(one), grid.place(other), strict=True))
    places = product(range(rows[0], rows[1] + 1), range(columns[0], columns[1] + 1))
    cells = {place: grid.at(*place) for place in places}
    for (row, column), cell in cells.items():
        if cell is None:
            text = f"{quoted(word.value)} would lie over r{row + 1}c{column + 1}, where the grid has no cell"
            collector.error(word.place, "off-grid", text)
            return None
    return tuple(cell for cell in cells.values() if cell is not None)


def closed_up(word: Word) -> Word:
    """The word without spaces around the dashes of its runs: `r1c1 - r1c4` is `r1c1-r1c4`. A dash at the beginning of a
    line is none of a run's."""
    kept: list[tuple[int, int]] = []
    at = 0
    for gap in _SPACED.finditer(word.value):
        if word.at_offset(gap.start()).line == word.at_offset(gap.end()).line:
            kept.append((at, gap.start()))
            at = gap.end()
    if not kept:
        return word
    value, origins = "", []
    for start, end in (*kept, (at, len(word.value))):
        within = (origin for origin in word.origins if start < origin[0] < end)
        origins += [(len(value) + offset - start, place) for offset, place in ((start, word.at_offset(start)), *within)]
        value += word.value[start:end]
    return Word(word.place, value, tuple(origins))


def _run(text: str, word: Word, offset: int, grid: Grid, collector: Collector) -> list[int] | None:
    """The cells of one run that stands at an offset of the word."""
    ends: list[tuple[int, int]] = []
    at = offset
    for part in text.translate(_DASHES).split("-"):
        place = word.at_offset(at)
        at += len(part) + 1
        match = _CELL.fullmatch(part)
        if match is None:
            said = f"{quoted(part)} is not a cell" if part else f"a cell is missing in {quoted(text)}"
            collector.error(place, "not-a-cell", said, _HOW)
            return None
        row, column = int(match[1]) - 1, int(match[2]) - 1
        if grid.at(row, column) is None:
            said, hint = _off_grid(part, grid), "" if row >= 0 <= column else "rows and columns are counted from 1"
            collector.error(place, "off-grid", said, hint)
            return None
        ends.append((row, column))
    cells = [grid.at(*ends[0])]
    for one, other in pairwise(ends):
        steps = _straight(one, other)
        if not steps:
            hint = "a run goes along a row, a column or a diagonal; where it bends, name the corner too"
            collector.error(word.at_offset(offset), "crooked-run", f"{quoted(text)} is not a straight run", hint)
            return None
        down, across = (other[0] - one[0]) // steps, (other[1] - one[1]) // steps
        cells.extend(grid.at(one[0] + down * i, one[1] + across * i) for i in range(1, steps + 1))
    found = [cell for cell in cells if cell is not None]
    if len(found) < len(cells):
        said = f"the run {quoted(text)} leaves the grid on its way"
        collector.error(word.at_offset(offset), "off-grid", said, "name its cells one by one")
        return None
    return found


def _off_grid(cell: str, grid: Grid) -> str:
    """What is said of a cell that a grid does not have."""
    if grid.overlaps:
        return f"{cell} lies in none of the grids that overlap here"
    if not grid.plain:
        return f"{cell} is a hole of the grid, or off it; it has {grid.height} rows and {grid.width} columns"
    if grid.numbered != len(grid.cells):
        return f"{cell} is off its grid, whose cells go from {grid.name(grid.cells[0])} to {grid.name(grid.cells[-1])}"
    return f"{cell} is off the grid, which has {grid.size} rows and {grid.size} columns"


def _straight(one: tuple[int, int], other: tuple[int, int]) -> int:
    """Steps of a straight way from one row and column to another; 0 where there is none."""
    down, across = abs(other[0] - one[0]), abs(other[1] - one[1])
    return max(down, across) if not down or not across or down == across else 0
