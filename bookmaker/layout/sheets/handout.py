"""Sheets for the club table: a line for name and date, a few puzzles with large cells, and the key where it is wanted.

In: a `Book` of the puzzles picked, in order, and a handout layout. Out: a `Document`. Rules that all puzzles share are
said once, at the head of every sheet. The puzzles of a contest have their check rows and boxes for points at the foot.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal, TypeAlias

from bookmaker.book.contents import Book, BookPuzzle, HintPages, RulesText
from bookmaker.book.wording import hint_levels
from bookmaker.display.items import Bookmark, Document, Item, Line, Stroke, Text, tagged
from bookmaker.display.tags import HEADING, OURS
from bookmaker.layout.checks import check
from bookmaker.layout.compose import draw_pages
from bookmaker.layout.page_side import PageSide, UnnumberedPage, as_part
from bookmaker.layout.pages.filling import Slot
from bookmaker.layout.pages.hints import hint_sheet
from bookmaker.layout.pages.keys import key_rows
from bookmaker.layout.pages.parts import flowing, heading
from bookmaker.layout.pages.puzzles import drawn, place_puzzles
from bookmaker.layout.pages.words import rules_above
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import DROP, Labels, Row, broken, width
from bookmaker.layout.sheets.contest import marker_rows, strip
from bookmaker.layout.sheets.footkey import foot_key
from bookmaker.layout.spec import Layout

KeyPlace: TypeAlias = Literal["last", "reverse", "foot", "none"]
"""Where the key stands: on the last page, on the back of each sheet, upside down at its foot, or nowhere."""


@dataclass(frozen=True, slots=True)
class Occasion:
    """What sheets are printed for: the date that is filled in, in words; how many numbered copies there are; whether it
    is told how hard the puzzles are."""

    date: str = ""
    copies: int = 1
    graded: bool = True


PLAIN = Occasion()


Foot: TypeAlias = Callable[[Sequence[BookPuzzle]], tuple[Row, ...]]
"""What stands at the foot of a sheet with these puzzles."""


def compose_handout(book: Book, layout: Layout, key: KeyPlace = "last", occasion: Occasion = PLAIN) -> Document:
    """The sheets, hints if the book has any, and the key. Of several copies, hints and a key on the last page follow
    once, after all of them.

    Raises BookErrors for what can't be printed, for puzzles that fit on no page, and for marks that are not seen.
    """
    check(book, layout, "handout")
    layout = layout.speaking(book.language)
    puzzles, shared = share_rules(book.puzzles)
    rules: tuple[Row, ...] = ()
    if shared is not None:
        spoken = replace(book.puzzles[0], rules=shared)
        rules = (*rules_above(spoken, layout, layout.measure, 0.0), Row(layout.line))
    foot = _foot(puzzles, layout, key)
    depth = layout.depth - height((*_head(book, layout, occasion, 1), *rules))
    graded = replace(layout, shows=replace(layout.shows, difficulty=layout.shows.difficulty and occasion.graded))
    pages = filled_well(puzzles, graded, lambda way, some: depth - _room(some, way, foot))
    numbered: list[tuple[UnnumberedPage, str]] = []
    for copy in range(1, occasion.copies + 1):
        head = (*_head(book, layout, occasion, copy), *rules)
        leaves = []
        for number, page in enumerate(pages, start=1):
            here = [slot.block.puzzle for slot in page]
            leaves.append(_sheet_leaf(page, layout, head, foot(here)))
            if key == "reverse":
                leaves += _key_pages(here, layout, "keys" if number == 1 else f"keys {number}", book.title)
        if copy > 1:
            leaves = [replace(leaf, anchors=()) for leaf in leaves]
        numbered += zip(leaves, map(str, range(1, len(leaves) + 1)), strict=True)
    after: list[UnnumberedPage] = []
    bookmarks: list[Bookmark] = []
    if any(puzzle.hints for puzzle in book.puzzles):
        part = HintPages(layout.say("heading-hints"), layout.say("hints-note-sheet"), hint_levels(layout.words))
        after += as_part(hint_sheet(part, book.puzzles, layout))
        bookmarks.append(Bookmark(part.heading, "hints"))
    if key == "last":
        after += _key_pages(book.puzzles, layout, "keys", book.title)
    if key in ("last", "reverse"):
        bookmarks.append(Bookmark(layout.say("heading-answer-key"), "keys"))
    begins = 1 if occasion.copies > 1 else len(numbered) + 1
    numbered += zip(after, map(str, range(begins, begins + len(after))), strict=True)
    return _document(book, book.title, layout, numbered, bookmarks)


def compose_key_sheet(book: Book, layout: Layout) -> Document:
    """The key of a handout by itself. Raises BookErrors for what can't be printed."""
    check(book, layout, "handout")
    layout = layout.speaking(book.language)
    title = layout.say("titled", title=book.title, what=layout.say("heading-answer-key"))
    leaves = flowing([*heading(title, layout), *key_rows(book.puzzles, layout)], layout, "keys", title)
    return _document(book, title, layout, _numbered(leaves), [Bookmark(layout.say("heading-answer-key"), "keys")])


