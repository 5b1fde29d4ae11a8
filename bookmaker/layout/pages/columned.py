"""Pages of columns: short entries such as hints, contents and names, as many columns as have room beside each other.

In: a head over all columns of the first page, rows as wide as a column, a layout. Out: pages; the columns of the last
one are even.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bookmaker.display.items import Item
from bookmaker.layout.lengths import mm
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.paging import pages
from bookmaker.layout.setting.text import Labels, Row
from bookmaker.layout.spec import Layout

GUTTER = mm(8)
"""White space between two columns."""


@dataclass(frozen=True, slots=True)
class Columns:
    """How many columns, and how wide each is in points."""

    across: int
    wide: float


def columns_of(layout: Layout, ems: float, most: int = 9) -> Columns:
    """As many columns of at least so many ems of small type as the type area holds."""
    across = max(1, min(most, int((layout.measure + GUTTER) / (ems * layout.type.small.size + GUTTER))))
    return Columns(across, (layout.measure - (across - 1) * GUTTER) / across)


def columned(
    head: Sequence[Row],
    rows: Sequence[Row],
    layout: Layout,
    grid: Columns,
    running: str,
    anchors: Sequence[str],
) -> Iterator[UnnumberedPage]:
    """The pages. `anchors` lead to the first, which has no running head."""
    top = height(head)
    for number, page in enumerate(pages(rows, layout.depth, layout.line, grid.across, top)):
        named = [] if number else [(name, layout.margins.top) for name in anchors]
        above = 0.0 if number else top
        named += [] if number else [(name, layout.margins.top + y) for name, y in _anchors(head)]
        named += [(name, layout.margins.top + above + y) for column in page for name, y in _anchors(column)]
        if number:
            yield _page((), page, grid, running, tuple(named))
        else:
            yield _page(head, page, grid, "", tuple(named))


def _anchors(column: Sequence[Row]) -> Iterator[tuple[str, float]]:
    y = 0.0
    for row in column:
        yield from ((name, y) for name in row.anchors)
        y += row.height


def _page(
    head: Sequence[Row],
    page: Sequence[Sequence[Row]],
    grid: Columns,
    running: str,
    anchors: tuple[tuple[str, float], ...],
) -> UnnumberedPage:
    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        items = [*stacked(head, sheet.x, sheet.y, labels)]
        for at, column in enumerate(page):
            items += stacked(column, sheet.x + at * (grid.wide + GUTTER), sheet.y + height(head), labels)
        return tuple(items)

    return UnnumberedPage(draw, anchors, running)
