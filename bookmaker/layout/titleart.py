"""The art of the title page: the book's ridge, its slopes ruled like a grid and carrying the book's own givens.

In: a book, a width and a height in points. Out: one group that stands on the line y = 0 and reaches up from there.
"""

from __future__ import annotations

from itertools import pairwise

from bookmaker.book.model import Book
from bookmaker.display.items import Close, Group, Item, Line, Move, Path, Straight, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.layout.gridart import frame_for
from bookmaker.layout.ridge import skyline
from bookmaker.puzzle.grid import CLASSIC, SYMBOLS

COLUMNS = 20
"""Cells across the art; the peaks stand on every fourth line."""


def title_art(book: Book, wide: float, high: float) -> Group:
    """The ridge, `wide` by at most `high` points."""
    cell = wide / COLUMNS
    rows = int(high / cell)
    points = skyline(wide, rows * cell)
    outline = Path((Move(points[0]), *(Straight(point) for point in points[1:]), Close()))
    hair = Stroke(0.3, 0.5)
    slopes: list[Item] = [Line((at * cell, -rows * cell), (at * cell, 0.0), hair) for at in range(COLUMNS + 1)]
    slopes += [Line((0.0, -at * cell), (wide, -at * cell), hair) for at in range(1, rows)]
    slopes += _givens(book, cell, rows)
    return Group(
        (
            Group(tuple(slopes), clip=outline),
            polyline(points, Stroke(cell * 0.09, join="miter")),
            Line((0.0, 0.0), (wide, 0.0), Stroke(cell * 0.09, cap="square")),
        ),
        name="title art",
    )


def _givens(book: Book, cell: float, rows: int) -> list[Item]:
    """The givens of the book's first puzzles in the cells that lie wholly inside the slopes."""
    frame = frame_for(CLASSIC, cell)
    points = skyline(COLUMNS * cell, rows * cell)
    items: list[Item] = []
    pool = [puzzle.puzzle for puzzle in book.puzzles if puzzle.puzzle.grid.size == 9] or [
        p.puzzle for p in book.puzzles
    ]
    for row in range(rows):
        for column in range(COLUMNS):
            top = (row + 1) * cell
            if min(_height_at(points, (column + share) * cell) for share in (0.0, 0.5, 1.0)) < top:
                continue
            puzzle = pool[(column // 9 + 3 * (row // 9)) % len(pool)]
            size = puzzle.grid.size
            digit = puzzle.givens[puzzle.grid.cell(row % size, column % 9 % size)]
            if digit:
                items.append(frame.figures(((column + 0.5) * cell, -(row + 0.5) * cell), SYMBOLS[digit - 1], 0.44))
    return items


def _height_at(points: tuple[tuple[float, float], ...], x: float) -> float:
    for (x0, y0), (x1, y1) in pairwise(points):
        if x0 <= x <= x1 + 1e-9:
            return -(y0 + (y1 - y0) * (x - x0) / (x1 - x0))
    return 0.0
