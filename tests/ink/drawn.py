"""Pages as pixels, by the way of their PDF."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from PIL import Image as Raster

from bookmaker.display.items import Document, Group, Item, Link, Page
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.pixels import page_pictures


def pictures(pages: Iterable[Page], dpi: float) -> Iterator[Raster.Image]:
    """Pages as grey pictures of their sheets. Their links are left out: they draw nothing, and lead to other pages."""
    plain = tuple(replace(page, items=tuple(without_links(page.items)), anchors=()) for page in pages)
    return page_pictures(pdf_bytes(Document("", "", "", plain)), dpi)


def picture(page: Page, dpi: float) -> Raster.Image:
    """One page."""
    (found,) = pictures([page], dpi)
    return found


def without_links(items: tuple[Item, ...]) -> Iterator[Item]:
    """The items, those in groups too, but for links."""
    for item in items:
        if isinstance(item, Group):
            yield replace(item, items=tuple(without_links(item.items)))
        elif not isinstance(item, Link):
            yield item
