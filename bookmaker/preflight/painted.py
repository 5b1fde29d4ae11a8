"""What can be painted on a page of a PDF, as far as the checks ask: values in points, y up from the page's origin.

Fills leave no trace but their colour; of curves only the ends are kept.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from math import hypot
from typing import Any, TypeAlias

from bookmaker.preflight.pdffont import PdfFont
from bookmaker.preflight.tokens import path_operations

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


@dataclass(frozen=True, slots=True)
class Run:
    """Text shown in one go. `letters` are (character, start, width), the lengths in points before `matrix`."""

    font: PdfFont
    size: float
    letters: tuple[tuple[str, float, float], ...]
    matrix: Matrix
    rise: float
    group: tuple[str, ...]

    @property
    def em(self) -> float:
        """Type size in points on the page."""
        return self.size * hypot(self.matrix[2], self.matrix[3])

    def middles(self) -> Iterator[tuple[str, Point]]:
        """The characters, spaces left out, each with the middle of its box: as wide as it goes, as high as a figure."""
        a, b, c, d, e, f = self.matrix
        high = self.rise + FIGURE * self.size / 2
        x, y = e + c * high, f + d * high
        for character, start, width in self.letters:
            if not character.isspace():
                along = start + width / 2
                yield character, (x + a * along, y + b * along)

    def box(self) -> tuple[float, float, float, float] | None:
        """The box around the text, left, bottom, right, top, spaces at its ends left out; None if nothing is seen."""
        seen = [letter for letter in self.letters if not letter[0].isspace()]
        if not seen:
            return None
        begin, end = seen[0][1], seen[-1][1] + seen[-1][2]
        low, high = self.rise, self.rise + FIGURE * self.size
        a, b, c, d, e, f = self.matrix
        along_x, up_x, along_y, up_y = (
            (a * begin, a * end),
            (c * low, c * high),
            (b * begin, b * end),
            (d * low, d * high),
        )
        left, bottom = e + min(along_x) + min(up_x), f + min(along_y) + min(up_y)
        return left, bottom, e + max(along_x) + max(up_x), f + max(along_y) + max(up_y)


def _sorted(one: float, other: float) -> tuple[float, float]:
    return (one, other) if one <= other else (other, one)


@dataclass(frozen=True)
class Stroke:
    """A stroked path: pen width on the page, and its segments as written, before `matrix`."""

    width: float
    group: tuple[str, ...]
    drawn: bytes
    matrix: Matrix

    @cached_property
    def ways(self) -> tuple[tuple[Point, ...], ...]:
        """The corners of each stretch on the page; a closed one comes back to its first."""
        found: list[list[Point]] = []
        for operator, numbers in path_operations(self.drawn):
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
        return tuple(tuple(moved(self.matrix, point) for point in way) for way in found)


@dataclass(frozen=True, slots=True)
class Picture:
    """A raster image: its pixels, its printed width and height in points, its colour space."""

    pixels: tuple[int, int]
    printed: tuple[float, float]
    space: str


@dataclass(frozen=True, slots=True)
class Colour:
    """A colour other than a grey is chosen: the operator, and the space or the values that came with it."""

    operator: str
    values: tuple[Any, ...]


Painted: TypeAlias = Run | Stroke | Picture | Colour
