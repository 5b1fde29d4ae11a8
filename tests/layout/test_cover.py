"""Covers and codes: measured, and read back from a rendering by zxing-cpp, which has no part in making them.

The ISBN is the example of the ISBN Users' Manual, 978-0-11-000222-4. Spine: two pages to a leaf.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date
from io import BytesIO

import pytest
import zxingcpp
from PIL import Image as Raster

from bookmaker.book.contents import Book
from bookmaker.display.items import Group, Image, Item, Link, Page, Rect, Text
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import (
    compose,
    compose_cover,
    layout_names,
    load_layout,
    load_theme,
    press_sheets,
    theme_names,
    thin_spine,
)
from bookmaker.layout.art.codes import MODULE, barcode
from bookmaker.layout.art.vignette import rise
from bookmaker.layout.lengths import mm
from bookmaker.layout.sheets.cover import spine_width
from bookmaker.manifest.markup import Run
from bookmaker.manifest.pictures import Picture
from bookmaker.manifest.publication import Cover
from bookmaker.source.diagnostics import BookErrors, Place
from bookmaker.source.file_limits import LINE
from tests.ink.drawn import picture
from tests.layout.flat import flat
from tests.layout.sample_book import full_book, picked

LAYOUTS = ("a4-book", "half-letter-book", "a4-large-print")


def png(width: int, height: int) -> Picture:
    file = BytesIO()
    Raster.new("RGB", (width, height), "teal").save(file, "PNG")
    return Picture(file.getvalue(), width, height, Place("book.yaml", 9, 12), "quay.png")


def covered(cover: Cover) -> Book:
    book = full_book()
    return replace(book, cover=cover)


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


def test_the_code_of_the_books_link_is_a_link_on_a_screen() -> None:
    (page,) = compose_cover(full_book(), load_layout("a5-book"), 64).pages
    (link,) = (one for one in flat(page) if isinstance(one.item, Link))
    assert link.item.outward and link.item.target == full_book().link
    left, top, right, bottom = link.box
    corners = (left - 6, top - 6), (right + 6, bottom + 6)
    (x, y), (across, down) = ((round(a * 300 / 72), round(b * 300 / 72)) for a, b in corners)
    square = picture(page, 300).crop((x, y, across, down))
    assert [code.text for code in zxingcpp.read_barcodes(square)] == [full_book().link]


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
    sheet, bleed = page.items[0], layout.press.bleed
    assert isinstance(sheet, Rect) and (sheet.x, sheet.y) == (-bleed, -bleed)
    assert (sheet.width, sheet.height) == pytest.approx((page.width + 2 * bleed, page.height + 2 * bleed))


@pytest.mark.parametrize("theme", theme_names())
def test_ornament_wraps_the_spine_and_runs_beyond_the_trim(theme: str) -> None:
    """Of a thin cover the art lies over the fold; at the foot and the outer edges it reaches into the bleed."""
    layout = replace(load_layout("a5-book"), theme=load_theme(theme))
    (page,) = compose_cover(full_book(), layout, 40).pages
    (art,) = (group for group in groups(page.items) if group.name == "cover art")
    assert isinstance(art.clip, Rect) and art.clip.x == -layout.press.bleed
    boxes = [one.box for one in flat(Page(page.width, page.height, (replace(art, clip=None),), ""))]
    assert min(box[0] for box in boxes) < 0 and max(box[2] for box in boxes) > page.width
    assert max(box[3] for box in boxes) > page.height
    fold = layout.width
    assert any(box[0] < fold + 40 and box[2] > fold - 40 for box in boxes)


@pytest.mark.parametrize("theme", theme_names())
@pytest.mark.parametrize("name", LAYOUTS)
def test_no_ornament_lies_under_words(name: str, theme: str) -> None:
    layout = replace(load_layout(name), theme=load_theme(theme))
    (page,) = compose_cover(full_book(), layout, 200).pages
    upright = replace(page, items=tuple(without_turned(page.items)))
    marks, words = [], []
    for one in flat(upright):
        if one.inside("ornament"):
            marks.append(one.box)
        elif isinstance(one.item, Text):
            words.append(one.box)
    assert len(words) > 10 and len(marks) > 10
    for left, top, right, bottom in words:
        assert not any(left < r and right > x and top < b and bottom > y for x, y, r, b in marks)


@pytest.mark.parametrize("theme", theme_names())
def test_codes_are_read_on_every_ground(theme: str) -> None:
    layout = replace(load_layout("a5-book"), theme=load_theme(theme))
    (page,) = compose_cover(full_book(), layout, 64).pages
    assert sorted(codes_on(page).values()) == ["9780110002224", "https://example.org/attic"]


def test_the_barcode_stands_on_white_with_its_margins() -> None:
    """GS1 General Specifications: 11 modules of white at the left of an EAN-13 and 7 at the right."""
    layout = replace(load_layout("a5-book"), theme=load_theme("harbour-night"))
    (page,) = compose_cover(full_book(), layout, 64).pages
    (code,) = (
        group for group in page.items if isinstance(group, Group) and group.items and "barcode" in inner_name(group)
    )
    card = max(
        (item for item in page.items if isinstance(item, Rect) and item.fill == 1.0), key=lambda item: item.width
    )
    assert code.dx - 11 * MODULE >= card.x
    assert code.dx + (95 + 7) * MODULE <= card.x + card.width
    others = [one.box for one in flat(page) if isinstance(one.item, Text) and not one.inside("barcode")]
    quiet = (code.dx - 11 * MODULE, code.dy, code.dx + 102 * MODULE, code.dy + mm(22.85))
    assert not any(
        box[0] < quiet[2] and box[2] > quiet[0] and box[1] < quiet[3] and box[3] > quiet[1] for box in others
    )


def inner_name(group: Group) -> str:
    return group.items[0].name if isinstance(group.items[0], Group) else ""


def without_turned(items: tuple[Item, ...]) -> Iterator[Item]:
    for item in items:
        if isinstance(item, Group):
            if item.turn not in (0.0, 180.0):
                continue
            item = replace(item, items=tuple(without_turned(item.items)), clip=None)
        yield item


def test_the_back_tells_how_hard_the_puzzles_are_and_of_what_kinds() -> None:
    book = covered(Cover(price="£ 9.50", category="Puzzles"))
    (page,) = compose_cover(book, load_layout("a4-book"), 64).pages
    texts = [
        one.item.text
        for one in flat(replace(page, items=tuple(without_turned(page.items))))
        if isinstance(one.item, Text)
    ]
    counts = Counter(puzzle.rating.band for puzzle in book.puzzles)
    for band, name in enumerate(book.band_names, start=1):
        at = texts.index(name)
        assert texts[at + 1] == str(counts[band])
    assert {"£ 9.50", "Puzzles", str(len(book.puzzles))} <= set(texts)
    titles = {rule.title for puzzle in book.puzzles for rule in puzzle.puzzle.rules}
    assert len(titles & set(texts)) >= 2


def test_the_sample_is_the_puzzle_that_is_named() -> None:
    book = full_book()
    for puzzle in (book.puzzles[1], book.puzzles[-1]):
        (page,) = compose_cover(covered(Cover(sample=puzzle.id)), load_layout("a4-book"), 64).pages
        assert f"No. {puzzle.number}: " in " ".join(said(page))


def said(page: Page) -> list[str]:
    return [
        one.item.text
        for one in flat(replace(page, items=tuple(without_turned(page.items))))
        if isinstance(one.item, Text)
    ]


def test_a_spine_too_thin_for_words_is_told() -> None:
    thin = thin_spine(full_book(), 64)
    assert thin is not None and thin.warning and "3.2 mm" in thin.text
    assert thin_spine(full_book(), 160) is None


def test_only_a_thick_spine_is_lettered() -> None:
    layout = load_layout("a5-book")
    turned = [
        [group for group in groups(compose_cover(full_book(), layout, pages).pages[0].items) if group.turn]
        for pages in (64, 160)
    ]
    assert [len(found) for found in turned] == [0, 2]
    texts = [item.text for group in turned[1] for item in group.items if isinstance(item, Text)]
    assert texts == [full_book().title, full_book().editor]


def test_the_cover_of_a_draft_says_so() -> None:
    layout = load_layout("a5-book")

    def stamps(book: Book) -> list[Text]:
        (page,) = compose_cover(book, layout, 64).pages
        return [item for item in page.items if isinstance(item, Text) and item.text == "DRAFT"]

    (stamp,) = stamps(replace(full_book(), draft=True))
    assert stamp.x > layout.width + spine_width(64, 0.1), "it stands on the front"
    assert not stamps(full_book())


def test_a_fine_picture_stands_on_the_front_and_keeps_its_colour() -> None:
    layout = load_layout("a5-book")
    document = compose_cover(covered(Cover(((Run("Rain."),),), png(1900, 2000))), layout, 64)
    (group,) = (group for group in groups(document.pages[0].items) if group.name == "picture")
    assert isinstance(group.clip, Rect) and group.clip.x + group.clip.width > document.pages[0].width
    assert b"/DeviceRGB" in pdf_bytes(document)
    dated = replace(document, created=date(2026, 3, 14))
    assert b"/DeviceCMYK" in pdf_bytes(dated, press=True) and b"/DeviceRGB" not in pdf_bytes(dated, press=True)


@pytest.mark.parametrize(("focus", "ends"), [((0.0, 0.5), 0), ((1.0, 0.5), 1), ((0.5, 0.5), None)])
def test_a_picture_is_cut_around_its_focus(focus: tuple[float, float], ends: int | None) -> None:
    layout = load_layout("a5-book")
    (page,) = compose_cover(covered(Cover(picture=png(5000, 2200), focus=focus)), layout, 64).pages
    (group,) = (group for group in groups(page.items) if group.name == "picture")
    (image,) = group.items
    clip = group.clip
    assert isinstance(image, Image) and isinstance(clip, Rect)
    beyond = (clip.x - image.x, image.x + image.width - clip.x - clip.width)
    if ends is None:
        assert beyond[0] == pytest.approx(beyond[1])
    else:
        assert beyond[ends] == pytest.approx(0, abs=0.01) and beyond[1 - ends] > 50


def test_a_coarse_picture_is_refused_with_what_it_would_need() -> None:
    with pytest.raises(BookErrors) as caught:
        compose_cover(covered(Cover(picture=png(640, 480))), load_layout("a5-book"), 64)
    (diagnostic,) = caught.value.diagnostics
    assert (diagnostic.code, diagnostic.place.line) == ("picture-coarse", 9)
    assert "“quay.png” is too coarse for the cover" in diagnostic.text and "print needs 300" in diagnostic.text
    assert "640 by 480" in diagnostic.hint


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
        lines = [one.box for one in items if isinstance(one.item, Text) and one.item.text.rstrip("-") in words]
        marks = [one.box for one in items if one.inside("ornament")]
        assert len(lines) > 4
        for left, top, right, bottom in lines:
            assert not any(left < r and right > x and top < b and bottom > y for x, y, r, b in marks)


def test_where_there_is_no_room_for_ornament_there_is_none() -> None:
    for high in (50.0, -5.0):
        drawn = rise(full_book().puzzles, load_theme(), 400.0, high, 18, "title")
        assert drawn.art.items == () and drawn.high == 0
