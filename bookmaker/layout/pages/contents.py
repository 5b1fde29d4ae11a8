"""The table of contents: every puzzle with its number, setter, ridge and page, in two columns where they have room.

In: the book. Out: pages. Dots lead from the words to the page number.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import partial
from math import ceil, floor

from bookmaker.book.contents import (
    Book,
    BookPuzzle,
    Chapter,
    Contents,
    Credits,
    Foreword,
    Glossary,
    Guide,
    HintPages,
    Index,
    Keys,
    Primer,
)
from bookmaker.display.items import Group, Item, Line, Stroke, Text, tagged
from bookmaker.display.tags import CONTENTS, CONTENTS_ENTRY, PARAGRAPH, REFERENCE, Role, Tag, further
from bookmaker.layout.art.ridge import HEIGHT, ridge
from bookmaker.layout.page_side import UnnumberedPage
from bookmaker.layout.pages.columned import columned, columns_of
from bookmaker.layout.pages.parts import heading, number_before
from bookmaker.layout.setting.text import DROP, Later, PageNumber, Row, cut, width
from bookmaker.layout.spec import Layout, Type

EMS = 21
"""The narrowest column, in ems of small type."""

PAGE = 2.6
"""Room for the page number, in ems: four figures."""

FIGURES = 3
"""Figures of a puzzle's number for which there is always room, so that most books' titles begin at one edge."""


def contents_pages(part: Contents, book: Book, layout: Layout) -> list[UnnumberedPage]:
    """Pages of contents."""
    head, grid = heading(part.heading, layout), columns_of(layout, EMS, 2)
    figures = max((len(str(puzzle.number)) for puzzle in book.puzzles), default=0)
    rows: list[Row] = []
    for section in (*book.front, *book.body):
        if section is book.body[0]:
            rows.append(Row(layout.line))
        match section:
            case Foreword():
                rows += _section_line(section.heading, "foreword", layout, grid.wide)
            case Guide():
                rows += _section_line(section.heading, "guide", layout, grid.wide)
            case Primer():
                rows += _section_line(section.heading, "primer", layout, grid.wide)
            case Chapter():
                rows += _chapter(section, layout, grid.wide, figures)
            case HintPages():
                rows += _section_line(section.heading, "hints", layout, grid.wide)
            case Glossary():
                rows += _section_line(section.heading, "glossary", layout, grid.wide)
            case Keys():
                rows += _section_line(section.heading, "keys", layout, grid.wide)
            case Credits():
                rows += _section_line(section.heading, "credits", layout, grid.wide)
            case Index():
                rows += _section_line(section.heading, "index", layout, grid.wide)
            case _:
                pass
    return [*columned(head, rows, layout, grid, part.heading, ("contents",))]


def _chapter(chapter: Chapter, layout: Layout, wide: float, figures: int) -> Iterator[Row]:
    """A chapter's lines; they stay together unless they would fill more than a third of a page."""
    lines = [*_section_line(chapter.title, f"chapter {chapter.number}", layout, wide)] if chapter.title else []
    lines += [
        Row(layout.line, Later(partial(_puzzle_line, puzzle, layout, wide, figures))) for puzzle in chapter.puzzles
    ]
    short = len(lines) * layout.line < layout.depth / 3
    for at, line in enumerate(lines, start=1):
        yield replace(line, tied=at < len(lines) and (short or at <= 2 or at == len(lines) - 1))
    yield Row(layout.line)


def _section_line(title: str, target: str, layout: Layout, wide: float) -> Iterator[Row]:
    small, base = layout.type.small, (1 - DROP) * layout.line
    number = PageNumber(wide, base, "", target, small, tags=_PAGE)
    bold = replace(small, font="serif-bold")
    words = cut(title, bold, wide - PAGE * small.size)
    text = tagged(_ENTRY, Text(0.0, base, words, bold.font, bold.size))
    leader = _leader(width(words, bold), wide - PAGE * small.size, base, small)
    yield Row(layout.line, (text, *leader, number), tied=True)


def _puzzle_line(puzzle: BookPuzzle, layout: Layout, wide: float, figures: int) -> Iterator[Item | PageNumber]:
    """Number, of so many figures at most, title, setter if there is room, a leader, ridge and page, on one line."""
    small, base = layout.type.small, (1 - DROP) * layout.line
    left, ridge_wide = width("0" * max(figures, FIGURES), small) + 0.6 * small.size, small.size * 2.4
    page_wide = max(PAGE * small.size, width("0" * figures, small) + 0.4 * small.size)
    ridge_x = wide - page_wide - ridge_wide
    title = cut(puzzle.heading, small, ridge_x - left - small.size)
    words = Text(left, base, title, small.font, small.size)
    end = left + width(title, small)
    yield tagged(_ENTRY[:-1], number_before(left, base, puzzle.number, small), tagged((PARAGRAPH,), words))
    yield PageNumber(wide, base, "", f"puzzle {puzzle.id}", small, tags=_PAGE)
    setter_x = end + 0.7 * small.size if title else left
    setter = Type(layout.type.note.font, small.size, small.leading)
    if puzzle.setter and setter_x + width(puzzle.setter, setter) < ridge_x - small.size:
        yield tagged(
            further(_ENTRY[:-1]),
            tagged((PARAGRAPH,), Text(setter_x, base, puzzle.setter, setter.font, setter.size, 0.25)),
        )
        end = setter_x + width(puzzle.setter, setter)
    yield from _leader(end, ridge_x, base, small)
    if puzzle.rating:
        box = (0.0, -HEIGHT * ridge_wide, ridge_wide, HEIGHT * ridge_wide)
        band = Tag(Role.FIGURE, puzzle.rating.band_name, box=box)
        drawn = Group((tagged((band,), ridge(puzzle.rating.band, ridge_wide)),), ridge_x, base)
        yield tagged((*further(_ENTRY[:-1]), PARAGRAPH), drawn)


def _leader(left: float, right: float, base: float, type: Type) -> Iterator[Item]:
    """Dots from the words to the right, each under the one of the line above."""
    step = 0.75 * type.size
    first, last = ceil((left + 0.6 * type.size) / step), floor((right - 0.6 * type.size) / step)
    if last > first:
        dots = Stroke(0.08 * type.size, 0.25, cap="round", dash=(0.0, step))
        yield Line((first * step, base), (last * step, base), dots)


_ENTRY = (CONTENTS, CONTENTS_ENTRY, PARAGRAPH)
_PAGE = (*further(_ENTRY[:-1]), REFERENCE)
"""The page number is read after all that is said of the puzzle, though it may be painted before."""
