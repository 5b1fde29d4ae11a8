"""Ornament inside a book: the art of the title page, bands over chapters, the pages before parts, tailpieces.

In: puzzles, a theme and a room in points. Out: one group that begins at its top left corner, in whole cells, with the
size it has. It stands on bare paper and carries no meaning.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, Point, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.layout.art.ornament import Field, ornament
from bookmaker.layout.art.pieces import Cell
from bookmaker.layout.theme import Theme

LEAST = 3
"""Rows under which ornament is too thin to be any."""

STEPS = 7
"""Steps of the title page."""

LOWEST = 0.3
"""Height of the first step beside the last."""


@dataclass(frozen=True, slots=True)
class Vignette:
    """Art and its width and height; without height where there was no room for any."""

    art: Group
    wide: float
    high: float


def frieze(puzzles: Sequence[BookPuzzle], theme: Theme, wide: float, high: float, columns: int, salt: str) -> Vignette:
    """A field as wide as said, with so many columns of cells; `salt` tells apart what is made of the same puzzles."""
    return _vignette(puzzles, theme, wide, high, columns, salt, lambda column, rows: 0)


def rise(puzzles: Sequence[BookPuzzle], theme: Theme, wide: float, high: float, columns: int, salt: str) -> Vignette:
    """The same on steps that rise to the right, with a line along their edges."""

    def top(column: int, rows: int) -> int:
        share = LOWEST + (1 - LOWEST) * (STEPS * column // columns) / (STEPS - 1)
        return rows - max(1, round(rows * share))

    return _vignette(puzzles, theme, wide, high, columns, salt, top, stepped=True)


def _vignette(
    puzzles: Sequence[BookPuzzle],
    theme: Theme,
    wide: float,
    high: float,
    columns: int,
    salt: str,
    top: Callable[[int, int], int],
    stepped: bool = False,
) -> Vignette:
    cell = wide / columns
    rows = int(high / cell)
    if rows < LEAST or not puzzles:
        return Vignette(Group((), name="ornament"), wide, 0.0)

    def shown(at: Cell) -> bool:
        return 0 <= at[0] < columns and top(at[0], rows) <= at[1] < rows

    field = Field(cell, (0, 0), (columns - 1, rows - 1), shown)
    items: list[Item] = [ornament(puzzles, theme, theme.inside, field, salt=salt)]
    if stepped:
        edge: list[Point] = []
        for column in range(columns):
            edge += [(column * cell, top(column, rows) * cell), ((column + 1) * cell, top(column, rows) * cell)]
        items.append(polyline(edge, Stroke(0.1 * cell, theme.inside.marks[0])))
    return Vignette(Group(tuple(items), name="ornament"), wide, rows * cell)
