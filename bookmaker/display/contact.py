"""A contact sheet: all pages small, side by side as they face each other in the book.

In: pages. Out: one page that holds them, to be drawn as PNG or SVG (links lead nowhere on it).
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.display.items import Group, Item, Page, Rect, Stroke, Text

_GAP = 14.0
_LABEL = 7.0
_FONT = "sans"


def contact_sheet(pages: Sequence[Page], across: int = 8, scale: float = 0.2) -> Page:
    """The pages at `scale`, `across` (an even number) in a row, the first on the right-hand side of its pair.

    Labels stand under the pages. Raises ValueError if there is no page or `across` is odd.
    """
    if not pages or across < 2 or across % 2:
        raise ValueError("a contact sheet takes at least one page and an even number of pages across")
    width = max(page.width for page in pages) * scale
    height = max(page.height for page in pages) * scale
    down = height + _GAP + _LABEL
    items: list[Item] = []
    for number, page in enumerate(pages, start=1):
        row, column = divmod(number, across)
        # the two pages of a pair touch
        x, y = _GAP + column * width + column // 2 * _GAP, _GAP + row * down
        trim = Rect(0, 0, page.width, page.height)
        items.append(Group(page.items, x, y, scale, clip=trim))
        items.append(Rect(x, y, page.width * scale, page.height * scale, Stroke(0.25, 0.5)))
        label = page.label or "–"
        items.append(Text(x + page.width * scale / 2, y + height + _LABEL + 2, label, _FONT, _LABEL, 0.3, "middle"))
    rows = len(pages) // across + 1
    return Page(_GAP + across * width + across // 2 * _GAP, _GAP + rows * down, tuple(items), "")


def picture_page(items: tuple[Item, ...], width: float, height: float, margin: float = 6.0) -> Page:
    """A page just large enough for a drawing of this size whose top left corner is the origin."""
    return Page(width + 2 * margin, height + 2 * margin, (Group(items, margin, margin),), "")
