"""Sheets for the club table: a line for name and date, a few puzzles with large cells, the key on the last page.

In: a `Book` of the puzzles picked, in order, and a handout layout. Out: a `Document`. Rules that all puzzles share are
said once, at the head of the first sheet.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from bookmaker.book.model import Book, BookPuzzle, RulesText
from bookmaker.book.wording import ANSWER_KEY
from bookmaker.display.items import Bookmark, Document, Item, Line, Stroke, Text
from bookmaker.layout.checks import check
from bookmaker.layout.compose import draw_pages
from bookmaker.layout.flow import height, stacked
from bookmaker.layout.keypages import key_rows
from bookmaker.layout.parts import flowing, heading
from bookmaker.layout.puzzlepages import Slot, drawn, place_puzzles
from bookmaker.layout.puzzletext import rules_above
from bookmaker.layout.sheet import Leaf, Sheet
from bookmaker.layout.spec import Layout
from bookmaker.layout.text import DROP, Labels, Row, broken


def compose_handout(book: Book, layout: Layout) -> Document:
    """The sheets, then the key. Raises BookTroubles for what can't be printed, and for puzzles that fit on no page."""
    check(book, layout, "handout")
    puzzles, shared = share_rules(book.puzzles)
    head = _head(book, layout)
    if shared is not None:
        spoken = replace(book.puzzles[0], rules=shared)
        head = (*head, *rules_above(spoken, layout, layout.measure, 0.0), Row(layout.line))
    pages = min(
        (place_puzzles(puzzles, way, layout.depth - height(head)) for way in ways(layout)),
        key=lambda pages: (len(pages), -min(slot.block.cell for page in pages for slot in page)),
    )
    leaves = [_sheet_leaf(page, layout, head) for page in pages]
    key = [*heading(ANSWER_KEY, layout), *key_rows(book.puzzles, layout)]
    leaves += flowing(key, layout, "keys", book.title)
    numbered = list(zip(leaves, map(str, range(1, len(leaves) + 1)), strict=True))
    pages_drawn = draw_pages(numbered, layout, book.title, book.draft)
    return Document(book.title, book.editor, book.subtitle, pages_drawn, (Bookmark(ANSWER_KEY, "keys"),))


def ways(layout: Layout) -> Iterator[Layout]:
    """How the puzzles of a sheet may stand: as the layout says, two with their text beside, or one. The fewest sheets
    are best, then the largest cells."""
    slots = layout.puzzles
    yield layout
    yield replace(layout, puzzles=replace(slots, rows=min(slots.rows, 2), columns=1, text="beside"))
    yield replace(layout, puzzles=replace(slots, rows=1, columns=1, text="above"))


def share_rules(puzzles: tuple[BookPuzzle, ...]) -> tuple[tuple[BookPuzzle, ...], RulesText | None]:
    """Where all puzzles have the same rules: the puzzles without them, and the rules to be said once."""
    rules = puzzles[0].rules
    if len(puzzles) == 1 or any(puzzle.rules != rules for puzzle in puzzles):
        return puzzles, None
    return tuple(replace(puzzle, rules=RulesText("")) for puzzle in puzzles), rules


def _head(book: Book, layout: Layout) -> tuple[Row, ...]:
    """Title at the left, a line for name and date at the right."""
    type, line = layout.type.heading, layout.line
    base = type.leading - DROP * line
    blank = layout.measure * 0.42
    title = broken(book.title, type.font, type.size, layout.measure - blank - line)
    rows = [Row(type.leading, (Text(0.0, base, words, type.font, type.size),)) for words in title]
    small, pen = layout.type.note, Stroke(0.4)
    left, right = layout.measure - blank, layout.measure
    split = left + blank * 0.66
    fields: list[Item] = [
        Text(left, base, "Name", small.font, small.size, 0.25),
        Line((left + 3.2 * small.size, base + 1), (split - small.size, base + 1), pen),
        Text(split, base, "Date", small.font, small.size, 0.25),
        Line((split + 2.8 * small.size, base + 1), (right, base + 1), pen),
    ]
    rows[0] = Row(type.leading, (*rows[0].items, *fields))
    return (*rows, Row(1.5 * line))


def _sheet_leaf(slots: tuple[Slot, ...], layout: Layout, head: tuple[Row, ...]) -> Leaf:
    def draw(sheet: Sheet, labels: Labels) -> tuple[Item, ...]:
        top = sheet.y + height(head)
        return (*stacked(head, sheet.x, sheet.y, labels), *drawn(slots, sheet, top, {}))

    anchors = tuple((f"puzzle {slot.block.puzzle.id}", layout.margins.top + height(head) + slot.y) for slot in slots)
    return Leaf(draw, anchors)
