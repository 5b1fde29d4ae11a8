"""What can be painted on a page of a PDF, as far as the checks ask: values in points, y up from the page's origin."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import hypot
from typing import Any, NamedTuple, TypeAlias

from bookmaker.display.items import Close, Curve, Move, Segment, Straight
from bookmaker.preflight.pdffont import PdfFont
from bookmaker.preflight.tokens import path_operations
from bookmaker.sight.shapes import Box, bounds_of

Point: TypeAlias = tuple[float, float]

Matrix: TypeAlias = tuple[float, float, float, float, float, float]
"""(a, b, c, d, e, f) takes (x, y) to (a·x + c·y + e, b·x + d·y + f)."""

IDENTITY: Matrix = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)


def within(outer: Matrix, inner: Matrix) -> Matrix:
    """First the inner matrix, then the outer one."""
    a, b, c, d, e, f = outer
    p, q, r, s, t, u = inner
    return (a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f)


def moved(matrix: Matrix, point: Point) -> Point:
    """Where the matrix takes a point."""
    a, b, c, d, e, f = matrix
    x, y = point
    return a * x + c * y + e, b * x + d * y + f


FIGURE = 0.7
"""Height of figures and capitals, per em: near enough for every text font."""


class Setting(NamedTuple):
    """How a string is set, in points before a matrix: `letters` are (character, start, width), `length` is how far they
    go. `seen` is where those that are no spaces begin and end, None if there are none, and `middles` are these with the
    middle of each; `lacking` ones have no glyph."""

    letters: tuple[tuple[str, float, float], ...]
    length: float
    seen: tuple[float, float] | None
    middles: tuple[tuple[str, float], ...]
    lacking: bool


def set_out(letters: Sequence[tuple[str, float, float]], length: float) -> Setting:
    """Letters, as (character, start, width), with what the checks ask of them together."""
    seen = [letter for letter in letters if not letter[0].isspace()]
    ends = (seen[0][1], seen[-1][1] + seen[-1][2]) if seen else None
    middles = tuple([(letter, start + wide / 2) for letter, start, wide in seen])
    return Setting(tuple(letters), length, ends, middles, any(letter[0] == "\x00" for letter in letters))


class Run(NamedTuple):
    """Text shown in one go."""

    font: PdfFont
    size: float
    setting: Setting
    matrix: Matrix
    rise: float
    group: tuple[str, ...]
    grey: float = 0.0

    @property
    def em(self) -> float:
        """Type size in points on the page."""
        return self.size * hypot(self.matrix[2], self.matrix[3])

    def middles(self) -> list[tuple[str, Point]]:
        """The characters, spaces left out, each with the middle of its box: as wide as it goes, as high as a figure."""
        a, b, c, d, e, f = self.matrix
        high = self.rise + FIGURE * self.size / 2
        x, y = e + c * high, f + d * high
        return [(letter, (x + a * along, y + b * along)) for letter, along in self.setting.middles]

    def box(self) -> tuple[float, float, float, float] | None:
        """The box around the text, left, bottom, right, top, spaces at its ends left out; None if nothing is seen."""
        if self.setting.seen is None:
            return None
        begin, end = self.setting.seen
        low, high = self.rise, self.rise + FIGURE * self.size
        a, b, c, d, e, f = self.matrix
        if not b and not c and a > 0 < d:
            return e + a * begin, f + d * low, e + a * end, f + d * high
        xs = (a * begin + c * low, a * begin + c * high, a * end + c * low, a * end + c * high)
        ys = (b * begin + d * low, b * begin + d * high, b * end + d * low, b * end + d * high)
        return e + min(xs), f + min(ys), e + max(xs), f + max(ys)


class Stroke(NamedTuple):
    """A stroked path: pen width on the page, and its segments as written, before `matrix`; with its `fill` if it is
    filled as well."""

    width: float
    group: tuple[str, ...]
    drawn: bytes
    matrix: Matrix
    grey: float = 0.0
    fill: float | None = None

    @property
    def ways(self) -> tuple[tuple[Point, ...], ...]:
        """The corners of each stretch on the page; a closed one comes back to its first."""
        return tuple(tuple(moved(self.matrix, point) for point in way) for way in corners(self.drawn))


@lru_cache(maxsize=512)  # the grids of a book share most of their lines; what comes once, such as profiles, goes soon
def corners(path: bytes) -> tuple[tuple[Point, ...], ...]:
    """The corners of each stretch of a path as written; a closed one comes back to its first."""
    found: list[list[Point]] = []
    for operator, numbers in path_operations(path):
        match operator, numbers:
            case "m", (x, y):
                found.append([(x, y)])
            case "re", (x, y, width, height):
                right, top = x + width, y + height
                found.append([(x, y), (right, y), (right, top), (x, top), (x, y)])
            case "h", _ if found:
                found[-1].append(found[-1][0])
            case (("l" | "c" | "v" | "y"), (*_, x, y)) if found:
                found[-1].append((x, y))
    return tuple(map(tuple, found))


class Fill(NamedTuple):
    """A filled path without a stroke, its segments as written."""

    grey: float
    group: tuple[str, ...]
    drawn: bytes
    matrix: Matrix


@lru_cache(maxsize=512)  # the lines of grids and the white around digits come again and again
def segments(path: bytes) -> tuple[tuple[Segment, ...], Box]:
    """A path as written, in the segments that our own pages are made of, and the box around its points."""
    found: list[Segment] = []
    at = (0.0, 0.0)
    for operator, numbers in path_operations(path):
        match operator, numbers:
            case "m", (x, y):
                found.append(Move((x, y)))
            case "l", (x, y):
                found.append(Straight((x, y)))
            case "c", (a, b, c, d, x, y):
                found.append(Curve((a, b), (c, d), (x, y)))
            case "v", (c, d, x, y):
                found.append(Curve(at, (c, d), (x, y)))
            case "y", (a, b, x, y):
                found.append(Curve((a, b), (x, y), (x, y)))
            case "re", (x, y, width, height):
                right, top = x + width, y + height
                found += (Move((x, y)), Straight((right, y)), Straight((right, top)), Straight((x, top)), Close())
            case "h", _:
                found.append(Close())
                continue
            case _:
                continue
        at = (x, y)
    # A path that does not begin at a point is none.
    if not found or not isinstance(found[0], Move):
        return (), (0.0, 0.0, 0.0, 0.0)
    return tuple(found), bounds_of(found)


@dataclass(frozen=True, slots=True)
class Picture:
    """A raster image: its pixels, its printed width and height in points, its colour space; it covers the unit square
    before `matrix`."""

    pixels: tuple[int, int]
    printed: tuple[float, float]
    space: str
    matrix: Matrix = IDENTITY


@dataclass(frozen=True, slots=True)
class Colour:
    """A colour other than a grey is chosen: the operator, and the space or the values that came with it."""

    operator: str
    values: tuple[Any, ...]


Painted: TypeAlias = Run | Stroke | Fill | Picture | Colour
