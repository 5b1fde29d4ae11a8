"""Small things that several parts of a book are built from: headings, prose pages, lines of a list."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from bookmaker.book.contents import Book, BookPuzzle
from bookmaker.display.items import Group, Item, Tagged, Text, tagged
from bookmaker.display.tags import HEADING, LABEL
from bookmaker.layout.art.vignette import frieze
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.paging import pages
from bookmaker.layout.setting.text import DROP, Labels, Row, broken, paragraph, widest_word
from bookmaker.layout.spec import Layout, Type
from bookmaker.layout.themefile import worn

SMALLER = (1.0, 0.85, 0.7, 0.6, 0.5, 0.4)
"""How much smaller a long title is set."""

TAIL, ROOM = 9, 4
"""Cells of a tailpiece across, and the lines that must be left under it."""

MOST_LINES = 4
"""Lines of a heading before it is set smaller."""


def heading(text: str, layout: Layout, x: float = 0.0, right: float | None = None) -> tuple[Row, ...]:
    """A heading with its white space, tied to what follows, from `x` to `right` or over the whole width; a long one, or
    one with a long word, is set smaller."""
    wide = (layout.measure if right is None else right) - x
    for share in _whole(((text, layout.type.heading),), wide):
        type = layout.type.heading
        type = replace(type, size=share * type.size, leading=share * type.leading)
        lines = broken(text, type.font, type.size, wide)
        if len(lines) <= MOST_LINES:
            break
    rows = [
        Row(
            type.leading,
            (Text(x, type.leading - DROP * layout.line, words, type.font, type.size),),
            tied=True,
            tags=(HEADING.further if at else HEADING,),
        )
        for at, words in enumerate(lines)
    ]
    return (*rows, Row(layout.line, tied=True))


def titling(book: Book, layout: Layout, display: Type, room: float) -> tuple[Row, ...]:
    """The title in this type, and the subtitle under it; both smaller where they would be deeper than `room` points, or
    where a word would have to be cut."""
    rows: tuple[Row, ...] = ()
    for share in _whole(((book.title, display), (book.subtitle, layout.type.title)), layout.measure):
        title, under = (
            replace(type, size=share * type.size, leading=share * type.leading) for type in (display, layout.type.title)
        )
        rows = paragraph(book.title, title, layout.measure, layout.line, tags=(HEADING,))
        if book.subtitle:
            rows += (Row(layout.line / 2), *paragraph(book.subtitle, under, layout.measure, layout.line))
        if height(rows) <= room:
            break
    return rows


def _whole(texts: Sequence[tuple[str, Type]], measure: float) -> Sequence[float]:
    """The sizes at which no word has to be cut; all of them where some word would have to be cut in any."""
    widest = max(widest_word(text, type.font, type.size) for text, type in texts)
    return [share for share in SMALLER if share * widest <= measure] or SMALLER


def number_before(x: float, y: float, number: int, type: Type) -> Tagged:
    """A puzzle's number in a list, standing before the edge at which its title begins: the label of its entry."""
    return tagged((LABEL,), Text(x - 0.9 * type.size, y, str(number), "sans-bold", type.size * 0.95, anchor="end"))


def flowing(
    rows: Iterable[Row], layout: Layout, anchor: str, head: str, tail: Sequence[BookPuzzle] = ()
) -> list[UnnumberedPage]:
    """Rows on as many pages as they need; the anchor leads to the first, the running head stands on the others. Where
    the last page has room, a tailpiece made of the puzzles `tail` ends it."""
    leaves = []
    for index, (column,) in enumerate(pages([*rows], layout.depth, layout.line)):
        anchors = [] if index else [(anchor, layout.margins.top)]
        y = layout.margins.top
        for row in column:
            anchors += [(name, y) for name in row.anchors]
            y += row.height
        leaves.append(_leaf(column, tuple(anchors), head if index else ""))
    if leaves and tail:
        leaves[-1] = _ended(leaves[-1], column, layout, tail, anchor)
    return leaves


def _ended(
    leaf: UnnumberedPage, column: tuple[Row, ...], layout: Layout, tail: Sequence[BookPuzzle], anchor: str
) -> UnnumberedPage:
    """The leaf with a tailpiece in the middle under its text, if there is room."""
    end = height(column) + 2 * layout.line
    wide = 0.3 * layout.measure
    drawn = frieze(tail, worn(layout), wide, 3.01 * wide / TAIL, TAIL, anchor)
    if not drawn.high or end + drawn.high + ROOM * layout.line > layout.depth:
        return leaf

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        x = sheet.x + (layout.measure - wide) / 2
        return (*leaf.draw(sheet, labels), Group((drawn.art,), x, sheet.y + end))

    return replace(leaf, draw=draw)


def _leaf(column: tuple[Row, ...], anchors: tuple[tuple[str, float], ...], head: str) -> UnnumberedPage:
    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        return tuple(stacked(column, sheet.x, sheet.y, labels))

    return UnnumberedPage(draw, anchors, head)
