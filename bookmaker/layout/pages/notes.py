"""Ruled pages for the reader's notes, as many as the fold of the sheets leaves over."""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.display.items import Item, Line, Stroke
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.pages.parts import heading
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import Labels
from bookmaker.layout.spec import Layout

RULE = Stroke(0.25, 0.5)
STEP = 2
"""Lines of text between two rules: room for a pencil."""


def note_pages(count: int, title: str, layout: Layout) -> list[UnnumberedPage]:
    """So many pages; the first has the heading."""
    return [_leaf(title if at == 0 else "", layout, "notes" if at == 0 else "", title) for at in range(count)]


def _leaf(title: str, layout: Layout, anchor: str, head: str) -> UnnumberedPage:
    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        rows = heading(title, layout) if title else ()
        below = height(rows) + (0 if title else STEP) * layout.line
        return (*stacked(rows, sheet.x, sheet.y, labels), *ruled(sheet, below))

    return UnnumberedPage(draw, ((anchor, layout.margins.top),) if anchor else (), "" if title else head)


def ruled(sheet: PageSide, below: float) -> Iterator[Line]:
    """Rules from so many points below the top of the type area down to its foot."""
    layout, step = sheet.layout, STEP * sheet.layout.line
    for at in range(int((layout.depth - below + 0.01) // step) + 1):
        y = sheet.y + below + at * step
        yield Line((sheet.x, y), (sheet.x + layout.measure, y), RULE)
