"""Solution keys: small grids, several to a page, each with its number, its title and the way back to its puzzle.

In: the puzzles of a book. Out: rows of keys, for the pages at the back, a key on its own or a handout's last page.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from math import ceil

from bookmaker.book.model import BookPuzzle
from bookmaker.display.items import Group, Item, Text
from bookmaker.layout.gridart import draw_grid
from bookmaker.layout.lengths import mm
from bookmaker.layout.spec import Layout
from bookmaker.layout.text import DROP, PageNumber, Row, broken, width

GUTTER = mm(8)
"""White space between keys, in points."""


@dataclass(frozen=True, slots=True)
class Key:
    """A key measured: it takes `span` columns, with cells of `cell` points."""

    puzzle: BookPuzzle
    span: int
    cell: float

    @property
    def side(self) -> float:
        return self.puzzle.puzzle.grid.size * self.cell


def key_rows(puzzles: Iterable[BookPuzzle], layout: Layout) -> Iterator[Row]:
    """Keys in order, as many across as the layout says, each row of them one `Row`."""
    column = (layout.measure - (layout.keys.columns - 1) * GUTTER) / layout.keys.columns
    row: list[Key] = []
    for puzzle in puzzles:
        key = _measured(puzzle, layout, column)
        if sum(other.span for other in row) + key.span > layout.keys.columns:
            yield _row(row, layout, column)
            row = []
        row.append(key)
    if row:
        yield _row(row, layout, column)


def _measured(puzzle: BookPuzzle, layout: Layout, column: float) -> Key:
    """A large grid takes more columns, so that its digits come out about as large as those of the others."""
    size = puzzle.puzzle.grid.size
    wanted = 0.8 * min(layout.keys.cell, column / 9)
    span = min(layout.keys.columns, ceil((wanted * size + GUTTER) / (column + GUTTER)))
    room = span * column + (span - 1) * GUTTER
    return Key(puzzle, span, min(layout.keys.cell, room / size))


def _row(keys: list[Key], layout: Layout, column: float) -> Row:
    line = layout.line
    tallest = max(key.side for key in keys)
    items: list[Item | PageNumber] = []
    x = 0.0
    for key in keys:
        room = key.span * column + (key.span - 1) * GUTTER
        items += _caption(key, layout, x, room)
        drawn = draw_grid(key.puzzle.puzzle, key.cell, f"key {key.puzzle.id}", key.puzzle.solution or (), marks=False)
        items.append(Group((drawn,), x, 1.4 * line))
        items += _foot(key, layout, x)
        x += room + GUTTER
    deep = 1.4 * line + tallest + 2.6 * line
    return Row(ceil(deep / line) * line, tuple(items), anchors=tuple(f"key {key.puzzle.id}" for key in keys))


def _caption(key: Key, layout: Layout, x: float, room: float) -> Iterator[Item]:
    """Number and title over a key; a title too long for its column ends in an ellipsis."""
    small, puzzle = layout.type.small, key.puzzle
    base = (1 - DROP) * layout.line
    number = Text(x, base, str(puzzle.number), "sans-bold", small.size)
    yield number
    indent = width(f"{puzzle.number}  ", small)
    lines = broken(puzzle.title, small.font, small.size, room - indent)
    words = lines[0] if len(lines) == 1 else lines[0].rstrip(" ,;:–") + " …"
    yield Text(x + indent, base, words, small.font, small.size)


def _foot(key: Key, layout: Layout, x: float) -> Iterator[Item | PageNumber]:
    base = 1.4 * layout.line + key.side + layout.line
    label = layout.type.label
    if key.puzzle.flaw:
        yield Text(x, base, key.puzzle.flaw, label.font, label.size)
    yield PageNumber(x + key.side, base, "page ", f"puzzle {key.puzzle.id}", label, 0.25)
