"""The table of contents: every puzzle with its number, setter, ridge and page."""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.book.model import Book, BookPuzzle, Chapter, Contents, Credits, Keys
from bookmaker.display.items import Group, Item, Text
from bookmaker.layout.parts import flowing, heading
from bookmaker.layout.ridge import ridge
from bookmaker.layout.sheet import Leaf
from bookmaker.layout.spec import Layout
from bookmaker.layout.text import DROP, PageNumber, Row, broken, width

INDENT_EMS = 2.6


def contents_leaves(part: Contents, book: Book, layout: Layout) -> list[Leaf]:
    """Pages of contents."""
    rows = [*heading(part.heading, layout)]
    for section in book.body:
        match section:
            case Chapter():
                if section.title:
                    rows += _section_line(section.title, f"chapter {section.number}", layout)
                for puzzle in section.puzzles:
                    rows.append(_puzzle_line(puzzle, layout))
                rows.append(Row(layout.line))
            case Keys():
                rows += _section_line(section.heading, "keys", layout)
            case Credits():
                rows += _section_line(section.heading, "credits", layout)
            case _:
                pass
    return flowing(rows, layout, "contents", part.heading)


def _section_line(title: str, target: str, layout: Layout) -> Iterator[Row]:
    small = layout.type.small
    base = (1 - DROP) * layout.line
    number = PageNumber(layout.measure, base, "", target, small)
    yield Row(layout.line, (Text(0.0, base, title, "serif-bold", small.size), number), tied=True)


def _puzzle_line(puzzle: BookPuzzle, layout: Layout) -> Row:
    small, note, line = layout.type.small, layout.type.note, layout.line
    base, indent = (1 - DROP) * line, INDENT_EMS * small.size
    right = layout.measure
    wide = small.size * 2.4
    ridge_x = right - 3.2 * small.size - wide
    items: list[Item | PageNumber] = [Text(0.0, base, str(puzzle.number), "sans-bold", small.size)]
    room = ridge_x - indent - small.size
    lines = broken(puzzle.title, small.font, small.size, room)
    title = lines[0] if len(lines) == 1 else lines[0] + " …"
    items.append(Text(indent, base, title, small.font, small.size))
    setter_x = indent + width(title, small) + 0.9 * small.size
    setter_wide = width(puzzle.setter, note) * small.size / note.size
    if puzzle.setter and setter_x + setter_wide < ridge_x - small.size:
        items.append(Text(setter_x, base, puzzle.setter, note.font, small.size, 0.25))
    if puzzle.rating:
        items.append(Group((ridge(puzzle.rating.band, wide),), ridge_x, base))
    items.append(PageNumber(right, base, "", f"puzzle {puzzle.id}", small))
    return Row(line, tuple(items))
