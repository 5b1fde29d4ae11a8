"""Marks in words, for readers who see none: how cells, lines and borders are said.

In: a grid and cells. Out: pieces of text that need no picture and no notation. The row always comes first; “row 1
columns 1 to 4” are all four cells, in a line from the first to the last.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import Grid


def cell_said(words: Catalogue, grid: Grid, cell: int) -> str:
    """“row 3 column 5”."""
    return _crossing(words, [grid.place(cell)[0]], [grid.place(cell)[1]])


def cells_said(words: Catalogue, grid: Grid, cells: Iterable[int]) -> str:
    """Cells in no order: “rows 1 and 2 columns 1 to 3, row 4 column 1”.

    Rows that follow each other and have the same columns are said together. Semicolons part them where a comma would be
    taken for one between columns.
    """
    by_row: dict[int, list[int]] = {}
    for cell in sorted(cells):
        by_row.setdefault(grid.place(cell)[0], []).append(grid.place(cell)[1])
    groups: list[tuple[list[int], list[int]]] = []
    for row, columns in by_row.items():
        if groups and groups[-1] == ([*range(row - len(groups[-1][0]), row)], columns):
            groups[-1][0].append(row)
        else:
            groups.append(([row], columns))
    return joined(_crossing(words, rows, columns) for rows, columns in groups)


def line_said(words: Catalogue, grid: Grid, chain: Sequence[int]) -> str:
    """The cells of a line in its order: “row 1 columns 1 to 4, rows 2 to 3 column 4, row 4 column 5 diagonally to row 7
    column 8”."""
    pieces = []
    at = 0
    while at < len(chain):
        length = _straight(grid, chain[at:])
        first, last = chain[at], chain[at + length - 1]
        ends = [str(index + 1) for cell in (first, last) for index in grid.place(cell)]
        if grid.place(first)[0] == grid.place(last)[0] and length > 1:
            pieces.append(words.say("spoken-along-row", row=ends[0], first=ends[1], last=ends[3]))
        elif grid.place(first)[1] == grid.place(last)[1] and length > 1:
            pieces.append(words.say("spoken-along-column", column=ends[1], first=ends[0], last=ends[2]))
        elif length > 2:
            start, end = (cell_said(words, grid, cell) for cell in (first, last))
            pieces.append(words.say("spoken-diagonally", first=start, last=end))
        else:
            length = 1
            pieces.append(cell_said(words, grid, first))
        at += length
    return ", ".join(pieces)


def lines_said(
    words: Catalogue, grid: Grid, name: str, chains: Iterable[Sequence[int]], **more: Argument
) -> Iterator[str]:
    """Each line in the message of that name: “Palindrome: row 1 columns 1 to 4”."""
    return (words.say(name, line=line_said(words, grid, chain), **more) for chain in chains)


def borders_said(
    words: Catalogue, grid: Grid, name: str, pairs: Iterable[Sequence[int]], **more: Argument
) -> Iterator[str]:
    """Marks between two cells that share a side, those in one row or column together, in the message of that name:
    “White dots in row 1 between columns 1 and 2, 4 and 5”."""
    found: dict[tuple[bool, int], list[int]] = {}
    for first, second in sorted((min(pair), max(pair)) for pair in pairs):
        along = grid.place(first)[0] == grid.place(second)[0]
        number, place = grid.place(first) if along else grid.place(first)[::-1]
        found.setdefault((not along, number), []).append(place)
    for (down, number), places in sorted(found.items()):
        between = [words.say("spoken-pair", one=str(place + 1), other=str(place + 2)) for place in places]
        line = "column" if down else "row"
        where = words.say(f"spoken-borders-{line}", number=str(number + 1), between=words.joined(between, "then"))
        yield words.say(name, n=len(places), where=where, **more)


def joined(pieces: Iterable[str]) -> str:
    """Pieces of one text with commas between them, or semicolons if they have commas themselves."""
    pieces = list(pieces)
    return ("; " if any("," in piece for piece in pieces) else ", ").join(pieces)


def _straight(grid: Grid, chain: Sequence[int]) -> int:
    """How many cells from the first on lie in a straight line."""
    steps = [
        (grid.place(after)[0] - grid.place(before)[0], grid.place(after)[1] - grid.place(before)[1])
        for before, after in pairwise(chain)
    ]
    length = 1
    while length <= len(steps) and steps[length - 1] == steps[0]:
        length += 1
    return length


def _crossing(words: Catalogue, rows: Sequence[int], columns: Sequence[int]) -> str:
    """“rows 1 and 2 columns 1 to 3”, counted from 0: all cells in which they meet."""
    along, down = (
        words.say(f"spoken-{line}s", n=len(places), places=words.listed(_runs(words, places)))
        for line, places in (("row", rows), ("column", columns))
    )
    return words.say("spoken-crossing", rows=along, columns=down)


def _runs(words: Catalogue, places: Sequence[int]) -> Iterator[str]:
    """“1 to 3”, “5”; places are counted from 0."""
    runs: list[list[int]] = []
    for place in places:
        if runs and place == runs[-1][-1] + 1:
            runs[-1].append(place)
        else:
            runs.append([place])
    for run in runs:
        if len(run) > 2:
            yield words.say("spoken-range", first=str(run[0] + 1), last=str(run[-1] + 1))
        else:
            yield from (str(place + 1) for place in run)
