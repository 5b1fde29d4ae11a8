"""The cover: back, spine and front on one sheet, dressed by the layout's theme.

In: a book, the layout of its pages and how many there are. Out: a `Document` of one page, or `BookErrors` if the
picture is too coarse. The spine is as thick as the leaves; ornament or the picture runs beyond the trim, and no colour
changes at a fold, where the sheet may lie a little aside.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import ceil

from bookmaker.book.contents import Book
from bookmaker.display.colour import contrast
from bookmaker.display.items import Document, Group, Image, Item, Rect, Text
from bookmaker.display.tags import PARAGRAPH
from bookmaker.layout.art.ridge import HEIGHT, ridge
from bookmaker.layout.lengths import mm
from bookmaker.layout.page_side import SPACING, draft_stamp
from bookmaker.layout.pages.parts import titling
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import FONTS, Row, broken, cut, width
from bookmaker.layout.sheets.coverback import back, back_box
from bookmaker.layout.sheets.press import FoldedPage
from bookmaker.layout.sheets.wrap import Box, Wrap, inked, legible, wrap_art
from bookmaker.layout.spec import Layout, Type
from bookmaker.layout.theme import Theme
from bookmaker.layout.themefile import LEGIBLE, worn
from bookmaker.manifest.pictures import Picture
from bookmaker.manifest.publication import Cover
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place

LETTERED = mm(6)
"""A thinner spine carries no words: a fold a little off would show (common practice, no source)."""

FINE = 300.0
"""Pixels an inch that a press asks of a picture (common practice, no source)."""

LARGE = 1.9
"""How much larger the title is than on the title page."""

OPEN = ("terraces",)
"""Patterns that leave the head of the front open, so that words stand on its ground."""


def spine_width(pages: int, leaf: float) -> float:
    """Thickness in points of so many pages, two to a leaf of `leaf` millimetres."""
    return (pages + 1) // 2 * mm(leaf)


def thin_spine(book: Book, pages: int) -> Diagnostic | None:
    """What to say of a spine that is too thin for words."""
    cover = book.cover or Cover()
    thick = spine_width(pages, cover.leaf) / mm(1)
    if thick >= LETTERED / mm(1):
        return None
    place = cover.places.get("leaf") or Place(book.place.file)
    text = f"the spine is {thick:.1f} mm thick, and words on it need {LETTERED / mm(1):.0f}: it stays without"
    return Diagnostic(
        place, "thin-spine", text, "more pages or thicker paper (“leaf:”) make room for them", warning=True
    )


def compose_cover(book: Book, layout: Layout, pages: int) -> Document:
    """The cover of a book of so many pages."""
    layout = layout.speaking(book.language)
    cover, theme = book.cover or Cover(), worn(layout)
    spine = spine_width(pages, cover.leaf)
    wrap = Wrap(layout.width, layout.height, spine, layout.press.bleed, layout.width / theme.across)
    title, rows = _title_box(book, layout, wrap, theme, cover.picture is not None)
    lettered = wrap.spine >= LETTERED
    on_spine = [*_spine(book, layout, wrap, theme)] if lettered else []
    clear = [title, back_box(wrap)]
    if lettered:
        clear += [box for box, _ in on_spine]
    picture = [*_picture(cover.picture, cover.focus, wrap, title)] if cover.picture else []
    items: list[Item] = [
        *wrap_art(book, theme, wrap, [*clear, *(box for box, _ in picture)]),
        *(item for _, item in picture),
        *_front(rows, title, wrap, theme, cover.picture is not None),
        *(item for _, item in on_spine),
        *back(book, layout, wrap, theme, cover),
        *(draft_stamp(wrap.front + layout.margins.inner, layout) if book.draft else ()),
    ]
    page = FoldedPage(wrap.across, wrap.high, tuple(items), "", folds=(wrap.wide, wrap.front))
    return Document(book.title, book.editor, book.subtitle, (page,), language=book.language)


def _title_box(book: Book, layout: Layout, wrap: Wrap, theme: Theme, pictured: bool) -> tuple[Box, tuple[Row, ...]]:
    """The place of the title, in whole cells, and what stands there: title, subtitle, editor."""
    cell = wrap.cell
    left, right = wrap.front + cell, wrap.across - cell
    measure = right - left - 2 * cell
    margins = replace(layout.margins, inner=0.0, outer=layout.width - measure)
    narrow, display = replace(layout, margins=margins), layout.type.display
    display = replace(display, size=LARGE * display.size, leading=LARGE * display.leading)
    room = (0.3 if pictured else 0.4) * wrap.high
    rows = titling(book, narrow, display, room)
    if book.editor:
        rows += (Row(layout.line), _editor(book, layout, measure))
    high = ceil((height(rows) + 1.6 * cell) / cell) * cell
    top = 2 * cell
    return Box(left, top, right, top + high), rows


def _editor(book: Book, layout: Layout, measure: float) -> Row:
    """The editor in small letterspaced capitals."""
    size = layout.type.label.size * 1.15
    spacing = SPACING * size
    shown = cut(book.editor.upper(), Type("sans-bold", size, size), measure, spacing)
    text = Text(0.0, 0.8 * layout.line, shown, "sans-bold", size, letter_space=spacing)
    return Row(layout.line, (text,), tags=(replace(PARAGRAPH, said=book.editor),))


def _front(rows: tuple[Row, ...], box: Box, wrap: Wrap, theme: Theme, pictured: bool) -> Iterator[Item]:
    """The words, on a panel unless the ornament leaves them open ground."""
    palette = theme.cover
    open_ground = theme.pattern in OPEN and not pictured
    ground = palette.ground if open_ground else palette.panel
    if not open_ground:
        yield box.filled(palette.panel)
    colour = palette.words if contrast(palette.words, ground) >= LEGIBLE else legible(palette, ground)
    y = box.top + (box.high - height(rows)) / 2
    yield from inked(stacked(rows, box.left + wrap.cell, y, {}), colour)


def _picture(picture: Picture, focus: tuple[float, float], wrap: Wrap, title: Box) -> Iterator[tuple[Box, Item]]:
    """The picture under the title from the spine to the outer edge and the foot and beyond, cut around its focus."""
    box = Box(wrap.front, title.bottom + wrap.cell, wrap.across + wrap.bleed, wrap.high + wrap.bleed)
    scale = max(box.wide / picture.width, box.high / picture.height)
    fine = 72 / scale
    if fine < FINE - 0.5:
        millimetres = f"{box.wide / mm(1):.0f} by {box.high / mm(1):.0f} mm"
        needed = f"{picture.width * FINE / fine:.0f} by {picture.height * FINE / fine:.0f}"
        text = (
            f"“{picture.name}” is too coarse for the cover: printed {millimetres} it has {fine:.0f} pixels per inch, "
            f"and print needs {FINE:.0f}"
        )
        hint = f"it has {picture.width} by {picture.height} pixels; use one of {needed} or more"
        raise BookErrors([Diagnostic(picture.place, "picture-coarse", text, hint)])
    wide, high = picture.width * scale, picture.height * scale
    x = _seen(box.left, box.wide, wide, focus[0])
    y = _seen(box.top, box.high, high, focus[1])
    image = Image(x, y, wide, high, picture.source, coloured=True)
    yield box, Group((image,), clip=Rect(box.left, box.top, box.wide, box.high), name="picture")


def _seen(start: float, room: float, long: float, focus: float) -> float:
    """Where a picture begins so that its focus is in the middle of the room, as far as the picture reaches."""
    return min(start, max(start + room - long, start + room / 2 - focus * long))


def _spine(book: Book, layout: Layout, wrap: Wrap, theme: Theme) -> Iterator[tuple[Box, Item]]:
    """The title along the spine, its head to the right, the editor behind it, and the ridge at the foot; each with the
    place that it keeps clear."""
    palette = theme.cover
    colour, edge = legible(palette, palette.ground), layout.margins.top
    font = layout.type.title.font
    size = min(layout.type.title.size, 0.5 * wrap.spine / FONTS.cap_height(font))
    mark = 0.62 * wrap.spine
    room = wrap.high - 2 * edge - mark - 2 * layout.line
    middle = wrap.wide + wrap.spine / 2
    words = broken(book.title, font, size, 0.6 * room)[0]
    long = FONTS.width(words, font, size)
    # turned a quarter clockwise, what was right goes down and what was down goes left
    yield _along(Text(0.0, FONTS.cap_height(font) * size / 2, words, font, size, colour), edge, long, wrap, middle)
    small = Type("sans", 0.55 * size, 0.55 * size)
    left = room - long - 2 * size
    if book.editor and left > 0:
        named = cut(book.editor, small, left)
        if width(named, small) <= left:
            text = Text(0.0, FONTS.cap_height("sans") * small.size / 2, named, "sans", small.size, colour)
            yield _along(text, edge + long + 1.6 * size, width(named, small), wrap, middle)
    foot = wrap.high - edge
    drawn = Group(tuple(inked([ridge(5, mark)], colour)), middle - mark / 2, foot)
    yield Box(wrap.wide, foot - HEIGHT * mark - 2, wrap.front, foot + 2), drawn


def _along(text: Text, start: float, long: float, wrap: Wrap, middle: float) -> tuple[Box, Item]:
    box = Box(wrap.wide, start - text.size / 2, wrap.front, start + long + text.size / 2)
    return box, Group((text,), middle, start, turn=90.0)
