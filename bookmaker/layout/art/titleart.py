"""The art of the title page: the book's ridge, its slopes ruled like a grid and carrying the book's own givens.

In: a book, a width and a height in points. Out: one group that stands on the line y = 0 and reaches up from there. In
a book with thermometers one of them climbs to the highest peak.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from bookmaker.book.contents import Book
from bookmaker.display.items import Close, Group, Item, Line, Move, Path, Point, Straight, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.layout.art.gridart import frame_for
from bookmaker.layout.art.ridge import skyline
from bookmaker.puzzle.grid import SYMBOLS, Grid
from bookmaker.rules.thermometer import Thermometer

COLUMNS = 21
"""Cells across the art: two for each step of the ridge."""

LEAST = 4
"""Rows of cells under which a ridge is no longer one: then there is no art."""

_PLAIN = Grid(COLUMNS, ())
"""The cells of the art, row by row from the top left; only the lowest rows are drawn."""


def title_art(book: Book, wide: float, high: float) -> Group:
    """The ridge, `wide` by at most `high` points; nothing where a long title leaves it too little height."""
    cell = wide / COLUMNS
    rows = min(COLUMNS, int(high / cell))
    if rows < LEAST:
        return Group((), name="title art")
    points = skyline(wide, rows * cell)
    outline = Path((Move(points[0]), *(Straight(point) for point in points[1:]), Close()))
    hair, bold = Stroke(0.3, 0.5), Stroke(cell * 0.09, cap="square")
    ruling: list[Item] = [Line((at * cell, -rows * cell), (at * cell, 0.0), hair) for at in range(COLUMNS + 1)]
    ruling += [Line((0.0, -at * cell), (wide, -at * cell), hair) for at in range(1, rows)]
    inside = [at for at in _PLAIN.cells if _inside(points, cell, at)]
    climb = (
        _climb(inside) if any(isinstance(rule, Thermometer) for p in book.puzzles for rule in p.puzzle.rules) else ()
    )
    frame = frame_for(_PLAIN, cell)
    on_cells: list[Item] = [mark.item for mark in Thermometer((climb,)).marks(frame)] if climb else []
    for at, digit in _givens(book, inside):
        if at not in climb:
            on_cells.append(frame.figures(frame.centre(at), SYMBOLS[digit - 1], 0.44))
    return Group(
        (
            Group(tuple(ruling), clip=outline),
            Group(tuple(on_cells), 0.0, -COLUMNS * cell),
            polyline(points, bold),
            Line((0.0, 0.0), (wide, 0.0), bold),
        ),
        name="title art",
    )


def _inside(points: tuple[Point, ...], cell: float, at: int) -> bool:
    """Does a cell lie wholly under the skyline? Saddles are the only places where its top could cross within."""
    left, top = _PLAIN.column(at) * cell, -(COLUMNS - _PLAIN.row(at)) * cell
    corners = [left, left + cell, *(x for x, _ in points if left < x < left + cell)]
    return all(_skyline_at(points, x) <= top for x in corners)


def _skyline_at(points: tuple[Point, ...], x: float) -> float:
    for (x0, y0), (x1, y1) in pairwise(points):
        if x0 <= x <= x1:
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
    return 0.0


def _climb(inside: list[int]) -> tuple[int, ...]:
    """Cells from the foot of the ridge to its top: along the valley, up the slope, then straight to the summit."""
    cells = set(inside)
    at = next(cell for cell in inside if _PLAIN.column(cell) > 0.8 * COLUMNS)
    path = [at]
    while _PLAIN.row(at) < COLUMNS - 2:
        slope = at + COLUMNS - 1
        at = slope if slope in cells and slope - 1 in cells else at + COLUMNS
        path.append(at)
    while at - 2 in cells and _PLAIN.column(at) > 3:
        at -= 1
        path.append(at)
    return tuple(reversed(path))


def _givens(book: Book, inside: list[int]) -> Iterator[tuple[int, int]]:
    """Givens of the book's first puzzles, laid side by side over the cells."""
    for at in inside:
        row, column = COLUMNS - 1 - _PLAIN.row(at), _PLAIN.column(at)
        puzzle = book.puzzles[(column // 9 + 3 * (row // 9)) % len(book.puzzles)].puzzle
        size = puzzle.grid.size
        digit = puzzle.givens[puzzle.grid.cell(row % 9 % size, column % 9 % size)]
        if digit:
            yield at, digit
