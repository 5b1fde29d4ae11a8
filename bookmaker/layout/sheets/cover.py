"""The cover: back, spine and front on one sheet.

In: a book, the layout of its pages and how many there are. Out: a `Document` of one page, or `BookErrors` if the
picture is too coarse. The spine is as thick as the leaves; a foot band runs around all three and bleeds off the sheet.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bookmaker.book.contents import Book
from bookmaker.display.items import Document, Group, Image, Item, Rect, Text, tagged
from bookmaker.display.tags import PARAGRAPH
from bookmaker.layout.art.codes import BARCODE, QUIET, barcode, qr_code, qr_side
from bookmaker.layout.art.titleart import title_art
from bookmaker.layout.lengths import mm
from bookmaker.layout.page_side import SPACING, draft_stamp
from bookmaker.layout.pages.parts import titling
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.runs import marked_paragraph
from bookmaker.layout.setting.text import FONTS, Row, broken, cut, width
from bookmaker.layout.sheets.press import FoldedPage
from bookmaker.layout.spec import Layout, Type
from bookmaker.manifest.pictures import Picture
from bookmaker.manifest.publication import Cover
from bookmaker.source.diagnostics import BookErrors, Diagnostic

BAND = 0.13
"""Height of the band at the foot, as a share of the page."""

LETTERED = mm(6)
"""A thinner spine carries no words: a fold a little off would show (common practice, no source)."""

FINE = 300.0
"""Pixels an inch that a press asks of a picture (common practice, no source)."""

WHITE = 1.0


@dataclass(frozen=True, slots=True)
class Wrap:
    """The measures of a cover in points: each side `wide`, all `high`, the spine between them."""

    wide: float
    high: float
    spine: float

    @property
    def front(self) -> float:
        """Where the front begins."""
        return self.wide + self.spine

    @property
    def band(self) -> float:
        """Where the band at the foot begins."""
        return self.high * (1 - BAND)


def spine_width(pages: int, leaf: float) -> float:
    """Thickness in points of so many pages, two to a leaf of `leaf` millimetres."""
    return (pages + 1) // 2 * mm(leaf)


def compose_cover(book: Book, layout: Layout, pages: int) -> Document:
    """The cover of a book of so many pages."""
    layout = layout.speaking(book.publication.language)
    cover = book.publication.cover or Cover()
    wrap = Wrap(layout.width, layout.height, spine_width(pages, cover.leaf))
    across, bleed = 2 * wrap.wide + wrap.spine, layout.press.bleed
    band = Rect(-bleed, wrap.band, across + 2 * bleed, wrap.high - wrap.band + bleed, fill=0.0)
    items: list[Item] = [
        *_front(book, layout, wrap, cover.picture),
        band,
        *_on_band(book, layout, wrap),
        *_spine(book, layout, wrap),
        *_back(book, layout, wrap, cover),
        *(draft_stamp(wrap.front + layout.margins.inner, layout) if book.draft else ()),
    ]
    page = FoldedPage(across, wrap.high, tuple(items), "", folds=(wrap.wide, wrap.front))
    return Document(book.title, book.editor, book.subtitle, (page,), language=book.publication.language)


def _front(book: Book, layout: Layout, wrap: Wrap, picture: Picture | None) -> Iterator[Item]:
    """Title and subtitle, and on the band the art or the picture."""
    line, display = layout.line, layout.type.display
    left = wrap.front + layout.margins.inner
    display = replace(display, size=1.2 * display.size, leading=1.2 * display.leading)
    top = layout.margins.top + 2 * line
    rows = titling(book, layout, display, 0.5 * (wrap.band - top))
    room = wrap.band - top - height(rows) - 3 * line
    if picture is not None:
        yield from _picture(picture, wrap, room, layout.press.bleed)
    else:
        art = title_art(book, wrap.wide, min(room, 0.62 * wrap.wide))
        yield Group((art,), wrap.front, wrap.band)
    yield from stacked(rows, left, top, {})


def _picture(picture: Picture, wrap: Wrap, room: float, bleed: float) -> Iterator[Item]:
    """The picture from the spine to the outer edge and beyond, its sides or its head cut to fit."""
    wide, high = wrap.wide + bleed, room
    scale = max(wide / picture.width, high / picture.height)
    fine = 72 / scale
    if fine < FINE - 0.5:
        millimetres = f"{wide / mm(1):.0f} by {high / mm(1):.0f} mm"
        needed = f"{picture.width * FINE / fine:.0f} by {picture.height * FINE / fine:.0f}"
        text = (
            f"“{picture.name}” is too coarse for the cover: printed {millimetres} it has {fine:.0f} pixels per inch, "
            f"and print needs {FINE:.0f}"
        )
        hint = f"it has {picture.width} by {picture.height} pixels; use one of {needed} or more"
        raise BookErrors([Diagnostic(picture.place, "picture-coarse", text, hint)])
    drawn_wide, drawn_high = picture.width * scale, picture.height * scale
    x, y = wrap.front + (wide - drawn_wide) / 2, wrap.band - high + (high - drawn_high) / 2
    image = Image(x, y, drawn_wide, drawn_high, picture.source)
    yield Group((image,), clip=Rect(wrap.front, wrap.band - high, wide, high), name="picture")


def _on_band(book: Book, layout: Layout, wrap: Wrap) -> Iterator[Item]:
    """The editor in white on the front's part of the band."""
    size = layout.type.label.size * 1.15
    base = (wrap.band + wrap.high) / 2 + FONTS.cap_height("sans-bold") * size / 2
    if book.editor:
        type, spacing = Type("sans-bold", size, size), SPACING * size
        text = cut(book.editor.upper(), type, layout.measure, spacing)
        left = wrap.front + layout.margins.inner
        shown = Text(left, base, text, type.font, size, WHITE, letter_space=spacing)
        yield tagged((replace(PARAGRAPH, said=book.editor),), shown)


