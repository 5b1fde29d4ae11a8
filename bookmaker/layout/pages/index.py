"""The index: names with the numbers of their puzzles, each number a link.

In: an `Index`. Out: its pages, names at the left and figures beside them.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from bookmaker.book.model import Index, IndexEntry
from bookmaker.display.items import Item, Link, Text
from bookmaker.layout.pages.parts import flowing, heading
from bookmaker.layout.setting.text import DROP, FONTS, Row, broken, paragraph
from bookmaker.layout.sheet import Leaf
from bookmaker.layout.spec import Layout

NAMES = 0.34
"""Share of the width that names take."""


def index_leaves(part: Index, layout: Layout) -> list[Leaf]:
    """Pages of the index."""
    left, line, small = layout.puzzles.hang, layout.line, layout.type.small
    rows = [*heading(part.heading, layout, left)]
    rows += [*paragraph(part.note, layout.type.note, layout.measure - left, line, left), Row(line)]
    for group in part.groups:
        base = (1 - DROP) * line
        rows.append(Row(line, (Text(left, base, group.heading, "serif-bold", small.size),), tied=True))
        for entry in group.entries:
            rows += _entry(entry, layout)
        rows.append(Row(line))
    return flowing(rows, layout, "index", part.heading)


@dataclass(frozen=True, slots=True)
class _Figures:
    """A line of figures with the puzzles they lead to."""

    text: str
    targets: tuple[str, ...]


def _entry(entry: IndexEntry, layout: Layout) -> Iterator[Row]:
    small, line, left = layout.type.small, layout.line, layout.puzzles.hang
    split = left + NAMES * (layout.measure - left)
    wide = min(layout.measure - split, 30 * small.size)
    names = broken(entry.name, small.font, small.size, split - left - small.size)
    figures = [*_figures(entry, small.font, small.size, wide)]
    count = max(len(names), len(figures))
    base = (1 - DROP) * line
    for at in range(count):
        items: list[Item] = []
        if at < len(names):
            items.append(Text(left, base, names[at], small.font, small.size))
        if at < len(figures):
            text = figures[at].text
            items.append(Text(split, base, text, small.font, small.size))
            items += _links(figures[at], split, base, small.font, small.size)
        # A name with hundreds of puzzles goes on from page to page; no line of it is left alone.
        yield Row(line, tuple(items), tied=count > 1 and at in (0, count - 2))


def _figures(entry: IndexEntry, font: str, size: float, wide: float) -> Iterator[_Figures]:
    targets = iter(f"puzzle {puzzle.id}" for puzzle in entry.puzzles)
    for text in broken(", ".join(str(puzzle.number) for puzzle in entry.puzzles), font, size, wide):
        yield _Figures(text, tuple(next(targets) for _ in text.split()))


def _links(line: _Figures, x: float, y: float, font: str, size: float) -> Iterator[Link]:
    at = 0
    for word, target in zip(line.text.split(), line.targets, strict=True):
        before = FONTS.width(line.text[:at], font, size)
        yield Link(x + before, y - size, FONTS.width(word.rstrip(","), font, size), 1.3 * size, target)
        at += len(word) + 1
