"""The hints: small entries in columns, all first hints, then all second, then all third.

In: the puzzles of a book. Out: pages. No page of a level is seen beside one of another, so nobody reads the next hint
by accident. The number of an entry leads to its puzzle, its words to the next hint, those of the last to the key. A
small grid shows how cells are named, and under a hint that names an irregular region which one it is.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import partial
from math import ceil

from bookmaker.book.contents import BookPuzzle, Glossary, HintPages
from bookmaker.book.wording import LEVELS
from bookmaker.display.items import Group, Item, Link, Text, tagged
from bookmaker.display.tags import BODY, ENTRY, HEADING, LABEL, LINK, LIST, OURS, SECTION, further
from bookmaker.layout.art.coordinates import miniature
from bookmaker.layout.page_side import UnnumberedPage
from bookmaker.layout.pages.columned import Columns, columned, columns_of
from bookmaker.layout.pages.notes import note_page, ruled_under
from bookmaker.layout.pages.parts import heading
from bookmaker.layout.setting.flow import height
from bookmaker.layout.setting.paging import filled, pages
from bookmaker.layout.setting.text import DROP, Later, PageNumber, Row, broken, paragraph, width
from bookmaker.layout.spec import Layout
from bookmaker.puzzle.grid import Grid

EMS = 22
"""The narrowest column, in ems of its type."""

EXAMPLE = 4, 1
"""The row and the column, from 0, of the cell that the note names and the small grid shows."""


def hints_pages(
    part: HintPages, glossary: Glossary | None, puzzles: Sequence[BookPuzzle], layout: Layout, right: bool
) -> list[UnnumberedPage]:
    """Pages of hints, the first a `right` page or a left one; no level faces the one before it.

    Where a page is needed between them, there stands the glossary, or lines for notes. If none is, it comes last.
    """
    leaves: list[UnnumberedPage] = []
    terms = _glossary_pages(glossary, layout) if glossary else []
    for level, _ in enumerate(part.levels, start=1):
        head = [*heading(layout.say(f"hints-level-{level}"), layout)]
        if level == 1:
            measure = min(layout.measure, 40 * layout.type.text.size)
            head += [*paragraph(part.note, layout.type.text, measure, layout.line, tags=(OURS,)), Row(layout.line / 2)]
            head += [*_to_the_glossary(layout), Row(layout.line / 2)] if terms else []
            head += [_example(puzzles, layout), Row(layout.line / 2)]
        elif right == (len(leaves) % 2 == 0):
            leaves += terms
            if len(terms) % 2 == 0:
                leaves.append(note_page(layout.say(f"hints-overleaf-{level}"), layout))
            terms = []
        rows = [row for puzzle in puzzles for row in _entry(puzzle, level, layout)]
        anchors = ("hints", "hints 1") if level == 1 else (f"hints {level}",)
        leaves += columned(head, rows, layout, _columns(layout), part.heading, anchors)
    return leaves + terms


def _to_the_glossary(layout: Layout) -> Iterator[Row]:
    text, base = layout.type.text, (1 - DROP) * layout.line
    yield Row(
        layout.line, (PageNumber(0.0, base, f"{layout.say('terms-on-page')} ", "glossary", text, anchor="start"),)
    )


def _glossary_pages(part: Glossary, layout: Layout) -> list[UnnumberedPage]:
    """The words and what they mean, in columns; on a single page lines for others under them."""
    text, wide, line = layout.type.text, _columns(layout).wide, layout.line
    bold = replace(text, font="serif-bold", language="")
    rows: list[Row] = []
    for term in part.terms:
        rows += (replace(row, tied=True) for row in paragraph(term.name, bold, wide, line, tags=(SECTION, HEADING)))
        rows += [*paragraph(term.meaning, text, wide, line, tags=(SECTION.further, OURS)), Row(0.5 * line)]
    head = heading(part.heading, layout)
    leaves = [*columned(head, rows, layout, _columns(layout), part.heading, ("glossary",))]
    if len(leaves) > 1:
        return leaves
    (page,) = pages(rows, layout.depth, line, _columns(layout).across, height(head))
    return [ruled_under(leaves[0], height(head) + filled(page) + 3 * line)]


def hint_sheet(part: HintPages, puzzles: Sequence[BookPuzzle], layout: Layout) -> list[UnnumberedPage]:
    """All levels on one sheet, or as few as will do, one level below the other, for solvers who have no other pages: so
    nothing leads anywhere."""
    measure = min(layout.measure, 40 * layout.type.text.size)
    head = [*heading(part.heading, layout)]
    head += [*paragraph(part.note, layout.type.text, measure, layout.line, tags=(OURS,)), Row(layout.line / 2)]
    head += [_example(puzzles, layout), Row(layout.line)]
    bold = replace(layout.type.small, font="serif-bold")
    rows: list[Row] = []
    for level, title in enumerate(part.levels, start=1):
        rows += [
            replace(row, tied=True)
            for row in paragraph(title, bold, _columns(layout).wide, layout.line, tags=(HEADING,))
        ]
        rows += [row for puzzle in puzzles for row in _entry(puzzle, level, layout, linked=False)]
        rows.append(Row(layout.line / 2))
    return [*columned(head, rows, layout, _columns(layout), part.heading, ("hints",))]


def _columns(layout: Layout) -> Columns:
    """The columns of a page of hints."""
    return columns_of(layout, EMS)


def _entry(puzzle: BookPuzzle, level: int, layout: Layout, linked: bool = True) -> Iterator[Row]:
    """A hint beside the number of its puzzle."""
    if puzzle.hints is None:
        return
    small, line = layout.type.small, layout.line
    words = (puzzle.hints.where, puzzle.hints.what, puzzle.hints.how)[level - 1]
    indent = width("000", small) + 0.7 * small.size
    lines = broken(words, small.font, small.size, _columns(layout).wide - indent, small.language)
    for at, text in enumerate(lines):
        items = Later(partial(_line if linked else _plain_line, text, puzzle, level, at == 0, layout, indent))
        anchors = (f"hint {level} {puzzle.id}",) if at == 0 else ()
        yield Row(line, items, tied=at < len(lines) - 1, anchors=anchors)
    if level - 1 in puzzle.hints.lettered:
        yield Row(0.4 * line, tied=True)
        yield _miniature(puzzle.puzzle.grid, indent, layout)
    yield Row(0.4 * line)


def _example(puzzles: Sequence[BookPuzzle], layout: Layout) -> Row:
    """The commonest grid of the book, one cell pointed out."""
    (grid, _), *_ = Counter(puzzle.puzzle.grid for puzzle in puzzles if puzzle.hints).most_common(1)
    return _miniature(grid, 0.0, layout, grid.at(*EXAMPLE) or 0)


def _miniature(grid: Grid, x: float, layout: Layout, pointed: int | None = None) -> Row:
    drawn, high = miniature(grid, layout.type.small.size, pointed, layout.language)
    return Row(ceil(high / layout.line) * layout.line, (Group((drawn,), x),))


def _line(text: str, puzzle: BookPuzzle, level: int, first: bool, layout: Layout, indent: float) -> Iterator[Item]:
    """A line of a hint; the first one has the number of its puzzle before it."""
    small, base = layout.type.small, (1 - DROP) * layout.line
    last = level == LEVELS[-1]
    target = f"key {puzzle.id}" if last else f"hint {level + 1} {puzzle.id}"
    leads = layout.say(f"hint-leads-{'key' if last else level + 1}", number=str(puzzle.number))
    entry = (LIST, ENTRY, BODY, LINK)
    yield tagged(
        entry if first else further(entry),
        Text(indent, base, text, small.font, small.size),
        Link(
            indent,
            base - small.size,
            width(text, small),
            1.3 * small.size,
            target,
            leads,
        ),
    )
    if first:
        number = str(puzzle.number)
        edge = indent - 0.7 * small.size
        wide, leads = width(number, small), layout.say("hint-leads-puzzle", number=number)
        yield tagged(
            (LIST, ENTRY.further, LABEL, LINK),
            Text(edge, base, number, "sans-bold", small.size * 0.95, anchor="end"),
            Link(edge - wide, base - small.size, wide, 1.3 * small.size, f"puzzle {puzzle.id}", leads),
        )


def _plain_line(
    text: str, puzzle: BookPuzzle, level: int, first: bool, layout: Layout, indent: float
) -> Iterator[Item]:
    """The same without links."""
    small, base = layout.type.small, (1 - DROP) * layout.line
    entry = (LIST, ENTRY, BODY)
    words = Text(indent, base, text, small.font, small.size)
    yield tagged(entry if first else further(entry), words)
    if first:
        edge = indent - 0.7 * small.size
        number = Text(edge, base, str(puzzle.number), "sans-bold", small.size * 0.95, anchor="end")
        yield tagged((LIST, ENTRY.further, LABEL), number)
