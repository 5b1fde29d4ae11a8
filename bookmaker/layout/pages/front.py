"""The first pages: half title, title page with its art, imprint, foreword, and how to read the book."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bookmaker.book.contents import Book, Foreword, Guide, ImprintPage, TitlePage
from bookmaker.book.wording import edited_by
from bookmaker.display.items import Group, Item, Text, tagged
from bookmaker.display.tags import OURS, PARAGRAPH, Role, Tag
from bookmaker.layout.art.ridge import ridge
from bookmaker.layout.art.vignette import LEAST, frieze, rise
from bookmaker.layout.page_side import PageSide, UnnumberedPage, capitals
from bookmaker.layout.pages.parts import flowing, heading, titling
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.runs import marked_paragraph
from bookmaker.layout.setting.text import DROP, Labels, Row, paragraph
from bookmaker.layout.spec import Layout
from bookmaker.layout.themefile import worn

CELLS = 18
"""Cells of ornament across a page."""

FALL = 0.24
"""How far down the page a short foreword begins, as a share of its depth."""


def half_title_leaf(book: Book, layout: Layout) -> UnnumberedPage:
    """The title alone, small, a third of the way down."""

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        rows = paragraph(book.title, layout.type.title, layout.measure, layout.line)
        return tuple(stacked(rows, sheet.x, sheet.y + layout.depth * 0.08, labels))

    return UnnumberedPage(draw, bare=True)


def title_leaf(part: TitlePage, book: Book, layout: Layout) -> UnnumberedPage:
    """The title page: title and subtitle over the art, the editor and the publisher at the foot."""

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        line = layout.line
        top = sheet.y + layout.depth * 0.08
        rows = titling(book, layout, layout.type.display, 0.45 * layout.depth)
        items: list[Item] = [*stacked(rows, sheet.x, top, labels)]
        wide, base = layout.measure, sheet.y + layout.depth * 0.84
        room = base - top - height(rows) - 2 * line
        drawn = rise(book.puzzles, worn(layout), wide, min(wide * 0.62, room), CELLS, "title")
        items.append(Group((drawn.art,), sheet.x, base - drawn.high))
        foot = sheet.y + layout.depth - line
        for order, words in ((1, part.publisher), (0, edited_by(layout.words, book.editor))):
            if words:
                told = Tag(Role.PARAGRAPH, words, order)
                items.append(tagged((told,), capitals(sheet.x, foot, words, layout, layout.measure)))
                foot -= 1.5 * line
        return tuple(items)

    return UnnumberedPage(draw, (("title", 0.0),), bare=True)


def imprint_leaf(part: ImprintPage, layout: Layout) -> UnnumberedPage:
    """The imprint, small, at the foot of the page."""

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        small, wide = layout.type.small, min(layout.measure, 28 * layout.type.small.size)
        rows = [
            row
            for words in part.paragraphs
            for row in (*paragraph(words, small, wide, layout.line), Row(layout.line / 2))
        ]
        return tuple(stacked(rows, sheet.x, sheet.y + layout.depth - height(rows), labels))

    return UnnumberedPage(draw, (("imprint", 0.0),), bare=True)


def foreword_pages(part: Foreword, book: Book, layout: Layout) -> list[UnnumberedPage]:
    """The editor's words, and the editor's name under them."""
    line, hang, text = layout.line, layout.puzzles.hang, layout.type.text
    wide = min(layout.measure - hang, 36 * text.size)
    rows = [*heading(part.heading, layout, hang)]
    for runs in part.paragraphs:
        rows += [*marked_paragraph(runs, text, wide, line, hang), Row(line)]
    if book.editor:
        rows[-1] = replace(rows[-1], tied=True)
        rows[-2] = replace(rows[-2], tied=True)
        rows += paragraph(book.editor, layout.type.note.unparted, wide, line, hang)
    top = FALL * layout.depth
    if height(rows) <= layout.depth / 2 and top >= (LEAST + 2) * line:
        return [_under_art(rows, top, book, layout)]
    return flowing(rows, layout, "foreword", part.heading, book.puzzles)


def _under_art(rows: Sequence[Row], top: float, book: Book, layout: Layout) -> UnnumberedPage:
    """A few words some way down their page, under ornament."""
    cells = CELLS * (2 if layout.measure > layout.depth else 1)
    drawn = frieze(book.puzzles, worn(layout), layout.measure, top - 1.5 * layout.line, cells, "foreword")

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        return Group((drawn.art,), sheet.x, sheet.y), *stacked(rows, sheet.x, sheet.y + top, labels)

    return UnnumberedPage(draw, (("foreword", 0.0),))


def guide_pages(part: Guide, book: Book, layout: Layout) -> list[UnnumberedPage]:
    """How to read the book, with the five ridges and the names of the bands."""
    line, hang = layout.line, layout.puzzles.hang
    rows = [*heading(part.heading, layout, hang)]
    wide = min(layout.measure - hang, 36 * layout.type.text.size)
    for index, words in enumerate(part.paragraphs):
        rows += [*paragraph(words, layout.type.text, wide, line, hang, tags=(OURS,)), Row(line)]
        if index == 0:
            rows += [_bands(book, layout, hang, wide), Row(line)]
    return flowing(rows, layout, "guide", part.heading, book.puzzles)


def _bands(book: Book, layout: Layout, x: float, wide: float) -> Row:
    """The five ridges in a row, each over its name."""
    line, label = layout.line, layout.type.label
    step = wide / len(book.band_names)
    items: list[Item] = []
    for index, name in enumerate(book.band_names):
        left = x + index * step
        items.append(Group((ridge(index + 1, step * 0.7),), left, 2 * line))
        items.append(tagged((PARAGRAPH,), Text(left, (4 - DROP) * line - line * 0.7, name, label.font, label.size)))
    return Row(4 * line, tuple(items))
