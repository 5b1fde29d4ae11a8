"""The words around a grid: number, title, setter, ridge, rules, key to the marks, note.

In: a puzzle and the width of its column. Out: rows of text and marks, for above the grid or beside it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import ceil

from bookmaker.book.contents import BookPuzzle, MarkLine
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.display.items import Group, Item, Link, Tagged, Text, tagged
from bookmaker.display.tags import HEADING, LINK, OUR_LANGUAGE, OURS, PARAGRAPH, Role, Tag
from bookmaker.language import Catalogue
from bookmaker.language.figures import decimal_said
from bookmaker.layout.art.codes import qr_code, qr_side
from bookmaker.layout.art.ridge import ridge
from bookmaker.layout.art.swatch import legible_cell, swatch, swatch_size
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import DROP, FONTS, Row, broken, paragraph, width
from bookmaker.layout.spec import Layout, Type
from bookmaker.phrases.titles import title_of

SAMPLE, SMALL_SAMPLE = 1.5, 1.2
"""Size of the cells of a sample, in lines of text, and on a crowded page."""

NARROWEST = 9
"""The narrowest column of words beside a sample, in ems."""

SHARE = 0.44
"""No figure in a sample is set smaller than this share of the text; cells are larger where they must be."""

APART = 0.5, 0.25
"""White space between a sample and its sentence, in lines: as wished, and the least where figures ask for more room."""

TITLE, SETTER, BAND = replace(HEADING, order=-3), replace(PARAGRAPH, order=-2), replace(PARAGRAPH, order=-1)
"""What is read before the rules of a puzzle, wherever it stands."""

GRID, NOTE, POINTER = 1, 2, replace(PARAGRAPH, order=3)
"""The order in which the rest is read, after the rules."""

RULES_EMS = 40
"""Rules are set no wider than this many ems: longer lines are hard to read."""


def head_above(puzzle: BookPuzzle, layout: Layout, measure: float, hang: float) -> tuple[Row, ...]:
    """Number and title at the left, the ridge at the right; under them setter and band.

    The number hangs in a column of `hang` points if there is one, else the title follows it.
    """
    type = layout.type
    axis = max(hang, width(str(puzzle.number), type.number) + 0.4 * type.number.size)
    wide = ridge_width(layout)
    number = Text(0.0, _base(type.number, layout), str(puzzle.number), type.number.font, type.number.size)
    room = measure - axis - wide - layout.line
    lines = broken(puzzle.heading, type.title.font, type.title.size, room) if puzzle.heading else ()
    base = _base(type.number, layout)
    right: list[Item] = []
    if puzzle.rating:
        right.append(Group((ridge(puzzle.rating.band, wide),), measure - wide, base))
    heading = tagged((title_tag(puzzle, TITLE),), number, *(_title(axis, base, words, layout) for words in lines[:1]))
    rows = [Row(type.number.leading, (heading, *right))]
    rows += [
        Row(type.title.leading, (_title(axis, _base(type.title, layout), words, layout),), tags=(TITLE.further,))
        for words in lines[1:]
    ]
    setter = _setter(
        puzzle, layout, axis, measure - axis - width(_band_words(layout.words, puzzle), type.label) - layout.line
    )
    first, *more = setter or (Row(type.note.leading),)
    return (*rows, Row(first.height, (*first.told, *_band(puzzle, layout, measure))), *more)


def head_beside(puzzle: BookPuzzle, layout: Layout, measure: float) -> tuple[Row, ...]:
    """Number and ridge on one line, then title, setter and band, one under the other."""
    type = layout.type
    base = _base(type.number, layout)
    number = Text(0.0, base, str(puzzle.number), type.number.font, type.number.size)
    top: list[Item] = [tagged((title_tag(puzzle, TITLE),), number)]
    if puzzle.rating:
        wide = ridge_width(layout)
        top.append(Group((ridge(puzzle.rating.band, wide),), measure - wide, base))
    title = broken(puzzle.heading, type.title.font, type.title.size, measure) if puzzle.heading else ()
    band = tuple(_band(puzzle, layout, measure))
    return (
        Row(type.number.leading, tuple(top)),
        Row(layout.line if band else layout.line / 2, band),
        *(
            Row(type.title.leading, (_title(0.0, _base(type.title, layout), words, layout),), tags=(TITLE.further,))
            for words in title
        ),
        *_setter(puzzle, layout, 0.0, measure),
    )


def rules_above(puzzle: BookPuzzle, layout: Layout, measure: float, hang: float) -> Iterator[Row]:
    """The rules as one text: plain sentences, then each mark's sample at the left of its sentence."""
    wide = min(measure - hang, RULES_EMS * layout.type.text.size)
    yield from _plain(puzzle, layout, wide, hang)
    room = hang - APART[0] * layout.line if hang else measure
    cells = [_cell(mark, layout, room) for mark in puzzle.rules.marks]
    samples = (swatch_size(mark.sample, cell)[0] for mark, cell in zip(puzzle.rules.marks, cells, strict=True))
    indent = max(hang, max(samples, default=0.0) + (APART[1] if hang else 0.7) * layout.line)
    wide = min(measure - indent, RULES_EMS * layout.type.text.size)
    for mark, cell in zip(puzzle.rules.marks, cells, strict=True):
        yield Row(layout.line / 2)
        yield _mark_row(mark, cell, layout, indent, wide)


