"""Solution keys: small grids, several to a page, each with its number, title, solve profile and the way back.

In: the puzzles of a book. Out: rows of keys, for the pages at the back, a key on its own or a handout's last page.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from math import ceil

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, Text, tagged
from bookmaker.display.tags import HEADING, OUR_LANGUAGE, PARAGRAPH, SECTION, Role, Tag
from bookmaker.layout.art.gridart import draw_grid
from bookmaker.layout.art.profile import profile, profile_said
from bookmaker.layout.lengths import mm
from bookmaker.layout.page_side import UnnumberedPage
from bookmaker.layout.pages.parts import flowing, heading
from bookmaker.layout.pages.words import title_tag
from bookmaker.layout.setting.flow import height
from bookmaker.layout.setting.paging import pages
from bookmaker.layout.setting.text import DROP, Later, PageNumber, Row, broken, cut, width
from bookmaker.layout.spec import Layout

GUTTER = mm(6)
"""The least white space between keys, in points."""

CAPTION = 1.4
"""Height of the line over a key, in lines of text."""

PROFILE, TALLEST = 2.0, mm(8.5)
"""Height of the solve profile under a key, in lines of text, and the most in points: it grows with the text no further,
so that large print has room for two rows of keys."""

TIGHTER, LITTLE = 0.94, 0.4
"""So much smaller may keys of large grids be where that spares a last page filled less than this."""

FOOT, WHITE = 1.3, 0.8
"""Height of the line under the profile, and the least white between two rows of keys, in lines of text."""


@dataclass(frozen=True, slots=True)
class Key:
    """A key measured: it takes `span` columns, together `room` points wide, with cells of `cell` points."""

    puzzle: BookPuzzle
    span: int
    room: float
    cell: float

    @property
    def wide(self) -> float:
        """Width of the grid in points."""
        return self.puzzle.puzzle.grid.width * self.cell

    @property
    def high(self) -> float:
        """Height of the grid in points."""
        return self.puzzle.puzzle.grid.height * self.cell


def key_pages(puzzles: Sequence[BookPuzzle], layout: Layout, title: str, guide: str) -> list[UnnumberedPage]:
    """Pages of keys as the layout orders them. A mark at the outer edge, the lower the later they come, and the first
    and the last number after the `guide` at the foot say which keys a page has."""
    some = sorted(puzzles, key=lambda puzzle: puzzle.number % 2 == 0) if layout.keys.apart else puzzles
    numbers = {f"key {puzzle.id}": puzzle.number for puzzle in puzzles}
    order = {f"key {puzzle.id}": at for at, puzzle in enumerate(some)}
    usual, tighter = ([*heading(title, layout), *key_rows(some, layout, share)] for share in (1.0, TIGHTER))
    *full, last = pages(usual, layout.depth, layout.line)
    little = height(last[0]) < LITTLE * layout.depth
    spared = little and len(pages(tighter, layout.depth, layout.line)) == len(full)
    leaves = []
    for leaf in flowing(tighter if spared else usual, layout, "keys", title):
        here = [name for name, _ in leaf.anchors if name in numbers]
        if here:
            ends = f"{numbers[here[0]]}–{numbers[here[-1]]}" if len(here) > 1 else str(numbers[here[0]])
            leaf = replace(leaf, guide=f"{guide} {ends}", thumb=order[here[0]] / max(1, len(some) - 1))
        leaves.append(leaf)
    return leaves


def key_rows(puzzles: Sequence[BookPuzzle], layout: Layout, share: float = 1.0) -> Iterator[Row]:
    """Keys in order, as many across as the layout says, each row of them one `Row` with white after it. Profiles share
    one scale. Large grids have a `share` of their size."""
    across = layout.keys.columns
    column = min((layout.measure - (across - 1) * GUTTER) / across, 9 * layout.keys.cell)
    gutter = (layout.measure - across * column) / (across - 1) if across > 1 else 0.0
    ceiling = max((step for puzzle in puzzles if puzzle.rating for step in puzzle.rating.profile), default=1.0)
    row: list[Key] = []
    for puzzle in puzzles:
        key = _measured(puzzle, layout, column, gutter, share)
        if sum(other.span for other in row) + key.span > across:
            yield from _row(row, layout, gutter, ceiling)
            row = []
        row.append(key)
    if row:
        yield from _row(row, layout, gutter, ceiling)


def _measured(puzzle: BookPuzzle, layout: Layout, column: float, gutter: float, share: float) -> Key:
    """A large grid takes more columns, so that its digits come out about as large as those of the others."""
    size = puzzle.puzzle.grid.width
    wanted = 0.8 * column / 9 * size
    span = min(layout.keys.columns, ceil((wanted + gutter) / (column + gutter)))
    room = span * column + (span - 1) * gutter
    return Key(puzzle, span, room, min(layout.keys.cell, room / size) * (share if span > 1 else 1.0))


def _row(keys: Sequence[Key], layout: Layout, gutter: float, ceiling: float) -> Iterator[Row]:
    """The keys, and the white that brings the next ones on the grid of lines; at the foot of a page it is left out."""
    line = layout.line
    anchors = tuple(f"key {key.puzzle.id}" for key in keys)
    drawn_to = max(_depth(key, layout) for key in keys) + FOOT * line
    yield Row(drawn_to, Later(partial(_drawn, tuple(keys), layout, gutter, ceiling)), anchors=anchors)
    yield Row(ceil((drawn_to + WHITE * line) / line) * line - drawn_to)


def _drawn(keys: Sequence[Key], layout: Layout, gutter: float, ceiling: float) -> Iterator[Item | PageNumber]:
    """The keys of a row, side by side."""
    x = 0.0
    for key in keys:
        foot, caption = _depth(key, layout), tagged((title_tag(key.puzzle, HEADING),), *_caption(key, layout, x))
        drawn = draw_grid(
            key.puzzle.puzzle,
            key.cell,
            f"key {key.puzzle.id}",
            key.puzzle.solution or (),
            marks=False,
            language=layout.language,
        )
        grid = Group((drawn,), x, CAPTION * layout.line)
        yield tagged((SECTION,), caption, grid, *_under(key, layout, x, foot, ceiling))
        yield from _foot(key, layout, x, foot + layout.line)
        x += key.room + gutter


def _depth(key: Key, layout: Layout) -> float:
    """Where the profile under a key stands."""
    return CAPTION * layout.line + key.high + 0.3 * layout.line + _profile_height(layout)


def _profile_height(layout: Layout) -> float:
    return min(PROFILE * layout.line, TALLEST)


def _caption(key: Key, layout: Layout, x: float) -> Iterator[Item]:
    """Number and title over a key; a title too long for its column ends in an ellipsis."""
    small, puzzle = layout.type.small, key.puzzle
    base = (1 - DROP) * layout.line
    number = Text(x, base, str(puzzle.number), "sans-bold", small.size)
    yield number
    indent = width(f"{puzzle.number}  ", small)
    words = cut(puzzle.heading, small, key.room - indent)
    yield Text(x + indent, base, words, small.font, small.size)


def _under(key: Key, layout: Layout, x: float, y: float, ceiling: float) -> Iterator[Item]:
    """The solve profile, standing on `y`; in a draft what is wrong with the puzzle."""
    rating, label, high = key.puzzle.rating, layout.type.label, _profile_height(layout)
    if rating and rating.profile:
        wide = min(key.wide, 9 * key.cell)
        drawn = profile(rating.profile, rating.narrow, wide, high, ceiling)
        told = Tag(Role.FIGURE, profile_said(layout.words, rating), language=OUR_LANGUAGE, box=(0.0, -high, wide, high))
        yield Group((tagged((told,), drawn),), x, y)
    for at, words in enumerate(broken(key.puzzle.flaw, label.font, label.size, key.wide)):
        text = Text(x, y - high + (at + 1) * layout.line, words, "sans-bold", label.size)
        yield tagged((PARAGRAPH.further if at else PARAGRAPH,), text)


def _foot(key: Key, layout: Layout, x: float, y: float) -> Iterator[Item | PageNumber]:
    """How many steps the profile has, if there is room for it, and the way back."""
    label, rating, tags = layout.type.label, key.puzzle.rating, (SECTION.further, PARAGRAPH)
    if rating and rating.profile:
        steps = layout.say("steps-counted", n=rating.steps, number=str(rating.steps))
        if width(f"{steps}  {layout.say('page')} 000", label) <= key.wide:
            yield tagged(tags, Text(x, y, steps, label.font, label.size, 0.25))
    yield PageNumber(x + key.wide, y, f"{layout.say('page')} ", f"puzzle {key.puzzle.id}", label, 0.25, tags=tags)
