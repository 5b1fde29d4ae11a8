"""The credits: setter, first showing and permission of every puzzle, in the order of the book."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import zip_longest

from bookmaker.book.contents import BookPuzzle, Credits
from bookmaker.book.wording import word_said
from bookmaker.display.items import Item, tagged
from bookmaker.display.tags import BODY, ENTRY, LIST, PARAGRAPH, REFERENCE, further
from bookmaker.layout.page_side import UnnumberedPage
from bookmaker.layout.pages.parts import flowing, heading, number_before
from bookmaker.layout.setting.text import DROP, PageNumber, Row, paragraph
from bookmaker.layout.spec import Layout

TITLES = 0.42
"""Share of the width that titles take; the rest is for what is said of each."""

NO_BREAK = "\u00a0"

_DETAIL = replace(PARAGRAPH, order=1)
"""What is said of a puzzle, read after its title whichever has more lines."""


def credits_pages(part: Credits, layout: Layout) -> list[UnnumberedPage]:
    """Pages of credits."""
    return flowing(credits_rows(part, layout), layout, "credits", part.heading, part.puzzles)


def credits_rows(part: Credits, layout: Layout) -> list[Row]:
    """What holds for all at the head, then an entry for each puzzle that has more to say."""
    left = layout.puzzles.hang
    rows = [*heading(part.heading, layout, left)]
    for said in part.said:
        rows += paragraph(said, layout.type.text, layout.measure - left, layout.line, left)
        rows.append(Row(layout.line))
    for puzzle in part.puzzles:
        rows += _entry(puzzle, layout, puzzle.permission in part.said)
    return rows


def _entry(puzzle: BookPuzzle, layout: Layout, permission_said: bool) -> Iterator[Row]:
    """Title and details side by side, the rows of one entry tied."""
    small, line = layout.type.small.unparted, layout.line
    left, right = layout.puzzles.hang, layout.measure
    split = left + TITLES * (right - left)
    said = [puzzle.setter] if puzzle.setter else []
    said += [layout.say("first-shown", date=puzzle.shown.replace(" ", NO_BREAK))] if puzzle.shown else []
    said += [word_said(layout.words, puzzle.word, puzzle.puzzle.grid)] if puzzle.word else []
    details = ", ".join(said)
    if puzzle.permission and not permission_said:
        details = f"{details}. {puzzle.permission}" if details else puzzle.permission
    entry = (LIST, ENTRY)
    within = further((*entry, BODY))
    titles = paragraph(puzzle.title, small, split - left - small.size, line, left, tags=(*entry, BODY, PARAGRAPH))
    sayings = paragraph(details, small, right - split - 3 * small.size, line, split, 0.2, (*within, _DETAIL))
    pairs = list(zip_longest(titles, sayings))
    for at, (said_of, saying) in enumerate(pairs):
        items: list[Item | PageNumber] = [item for row in (said_of, saying) if row for item in row.told]
        if at == 0:
            base = (1 - DROP) * line
            items.append(tagged(further(entry), number_before(left, base, puzzle.number, small)))
            items.append(PageNumber(right, base, "", f"puzzle {puzzle.id}", small, tags=(*within, REFERENCE)))
        yield Row(line, tuple(items), tied=at < len(pairs) - 1)