def rules_beside(puzzle: BookPuzzle, layout: Layout, measure: float) -> Iterator[Row]:
    """The same in a narrow column: each mark's sample over its sentence."""
    yield from _plain(puzzle, layout, measure, 0.0)
    for mark in puzzle.rules.marks:
        cell = _cell(mark, layout, measure)
        high = swatch_size(mark.sample, cell)[1]
        yield Row(layout.line / 2)
        yield Row(ceil(2 * high / layout.line + 0.6) * layout.line / 2, (sample_told(layout.words, mark, cell),))
        yield from paragraph(mark.text, layout.type.text, measure, layout.line, tags=(OURS,))


def plain_rows(puzzle: BookPuzzle, layout: Layout, measure: float, x: float) -> tuple[Row, ...]:
    """The plain sentences of the rules alone, from `x` on."""
    return _plain(puzzle, layout, min(measure - x, RULES_EMS * layout.type.text.size), x)


def key_entries(puzzle: BookPuzzle, layout: Layout, measure: float) -> list[tuple[Row, ...]]:
    """The key to the marks for a column of a crowded page: small samples, all at the left of their sentences or all
    over them, whichever takes less room. White space follows each entry."""
    marks, line = puzzle.rules.marks, layout.line
    cells = [_cell(mark, layout, measure, SMALL_SAMPLE) for mark in marks]
    sizes = [swatch_size(mark.sample, cell) for mark, cell in zip(marks, cells, strict=True)]
    over: list[tuple[Row, ...]] = []
    beside: list[tuple[Row, ...]] = []
    indent = max((wide for wide, _ in sizes), default=0.0) + APART[0] * line
    for mark, cell, (_, high) in zip(marks, cells, sizes, strict=True):
        sample = Row(ceil(2 * high / line + 0.4) * line / 2, (sample_told(layout.words, mark, cell),), tied=True)
        over.append((sample, *paragraph(mark.text, layout.type.text, measure, line, tags=(OURS,)), Row(line / 2)))
        if measure - indent >= NARROWEST * layout.type.text.size:
            beside.append((_mark_row(mark, cell, layout, indent, measure - indent), Row(line / 2)))
    rooms = [sum(map(height, entries)) for entries in (over, beside)]
    return beside if len(beside) == len(marks) and rooms[1] <= rooms[0] else over


def title_tag(puzzle: BookPuzzle, tag: Tag) -> Tag:
    """A heading that says number and title of a puzzle, apart from each other and whole."""
    return replace(tag, said=f"{puzzle.number}. {puzzle.heading}" if puzzle.heading else puzzle.title)


def note_rows(puzzle: BookPuzzle, layout: Layout, measure: float) -> tuple[Row, ...]:
    """The note under a puzzle, at the right of the code of its link if it has one."""
    line, type, said = layout.line, layout.type.note, (replace(PARAGRAPH, order=NOTE),)
    if not puzzle.link:
        return paragraph(puzzle.note, type, min(measure, RULES_EMS * type.size), line, tags=said) if puzzle.note else ()
    side = qr_side(puzzle.link)
    x = side + line
    wide = min(measure - x, RULES_EMS * type.size)
    words = paragraph(puzzle.note, type, wide, line, x, tags=said) if puzzle.note else ()
    code = Tag(Role.FIGURE, layout.say("code-of-link", link=puzzle.link), NOTE, box=(0.0, 0.3 * line, side, side))
    leads = Link(0.0, 0.3 * line, side, side, puzzle.link, layout.say("link-of-puzzle", link=puzzle.link), outward=True)
    shown = tagged((replace(code, order=0),), Group((qr_code(puzzle.link),), 0.0, 0.3 * line))
    items: list[Item] = [tagged((replace(PARAGRAPH, order=NOTE), LINK), shown, leads)]
    items += [
        tagged(row.tags, replace(item, y=item.y + at * line))
        for at, row in enumerate(words)
        for item in row.items
        if isinstance(item, Text)
    ]
    return (Row(max(ceil((side + 0.6 * line) / line), len(words)) * line, tuple(items)),)


