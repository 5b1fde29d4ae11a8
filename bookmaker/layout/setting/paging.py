"""Columns onto pages: how a part of a book ends.

In: the rows of a part, how high and how many the columns of a page are. Out: pages. A last page with a few lines on it
is a leftover: its lines are pulled back where the white between rows has room for them, or get company.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import islice
from math import floor
from typing import TypeAlias

from bookmaker.layout.setting.flow import columns, filling, height
from bookmaker.layout.setting.text import Row

LEAST = 0.36
"""A last page that is filled to less than this share of its depth is a leftover."""

LARGE = 90.0
"""Rows of more points than that hold something large."""

TIGHT = 0.5
"""What is left of white rows where that saves a page."""

Columns: TypeAlias = list[tuple[Row, ...]]
"""A page: the rows of each of its columns."""


def pages(rows: Sequence[Row], depth: float, step: float, across: int = 1, top: float = 0.0) -> list[Columns]:
    """Rows on pages of `across` columns, `depth` points high and on the first page `top` points less.

    The columns of the last page are even. If it would be a leftover, white between the rows is halved if that saves the
    page, but only on pages that need it; else it shares what it has with the page before it or, where its rows are tied
    so that this does not help, all pages but the last are made shorter, `step` by `step`, until there is enough on it.
    Where nothing helps, it stays.
    """
    begun = _begun(rows, depth, step, across, top)
    plain = [page for _, page in begun]
    if across == 1 and len(plain) > 1:
        plain[-2:] = _balanced(plain[-2], plain[-1], depth if len(plain) > 2 else depth - top)
    enough = LEAST * depth
    if len(plain) < 2 or filled(plain[-1]) >= enough:
        return plain
    closer = [_scaled(row, TIGHT) for row in rows]
    tight = _begun(closer, depth, step, across, top)
    if len(tight) < len(plain):
        made = [page for _, page in tight]
        if len(made) > 1 and filled(made[-1]) < enough:
            made = _sharing(tight, closer, depth, step, across, top) or made
        return [_relaxed(page, depth if number else depth - top) for number, page in enumerate(made)]
    if shared := _sharing(begun, rows, depth, step, across, top):
        return shared
    shorter = depth - step
    while shorter >= depth - enough and len(evened := _laid(rows, shorter, step, across, top)) == len(plain):
        if filled(evened[-1]) >= enough:
            return evened
        shorter -= step
    return plain


def _sharing(
    begun: Sequence[tuple[int, Columns]], rows: Sequence[Row], depth: float, step: float, across: int, top: float
) -> list[Columns]:
    """The pages, the last two sharing what they have; none where that does not help."""
    before = [page for _, page in begun[:-2]]
    (start, _), _ = begun[-2:]
    shared = _shared(rows[start:], depth, step, across, 0.0 if before else top)
    return [*before, *shared] if shared and filled(shared[-1]) >= LEAST * depth else []


def _shared(rows: Sequence[Row], depth: float, step: float, across: int, top: float) -> list[Columns]:
    """Rows on two pages of one depth, as short as will do; none where that is no shorter than a page."""
    shorter = max(top, step * floor((height(rows) / across + top) / 2 / step))
    while shorter < depth:
        if len(found := _laid(rows, shorter, step, across, top)) == 2:
            return found
        shorter += step
    return []


def _balanced(page: Columns, last: Columns, depth: float) -> list[Columns]:
    """The last two pages of one column, as even as may be where large things stand on them, such as a row of keys: the
    first is no emptier than the last, and both hold what they held if it is the other way."""
    (rows,), (after,) = page, last
    together = [*rows, *after]
    best = page, last
    for at in _breaks(together):
        first, second = tuple(together[:at]), tuple(together[at:])
        while second and not second[0].items:
            second = second[1:]
        if second and height(second) <= _inked(first) <= depth and _inked(second) > filled(best[1]):
            best = [first], [second]
    return [*best]


def _breaks(rows: Sequence[Row]) -> list[int]:
    """Where rows may be broken: behind one that is not tied, before something that is no line of text."""
    return [at for at in range(1, len(rows)) if not rows[at - 1].tied and rows[at].height > LARGE and rows[at].items]


def filled(page: Columns) -> float:
    """How far down a page anything is shown, in points."""
    return max(map(_inked, page))


def _laid(rows: Sequence[Row], depth: float, step: float, across: int, top: float) -> list[Columns]:
    return [page for _, page in _begun(rows, depth, step, across, top)]


def _begun(rows: Sequence[Row], depth: float, step: float, across: int, top: float) -> list[tuple[int, Columns]]:
    """The pages, each with the row it begins with."""
    made: list[tuple[int, Columns]] = []
    start, more = 0, bool(rows)
    while more:
        found = [*islice(filling(rows, start, depth if made else depth - top), across + 1)]
        page, begins = [column for column, _ in found[:across]], start
        more = len(found) > across
        if more:
            start = found[across - 1][1]
        else:
            page = _even(rows[begins:], step, across)  # with the white at the foot of columns, which is not in `page`
        made.append((begins, page))
    return made


def _even(rows: Sequence[Row], step: float, across: int) -> Columns:
    """Rows in columns as short as will do."""
    depth = height(rows) / across
    while len(found := columns(rows, depth)) > across:
        depth += step / 2
    return found


def _inked(rows: Sequence[Row]) -> float:
    """Height of rows stacked, without the white under the last that shows anything."""
    last = max((at for at, row in enumerate(rows) if row.items), default=-1)
    return height(rows[: last + 1])


def _scaled(row: Row, share: float) -> Row:
    """The row; if it is white between others, higher or lower. That under a heading is tied, and stays."""
    return row if row.items or row.tied else replace(row, height=share * row.height)


def _relaxed(page: Columns, depth: float) -> Columns:
    """A tight page with its white as it was, if it fits."""
    wide = [tuple(_scaled(row, 1 / TIGHT) for row in column) for column in page]
    return wide if filled(wide) <= depth + 0.01 else page
