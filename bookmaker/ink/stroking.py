"""Strokes as areas: what a pen covers as it follows a contour.

In: contours and a pen, in one measure. Out: polygons that all turn the same way; the stroke is where at least one of
them is (the non-zero winding rule).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import cycle, pairwise
from math import acos, ceil, cos, hypot, pi, sin, sqrt

from bookmaker.display.items import Point, Stroke
from bookmaker.geometry import Contour

MITER_LIMIT = 10.0
"""A sharp corner longer than this many half widths is cut off (PDF's initial value)."""


def stroked(contours: Iterable[Contour], stroke: Stroke, tolerance: float) -> list[tuple[Point, ...]]:
    """The polygons that a stroke covers; round parts stray at most `tolerance` from a circle."""
    polygons: list[tuple[Point, ...]] = []
    for contour in contours:
        for stretch in _dashes(contour, stroke.dash) if stroke.dash else (contour,):
            polygons.extend(_turned(polygon) for polygon in _pieces(stretch, stroke, tolerance))
    return polygons


def _dashes(contour: Contour, dash: tuple[float, ...]) -> Iterator[Contour]:
    """The inked stretches; lengths alternate between ink and gap, over and over, from the contour's start."""
    if sum(dash) <= 0:
        yield contour
        return
    points = contour.points + contour.points[:1] if contour.closed else contour.points
    lengths = cycle(dash)
    left, inked = next(lengths), True
    stretch = [points[0]]
    for start, end in pairwise(points):
        whole = hypot(end[0] - start[0], end[1] - start[1])
        done = 0.0
        while whole - done > left:
            done += left
            share = done / whole
            turn = (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))
            if inked:
                yield Contour((*stretch, turn), False)
            stretch = [turn]
            left, inked = next(lengths), not inked
        left -= whole - done
        stretch.append(end)
    if inked and len(stretch) > 1:
        yield Contour(tuple(stretch), False)


def _pieces(contour: Contour, stroke: Stroke, tolerance: float) -> Iterator[tuple[Point, ...]]:
    """A box along each straight stretch, then what fills the corners and caps the ends."""
    half = stroke.width / 2
    points = [contour.points[0], *(b for a, b in pairwise(contour.points) if a != b)]
    closed = contour.closed
    if closed and points[-1] == points[0]:
        points.pop()
    if len(points) < 2:
        yield from _dot(points[0], stroke, tolerance)
        return
    ends = [*points, points[0]] if closed else points
    ways = [_way(a, b) for a, b in pairwise(ends)]
    for (start, end), (x, y) in zip(pairwise(ends), ways, strict=True):
        across, down = -y * half, x * half
        yield (
            (start[0] + across, start[1] + down),
            (end[0] + across, end[1] + down),
            (end[0] - across, end[1] - down),
            (start[0] - across, start[1] - down),
        )
    corners = zip(points[1:], pairwise(ways), strict=False)
    for at, (before, after) in corners:
        yield from _corner(at, before, after, stroke, tolerance)
    if closed:
        yield from _corner(points[0], ways[-1], ways[0], stroke, tolerance)
    else:
        yield from _cap(points[0], (-ways[0][0], -ways[0][1]), stroke, tolerance)
        yield from _cap(points[-1], ways[-1], stroke, tolerance)


def _corner(at: Point, before: Point, after: Point, stroke: Stroke, tolerance: float) -> Iterator[tuple[Point, ...]]:
    """The wedge on the outside of a corner."""
    half = stroke.width / 2
    turn = before[0] * after[1] - before[1] * after[0]
    straight = before[0] * after[0] + before[1] * after[1]
    if abs(turn) < 1e-9 and straight > 0:
        return
    side = -half if turn > 0 else half
    one = (at[0] - before[1] * side, at[1] + before[0] * side)
    other = (at[0] - after[1] * side, at[1] + after[0] * side)
    if stroke.join == "round":
        yield (at, *_arc(at, one, other, half, tolerance))
    elif stroke.join == "miter" and (1 + straight) * MITER_LIMIT**2 > 2:
        reach = side / (1 + straight)
        tip = (at[0] - (before[1] + after[1]) * reach, at[1] + (before[0] + after[0]) * reach)
        yield (at, one, tip, other)
    else:
        yield (at, one, other)


def _cap(at: Point, way: Point, stroke: Stroke, tolerance: float) -> Iterator[tuple[Point, ...]]:
    """What lies beyond an end; `way` points outwards."""
    half = stroke.width / 2
    x, y = way[0] * half, way[1] * half
    one, other = (at[0] - y, at[1] + x), (at[0] + y, at[1] - x)
    if stroke.cap == "round":
        tip = (at[0] + x, at[1] + y)
        yield (*_arc(at, one, tip, half, tolerance), *_arc(at, tip, other, half, tolerance))
    elif stroke.cap == "square":
        yield (one, (one[0] + x, one[1] + y), (other[0] + x, other[1] + y), other)


def _dot(at: Point, stroke: Stroke, tolerance: float) -> Iterator[tuple[Point, ...]]:
    """A stretch of no length: round and square ends still make a mark."""
    yield from _cap(at, (1.0, 0.0), stroke, tolerance)
    yield from _cap(at, (-1.0, 0.0), stroke, tolerance)


def _way(start: Point, end: Point) -> Point:
    x, y = end[0] - start[0], end[1] - start[1]
    length = hypot(x, y)
    return x / length, y / length


def _arc(centre: Point, start: Point, end: Point, radius: float, tolerance: float) -> list[Point]:
    """Points on the shorter arc from start to end; a chord over angle a strays radius · (1 − cos(a/2))."""
    x, y = (start[0] - centre[0]) / radius, (start[1] - centre[1]) / radius
    u, v = (end[0] - centre[0]) / radius, (end[1] - centre[1]) / radius
    angle = acos(max(-1.0, min(1.0, x * u + y * v)))
    if x * v - y * u < 0:
        angle = -angle
    step = 2 * sqrt(min(2 * tolerance / radius, (pi / 4) ** 2))
    steps = max(1, ceil(abs(angle) / step))
    turns = [angle * index / steps for index in range(steps + 1)]
    return [
        (centre[0] + radius * (x * cos(t) - y * sin(t)), centre[1] + radius * (x * sin(t) + y * cos(t))) for t in turns
    ]


def _turned(polygon: tuple[Point, ...]) -> tuple[Point, ...]:
    """The polygon, with its points in the order that has a positive area."""
    area = sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise((*polygon, polygon[0])))
    return polygon if area >= 0 else polygon[::-1]
