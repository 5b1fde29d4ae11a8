"""The puzzles of a chapter to tick off, on its opening page.

In: the puzzles and the room. Out: a box for each with its number and its title, in columns; the numbers alone where
there is no room for titles, and nothing where there is none for these either.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Item, Link, Rect, Stroke, Text, tagged
from bookmaker.display.tags import BODY, ENTRY, LABEL, LINK, LIST, PARAGRAPH, further
from bookmaker.layout.setting.text import DROP, Row, cut, width
from bookmaker.layout.spec import Layout

EMS, NARROW = 13, 4.2
"""The narrowest column of titles, and of numbers, in ems of small type."""

BOX, PEN = 0.75, Stroke(0.5)
"""Side of a box per em, and its outline."""

STEP = 1.25
"""From one line to the next, in lines of text: boxes are ticked by hand."""


def tick_rows(puzzles: Sequence[BookPuzzle], layout: Layout, x: float, right: float, room: float) -> tuple[Row, ...]:
    """The rows from `x` to `right`, at most `room` points high together."""
    wide, line = right - x, STEP * layout.line
    titled = any(puzzle.heading for puzzle in puzzles)
    for ems in (EMS, NARROW) if titled else (NARROW,):
        most = max(1, int(wide / (ems * layout.type.small.size)))
        lines = ceil(len(puzzles) / most)
        if lines * line <= room:
            lines = min(len(puzzles), max(lines, 4), max(1, int(room / line))) if ems == EMS else lines
            across = ceil(len(puzzles) / lines)
            step = wide / (across if ems == EMS and across > 1 else most)
            return tuple(_row(puzzles[at::lines], layout, x, step, ems == EMS) for at in range(lines))
    return ()


def _row(puzzles: Sequence[BookPuzzle], layout: Layout, x: float, step: float, titled: bool) -> Row:
    entries = (_entry(puzzle, layout, x + at * step, step, titled) for at, puzzle in enumerate(puzzles))
    return Row(STEP * layout.line, tuple(item for entry in entries for item in entry))


def _entry(puzzle: BookPuzzle, layout: Layout, x: float, wide: float, titled: bool) -> Iterator[Item]:
    small, base = layout.type.small, (STEP - DROP) * layout.line
    side = BOX * small.size
    edge = x + side + 0.5 * small.size + width("000", small)
    left = edge + 0.6 * small.size
    words = cut(puzzle.heading, small, x + wide - left - small.size) if titled else ""
    entry = (LIST, ENTRY)
    number = Text(edge, base, str(puzzle.number), "sans-bold", 0.95 * small.size, anchor="end")
    yield Rect(x, base - side, side, side, PEN)
    yield tagged((*entry, LABEL), number)
    far = left + width(words, small) if words else edge
    said = layout.say("hint-leads-puzzle", number=str(puzzle.number))
    leads = Link(x, base - small.size, far - x, 1.3 * small.size, f"puzzle {puzzle.id}", said)
    shown = [Text(left, base, words, small.font, small.size)] if words else []
    yield tagged((*further(entry), BODY, PARAGRAPH, LINK), *shown, leads)
