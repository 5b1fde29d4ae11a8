"""Sheets to be filled in on a screen: the same pages with a field on each empty cell of their grids.

In: a finished document. Out: the document with fields, nothing else on its pages changed. Cells are found in the tables
that the grids are to a reader, so that fields stand in reading order, row by row; keys have none.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bookmaker.display.items import Document, Field, Group, Item, Page, Tagged, tagged
from bookmaker.display.tags import FIELD, Role, Tag
from bookmaker.language import Catalogue, catalogue
from bookmaker.layout.drawing import Pages

INSET = 0.1
"""How far a field stays inside its cell, as a share of it: the lines around it are never covered."""


def fillable(document: Document) -> Document:
    """The document, each empty cell of a puzzle's grid a field."""

    words = catalogue(document.language)

    def draw(at: int) -> Page:
        page = document.pages[at]
        return replace(page, items=_with_fields(words, page.items, ""))

    return replace(document, pages=Pages(len(document.pages), draw))


def _with_fields(words: Catalogue, items: Sequence[Item], puzzle: str) -> tuple[Item, ...]:
    """The items; `puzzle` is the id of the grid that they are part of, if any."""
    made: list[Item] = []
    for item in items:
        if isinstance(item, Tagged) and item.tag.role is Role.TABLE:
            made.append(_table(words, item, puzzle) if puzzle else item)
        elif isinstance(item, Group):
            kind, _, name = item.name.partition(" ")
            made.append(replace(item, items=_with_fields(words, item.items, name if kind == "grid" else puzzle)))
        else:
            made.append(item)
    return tuple(made)


def _table(words: Catalogue, table: Tagged, puzzle: str) -> Tagged:
    """The table of a grid: under the heads of its columns a row of cells for each row, after its own head."""
    assert table.tag.box is not None
    heads, *rows = table.items
    cell = table.tag.box[2] / len(rows)
    made: list[Item] = [heads]
    for row, line in enumerate(rows):
        assert isinstance(line, Tagged)
        head, *cells = line.items
        filled = (_cell(words, one, puzzle, row, column, len(rows), cell) for column, one in enumerate(cells))
        made.append(replace(line, items=(head, *filled)))
    return replace(table, items=tuple(made))


def _cell(words: Catalogue, item: Item, puzzle: str, row: int, column: int, size: int, cell: float) -> Item:
    assert isinstance(item, Tagged)
    if item.items:
        return item
    side, name = (1 - 2 * INSET) * cell, f"r{row + 1}c{column + 1}"
    field = Field(
        (column + INSET) * cell,
        (row + INSET) * cell,
        side,
        side,
        puzzle,
        name,
        words.say("field-at", row=str(row + 1), column=str(column + 1)),
        size,
    )
    return replace(item, items=(tagged((FIELD,), field),), tag=_CELL)


_CELL = Tag(Role.CELL)
