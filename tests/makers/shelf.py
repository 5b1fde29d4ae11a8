"""The picture at the head of the README: the demo book's cover, a spread of it and a handout, drawn by bookmaker.

    python -m tests.makers.shelf

writes `demo_book/pictures/shelf.png`; a test says when that is out of date.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

from PIL import Image as Raster
from PIL import ImageDraw

from bookmaker.book import Book, make_book
from bookmaker.book.contents import Chapter
from bookmaker.book.wording import date_in_words
from bookmaker.display.items import Document, Group, Item, Link, Page
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.pixels import page_pictures
from bookmaker.language import catalogue
from bookmaker.layout import Layout, Occasion, compose, compose_cover, compose_handout, load_layout, load_theme
from bookmaker.manifest import load
from bookmaker.proof import prove_all
from bookmaker.proof.cache import Store, user_store

DEMO = Path(__file__).resolve().parents[2] / "demo_book"
PICTURE = DEMO / "pictures" / "shelf.png"

SHOWN = "puzzle weather-vane"
"""What is on one of the two pages of the spread."""

PICKED, EVENING = ("tight-moorings", "pearls"), date(2026, 3, 12)

DPI, GAP, COLOURS = 44, 26, 96
"""Pixels an inch, white between things, and colours of the file."""

TABLE, EDGE = (236, 234, 229), (150, 148, 142)


def shelf(store: Store | None = None) -> Raster.Image:
    """The picture in colour."""
    book = demo(store)
    layout = replace(load_layout("a4-book", use="book"), theme=load_theme("harbour-night"))
    pages = tuple(compose(book, layout).pages)
    at = next(at for at, page in enumerate(pages) if any(anchor.name == SHOWN for anchor in page.anchors))
    left = at - 1 if at % 2 == 0 else at
    things = [
        [_front(book, layout, len(pages))],
        [_drawn(page) for page in pages[left : left + 2]],
        [_drawn(_handout(book))],
    ]
    high = max(picture.height for thing in things for picture in thing)
    wide = sum(picture.width for thing in things for picture in thing) + GAP * (len(things) + 1)
    table = Raster.new("RGB", (wide, high + 2 * GAP), TABLE)
    pen, x = ImageDraw.Draw(table), GAP
    for thing in things:
        for picture in thing:
            y = GAP + (high - picture.height) // 2
            table.paste(picture, (x, y))
            pen.rectangle((x, y, x + picture.width - 1, y + picture.height - 1), outline=EDGE)
            x += picture.width
        x += GAP
    return table


def demo(store: Store | None = None) -> Book:
    """The demo book."""
    manifest = load(DEMO)
    return make_book(manifest, prove_all(manifest.entries, store=store), store=store)


def _drawn(page: Page) -> Raster.Image:
    alone = replace(page, items=tuple(unlinked(page.items)), anchors=())
    (picture,) = page_pictures(pdf_bytes(Document("", "", "", (alone,))), DPI, trimmed=True)
    return picture.convert("RGB")


def unlinked(items: Iterable[Item]) -> Iterator[Item]:
    """The items without links, which lead to other pages."""
    for item in items:
        if isinstance(item, Group):
            yield replace(item, items=tuple(unlinked(item.items)))
        elif not isinstance(item, Link):
            yield item


def _front(book: Book, layout: Layout, count: int) -> Raster.Image:
    """The front of the cover, at the right of its sheet."""
    (page,) = compose_cover(book, layout, count).pages
    sheet = _drawn(page)
    return sheet.crop((sheet.width - round(layout.width * DPI / 72), 0, sheet.width, sheet.height))


def _handout(book: Book) -> Page:
    """A sheet of two puzzles for an evening of the club."""
    picked = tuple(replace(puzzle, hints=None) for puzzle in book.puzzles if puzzle.id in PICKED)
    sheet = replace(book, title="Thursday at the net loft", body=(Chapter(1, "", "", picked),))
    occasion = Occasion(date=date_in_words(catalogue("en"), EVENING))
    return compose_handout(sheet, load_layout("a4-handout", use="handout"), "none", occasion).pages[0]


def main() -> None:
    """Write the picture, with few colours."""
    shelf(user_store()).quantize(COLOURS, dither=Raster.Dither.NONE).save(PICTURE, optimize=True)
    print(f"{PICTURE.name}: {PICTURE.stat().st_size // 1024} kB")


if __name__ == "__main__":
    main()
