"""Pages to write on: the reader's name, times, and ruled pages for notes.

They stand where a page would be empty: before what begins on a right-hand page, beside hints that are not to be seen
yet, and at the end, where the fold of the sheets leaves pages over.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import partial

from bookmaker.book.contents import Book, BookPuzzle
from bookmaker.display.items import Group, Item, Line, Stroke, Text
from bookmaker.layout.art.vignette import frieze
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.pages.parts import heading
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import DROP, Labels, cut, paragraph, width
from bookmaker.layout.spec import Layout
from bookmaker.layout.themefile import worn

RULE = Stroke(0.25, 0.5)
STEP = 2
"""Lines of text between two rules: room for a pencil."""

CLOSE = 1.5
"""The same in a table of times."""

NAMES, DATES = 0.5, 0.25
"""Shares of the width that puzzles and dates take in it; the times have the rest."""

CELLS = 18
"""Cells of ornament across the page."""


def note_pages(count: int, title: str, layout: Layout) -> list[UnnumberedPage]:
    """So many pages; the first has the heading."""
    return [_leaf(title if at == 0 else "", layout, "notes" if at == 0 else "", title) for at in range(count)]


def note_page(words: str, layout: Layout) -> UnnumberedPage:
    """A ruled page, and at its foot what is overleaf."""

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        note, line = layout.type.note, layout.line
        rows = heading(layout.say("heading-notes"), layout)
        said = paragraph(words, note, layout.measure, line)
        foot = sheet.y + layout.depth - height(said)
        items = [*stacked(rows, sheet.x, sheet.y, labels), *ruled(sheet, height(rows), height(said) + STEP * line)]
        return (*items, *stacked(said, sheet.x, foot, labels))

    return UnnumberedPage(draw)


def times_page(puzzles: Sequence[BookPuzzle], layout: Layout, head: str) -> UnnumberedPage:
    """A line for each puzzle, its date and its time, and under them lines for notes; only those for more puzzles than
    have room."""
    line, rows = layout.line, heading(layout.say("heading-times"), layout)
    below = height(rows) + line + CLOSE * line * len(puzzles)
    if below > layout.depth:
        return _leaf(layout.say("heading-notes"), layout, "", "")

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        items = [*stacked(rows, sheet.x, sheet.y, labels)]
        items.append(Group(tuple(_table(puzzles, layout)), sheet.x, sheet.y + height(rows)))
        return (*items, *ruled(sheet, below + STEP * line))

    return UnnumberedPage(draw, head=head)


def _table(puzzles: Sequence[BookPuzzle], layout: Layout) -> Iterator[Item]:
    """The columns' names and the puzzles' lines, from the top left of the table."""
    small, label, line, wide = layout.type.small, layout.type.label, layout.line, layout.measure
    dates, times = NAMES * wide, (NAMES + DATES) * wide
    for x, words in ((dates, layout.say("date")), (times, layout.say("time"))):
        yield Text(x, (1 - DROP) * line, words, label.font, label.size, 0.25)
    indent = width("000", small) + 0.6 * small.size
    for at, puzzle in enumerate(puzzles, start=1):
        y = (1 - DROP) * line + at * CLOSE * line
        yield Text(indent - 0.6 * small.size, y, str(puzzle.number), "sans-bold", 0.95 * small.size, anchor="end")
        yield Text(indent, y, cut(puzzle.heading, small, dates - indent - line), small.font, small.size)
        foot = y + 0.2 * line
        yield Line((dates, foot), (times - line, foot), RULE)
        yield Line((times, foot), (wide, foot), RULE)


def owner_page(book: Book, layout: Layout) -> UnnumberedPage:
    """Whose book it is, under ornament: the page before the first puzzle."""

    asked = tuple(layout.say(name) for name in ("belongs-to", "begun-on", "finished-on"))

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        line, note, step = layout.line, layout.type.note, 2.5 * layout.line
        drawn = frieze(book.puzzles, worn(layout), layout.measure, 0.3 * layout.depth, CELLS, "owner")
        y = sheet.y + max(drawn.high, 0.2 * layout.depth) + 3 * line
        items: list[Item] = [Group((drawn.art,), sheet.x, sheet.y)]
        for at, words in enumerate(asked):
            base = y + at * step
            items.append(Text(sheet.x, base, words, note.font, note.size))
            left = sheet.x + max(width(each, note) for each in asked) + line
            items.append(Line((left, base), (sheet.x + layout.measure, base), RULE))
        return tuple(items)

    return UnnumberedPage(draw, bare=True)


def _leaf(title: str, layout: Layout, anchor: str, head: str) -> UnnumberedPage:
    draw = partial(_ruled_under, title, layout)
    return UnnumberedPage(draw, ((anchor, layout.margins.top),) if anchor else (), "" if title else head)


def _ruled_under(title: str, layout: Layout, sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
    rows = heading(title, layout) if title else ()
    below = height(rows) + (0 if title else STEP) * layout.line
    return (*stacked(rows, sheet.x, sheet.y, labels), *ruled(sheet, below))


def ruled_under(leaf: UnnumberedPage, below: float) -> UnnumberedPage:
    """The leaf, ruled from so many points below the top of the type area on."""

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        return *leaf.draw(sheet, labels), *ruled(sheet, below)

    return replace(leaf, draw=draw)


def ruled(sheet: PageSide, below: float, above: float = 0.0) -> Iterator[Line]:
    """Rules from so many points below the top of the type area down to its foot, or `above` it."""
    layout, step = sheet.layout, STEP * sheet.layout.line
    for at in range(int((layout.depth - below - above + 0.01) // step) + 1):
        y = sheet.y + below + at * step
        yield Line((sheet.x, y), (sheet.x + layout.measure, y), RULE)
