"""The forms of a contest: letters in the cells of the check row, the strip at the foot of a sheet, the marker's sheet.

In: puzzles entered in a contest. Out: items over a grid, rows for the foot of a sheet, rows for the marker.

A solver copies the digits of the lettered cells into the boxes of the strip. The marker has the same boxes, filled, and
lays the one beside the other.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil

from bookmaker.book.contents import BookPuzzle
from bookmaker.book.contest import check_digits
from bookmaker.display.items import Item, Line, Rect, Stroke, Tagged, Text, tagged
from bookmaker.display.tags import OURS, PARAGRAPH, Role, Tag
from bookmaker.language import Catalogue
from bookmaker.layout.art.gridtold import LETTERS
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.parts import heading
from bookmaker.layout.setting.text import FONTS, Row, broken, paragraph, width
from bookmaker.layout.spec import Layout

BOX = mm(7)
"""Side of a box of the check row: a digit in pencil."""

SCORE = mm(15)
"""Width of the boxes for points and time."""

NUMBER = mm(8)
"""Width of the column in which puzzle numbers stand before their boxes."""

GUTTER = mm(8)

PEN, THIN = Stroke(0.8), Stroke(0.4)

NAMES = mm(8)
"""Height of a line of the table of names."""

HEAD = 2.25
"""Height of the heads of its columns, in lines of text."""


def strip(puzzles: Sequence[BookPuzzle], layout: Layout) -> tuple[Row, ...]:
    """The foot of a contest sheet: what the check row is, its boxes for each puzzle, then time and total."""
    type, line = layout.type, layout.line
    wide = (layout.measure - GUTTER) / 2
    rows = [
        Row(line / 2, (Line((0.0, 0.0), (layout.measure, 0.0), THIN),)),
        *paragraph(layout.say("check-row"), type.note, layout.measure, line, tags=(OURS,)),
        Row(line / 2),
    ]
    pitch = ceil((BOX + 0.4 * line) / (line / 2)) * line / 2
    for at in range(0, len(puzzles) + 1, 2):
        items: list[Item] = []
        for half, place in enumerate((at, at + 1)):
            x = half * (wide + GUTTER)
            if place < len(puzzles):
                items.append(tagged((OURS,), *_answer(puzzles[place], layout, x, wide)))
            elif half:
                items.append(tagged((OURS,), *_sums(puzzles, layout, x, wide)))
        rows.append(Row(pitch, tuple(items)))
    return tuple(rows)


def marker_rows(title: str, puzzles: Sequence[BookPuzzle], layout: Layout) -> tuple[Row, ...]:
    """The marker's sheet: the check rows filled in, then a table of names that fills the page."""
    type, line = layout.type, layout.line
    rows = [
        *heading(layout.say("marker-sheet"), layout),
        *paragraph(title, type.title, layout.measure, line),
        Row(line),
    ]
    rows += [
        *paragraph(layout.say("marker-help"), type.text, layout.measure * 0.8, line, tags=(OURS,)),
        Row(line),
    ]
    boxes = max(len(puzzle.check) for puzzle in puzzles) * BOX
    for puzzle in puzzles:
        rows.append(
            Row(
                BOX + line,
                (*_boxes(puzzle, 0.0, layout, check_digits(puzzle)), *_named(puzzle, layout, boxes)),
                tags=(PARAGRAPH,),
            )
        )
    rows.append(Row(line))
    used = sum(row.height for row in rows)
    rows += _names(puzzles, layout, int((layout.depth - used - HEAD * line) / NAMES))
    return tuple(rows)


def _answer(puzzle: BookPuzzle, layout: Layout, x: float, wide: float) -> Iterator[Item]:
    """Number and empty boxes of a puzzle, and at the right the box for its points."""
    yield from _boxes(puzzle, x, layout)
    yield from _score(x + wide, _of(layout.words, puzzle.points), layout)


def _sums(puzzles: Sequence[BookPuzzle], layout: Layout, x: float, wide: float) -> Iterator[Item]:
    """The box for the time, and for all points where there are several puzzles."""
    label = layout.type.label
    if len(puzzles) > 1:
        yield from _score(
            x + wide, layout.say("total-of", points=str(sum(puzzle.points for puzzle in puzzles))), layout
        )
    base = _base(label.size)
    left = x + NUMBER
    yield Text(left - 0.6 * label.size, base, layout.say("time"), label.font, label.size, anchor="end")
    yield Rect(left, 0.0, 3 * BOX, BOX, PEN)
    yield Text(left + 3 * BOX + 0.6 * label.size, base, layout.say("minutes"), label.font, label.size)


