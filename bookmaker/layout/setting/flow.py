"""Rows into columns: where a long text breaks from page to page.

In: rows, and how high a column is. Out: the rows of each column. Tied rows are never separated, so headings keep their
text and paragraphs leave no single line behind. Space at the top of a column is dropped.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from bookmaker.display.items import Group, Item
from bookmaker.layout.setting.text import Labels, Row


def height(rows: Iterable[Row]) -> float:
    """Height of rows stacked."""
    return sum(row.height for row in rows)


def stacked(rows: Iterable[Row], x: float, y: float, labels: Labels) -> Iterator[Item]:
    """The items of rows, one below the other from a point down."""
    for row in rows:
        if row.items:
            yield Group(tuple(row.drawn(labels)), x, y)
        y += row.height


def columns(rows: Iterable[Row], depth: float) -> list[tuple[Row, ...]]:
    """Rows in columns of at most `depth` points; a bundle of tied rows higher than that has a column of its own."""
    return [column for column, _ in filling([*rows], 0, depth)]


def filling(rows: Sequence[Row], start: int, depth: float) -> Iterator[tuple[tuple[Row, ...], int]]:
    """The same columns one by one, beginning with the row `start`; each with the row after it."""
    column: list[Row] = []
    high, after = 0.0, start
    for bundle in _bundles(rows[at] for at in range(start, len(rows))):
        if column and high + height(bundle) > depth + 0.01:
            yield tuple(column), after
            column, high = [], 0.0
        if column or any(row.items for row in bundle):
            column += bundle
            for row in bundle:
                high += row.height
        after += len(bundle)
    if column:
        yield tuple(column), after


def _bundles(rows: Iterable[Row]) -> Iterator[list[Row]]:
    bundle: list[Row] = []
    for row in rows:
        bundle.append(row)
        if not row.tied:
            yield bundle
            bundle = []
    if bundle:
        yield bundle
