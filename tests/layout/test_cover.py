"""Covers and codes: measured, and read back from a rendering by zxing-cpp, which has no part in making them.

The ISBN is the example of the ISBN Users' Manual, 978-0-11-000222-4. Spine: two pages to a leaf.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from io import BytesIO

import pytest
import zxingcpp
from PIL import Image

from bookmaker.book.model import Book
from bookmaker.display.items import Group, Item, Page, Rect, Text
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import compose, compose_cover, layout_names, load_layout, press_sheets
from bookmaker.layout.art.codes import MODULE, barcode
from bookmaker.layout.art.titleart import title_art
from bookmaker.layout.lengths import mm
from bookmaker.layout.sheets.cover import spine_width
from bookmaker.manifest.limits import LINE
from bookmaker.manifest.markup import Run
from bookmaker.manifest.pictures import Picture
from bookmaker.manifest.publication import Cover
from bookmaker.trouble import BookTroubles, Place
from tests.ink.drawn import picture
from tests.layout.flat import flat
from tests.layout.sample_book import full_book, picked

LAYOUTS = ("a4-book", "half-letter-book", "a4-large-print")


def png(width: int, height: int) -> Picture:
    file = BytesIO()
    Image.new("RGB", (width, height), "teal").save(file, "PNG")
    return Picture(file.getvalue(), width, height, Place("book.yaml", 9, 12), "quay.png")


def covered(cover: Cover) -> Book:
    book = full_book()
    return replace(book, publication=replace(book.publication, cover=cover))


def codes_on(page: Page) -> dict[str, str]:
    found = zxingcpp.read_barcodes(picture(page, 300))
    return {str(code.format): code.text for code in found}


def groups(items: Iterable[Item]) -> Iterator[Group]:
    for item in items:
        if isinstance(item, Group):
            yield item
            yield from groups(item.items)


@pytest.mark.parametrize("name", LAYOUTS)
def test_both_codes_of_a_cover_are_read_back(name: str) -> None:
    (page,) = compose_cover(full_book(), load_layout(name), 64).pages
    assert sorted(codes_on(page).values()) == ["9780110002224", "https://example.org/attic"]


def test_a_barcode_has_the_nominal_size_and_bars_of_whole_modules() -> None:
    """GS1 General Specifications: 95 modules of 0.33 mm, bars 22.85 mm high; an EAN-13 has 30 bars."""
    bars = [item for item in barcode("9780110002224").items if isinstance(item, Rect)]
    assert len(bars) == 30
    assert bars[-1].x + bars[-1].width == pytest.approx(mm(31.35))
    assert min(bar.height for bar in bars) == pytest.approx(mm(22.85))
    for bar in bars:
        assert round(bar.width / MODULE) in (1, 2, 3, 4) and bar.width / MODULE == pytest.approx(
            round(bar.width / MODULE)
        )


@pytest.mark.parametrize("name", LAYOUTS)
def test_the_sheet_is_two_pages_and_a_spine_wide(name: str) -> None:
    layout = load_layout(name)
    document = compose_cover(covered(Cover(leaf=0.12)), layout, 201)
    (page,) = document.pages
    assert spine_width(201, 0.12) == pytest.approx(mm(101 * 0.12))
    assert page.width == pytest.approx(2 * layout.width + mm(12.12), abs=0.01)
    assert page.height == layout.height
    (pressed,) = press_sheets(document, layout).pages
    assert pressed.bleed == layout.press.bleed
    (band,) = (item for item in page.items if isinstance(item, Rect))
    assert band.x == -layout.press.bleed and band.x + band.width == pytest.approx(page.width + layout.press.bleed)


def test_only_a_thick_spine_is_lettered() -> None:
    layout = load_layout("a5-book")
    turned = [
        [group for group in groups(compose_cover(full_book(), layout, pages).pages[0].items) if group.turn]
        for pages in (64, 160)
    ]
    assert [len(found) for found in turned] == [0, 1]
    (text,) = turned[1][0].items
    assert isinstance(text, Text) and text.text == full_book().title


def test_the_cover_of_a_draft_says_so() -> None:
    layout = load_layout("a5-book")

    def stamps(book: Book) -> list[Text]:
        (page,) = compose_cover(book, layout, 64).pages
        return [item for item in page.items if isinstance(item, Text) and item.text == "DRAFT"]

    (stamp,) = stamps(replace(full_book(), draft=True))
    assert stamp.x > layout.width + spine_width(64, 0.1), "it stands on the front"
    assert not stamps(full_book())


def test_a_fine_picture_takes_the_place_of_the_art_and_is_grey_in_the_file() -> None:
    layout = load_layout("a5-book")
    document = compose_cover(covered(Cover(((Run("Rain."),),), png(1900, 1800))), layout, 64)
    names = {group.name for group in groups(document.pages[0].items)}
    assert "picture" in names and "title art" not in names
    assert b"/DeviceRGB" not in pdf_bytes(document)


def test_a_coarse_picture_is_refused_with_what_it_would_need() -> None:
    with pytest.raises(BookTroubles) as caught:
        compose_cover(covered(Cover(picture=png(640, 480))), load_layout("a5-book"), 64)
    (trouble,) = caught.value.troubles
    assert (trouble.code, trouble.place.line) == ("picture-coarse", 9)
    assert "“quay.png” is too coarse for the cover" in trouble.text and "print needs 300" in trouble.text
    assert "640 by 480" in trouble.hint


@pytest.mark.parametrize("name", ["a4-book", "a4-book-two", "a4-book-four", "letter-book-six", "a5-book"])
def test_the_code_of_a_puzzles_link_stands_with_it(name: str) -> None:
    book = picked("kettle")
    linked = replace(book.puzzles[0], link="https://example.org/kettle")
    chapter = replace(book.chapters[0], puzzles=(linked,))
    body = tuple(chapter if part is book.chapters[0] else part for part in book.body)
    document = compose(replace(book, body=body), load_layout(name))
    page = next(page for page in document.pages if any(a.name == "puzzle kettle" for a in page.anchors))
    assert list(codes_on(page).values()) == ["https://example.org/kettle"]


@pytest.mark.parametrize("name", [name for name in layout_names() if load_layout(name).use == "book"])
@pytest.mark.parametrize("word", ["Long ", "Wandering weather ", "x"])
def test_the_longest_titles_keep_clear_of_the_art(name: str, word: str) -> None:
    layout = load_layout(name)
    words = (LINE * word)[:LINE].strip()
    book = replace(full_book(), title=words, subtitle=words)
    cover = compose_cover(book, layout, 40).pages[0]
    title = next(page for page in compose(book, layout).pages if any(a.name == "title" for a in page.anchors))
    for page in (cover, title):
        items = flat(page)
        lines = [one.box[3] for one in items if isinstance(one.item, Text) and one.item.text.rstrip("-") in words]
        peak = min((one.box[1] for one in items if one.inside("title art")), default=page.height)
        assert len(lines) > 4 and max(lines) < peak


def test_where_there_is_no_room_for_a_ridge_there_is_none() -> None:
    assert title_art(full_book(), 300.0, 50.0).items == ()
    assert title_art(full_book(), 300.0, -5.0).items == ()