def _named(puzzle: BookPuzzle, layout: Layout, boxes: float) -> Iterator[Item]:
    """Title and points of a puzzle after its boxes, which are so wide."""
    text, note, x = layout.type.text, layout.type.note, NUMBER + boxes + 1.5 * layout.line
    points = layout.say("points", n=puzzle.points)
    room = layout.measure - x - width(points, note) - 2 * layout.line
    title = broken(puzzle.title, text.font, text.size, room)[0]
    yield Text(x, _base(text.size), title, text.font, text.size)
    yield Text(x + width(title, text) + layout.line, _base(text.size), points, note.font, note.size)


def _boxes(puzzle: BookPuzzle, x: float, layout: Layout, digits: Sequence[int] = ()) -> Iterator[Item]:
    """The puzzle's number and its boxes, a letter in the corner of each as in the grid; the marker's have digits."""
    type = layout.type
    yield Text(x, _base(type.title.size), str(puzzle.number), type.number.font, type.title.size)
    left, wide = x + NUMBER, len(puzzle.check) * BOX
    for at, letter in enumerate(LETTERS[: len(puzzle.check)]):
        middle = left + (at + 0.5) * BOX
        yield Text(left + at * BOX + 2.0, 6.2, letter, type.label.font, 6.0)
        if digits:
            symbol = puzzle.puzzle.grid.symbol(digits[at])
            yield Text(middle + 1.2, _base(13.0) + 0.6, symbol, type.number.font, 13.0, anchor="middle")
        if at:
            yield Line((left + at * BOX, 0.0), (left + at * BOX, BOX), THIN)
    yield Rect(left, 0.0, wide, BOX, PEN)


def _score(right: float, words: str, layout: Layout) -> Iterator[Item]:
    """A box for points that ends at `right`, after how many there are to win."""
    label = layout.type.label
    yield Text(right - SCORE - 0.6 * label.size, _base(label.size), words, label.font, label.size, anchor="end")
    yield Rect(right - SCORE, 0.0, SCORE, BOX, PEN)


def _names(puzzles: Sequence[BookPuzzle], layout: Layout, count: int) -> Iterator[Row]:
    """A table of `count` empty lines: name, points for each puzzle, time, total, place."""
    label, line, words = layout.type.label, layout.line, layout.words
    heads = [(str(puzzle.number), _of(words, puzzle.points)) for puzzle in puzzles]
    total = sum(puzzle.points for puzzle in puzzles)
    heads += [
        (words.say("time"), words.say("minutes")),
        (words.say("total"), _of(words, total)),
        (words.say("place"), ""),
    ]
    wide = min(mm(22), layout.measure * 0.7 / len(heads))
    first = layout.measure - wide * len(heads)
    above: list[Item] = [_column_head(Text(0.0, line, words.say("name"), "sans-bold", label.size))]
    for at, (name, under) in enumerate(heads):
        x = first + (at + 0.5) * wide
        head = [Text(x, line, name, "sans-bold", label.size, anchor="middle")]
        if under:
            head.append(Text(x, 1.75 * line, under, label.font, label.size, 0.25, anchor="middle"))
        above.append(_column_head(*head))
    table, row = Tag(Role.TABLE), Tag(Role.ROW)
    yield Row(HEAD * line, tuple(above), tied=True, tags=(table, row))
    empty = tagged((table.further, row), *(tagged((Tag(Role.CELL),)) for _ in above))
    uprights = [first + at * wide for at in range(len(heads))]
    for number in range(count):
        items: list[Item] = [Line((x, 0.0), (x, NAMES), THIN) for x in uprights]
        items.append(Line((0.0, 0.0), (layout.measure, 0.0), THIN if number else PEN))
        if number == count - 1:
            items.append(Line((0.0, NAMES), (layout.measure, NAMES), PEN))
        yield Row(NAMES, (*items, empty), tied=number < count - 1)


def _column_head(*texts: Text) -> Tagged:
    return tagged((Tag(Role.COLUMN_HEAD),), *texts)


def _of(words: Catalogue, points: int) -> str:
    return words.say("of-points", points=str(points))


def _base(size: float) -> float:
    """The baseline on which figures of this size stand in the middle of a box."""
    return (BOX + FONTS.cap_height("sans") * size) / 2
