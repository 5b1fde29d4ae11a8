"""Printed grids read back: which digits stand in which cells, told from positions on paper alone.

In: what is painted on a page. Out: one `PrintedGrid` for each group that is named as a grid or a key. The frame is
the largest stroked square of the group, or goes around all of its size; the lines that cross it from side to side make
the cells; a digit belongs to the cell in whose middle it stands, whichever way the page or the grid is turned. Nothing
comes from the manifest.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache
from itertools import groupby
from math import hypot
from operator import attrgetter
from typing import Literal

from bookmaker.preflight.painted import Matrix, Painted, Point, Run, Stroke, corners, moved, within

_TALL = 0.45
"""A cell's digit is set at least this large, its em as a share of the cell; totals and pencil marks are smaller."""

_MIDDLE = 0.25
"""A cell's digit has its middle at most this share of a cell from the cell's."""


@dataclass(frozen=True, slots=True)
class Frame:
    """The frame of a grid, or around several that overlap: its top left corner as its digits stand, its sides to the
    right and down, the width of its pen; and how large a point of the drawing came out."""

    corner: Point
    right: Point
    down: Point
    pen: float
    scale: float

    @property
    def side(self) -> float:
        return hypot(*self.right)

    @property
    def end(self) -> Point:
        """The corner opposite."""
        return self.corner[0] + self.right[0] + self.down[0], self.corner[1] + self.right[1] + self.down[1]

    @property
    def matrix(self) -> Matrix:
        """Takes points of the drawing, y down from its top left corner, to the page."""
        (a, b), (c, d), (e, f) = self.right, self.down, self.corner
        wide, high = hypot(a, b) / self.scale, hypot(c, d) / self.scale
        return a / wide, b / wide, c / high, d / high, e, f

    @property
    def shares(self) -> Matrix:
        """Does what `share` does, for many points."""
        (a, b), (c, d), (x, y) = self.right, self.down, self.corner
        along, down = a * a + b * b, c * c + d * d
        return a / along, c / down, b / along, d / down, -(x * a + y * b) / along, -(x * c + y * d) / down

    def share(self, point: Point) -> Point:
        """How far right and down a point lies, as shares of the sides."""
        x, y = point[0] - self.corner[0], point[1] - self.corner[1]
        (a, b), (c, d) = self.right, self.down
        return (x * a + y * b) / (a * a + b * b), (x * c + y * d) / (c * c + d * d)

    def around(self, others: Sequence[Frame]) -> Frame:
        """The frame around this square and others of the same size that stand the same way."""
        ends = [share for other in others for share in map(self.share, (other.corner, other.end))]
        (left, right), (top, bottom) = ((min(along), max(along)) for along in zip(*ends, strict=True))
        (a, b), (c, d), (x, y) = self.right, self.down, self.corner
        return replace(
            self,
            corner=(x + left * a + top * c, y + left * b + top * d),
            right=(a * (right - left), b * (right - left)),
            down=(c * (bottom - top), d * (bottom - top)),
        )

    def cells(self, strokes: Iterable[Stroke]) -> int:
        """Cells along a side: one more than there are lines from the top side to the bottom side."""
        shares = self.shares
        return len(set[float]().union(*(_crossings(stroke.drawn, stroke.matrix, shares) for stroke in strokes))) + 1


@lru_cache(maxsize=512)  # the lines of grids lie in the same places on many pages
def _crossings(drawn: bytes, matrix: Matrix, shares: Matrix) -> frozenset[float]:
    """Where lines of a stroke go from the top side to the bottom side, as shares of these sides; in a path with curves
    none counts as a line."""
    places, to_shares = set(), within(shares, matrix)
    for way in corners(drawn) if b"c" not in drawn else ():
        if len(way) == 2:
            (a, top), (b, bottom) = sorted((moved(to_shares, end) for end in way), key=lambda share: share[1])
            if abs(a - b) < 1e-3 and abs(top) < 1e-3 and abs(bottom - 1) < 1e-3 and 1e-3 < a < 1 - 1e-3:
                places.add(round(a, 3))
    return frozenset(places)


@dataclass(frozen=True, slots=True)
class PrintedGrid:
    """A grid as printed. `symbols` has a cell's digits in reading order, “” where it is empty; `fonts` how each is set.

    `page` counts from 1. `rows` and `columns` are 0 if the `frame` or its cells could not be made out.
    """

    kind: Literal["grid", "key"]
    id: str
    page: int
    rows: int = 0
    columns: int = 0
    symbols: tuple[str, ...] = ()
    fonts: tuple[str, ...] = ()
    smallest: float = 0.0
    """The type size of its smallest letters or figures, in points; 0 where it has none."""
    frame: Frame | None = field(default=None, compare=False, repr=False)


def grids_on(number: int, items: Iterable[Painted]) -> list[PrintedGrid]:
    """The grids and keys of a page, `number` counted from 1, in the order of printing."""
    held: dict[str, list[Run | Stroke]] = {}
    drawn = [item for item in items if isinstance(item, (Run, Stroke))]
    for group, some in groupby(drawn, attrgetter("group")):
        name = next((name for name in group if name.startswith(("grid ", "key "))), None)
        if name is not None:
            held.setdefault(name, []).extend(some)
    return [_read(name, number, here) for name, here in held.items()]


def _read(name: str, page: int, held: Sequence[Run | Stroke]) -> PrintedGrid:
    kind: Literal["grid", "key"] = "key" if name.startswith("key ") else "grid"
    title = name.partition(" ")[2]
    strokes = [item for item in held if isinstance(item, Stroke)]
    runs = [item for item in held if isinstance(item, Run)]
    squares = [*filter(None, map(_square, strokes))]
    square = max(squares, key=lambda square: square.side, default=None)
    if square is None:
        return PrintedGrid(kind, title, page)
    cell = square.side / square.cells(strokes)
    frame = square.around([other for other in squares if abs(other.side - square.side) < 0.01 * square.side])
    rows, columns = round(hypot(*frame.down) / cell), round(hypot(*frame.right) / cell)
    ems, least = [run.em for run in runs], _TALL * cell
    a, b, c, d, e, f = within((columns, 0, 0, rows, 0, 0), frame.shares)
    symbols, fonts = [""] * (rows * columns), [""] * (rows * columns)
    for run, em in zip(runs, ems, strict=True):
        if em < least:
            continue
        for character, (x, y) in run.middles():
            across, down = a * x + c * y + e, b * x + d * y + f
            row, column = int(down), int(across)
            inside = 0 <= across < columns and 0 <= down < rows
            if inside and abs(down - row - 0.5) <= _MIDDLE and abs(across - column - 0.5) <= _MIDDLE:
                symbols[row * columns + column] += character
                fonts[row * columns + column] = run.font.name
    return PrintedGrid(kind, title, page, rows, columns, tuple(symbols), tuple(fonts), min(ems, default=0.0), frame)


def _square(stroke: Stroke) -> Frame | None:
    """The square that a stroke draws as one rectangle, if it does."""
    if stroke.drawn.count(b"re") != 1 or len(stroke.ways) != 1:
        return None
    foot, along, _, top, _ = stroke.ways[0]
    right, down = (along[0] - foot[0], along[1] - foot[1]), (foot[0] - top[0], foot[1] - top[1])
    scale = hypot(stroke.matrix[0], stroke.matrix[1])
    square = Frame(top, right, down, stroke.width, scale)
    return square if abs(hypot(*down) - square.side) < 0.01 * square.side else None
