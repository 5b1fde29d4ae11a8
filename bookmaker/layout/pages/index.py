"""The index: names with the numbers of their puzzles, each number a link.

In: an `Index`. Out: its pages, names at the left and figures beside them, in two columns where these have room.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from bookmaker.book.contents import BookPuzzle, Index, IndexEntry
from bookmaker.display.items import Item, Link, Text, tagged
from bookmaker.display.tags import BODY, ENTRY, HEADING, LIST, OURS, PARAGRAPH, SECTION, further
from bookmaker.layout.page_side import UnnumberedPage
from bookmaker.layout.pages.columned import columned, columns_of
from bookmaker.layout.pages.parts import heading
from bookmaker.layout.setting.text import DROP, FONTS, Row, broken, paragraph
from bookmaker.layout.spec import Layout

EMS = 21
"""The narrowest column, in ems of small type."""

NAMES = 0.5
"""Share of a column that names take."""


def index_pages(part: Index, layout: Layout, above: Sequence[Row] = ()) -> list[UnnumberedPage]:
    """Pages of the index, which begins under rows of another part if there are any."""
    line, small, grid = layout.line, layout.type.small, columns_of(layout, EMS, 2)
    first, *more = heading(part.heading, layout)
    head = [*above, *([Row(line)] if above else []), replace(first, anchors=("index",)), *more]
    head += [*paragraph(part.note, layout.type.note, layout.measure, line, tags=(OURS,)), Row(line)]
    rows: list[Row] = []
    for group in part.groups:
        base = (1 - DROP) * line
        title = Text(0.0, base, group.heading, "serif-bold", small.size)
        rows.append(Row(line, (title,), tied=True, tags=(SECTION, HEADING)))
        for entry in group.entries:
            rows += _entry(entry, layout, grid.wide)
        rows.append(Row(line))
    return [*columned(head, rows, layout, grid, part.heading, ())]


@dataclass(frozen=True, slots=True)
class _Figures:
    """A line of figures with the puzzles they lead to."""

    text: str
    targets: tuple[BookPuzzle, ...]


def _entry(entry: IndexEntry, layout: Layout, measure: float) -> Iterator[Row]:
    small, line = layout.type.small, layout.line
    split = NAMES * measure
    wide = min(measure - split, 30 * small.size)
    names = broken(entry.name, small.font, small.size, split - small.size)
    figures = [*_figures(entry, small.font, small.size, wide)]
    count = max(len(names), len(figures))
    base = (1 - DROP) * line
    for at in range(count):
        items: list[Item] = []
        if at < len(names):
            name = Text(0.0, base, names[at], small.font, small.size)
            items.append(tagged(further(_NAME) if at else _NAME, name))
        if at < len(figures):
            text = figures[at].text
            shown = Text(split, base, text, small.font, small.size)
            links = _links(figures[at], split, base, small.font, small.size)
            items.append(tagged(further(_NUMBERS) if at else _NUMBERS, shown, *links))
        # A name with hundreds of puzzles goes on from page to page; no line of it is left alone.
        yield Row(line, tuple(items), tied=count > 1 and at in (0, count - 2), tags=(SECTION.further,))


_NAME = (LIST, ENTRY, BODY, PARAGRAPH)
_NUMBERS = (*further(_NAME[:-1]), replace(PARAGRAPH, order=1))


def _figures(entry: IndexEntry, font: str, size: float, wide: float) -> Iterator[_Figures]:
    targets = iter(entry.puzzles)
    for text in broken(", ".join(str(puzzle.number) for puzzle in entry.puzzles), font, size, wide):
        yield _Figures(text, tuple(next(targets) for _ in text.split()))


def _links(line: _Figures, x: float, y: float, font: str, size: float) -> Iterator[Link]:
    at = 0
    for word, puzzle in zip(line.text.split(), line.targets, strict=True):
        before = FONTS.width(line.text[:at], font, size)
        wide, number = FONTS.width(word.rstrip(","), font, size), f"puzzle {puzzle.number}"
        yield Link(x + before, y - size, wide, 1.3 * size, f"puzzle {puzzle.id}", number)
        at += len(word) + 1
