"""The words around a grid: number, title, setter, ridge, rules, key to the marks, note.

In: a puzzle and the width of its column. Out: rows of text and marks, for above the grid or beside it.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from bookmaker.book.model import BookPuzzle, MarkLine
from bookmaker.display.items import Group, Item, Text
from bookmaker.layout.flow import stacked
from bookmaker.layout.ridge import ridge
from bookmaker.layout.spec import Layout, Type
from bookmaker.layout.swatch import swatch, swatch_size
from bookmaker.layout.text import DROP, Row, broken, paragraph, width

RULES_EMS = 40
"""Rules are set no wider than this many ems: longer lines are hard to read."""


def head_above(puzzle: BookPuzzle, layout: Layout, measure: float) -> tuple[Row, ...]:
    """Number and title at the left, the ridge at the right; under them setter and band."""
    type, axis = layout.type, title_axis(puzzle, layout)
    wide = ridge_width(layout)
    number = Text(0.0, _base(type.number, layout), str(puzzle.number), type.number.font, type.number.size)
    lines = broken(puzzle.title, type.title.font, type.title.size, measure - axis - wide - layout.line)
    base = _base(type.number, layout)
    right: list[Item] = []
    if puzzle.rating:
        right.append(Group((ridge(puzzle.rating.band, wide),), measure - wide, base))
    rows = [Row(type.number.leading, (number, _title(axis, base, lines[0], layout), *right))]
    rows += [Row(type.title.leading, (_title(axis, _base(type.title, layout), words, layout),)) for words in lines[1:]]
    setter = _setter(puzzle, layout, axis, measure - axis - width(_band_words(puzzle), type.label) - layout.line)
    band = Text(measure, _base(type.note, layout), _band_words(puzzle), type.label.font, type.label.size, anchor="end")
    first, *more = setter or (Row(type.note.leading),)
    return (*rows, Row(first.height, (*first.items, band)), *more)


def head_beside(puzzle: BookPuzzle, layout: Layout, measure: float) -> tuple[Row, ...]:
    """Number and ridge on one line, then title, setter and band, one under the other."""
    type = layout.type
    base = _base(type.number, layout)
    top: list[Item] = [Text(0.0, base, str(puzzle.number), type.number.font, type.number.size)]
    if puzzle.rating:
        wide = ridge_width(layout)
        top.append(Group((ridge(puzzle.rating.band, wide),), measure - wide, base))
    band = Text(measure, _base(type.note, layout), _band_words(puzzle), type.label.font, type.label.size, anchor="end")
    title = broken(puzzle.title, type.title.font, type.title.size, measure)
    return (
        Row(type.number.leading, tuple(top)),
        Row(layout.line, (band,)),
        *(Row(type.title.leading, (_title(0.0, _base(type.title, layout), words, layout),)) for words in title),
        *_setter(puzzle, layout, 0.0, measure),
    )


def rules_rows(puzzle: BookPuzzle, layout: Layout, measure: float) -> Iterator[Row]:
    """The rules as one text: plain sentences, then each mark with its sentence."""
    type, axis = layout.type.text, layout.puzzles.hang
    wide = min(measure - axis, RULES_EMS * type.size)
    if puzzle.rules.plain:
        yield from paragraph(puzzle.rules.plain, type, wide, layout.line, axis)
    indent = axis or mark_indent(puzzle, layout)
    for mark in puzzle.rules.marks:
        yield Row(layout.line / 2)
        yield _mark_row(mark, layout, indent, min(measure - indent, RULES_EMS * type.size))


def note_rows(puzzle: BookPuzzle, layout: Layout, measure: float, x: float) -> tuple[Row, ...]:
    """The note under a puzzle."""
    if not puzzle.note:
        return ()
    wide = min(measure, RULES_EMS * layout.type.note.size)
    return paragraph(puzzle.note, layout.type.note, wide, layout.line, x)


def title_axis(puzzle: BookPuzzle, layout: Layout) -> float:
    """Where the title begins: at the edge of the hanging column, or after the number."""
    number = width(str(puzzle.number), layout.type.number)
    return max(layout.puzzles.hang, number + 0.4 * layout.type.number.size)


def ridge_width(layout: Layout) -> float:
    """Width of the ridge beside a title."""
    return layout.type.title.size * 3.2


def mark_indent(puzzle: BookPuzzle, layout: Layout) -> float:
    """Where the sentences of the key to the marks begin if samples have no hanging column."""
    widest = max((swatch_size(mark.sample, layout.line)[0] for mark in puzzle.rules.marks), default=0.0)
    return widest + 0.7 * layout.line


def _mark_row(mark: MarkLine, layout: Layout, indent: float, measure: float) -> Row:
    """A sample with its sentence, their middles level where the sentence is the shorter."""
    line = layout.line
    words = paragraph(mark.text, layout.type.text, measure, line)
    room = indent - 0.7 * line
    cell = min(line, room / (swatch_size(mark.sample, 1.0)[0]))
    high = swatch_size(mark.sample, cell)[1]
    rows = max(len(words), ceil(high / line - 0.3))
    height = rows * line
    lead = (rows - len(words)) // 2 * line
    items: list[Item] = [Group((swatch(mark.sample, cell),), 0.0, min(0.16 * line, (height - high) / 2))]
    items += stacked(words, indent, lead, {})
    return Row(height, tuple(items))


def _setter(puzzle: BookPuzzle, layout: Layout, x: float, measure: float) -> tuple[Row, ...]:
    return paragraph(puzzle.setter, layout.type.note, measure, layout.line, x) if puzzle.setter else ()


def _band_words(puzzle: BookPuzzle) -> str:
    if puzzle.rating is None:
        return puzzle.flaw
    return f"{puzzle.rating.band_name}  ·  effort {puzzle.rating.effort:.0f}"


def _title(x: float, y: float, words: str, layout: Layout) -> Text:
    return Text(x, y, words, layout.type.title.font, layout.type.title.size)


def _base(type: Type, layout: Layout) -> float:
    """Where the baseline lies in a row of this type."""
    return type.leading - DROP * layout.line