def filled_well(
    puzzles: Sequence[BookPuzzle], layout: Layout, room: Callable[[Layout, Sequence[BookPuzzle]], float]
) -> list[tuple[Slot, ...]]:
    """The puzzles on as few sheets as will do, the cells as large as they can be; `room` is how deep they may stand.

    The last sheet has its own way, which leaves no place empty if there is one. Raises what `place_puzzles` does.
    """
    made = (place_puzzles(puzzles, way, room(way, puzzles)) for way in ways(layout))
    *full, last = min(made, key=lambda pages: (len(pages), -_smallest(pages)))
    rest = [slot.block.puzzle for slot in last]
    rest = [puzzle for puzzle in puzzles if puzzle.id in {shown.id for shown in rest}]
    found = [(0, _one_above_two(rest, layout, room(layout, rest)))]
    for way in ways(layout):
        empty = way.puzzles.rows * way.puzzles.columns - len(rest)
        found += [(empty, place_puzzles(rest, way, room(way, rest)))] if empty >= 0 else []
    whole = [(empty, -_smallest(pages), pages[0]) for empty, pages in found if len(pages) == 1]
    return [*full, min(whole, key=lambda one: one[:2])[2] if whole else last]


def _smallest(pages: Sequence[tuple[Slot, ...]]) -> float:
    """The size of the smallest cells."""
    return min(slot.block.cell for page in pages for slot in page)


def _one_above_two(puzzles: Sequence[BookPuzzle], layout: Layout, depth: float) -> list[tuple[Slot, ...]]:
    """The first of three on half the sheet, its text beside it, where four places would leave one empty; no page where
    that will not do."""
    slots = layout.puzzles
    if len(puzzles) != 3 or (slots.rows, slots.columns) != (2, 2):
        return []
    half = (depth - slots.gap) / 2
    large = replace(layout, puzzles=replace(slots, rows=1, columns=1, text="beside"))
    above = place_puzzles(puzzles[:1], large, half)
    below = place_puzzles(puzzles[1:], replace(layout, puzzles=replace(slots, rows=1)), half)
    if len(above) > 1 or len(below) > 1:
        return []
    return [(*above[0], *(replace(slot, y=slot.y + half + slots.gap) for slot in below[0]))]


def compose_marker(book: Book, layout: Layout) -> Document:
    """What the marker of a contest needs: the check rows, a table for names and points, and the key.

    Raises BookErrors for what can't be printed.
    """
    check(book, layout, "handout")
    layout = layout.speaking(book.language)
    title = layout.say("titled", title=book.title, what=layout.say("marker-sheet"))
    leaves = flowing(marker_rows(book.title, book.puzzles, layout), layout, "marker", title)
    leaves += _key_pages(book.puzzles, layout, "keys", title)
    bookmarks = Bookmark(layout.say("marker-sheet"), "marker"), Bookmark(layout.say("heading-answer-key"), "keys")
    return _document(book, title, layout, _numbered(leaves), bookmarks)


def _document(
    book: Book,
    title: str,
    layout: Layout,
    numbered: Sequence[tuple[UnnumberedPage, str]],
    bookmarks: Sequence[Bookmark],
) -> Document:
    pages = draw_pages(numbered, layout, title, book.draft)
    return Document(title, book.editor, book.subtitle, pages, tuple(bookmarks), book.language)


def _numbered(leaves: Iterable[UnnumberedPage]) -> list[tuple[UnnumberedPage, str]]:
    return [(leaf, str(number)) for number, leaf in enumerate(leaves, start=1)]


def _key_pages(puzzles: Sequence[BookPuzzle], layout: Layout, anchor: str, head: str) -> list[UnnumberedPage]:
    return [
        *as_part(
            flowing(
                [*heading(layout.say("heading-answer-key"), layout), *key_rows(puzzles, layout)], layout, anchor, head
            )
        )
    ]


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


def _head(book: Book, layout: Layout, occasion: Occasion, copy: int) -> tuple[Row, ...]:
    """Title at the left, a line for name and date at the right, and under it the number of the copy."""
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
    named, dated = (width(layout.say(word), small) + 0.6 * small.size for word in ("name", "date"))
    fields: list[Item] = [
        tagged((OURS,), Text(left, base, layout.say("name"), small.font, small.size, 0.25)),
        Line((left + named, base + 1), (split - small.size, base + 1), pen),
        tagged((OURS,), Text(split, base, layout.say("date"), small.font, small.size, 0.25)),
    ]
    if occasion.date:
        day = Text(right, base, occasion.date, small.font, small.size, anchor="end")
        fields[2:] = [tagged((OURS,), day)]
        end = right - width(occasion.date, small) - small.size
        fields[1] = Line((left + named, base + 1), (end, base + 1), pen)
    else:
        fields.append(Line((split + dated, base + 1), (right, base + 1), pen))
    rows[0] = Row(type.leading, (*rows[0].told, *fields))
    label, numbered = layout.type.label, layout.say("copy-of", number=str(copy), count=str(occasion.copies))
    said = Text(right, 1.1 * line, numbered, label.font, label.size, 0.25, anchor="end")
    return (*rows, Row(1.5 * line, (tagged((OURS,), said),) if occasion.copies > 1 else ()))


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