def sample_told(words: Catalogue, mark: MarkLine, cell: float) -> Tagged:
    """The sample of a mark, a figure by name: what it means is said beside it."""
    said = words.say("sample-of", kind=smart_quotes(title_of(words, type(mark.sample.rule))))
    figure = Tag(Role.FIGURE, said, language=OUR_LANGUAGE, box=(0.0, 0.0, *swatch_size(mark.sample, cell)))
    return tagged((figure,), swatch(mark.sample, cell))


def ridge_width(layout: Layout) -> float:
    """Width of the ridge beside a title."""
    return layout.type.title.size * 3.2


def _plain(puzzle: BookPuzzle, layout: Layout, measure: float, x: float) -> tuple[Row, ...]:
    plain = puzzle.rules.plain
    return paragraph(plain, layout.type.text, measure, layout.line, x, tags=(OURS,)) if plain else ()


def smallest_figure(layout: Layout) -> float:
    """The least size of figures in samples, in points."""
    return max(layout.puzzles.figure, SHARE * layout.type.text.size)


def _cell(mark: MarkLine, layout: Layout, room: float, lines: float = SAMPLE) -> float:
    """The cells of a sample: as large as is usual in `room` points, and larger where its figures ask for it."""
    usual = min(lines * layout.line, room / swatch_size(mark.sample, 1.0)[0])
    return max(usual, legible_cell(mark.sample, smallest_figure(layout)))


def _mark_row(mark: MarkLine, cell: float, layout: Layout, indent: float, measure: float) -> Row:
    """A sample with its sentence, their middles level where the sentence is the shorter."""
    line = layout.line
    words = paragraph(mark.text, layout.type.text, measure, line, tags=(OURS,))
    high = swatch_size(mark.sample, cell)[1]
    tall = max(len(words) * line, ceil(2 * high / line - 0.2) * line / 2)
    lead = (tall - len(words) * line) / 2
    middle = lead + (1 - DROP) * line - FONTS.x_height(layout.type.text.font) / 2 * layout.type.text.size
    top = max(0.2 * line, middle - high / 2) if lead == 0 else middle + (len(words) - 1) * line / 2 - high / 2
    items: list[Item] = [Group((sample_told(layout.words, mark, cell),), 0.0, top)]
    items += stacked(words, indent, lead, {})
    return Row(tall, tuple(items))


def _setter(puzzle: BookPuzzle, layout: Layout, x: float, measure: float) -> tuple[Row, ...]:
    type = layout.type.note.unparted
    return paragraph(puzzle.setter, type, measure, layout.line, x, tags=(SETTER,)) if puzzle.setter else ()


def _band(puzzle: BookPuzzle, layout: Layout, right: float) -> Iterator[Item]:
    """Band and difficulty, ending at the right; nothing where they are not shown."""
    if words := _band_words(layout.words, puzzle):
        label = layout.type.label
        text = Text(right, _base(layout.type.note, layout), words, label.font, label.size, anchor="end")
        yield tagged((BAND,), text)


def _band_words(words: Catalogue, puzzle: BookPuzzle) -> str:
    points = words.say("points", n=puzzle.points) if puzzle.points else ""
    if puzzle.rating is None:
        return points or puzzle.flaw
    said = points or words.say("difficulty-of", figure=decimal_said(words, puzzle.rating.figure))
    return f"{puzzle.rating.band_name}  ·  {said}"


def _title(x: float, y: float, words: str, layout: Layout) -> Text:
    return Text(x, y, words, layout.type.title.font, layout.type.title.size)


def _base(type: Type, layout: Layout) -> float:
    """Where the baseline lies in a row of this type."""
    return type.leading - DROP * layout.line
