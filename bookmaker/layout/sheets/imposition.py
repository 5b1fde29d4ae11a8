"""Booklets: the pages of a book, two to a side, so that the sheets can be printed on both sides, folded and stitched.

In: a finished document and its layout. Out: the sides of the sheets, front and back in turn, each page a group on the
half where it belongs; links and bookmarks stay behind. The sheets turn over on their short edge.

A signature is a bundle of sheets folded into each other. In it the inner sheets stick out at the front and lose that
much when the edge is cut: creep. Their pages are therefore set nearer to the fold, by one thickness of the paper for
every sheet around them (common practice of the trade, no source).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bookmaker.display.items import Document, Group, Item, Link, Page, Rect
from bookmaker.layout.drawing import Pages
from bookmaker.layout.page_side import BLANK, PageSide
from bookmaker.layout.pages.notes import note_pages
from bookmaker.layout.spec import Booklet, Layout


@dataclass(frozen=True, slots=True)
class Side:
    """One side of a sheet: the pages on its halves, counted from 1, and how many sheets lie around the sheet."""

    left: int
    right: int
    around: int


def signatures(pages: int, most: int) -> list[int]:
    """How many sheets each signature has, at most `most` pages in one: as equal as can be, the thicker ones first."""
    sheets = -(-pages // 4)
    bundles = -(-sheets // (most // 4))
    return [sheets // bundles + (bundle < sheets % bundles) for bundle in range(bundles)]


def sides(pages: int, most: int) -> Iterator[Side]:
    """Front and back of every sheet, from the outermost of the first signature on; `pages` is a multiple of four."""
    first = 1
    for sheets in signatures(pages, most):
        last = first + 4 * sheets - 1
        for around in range(sheets):
            yield Side(last - 2 * around, first + 2 * around, around)
            yield Side(first + 2 * around + 1, last - 2 * around - 1, around)
        first = last + 1


def impose(document: Document, layout: Layout) -> Document:
    """The sides of the booklet's sheets. Pages for notes fill the last sheet; the outermost page then stays blank."""
    booklet = sheets_of(layout)
    count = len(document.pages)
    filling = [*_filling(-count % 4, layout.speaking(document.language), count)]
    listed = [*sides(count + len(filling), booklet.signature)]

    def half(number: int, around: int, left: bool) -> Group:
        page = document.pages[number - 1] if number <= count else filling[number - 1 - count]
        return _placed(page, booklet, around, left)

    def draw(at: int) -> Page:
        side = listed[at]
        halves = half(side.left, side.around, left=True), half(side.right, side.around, left=False)
        return Page(booklet.width, booklet.height, halves, f"{at // 2 + 1}{'b' if at % 2 else 'a'}")

    return replace(document, pages=Pages(len(listed), draw), bookmarks=(), folded=True)


def sheets_of(layout: Layout) -> Booklet:
    """The sheets a layout names; two of its pages side by side where it names none."""
    return layout.booklet or Booklet(2 * layout.width, layout.height)


def _placed(page: Page, booklet: Booklet, around: int, left: bool) -> Group:
    """The page on its half of the sheet, its spine at the fold, nothing of it beyond the fold."""
    fold, creep = booklet.width / 2, around * booklet.thickness
    x = fold - page.width + creep if left else fold - creep
    y = (booklet.height - page.height) / 2
    half = Rect(-x if left else creep, -y, fold, booklet.height)
    return Group(tuple(_without_links(page.items)), x, y, clip=half, name=f"page {page.label}" if page.label else "")


def _without_links(items: tuple[Item, ...]) -> Iterator[Item]:
    for item in items:
        if isinstance(item, Group):
            yield replace(item, items=tuple(_without_links(item.items)))
        elif not isinstance(item, Link):
            yield item


def _filling(count: int, layout: Layout, after: int) -> Iterator[Page]:
    """Pages ruled for notes, and a blank one where the booklet ends."""
    leaves = [*note_pages(count - 1, layout.say("heading-notes"), layout), BLANK] if count else []
    for number, leaf in enumerate(leaves, start=after + 1):
        items = leaf.draw(PageSide(layout, right=number % 2 == 1), {})
        yield Page(layout.width, layout.height, items, "")
