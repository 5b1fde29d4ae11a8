"""The sheet of a cover before anything stands on it: its measures, its ground and its ornament.

In: a book and its theme. Out: a `Wrap` with the measures of back, spine and front in points, and the art that fills the
sheet beyond the trim and leaves `clear` the places where words will stand.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from math import ceil, floor

from bookmaker.book.contents import Book
from bookmaker.display.colour import Colour, contrast
from bookmaker.display.items import Group, Item, Line, Path, Point, Rect, Stroke, Text
from bookmaker.display.shapes import polyline
from bookmaker.layout.art.ornament import Field, ornament
from bookmaker.layout.art.pieces import Cell
from bookmaker.layout.theme import Palette, Theme

STEPS = 9
"""Steps of the terraces from the outer edge of the back to that of the front."""

LOWEST, HIGHEST = 0.14, 0.5
"""Heights of the first and the last step, as shares of the page's."""

STRIPE = 4
"""Rows of cells of a band; a plain row is under each."""


@dataclass(frozen=True, slots=True)
class Box:
    """A place on the sheet, in points from the top left corner of its trim."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: Box) -> bool:
        """Do two places share more than an edge?"""
        across = min(self.right, other.right) - max(self.left, other.left)
        down = min(self.bottom, other.bottom) - max(self.top, other.top)
        return across > 0.01 and down > 0.01

    @property
    def wide(self) -> float:
        return self.right - self.left

    @property
    def high(self) -> float:
        return self.bottom - self.top

    def filled(self, colour: Colour) -> Rect:
        """The place in a colour."""
        return Rect(self.left, self.top, self.wide, self.high, fill=colour)


@dataclass(frozen=True, slots=True)
class Wrap:
    """The measures of a cover in points: each side `wide`, all `high`, the `spine` between them, and the `bleed` around
    them. The cells of the pattern are `cell` points wide, the first at the top left corner of the front."""

    wide: float
    high: float
    spine: float
    bleed: float
    cell: float

    @property
    def front(self) -> float:
        """Where the front begins."""
        return self.wide + self.spine

    @property
    def across(self) -> float:
        """Width of the sheet as it is trimmed."""
        return 2 * self.wide + self.spine

    @property
    def sheet(self) -> Box:
        """The sheet with its bleed."""
        return Box(-self.bleed, -self.bleed, self.across + self.bleed, self.high + self.bleed)

    def of(self, cell: Cell) -> Box:
        """Where a cell of the pattern lies."""
        left, top = self.front + cell[0] * self.cell, cell[1] * self.cell
        return Box(left, top, left + self.cell, top + self.cell)


def wrap_art(book: Book, theme: Theme, wrap: Wrap, clear: Sequence[Box]) -> Iterator[Item]:
    """The ground and the ornament, from edge to edge and around the spine."""
    palette, sheet = theme.cover, wrap.sheet
    yield sheet.filled(palette.ground)
    first = floor((sheet.left - wrap.front) / wrap.cell), floor(sheet.top / wrap.cell)
    last = ceil((sheet.right - wrap.front) / wrap.cell), ceil(sheet.bottom / wrap.cell)
    steps = _Steps(wrap, first[0], last[0], last[1])

    def shown(cell: Cell) -> bool:
        if theme.pattern == "terraces" and cell[1] < steps.top(cell[0]):
            return False
        if theme.pattern == "bands" and cell[1] % (STRIPE + 1) == STRIPE:
            return False
        place = wrap.of(cell)
        return not any(place.meets(box) for box in clear)

    field = Field(wrap.cell, first, last, shown)
    drawn: list[Item] = []
    if theme.pattern == "bands":
        drawn += _stripes(palette, wrap, first, last)
    if theme.pattern == "terraces":
        drawn += steps.risers(palette, first[0], last[0])
    drawn.append(Group((ornament(book.puzzles, theme, palette, field, "ornament"),), wrap.front))
    frame = Rect(sheet.left, sheet.top, sheet.wide, sheet.high)
    yield Group(tuple(drawn), clip=frame, name="cover art")


def _stripes(palette: Palette, wrap: Wrap, first: Cell, last: Cell) -> Iterator[Item]:
    """The plain rows, in the colours of the marks."""
    for row in range(first[1], last[1] + 1):
        if row % (STRIPE + 1) == STRIPE:
            colour = palette.marks[row // (STRIPE + 1) % len(palette.marks)]
            edge = wrap.sheet
            yield Rect(edge.left, row * wrap.cell, edge.wide, wrap.cell, fill=colour)


@dataclass(frozen=True, slots=True)
class _Steps:
    """Steps that rise from the first column to the last; `foot` is the row under them."""

    wrap: Wrap
    first: int
    last: int
    foot: int

    def top(self, column: int) -> int:
        """The uppermost row of the step in a column."""
        step = STEPS * (column - self.first) // (self.last - self.first + 1)
        share = LOWEST + (HIGHEST - LOWEST) * step / (STEPS - 1)
        return self.foot - round(share * self.wrap.high / self.wrap.cell)

    def risers(self, palette: Palette, first: int, last: int) -> Iterator[Item]:
        """The ground under the steps, and a line along their edges."""
        cell, front, deep = self.wrap.cell, self.wrap.front, (self.foot + 1) * self.wrap.cell
        edge: list[Point] = []
        runs: list[tuple[int, int, int]] = []
        for column in range(first, last + 1):
            top = self.top(column)
            if runs and runs[-1][2] == top:
                runs[-1] = runs[-1][0], column, top
            else:
                runs.append((column, column, top))
        for begin, end, top in runs:
            left, right = front + begin * cell, front + (end + 1) * cell
            yield Rect(left, top * cell, right - left, deep - top * cell, fill=palette.panel)
            edge += [(left, top * cell), (right, top * cell)]
        yield polyline(edge, Stroke(0.12 * cell, palette.marks[0]))


def legible(palette: Palette, ground: Colour) -> Colour:
    """The colour for words on a ground: of those of the palette the one that stands out most."""
    return max((palette.words, palette.panel, 0.0, 1.0), key=lambda colour: contrast(colour, ground))


def inked(items: Iterable[Item], colour: Colour) -> Iterator[Item]:
    """The items with all that is black in a colour."""

    def pen(stroke: Stroke | None) -> Stroke | None:
        return replace(stroke, colour=colour) if stroke and stroke.colour == 0.0 else stroke

    for item in items:
        match item:
            case Text(colour=0.0):
                yield replace(item, colour=colour)
            case Group():
                yield replace(item, items=tuple(inked(item.items, colour)))
            case Rect() | Path():
                yield replace(item, stroke=pen(item.stroke), fill=colour if item.fill == 0.0 else item.fill)
            case Line():
                yield replace(item, stroke=pen(item.stroke) or item.stroke)
            case _:
                yield item
