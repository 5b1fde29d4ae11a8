"""Marks in words, for readers who see none: how cells, lines and borders are said.

In: a grid and cells. Out: pieces of text that need no picture and no notation. The row always comes first; “row 1
columns 1 to 4” are all four cells, in a line from the first to the last.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.wording import listed


def cell_said(grid: Grid, cell: int) -> str:
    """“row 3 column 5”."""
    return f"row {grid.row(cell) + 1} column {grid.column(cell) + 1}"


def cells_said(grid: Grid, cells: Iterable[int]) -> str:
    """Cells in no order: “rows 1 and 2 columns 1 to 3, row 4 column 1”.

    Rows that follow each other and have the same columns are said together. Semicolons part them where a comma would be
    taken for one between columns.
    """
    by_row: dict[int, list[int]] = {}
    for cell in sorted(cells):
        by_row.setdefault(grid.row(cell), []).append(grid.column(cell))
    groups: list[tuple[list[int], list[int]]] = []
    for row, columns in by_row.items():
        if groups and groups[-1] == ([*range(row - len(groups[-1][0]), row)], columns):
            groups[-1][0].append(row)
        else:
            groups.append(([row], columns))
    return joined(f"{_numbered('row', rows)} {_numbered('column', columns)}" for rows, columns in groups)


def line_said(grid: Grid, chain: Sequence[int]) -> str:
    """The cells of a line in its order: “row 1 columns 1 to 4, rows 2 to 3 column 4, row 4 column 5 diagonally to row 7
    column 8”."""
    pieces = []
    at = 0
    while at < len(chain):
        length = _straight(grid, chain[at:])
        first, last = chain[at], chain[at + length - 1]
        if grid.row(first) == grid.row(last) and length > 1:
            pieces.append(f"row {grid.row(first) + 1} columns {grid.column(first) + 1} to {grid.column(last) + 1}")
        elif grid.column(first) == grid.column(last) and length > 1:
            pieces.append(f"rows {grid.row(first) + 1} to {grid.row(last) + 1} column {grid.column(first) + 1}")
        elif length > 2:
            pieces.append(f"{cell_said(grid, first)} diagonally to {cell_said(grid, last)}")
        else:
            length = 1
            pieces.append(cell_said(grid, first))
        at += length
    return ", ".join(pieces)


def lines_said(grid: Grid, called: str, chains: Iterable[Sequence[int]]) -> Iterator[str]:
    """Each line after what it is called: “Palindrome: row 1 columns 1 to 4”."""
    return (f"{called}: {line_said(grid, chain)}" for chain in chains)


def borders_said(grid: Grid, one: str, many: str, pairs: Iterable[Sequence[int]]) -> Iterator[str]:
    """Marks between two cells that share a side, those in one row or column together: “White dots in row 1 between
    columns 1 and 2, 4 and 5”. `one` and `many` is what the marks are called."""
    found: dict[tuple[str, str, int], list[int]] = {}
    for first, second in sorted((min(pair), max(pair)) for pair in pairs):
        if grid.row(first) == grid.row(second):
            found.setdefault(("row", "columns", grid.row(first)), []).append(grid.column(first))
        else:
            found.setdefault(("column", "rows", grid.column(first)), []).append(grid.row(first))
    for (line, across, number), places in sorted(found.items(), key=lambda item: (item[0][0] == "column", item[0][2])):
        between = ", ".join(f"{place + 1} and {place + 2}" for place in places)
        yield f"{one if len(places) == 1 else many} in {line} {number + 1} between {across} {between}"


def joined(pieces: Iterable[str]) -> str:
    """Pieces of one text with commas between them, or semicolons if they have commas themselves."""
    pieces = list(pieces)
    return ("; " if any("," in piece for piece in pieces) else ", ").join(pieces)


def _straight(grid: Grid, chain: Sequence[int]) -> int:
    """How many cells from the first on lie in a straight line."""
    steps = [
        (grid.row(after) - grid.row(before), grid.column(after) - grid.column(before))
        for before, after in pairwise(chain)
    ]
    length = 1
    while length <= len(steps) and steps[length - 1] == steps[0]:
        length += 1
    return length


def _numbered(line: str, places: Sequence[int]) -> str:
    """“column 3”, “columns 1, 2 and 5”, “columns 1 to 3 and 5”; places are counted from 0."""
    if len(places) == 1:
        return f"{line} {places[0] + 1}"
    runs: list[list[int]] = []
    for place in places:
        if runs and place == runs[-1][-1] + 1:
            runs[-1].append(place)
        else:
            runs.append([place])
    said: list[str] = []
    for run in runs:
        if len(run) > 2:
            said.append(f"{run[0] + 1} to {run[-1] + 1}")
        else:
            said += (str(place + 1) for place in run)
    return f"{line}s {listed(said)}"
