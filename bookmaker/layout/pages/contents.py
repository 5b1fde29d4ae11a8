"""The table of contents: every puzzle with its number, setter, ridge and page."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import partial

from bookmaker.book.contents import (
    Book,
    BookPuzzle,
    Chapter,
    Contents,
    Credits,
    Foreword,
    Guide,
    HintPages,
    Index,
    Keys,
    Primer,
)
from bookmaker.display.items import Group, Item, Text, tagged
from bookmaker.display.tags import CONTENTS, CONTENTS_ENTRY, PARAGRAPH, REFERENCE, Role, Tag, further
from bookmaker.layout.art.ridge import HEIGHT, ridge
from bookmaker.layout.page_side import UnnumberedPage
from bookmaker.layout.pages.parts import flowing, heading, number_before
from bookmaker.layout.setting.text import DROP, Later, PageNumber, Row, cut, width
from bookmaker.layout.spec import Layout, Type


def contents_pages(part: Contents, book: Book, layout: Layout) -> list[UnnumberedPage]:
    """Pages of contents."""
    rows = [*heading(part.heading, layout, layout.puzzles.hang)]
    for section in (*book.front, *book.body):
        if section is book.body[0]:
            rows.append(Row(layout.line))
        match section:
            case Foreword():
                rows += _section_line(section.heading, "foreword", layout)
            case Guide():
                rows += [*_section_line(section.heading, "guide", layout)]
            case Primer():
                rows += _section_line(section.heading, "primer", layout)
            case Chapter():
                rows += _chapter(section, layout)
            case HintPages():
                rows += _section_line(section.heading, "hints", layout)
            case Keys():
                rows += _section_line(section.heading, "keys", layout)
            case Credits():
                rows += _section_line(section.heading, "credits", layout)
            case Index():
                rows += _section_line(section.heading, "index", layout)
            case _:
                pass
    return flowing(rows, layout, "contents", part.heading)


def _chapter(chapter: Chapter, layout: Layout) -> Iterator[Row]:
    """A chapter's lines; they stay together unless they would fill more than a third of a page."""
    lines = [*_section_line(chapter.title, f"chapter {chapter.number}", layout)] if chapter.title else []
    lines += [Row(layout.line, Later(partial(_puzzle_line, puzzle, layout))) for puzzle in chapter.puzzles]
    short = len(lines) * layout.line < layout.depth / 3
    for at, line in enumerate(lines, start=1):
        yield replace(line, tied=at < len(lines) and (short or at <= 2 or at == len(lines) - 1))
    yield Row(layout.line)


def _section_line(title: str, target: str, layout: Layout) -> Iterator[Row]:
    small, base = layout.type.small, (1 - DROP) * layout.line
    number = PageNumber(layout.measure, base, "", target, small, tags=_PAGE)
    left, bold = layout.puzzles.hang, replace(small, font="serif-bold")
    words = cut(title, bold, layout.measure - left - 3.2 * small.size)
    text = tagged(_ENTRY, Text(left, base, words, bold.font, bold.size))
    yield Row(layout.line, (text, number), tied=True)


def _puzzle_line(puzzle: BookPuzzle, layout: Layout) -> Iterator[Item | PageNumber]:
    """Number, title, setter if there is room, ridge and page, on one line."""
    small, base, left, right = layout.type.small, (1 - DROP) * layout.line, layout.puzzles.hang, layout.measure
    ridge_wide = small.size * 2.4
    ridge_x = right - 3.2 * small.size - ridge_wide
    title = cut(puzzle.title, small, ridge_x - left - small.size)
    words = Text(left, base, title, small.font, small.size)
    yield tagged(_ENTRY[:-1], number_before(left, base, puzzle.number, small), tagged((PARAGRAPH,), words))
    yield PageNumber(right, base, "", f"puzzle {puzzle.id}", small, tags=_PAGE)
    setter_x = left + width(title, small) + 0.9 * small.size
    setter = Type(layout.type.note.font, small.size, small.leading)
    if puzzle.setter and setter_x + width(puzzle.setter, setter) < ridge_x - small.size:
        yield tagged(
            further(_ENTRY[:-1]),
            tagged((PARAGRAPH,), Text(setter_x, base, puzzle.setter, setter.font, setter.size, 0.25)),
        )
    if puzzle.rating:
        box = (0.0, -HEIGHT * ridge_wide, ridge_wide, HEIGHT * ridge_wide)
        band = Tag(Role.FIGURE, puzzle.rating.band_name, box=box)
        drawn = Group((tagged((band,), ridge(puzzle.rating.band, ridge_wide)),), ridge_x, base)
        yield tagged((*further(_ENTRY[:-1]), PARAGRAPH), drawn)


_ENTRY = (CONTENTS, CONTENTS_ENTRY, PARAGRAPH)
_PAGE = (*further(_ENTRY[:-1]), REFERENCE)
"""The page number is read after all that is said of the puzzle, though it may be painted before."""
