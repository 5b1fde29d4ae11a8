"""A grid as a table: a cell for each cell, a head for each row and column.

In: a `Board`. Out: the element. Borders of regions are told by classes of the cells; givens in a key are bold.
"""

from __future__ import annotations

from xml.etree.ElementTree import Element

from bookmaker.book.reading import Board
from bookmaker.hypertext.elements import element, unseen
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import Grid

BEYOND = "beyond"
"""The class of what lies between grids that overlap, where there is no cell."""


SIDES = {"right": (0, 1), "below": (1, 0), "left": (0, -1), "above": (-1, 0)}
"""The classes of cells with a heavy line at a side: rows down and columns across from the cell."""


def table_of(words: Catalogue, board: Board) -> Element:
    """The table, named after its puzzle."""
    puzzle, grid = board.puzzle, board.puzzle.puzzle.grid
    called = words.say("table-of-key" if board.solution else "table-of-puzzle", number=str(puzzle.number))
    columns = (_head(words, "column", at + 1, "col") for at in range(grid.width))
    rows = (
        element(
            "tr",
            _head(words, "row", row + 1, "row"),
            (_cell(words, board, grid, cell) for cell in grid.across(row)),
        )
        for row in range(grid.height)
    )
    return element(
        "table",
        element("caption", unseen(called)),
        element("thead", element("tr", element("td"), columns)),
        element("tbody", rows),
        class_="grid",
    )


def _head(words: Catalogue, line: str, number: int, scope: str) -> Element:
    """The head of a row or column: its number, and for those who do not see the table what it counts."""
    before, after = words.say(f"head-{line}", number="\x00").split("\x00")
    around = (unseen(before) if before else None, str(number), unseen(after) if after else None)
    return element("th", *(part for part in around if part is not None), scope=scope)


def _cell(words: Catalogue, board: Board, grid: Grid, cell: int | None) -> Element:
    if cell is None:
        return element("td", unseen(words.say("cell-none")), class_=BEYOND)
    digit = board.digits[cell]
    shown = grid.symbol(digit) if digit else unseen(words.say("blank"))
    if board.solution and board.puzzle.puzzle.givens[cell]:
        shown = element("b", shown)
    row, column = grid.place(cell)
    edges = [name for name, (down, across) in SIDES.items() if _heavy(grid, cell, name, row + down, column + across)]
    return element("td", shown, **({"class_": " ".join(edges)} if edges else {}))


def _heavy(grid: Grid, cell: int, side: str, row: int, column: int) -> bool:
    """Is the line between a cell and the place at this side one between regions, or the outline of grids that overlap?
    That of one grid is drawn by the style, and a line between cells is told by the cell over it or before it."""
    beside = grid.at(row, column)
    if beside is None:
        return not grid.plain and 0 <= row < grid.height and 0 <= column < grid.width
    return bool(grid.regions) and side in ("right", "below") and grid.region_of[cell] != grid.region_of[beside]