def _spine(book: Book, layout: Layout, wrap: Wrap) -> Iterator[Item]:
    """The title along the spine, its head to the right, where the spine is thick enough."""
    if wrap.spine < LETTERED:
        return
    font = layout.type.title.font
    size = min(layout.type.title.size, 0.55 * wrap.spine / FONTS.cap_height(font))
    room = wrap.band - layout.margins.top - 2 * layout.line
    words = broken(book.title, font, size, room)[0]
    drop = FONTS.cap_height(font) * size / 2
    # turned a quarter clockwise, what was right goes down and what was down goes left
    yield Group((Text(0.0, drop, words, font, size),), wrap.wide + wrap.spine / 2, layout.margins.top, turn=90.0)


def _back(book: Book, layout: Layout, wrap: Wrap, cover: Cover) -> Iterator[Item]:
    """The blurb at the head; at the foot the code of the link at the left, the barcode near the spine."""
    line, left, type = layout.line, layout.margins.outer, layout.type.text
    rows = [
        row
        for runs in cover.blurb
        for row in (*marked_paragraph(runs, type, min(layout.measure, 34 * type.size), line), Row(line))
    ]
    yield from stacked(rows, left, layout.margins.top + 2 * line, {})
    foot = wrap.band - 1.5 * line
    link, imprint = book.publication.link, book.publication.imprint
    label = layout.type.label
    if link:
        side = qr_side(link)
        yield Group((qr_code(link),), left, foot - side)
        shown = link.split("://", 1)[1].rstrip("/")
        room = wrap.wide - left - layout.margins.inner - BARCODE[0] - sum(QUIET) - side - 2 * line
        if width(shown, label) <= room:
            text = Text(left + side + 0.7 * line, foot, shown, label.font, label.size)
            yield tagged((PARAGRAPH,), text)
    if imprint and imprint.isbn:
        x, y = wrap.wide - layout.margins.inner - BARCODE[0] - QUIET[1], foot - BARCODE[1]
        text = Text(x, y - 0.5 * line, f"ISBN {imprint.isbn}", "sans", min(label.size, 8.0))
        yield tagged((PARAGRAPH,), text)
        yield Group((barcode(imprint.isbn.replace("-", "")),), x, y)
