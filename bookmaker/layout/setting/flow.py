"""Rows into columns: where a long text breaks from page to page.

In: rows, and how high a column is. Out: the rows of each column. Tied rows are never parted, so headings keep their
text and paragraphs leave no single line behind. Space at the top of a column is dropped. A last page with a few lines
on it is a leftover: its lines are pulled back where the white between rows has room for them, or get company.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from typing import TypeVar

from bookmaker.display.items import Group, Item
from bookmaker.layout.setting.text import Labels, Row

LEAST = 0.25
"""A last page that is filled to less than this share of its depth is a leftover."""

TIGHT = 0.5
"""What is left of white rows where that saves a page."""

_Page = TypeVar("_Page")


def height(rows: Iterable[Row]) -> float:
    """Height of rows stacked."""
    return sum(row.height for row in rows)


def inked(rows: Sequence[Row]) -> float:
    """Height of rows stacked, without the white under the last that shows anything."""
    last = max((at for at, row in enumerate(rows) if row.items), default=-1)
    return height(rows[: last + 1])


def stacked(rows: Iterable[Row], x: float, y: float, labels: Labels) -> Iterator[Item]:
    """The items of rows, one below the other from a point down."""
    for row in rows:
        if row.items:
            yield Group(tuple(row.drawn(labels)), x, y)
        y += row.height


def columns(rows: Iterable[Row], depth: float) -> list[tuple[Row, ...]]:
    """Rows in columns of at most `depth` points; a bundle of tied rows higher than that has a column of its own."""
    filled: list[tuple[Row, ...]] = []
    column: list[Row] = []
    for bundle in _bundles(rows):
        if column and height(column) + height(bundle) > depth + 0.01:
            filled.append(tuple(column))
            column = []
        if column or any(row.items for row in bundle):
            column.extend(bundle)
    if column:
        filled.append(tuple(column))
    return filled


def without_leftover(
    rows: Sequence[Row],
    depth: float,
    step: float,
    laid: Callable[[Sequence[Row], float], list[_Page]],
    filled: Callable[[_Page], float],
) -> list[_Page]:
    """Rows on pages of `depth` points, as `laid` lays them, the last of them `filled` to a fair share.

    If it would be a leftover, white between the rows is taken away if that saves the page; else all pages but the last
    are made shorter, `step` by `step`, until there is enough on it. Where neither helps, it stays.
    """
    pages = laid(rows, depth)
    enough = LEAST * depth
    if len(pages) < 2 or filled(pages[-1]) >= enough:
        return pages
    tight = laid([replace(row, height=TIGHT * row.height) if _white(row) else row for row in rows], depth)
    if len(tight) < len(pages):
        return tight
    shorter = depth - step
    while shorter >= depth - enough and len(evened := laid(rows, shorter)) == len(pages):
        if filled(evened[-1]) >= enough:
            return evened
        shorter -= step
    return pages


def _white(row: Row) -> bool:
    """Is it white that may be less? That under a heading is tied, and stays."""
    return not row.items and not row.tied


def _bundles(rows: Iterable[Row]) -> Iterator[list[Row]]:
    bundle: list[Row] = []
    for row in rows:
        bundle.append(row)
        if not row.tied:
            yield bundle
            bundle = []
    if bundle:
        yield bundle
