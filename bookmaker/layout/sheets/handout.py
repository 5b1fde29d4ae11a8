"""Sheets for the club table: a line for name and date, a few puzzles with large cells, and the key where it is wanted.

In: a `Book` of the puzzles picked, in order, and a handout layout. Out: a `Document`. Rules that all puzzles share are
said once, at the head of every sheet. The puzzles of a contest have their check rows and boxes for points at the foot.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import Literal, TypeAlias

from bookmaker.book.contents import Book, BookPuzzle, RulesText
from bookmaker.book.contest import MARKER_SHEET
from bookmaker.book.wording import ANSWER_KEY
from bookmaker.display.items import Bookmark, Document, Item, Line, Stroke, Text, tagged
from bookmaker.display.tags import HEADING, OURS
from bookmaker.layout.checks import check
from bookmaker.layout.compose import draw_pages
from bookmaker.layout.page_side import PageSide, UnnumberedPage, as_part
from bookmaker.layout.pages.keys import key_rows
from bookmaker.layout.pages.parts import flowing, heading
from bookmaker.layout.pages.puzzles import Slot, drawn, place_puzzles
from bookmaker.layout.pages.words import rules_above
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import DROP, Labels, Row, broken
from bookmaker.layout.sheets.contest import marker_rows, strip
from bookmaker.layout.sheets.footkey import foot_key
from bookmaker.layout.spec import Layout

KeyPlace: TypeAlias = Literal["last", "reverse", "foot", "none"]
"""Where the key stands: on the last page, on the back of each sheet, upside down at its foot, or nowhere."""

Foot: TypeAlias = Callable[[Sequence[BookPuzzle]], tuple[Row, ...]]
"""What stands at the foot of a sheet with these puzzles."""


def compose_handout(book: Book, layout: Layout, key: KeyPlace = "last") -> Document:
    """The sheets and their key. Raises BookErrors for what can't be printed, for puzzles that fit on no page, and for
    marks that are not seen."""
    check(book, layout, "handout")
    layout = layout.speaking(book.publication.language)
    puzzles, shared = share_rules(book.puzzles)
    head = _head(book, layout)
    if shared is not None:
        spoken = replace(book.puzzles[0], rules=shared)
        head = (*head, *rules_above(spoken, layout, layout.measure, 0.0), Row(layout.line))
    foot = _foot(puzzles, layout, key)
    pages = min(
        (place_puzzles(puzzles, way, layout.depth - height(head) - _room(puzzles, way, foot)) for way in ways(layout)),
        key=lambda pages: (len(pages), -min(slot.block.cell for page in pages for slot in page)),
    )
    leaves = []
    for number, page in enumerate(pages, start=1):
        here = [slot.block.puzzle for slot in page]
        leaves.append(_sheet_leaf(page, layout, head, foot(here)))
        if key == "reverse":
            leaves += _key_pages(here, layout, "keys" if number == 1 else f"keys {number}", book.title)
    if key == "last":
        leaves += _key_pages(book.puzzles, layout, "keys", book.title)
    bookmarks = (Bookmark(ANSWER_KEY, "keys"),) if key in ("last", "reverse") else ()
    return _document(book, book.title, layout, leaves, bookmarks)


def compose_marker(book: Book, layout: Layout) -> Document:
    """What the marker of a contest needs: the check rows, a table for names and points, and the key.

    Raises BookErrors for what can't be printed.
    """
    check(book, layout, "handout")
    layout = layout.speaking(book.publication.language)
    title = f"{book.title}: {MARKER_SHEET}"
    leaves = flowing(marker_rows(book.title, book.puzzles, layout), layout, "marker", title)
    leaves += _key_pages(book.puzzles, layout, "keys", title)
    return _document(book, title, layout, leaves, (Bookmark(MARKER_SHEET, "marker"), Bookmark(ANSWER_KEY, "keys")))


def _document(
    book: Book, title: str, layout: Layout, leaves: Sequence[UnnumberedPage], bookmarks: tuple[Bookmark, ...]
) -> Document:
    numbered = list(zip(leaves, map(str, range(1, len(leaves) + 1)), strict=True))
    pages = draw_pages(numbered, layout, title, book.draft)
    return Document(title, book.editor, book.subtitle, pages, bookmarks, book.publication.language)


def _key_pages(puzzles: Sequence[BookPuzzle], layout: Layout, anchor: str, head: str) -> list[UnnumberedPage]:
    return [*as_part(flowing([*heading(ANSWER_KEY, layout), *key_rows(puzzles, layout)], layout, anchor, head))]


def _foot(puzzles: Sequence[BookPuzzle], layout: Layout, key: KeyPlace) -> Foot:
    """The check rows of a contest, the key if it is to stand there, or nothing."""
    if any(puzzle.check for puzzle in puzzles):
        return lambda here: strip(here, layout)
    if key == "foot":
        return lambda here: foot_key(here, layout)
    return lambda here: ()


def _room(puzzles: Sequence[BookPuzzle], way: Layout, foot: Foot) -> float:
    """Depth of the deepest foot that a sheet can have, whichever puzzles come to stand on it, with white space."""
    most = way.puzzles.rows * way.puzzles.columns
    deepest = max(height(foot(puzzles[at : at + most])) for at in range(len(puzzles)))
    return deepest + way.line if deepest else 0.0


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
    blank = layout.measure * 0.5
    title = broken(book.title, type.font, type.size, layout.measure - blank - line)
    rows = [
        Row(type.leading, (Text(0.0, base, words, type.font, type.size),), tags=(HEADING.further if at else HEADING,))
        for at, words in enumerate(title)
    ]
    small, pen = layout.type.note, Stroke(0.4)
    left, right = layout.measure - blank, layout.measure
    split = left + blank * 0.7
    fields: list[Item] = [
        tagged((OURS,), Text(left, base, "Name", small.font, small.size, 0.25)),
        Line((left + 3.2 * small.size, base + 1), (split - small.size, base + 1), pen),
        tagged((OURS,), Text(split, base, "Date", small.font, small.size, 0.25)),
        Line((split + 2.8 * small.size, base + 1), (right, base + 1), pen),
    ]
    rows[0] = Row(type.leading, (*rows[0].told, *fields))
    return (*rows, Row(1.5 * line))


def _sheet_leaf(
    slots: tuple[Slot, ...], layout: Layout, head: tuple[Row, ...], foot: tuple[Row, ...]
) -> UnnumberedPage:
    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        top = sheet.y + height(head)
        low = sheet.y + layout.depth - height(foot)
        return (
            *stacked(head, sheet.x, sheet.y, labels),
            *drawn(slots, sheet.x, top, True, {}),  # a sheet has no spine: the text is at the left of every one
            *stacked(foot, sheet.x, low, labels),
        )

    anchors = tuple((f"puzzle {slot.block.puzzle.id}", layout.margins.top + height(head) + slot.y) for slot in slots)
    return UnnumberedPage(draw, anchors)
