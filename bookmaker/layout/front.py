"""The first pages: the title page with its art, and the page on how to read the book."""

from __future__ import annotations

from bookmaker.book.model import Book, Guide
from bookmaker.display.items import Group, Item, Text
from bookmaker.layout.flow import height, stacked
from bookmaker.layout.parts import flowing, heading
from bookmaker.layout.ridge import ridge
from bookmaker.layout.sheet import Leaf, Sheet, capitals
from bookmaker.layout.spec import Layout
from bookmaker.layout.text import DROP, Labels, Row, broken, paragraph
from bookmaker.layout.titleart import title_art


def title_leaf(book: Book, layout: Layout) -> Leaf:
    """The title page: title and subtitle over the art, the editor at the foot."""

    def draw(sheet: Sheet, labels: Labels) -> tuple[Item, ...]:
        display, line = layout.type.display, layout.line
        lines = broken(book.title, display.font, display.size, layout.measure)
        rows = [
            Row(display.leading, (Text(0.0, display.leading - DROP * line, words, display.font, display.size),))
            for words in lines
        ]
        if book.subtitle:
            rows += [Row(line / 2), *paragraph(book.subtitle, layout.type.title, layout.measure, line)]
        items: list[Item] = [*stacked(rows, sheet.x, sheet.y + layout.depth * 0.08, labels)]
        art_width = layout.measure
        base = sheet.y + layout.depth * 0.84
        top = sheet.y + layout.depth * 0.08 + height(rows)
        items.append(Group((title_art(book, art_width, min(art_width * 0.56, base - top - 2 * line)),), sheet.x, base))
        if book.editor:
            items.append(capitals(sheet.x, sheet.y + layout.depth - line, f"Edited by {book.editor}", layout))
        return tuple(items)

    return Leaf(draw, (("title", 0.0),), bare=True)


def guide_leaves(part: Guide, book: Book, layout: Layout) -> list[Leaf]:
    """How to read the book, with the five ridges and the names of the bands."""
    line, hang = layout.line, layout.puzzles.hang
    rows = [*heading(part.heading, layout, hang)]
    wide = min(layout.measure - hang, 36 * layout.type.text.size)
    for index, words in enumerate(part.paragraphs):
        rows += [*paragraph(words, layout.type.text, wide, line, hang), Row(line)]
        if index == 0:
            rows += [_bands(book, layout, hang, wide), Row(line)]
    return flowing(rows, layout, "guide", part.heading)


def _bands(book: Book, layout: Layout, x: float, wide: float) -> Row:
    """The five ridges in a row, each over its name."""
    line, label = layout.line, layout.type.label
    step = wide / len(book.band_names)
    items: list[Item] = []
    for index, name in enumerate(book.band_names):
        left = x + index * step
        items.append(Group((ridge(index + 1, step * 0.7),), left, 2 * line))
        items.append(Text(left, (4 - DROP) * line - line * 0.7, name, label.font, label.size))
    return Row(4 * line, tuple(items))
