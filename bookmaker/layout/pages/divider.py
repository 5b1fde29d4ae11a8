"""The page before a part at the back of a book that has chapters: the part's name under ornament of all its puzzles.

Nobody who leafs through the puzzles comes upon the keys behind it unawares. The part's own heading follows on the next
page; to a reader who does not see it, this one is not there.
"""

from __future__ import annotations

from bookmaker.book.contents import Book
from bookmaker.display.items import Group, Item, Text
from bookmaker.layout.art.vignette import rise
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.setting.text import Labels, broken
from bookmaker.layout.spec import Layout
from bookmaker.layout.themefile import worn

CELLS = 18
"""Cells of the ornament across the page."""

FOOT = 0.62
"""Where the ornament ends, as a share of the depth; the name stands under it."""


def divider_leaf(title: str, book: Book, layout: Layout) -> UnnumberedPage:
    """The page, without a running head or a number."""
    drawn = rise(book.puzzles, worn(layout), layout.measure, 0.5 * layout.depth, CELLS, title)

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        base, type = sheet.y + FOOT * layout.depth, layout.type.display
        words = broken(title, type.font, type.size, layout.measure)[0]
        name = Text(sheet.x, base + 1.3 * type.size, words, type.font, type.size)
        return Group((drawn.art,), sheet.x, base - drawn.high), name

    return UnnumberedPage(draw, bare=True)
