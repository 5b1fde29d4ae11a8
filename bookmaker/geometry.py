"""Plane geometry of display items: placing groups, turning shapes into segments and straight stretches.

In: display items. Out: matrices, segments, contours. All in points, y down, as display items are.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import ceil, cos, hypot, radians, sin, sqrt
from typing import TypeAlias, assert_never

from bookmaker.display.items import Close, Curve, Group, Move, Path, Point, Rect, Segment, Straight, Text
from bookmaker.display.shapes import ARC
from bookmaker.typeface import SPACES, typeface

Matrix: TypeAlias = tuple[float, float, float, float, float, float]
"""(a, b, c, d, e, f) takes (x, y) to (a·x + c·y + e, b·x + d·y + f)."""

IDENTITY: Matrix = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)


def placing(group: Group) -> Matrix:
    """The matrix that takes a group's items to where they stand outside it."""
    across, down = group.scale, 0.0
    if group.turn:
        across, down = cos(radians(group.turn)) * group.scale, sin(radians(group.turn)) * group.scale
    return (across, down, -down, across, group.dx, group.dy)


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


def box_in(matrix: Matrix, x: float, y: float, width: float, height: float) -> tuple[float, float, float, float]:
    """The box around where the matrix takes a rectangle: left, top, right and bottom."""
    a, b, c, d, e, f = matrix
    if not b and not c and a > 0 < d:  # not turned
        return a * x + e, d * y + f, a * (x + width) + e, d * (y + height) + f
    corners = [moved(matrix, (across, down)) for across in (x, x + width) for down in (y, y + height)]
    xs, ys = zip(*corners, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def outline(shape: Path | Rect) -> tuple[Segment, ...]:
    """A shape's segments; a rectangle runs clockwise from its top left corner, round corners as Bézier curves."""
    if isinstance(shape, Path):
        return shape.segments
    left, top = shape.x, shape.y
    right, bottom = left + shape.width, top + shape.height
    r = min(shape.radius, shape.width / 2, shape.height / 2)
    if r <= 0:
        corners = (left, top), (right, top), (right, bottom), (left, bottom)
        return (Move(corners[0]), *(Straight(corner) for corner in corners[1:]), Close())
    k = r * (1 - ARC)
    return (
        Move((left + r, top)),
        Straight((right - r, top)),
        Curve((right - k, top), (right, top + k), (right, top + r)),
        Straight((right, bottom - r)),
        Curve((right, bottom - k), (right - k, bottom), (right - r, bottom)),
        Straight((left + r, bottom)),
        Curve((left + k, bottom), (left, bottom - k), (left, bottom - r)),
        Straight((left, top + r)),
        Curve((left, top + k), (left + k, top), (left + r, top)),
        Close(),
    )


@dataclass(frozen=True, slots=True)
class Contour:
    """Straight stretches through the points; a closed one also leads from the last back to the first."""

    points: tuple[Point, ...]
    closed: bool


def flattened(segments: Iterable[Segment], matrix: Matrix, tolerance: float) -> list[Contour]:
    """The segments, moved by the matrix, as straight stretches that stray no more than `tolerance` from the curves."""
    contours: list[Contour] = []
    points: list[Point] = []

    def finish(closed: bool) -> None:
        if len(points) > 1:
            contours.append(Contour(tuple(points), closed))

    for segment in segments:
        match segment:
            case Move(to):
                finish(False)
                points = [moved(matrix, to)]
            case Straight(to):
                points.append(moved(matrix, to))
            case Curve(first, second, to):
                start = points[-1]
                points += _along(start, moved(matrix, first), moved(matrix, second), moved(matrix, to), tolerance)
            case Close():
                finish(True)
                points = points[:1]
            case _ as never:
                assert_never(never)
    finish(False)
    return contours


def _along(a: Point, b: Point, c: Point, d: Point, tolerance: float) -> list[Point]:
    """Points along a cubic Bézier curve after its start, evenly in its parameter.

    A chord over a parameter step h strays at most h²/8 · max|B″|, and |B″| ≤ 6 · the larger second difference.
    """
    bend = max(
        hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1]), hypot(b[0] - 2 * c[0] + d[0], b[1] - 2 * c[1] + d[1])
    )
    steps = max(1, ceil(sqrt(0.75 * bend / tolerance)))
    points = []
    for step in range(1, steps + 1):
        t = step / steps
        s = 1 - t
        p, q, r, u = s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t
        points.append((p * a[0] + q * b[0] + r * c[0] + u * d[0], p * a[1] + q * b[1] + r * c[1] + u * d[1]))
    return points


def text_start(text: Text) -> float:
    """The x at which a text begins, its anchor being its start, middle or end."""
    if text.anchor == "start":
        return text.x
    length = typeface(text.font).length(text.text, text.size, text.letter_space, text.word_space)
    return text.x - (length / 2 if text.anchor == "middle" else length)


def letters(text: Text) -> list[tuple[str, float]]:
    """The printing characters of a text, each with the x of its origin."""
    start, spaces = text_start(text), 0
    placed = []
    for index, (character, stop) in enumerate(zip(text.text, typeface(text.font).run(text.text), strict=False)):
        if character in SPACES:
            spaces += 1
            continue
        x = start + stop * text.size + index * text.letter_space + spaces * text.word_space
        placed.append((character, x))
    return placed
