"""A grid as a table: a cell for each cell, a head for each row and column.

In: a `Board`. Out: the element. Borders of regions are told by classes of the cells; givens in a key are bold.
"""

from __future__ import annotations

from xml.etree.ElementTree import Element

from bookmaker.book.reading import Board
from bookmaker.hypertext.elements import element, unseen
from bookmaker.puzzle.grid import Grid


def table_of(board: Board) -> Element:
    """The table, named after its puzzle."""
    puzzle, grid = board.puzzle, board.puzzle.puzzle.grid
    what = f"Key to puzzle {puzzle.number}" if board.solution else f"Puzzle {puzzle.number}"
    columns = (element("th", unseen("Column "), str(at + 1), scope="col") for at in range(grid.size))
    rows = (
        element(
            "tr",
            element("th", unseen("Row "), str(row + 1), scope="row"),
            (_cell(board, grid, grid.cell(row, column)) for column in range(grid.size)),
        )
        for row in range(grid.size)
    )
    return element(
        "table",
        element("caption", unseen(f"{what}, the digits")),
        element("thead", element("tr", element("td"), columns)),
        element("tbody", rows),
        class_="grid",
    )


def _cell(board: Board, grid: Grid, cell: int) -> Element:
    digit = board.digits[cell]
    shown = grid.symbol(digit) if digit else unseen("blank")
    if board.solution and board.puzzle.puzzle.givens[cell]:
        shown = element("b", shown)
    sides = (("right", cell + 1, grid.column(cell)), ("below", cell + grid.size, grid.row(cell)))
    edges = [
        name
        for name, beside, place in sides
        if grid.regions and place + 1 < grid.size and grid.region_of[cell] != grid.region_of[beside]
    ]
    return element("td", shown, **({"class_": " ".join(edges)} if edges else {}))
