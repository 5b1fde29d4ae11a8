"""Shapes as they are painted: what each covers, and points at which it can be seen.

In: display items, or the paths of a finished page. Out: `Shape`s in one system of coordinates. Curves are followed by
straight stretches; line ends and corners count as round, and dashes as a whole line, which is near enough to tell
whether a mark is seen. Stretches are only worked out for the few shapes that come near another.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import cached_property, lru_cache
from itertools import chain, pairwise
from math import ceil, hypot
from typing import TypeAlias

from bookmaker.display.colour import Grey, grey_of
from bookmaker.display.items import (
    Close,
    Curve,
    Group,
    Item,
    Line,
    Move,
    Path,
    Point,
    Rect,
    Segment,
    Stroke,
    Text,
)
from bookmaker.geometry import IDENTITY, Matrix, flattened, letters, moved, outline, placing, within
from bookmaker.typeface import typeface

DARK: Grey = 0.75
"""What is lighter is a ground or a knock-out: it hides what lies under it, and need not be seen itself."""

TOLERANCE = 0.1
"""How far in points a stretch may stray from its curve."""

CLOSE, MOST = 1.2, 32
"""Distance in points between the points of a stroke at which it is looked for, and how many there are at most."""

BROAD = 1.6
"""A stroke of more points than that is looked for along its edges."""

SQUARE = 20.0
"""Side in points of the squares in which shapes are looked up."""

Way: TypeAlias = tuple[Point, ...]

Box: TypeAlias = tuple[float, float, float, float]
"""Left, top, right, bottom."""


class Shape:
    """`fill` is the grey inside the ways, None where there is none; `pen` that of a stroke along them, `width` points
    wide, None where there is none. Nothing of the shape lies outside its `box`. Its
    `anchors` say with the rest whether two shapes are the same. A `letter` has its character, and is filled by
    winding, not by the even-odd rule.
    """

    def __init__(
        self,
        ways: Callable[[], Sequence[Way]],
        anchors: Callable[[], Sequence[Point]],
        box: Box,
        fill: Grey | None,
        pen: Grey | None = None,
        width: float = 0.0,
        letter: str = "",
    ) -> None:
        half = width / 2 if pen is not None else 0.0
        left, top, right, bottom = box
        self._ways, self._anchors = ways, anchors
        self.box: Box = (left - half, top - half, right + half, bottom + half)
        self.fill, self.pen, self.width, self.letter = fill, pen, width, letter
        self.solid = fill is not None and fill <= DARK
        """Is it a figure or a filled sign, not a stroke?"""
        self.dark = (fill is None or fill <= DARK) and (pen is None or pen <= DARK)
        """Is all of it dark?"""
        self.straight = False
        """Is it one stroke without a curve, through its anchors?"""

    @cached_property
    def ways(self) -> Sequence[Way]:
        """Straight stretches through points, closed ones with their first point once more at the end."""
        return self._ways()

    @cached_property
    def anchors(self) -> Sequence[Point]:
        """The points that the shape was written with."""
        return self._anchors()

    @cached_property
    def middle(self) -> tuple[int, int]:
        """The middle of its box, to a point."""
        left, top, right, bottom = self.box
        return round((left + right) / 2), round((top + bottom) / 2)

    @cached_property
    def squares(self) -> Sequence[tuple[int, int]]:
        """The squares that it lies in; a straight stroke lies in those of its stretches."""
        if not self.straight:
            return _squares(*self.box)
        half = self.width / 2
        stretches = (
            _squares(min(ax, bx) - half, min(ay, by) - half, max(ax, bx) + half, max(ay, by) + half)
            for (ax, ay), (bx, by) in pairwise(self.anchors)
        )
        return list(dict.fromkeys(chain.from_iterable(stretches)))

    def near(self, point: Point) -> bool:
        """Does a point lie in the shape's box?"""
        left, top, right, bottom = self.box
        return left <= point[0] <= right and top <= point[1] <= bottom

    def covers(self, point: Point) -> bool:
        """Is there paint of any grey at this point?"""
        if not self.near(point):
            return False
        if self.fill is not None and _inside(self.ways, point, not self.letter):
            return True
        return self.pen is not None and any(_passes(way, point, self.width / 2) for way in self.ways)

    @cached_property
    def points(self) -> Sequence[Point]:
        """Points, spread evenly, at which what is dark of the shape can be seen."""
        found: list[Point] = []
        if self.solid:
            found += _filling(self.ways, not self.letter)
        if self.pen is not None and self.pen <= DARK:
            length = sum(hypot(bx - ax, by - ay) for way in self.ways for (ax, ay), (bx, by) in pairwise(way))
            step = max(CLOSE, length / MOST)
            asides = (0.0,) if self.width <= BROAD else (self.width / 2 - 0.3, 0.3 - self.width / 2)
            found += [point for way in self.ways for aside in asides for point in _along(way, step, aside)]
        return found


def _squares(left: float, top: float, right: float, bottom: float) -> list[tuple[int, int]]:
    rows = range(int(top // SQUARE), int(bottom // SQUARE) + 1)
    return [(x, y) for x in range(int(left // SQUARE), int(right // SQUARE) + 1) for y in rows]


def path_shapes(
    segments: Sequence[Segment],
    matrix: Matrix,
    fill: Grey | None,
    pen: Grey | None = None,
    width: float = 0.0,
    bounds: Box | None = None,
) -> Iterator[Shape]:
    """What a path paints, moved by the matrix: one shape, or one for each of its strokes where these are straight.

    `bounds` is the box around the path's points before the matrix, where it is known.
    """
    if fill is None and not any(isinstance(segment, Curve) for segment in segments):
        yield from (_straight(way, pen, width) for way in _stretches(segments, matrix))
    elif segments:
        box = moved_box(matrix, bounds or bounds_of(segments))
        yield Shape(lambda: flat(segments, matrix), lambda: _written(segments, matrix), box, fill, pen, width)


def _stretches(segments: Iterable[Segment], matrix: Matrix) -> Iterator[Way]:
    """The ways of a path without curves, as `flat` gives them."""
    a, b, c, d, e, f = matrix
    way: list[Point] = []
    for segment in segments:
        if isinstance(segment, Close):
            if len(way) > 1:
                yield (*way, way[0])
            way = way[:1]
        elif not isinstance(segment, Curve):
            if isinstance(segment, Move):
                if len(way) > 1:
                    yield tuple(way)
                way = []
            x, y = segment.to
            way.append((a * x + c * y + e, b * x + d * y + f))
    if len(way) > 1:
        yield tuple(way)


def bounds_of(segments: Iterable[Segment]) -> Box:
    """The box around all points of a path, which curves do not leave."""
    return box_of([point for segment in segments for point in _points(segment)])


def moved_box(matrix: Matrix, box: Box) -> Box:
    """The box around a box that is moved."""
    left, top, right, bottom = box
    a, b, c, d, e, f = matrix
    if not b and not c and a > 0:  # upright, if perhaps upside down: most are
        ends = (d * top + f, d * bottom + f) if d > 0 else (d * bottom + f, d * top + f)
        return a * left + e, ends[0], a * right + e, ends[1]
    return box_of([moved(matrix, corner) for corner in ((left, top), (right, top), (right, bottom), (left, bottom))])


def _written(segments: Iterable[Segment], matrix: Matrix) -> list[Point]:
    return [moved(matrix, point) for segment in segments for point in _points(segment)]


def shapes(items: Iterable[Item], matrix: Matrix = IDENTITY) -> Iterator[Shape]:
    """The shapes of display items, moved by the matrix; groups are opened, and what they clip is taken as shown."""
    scale = hypot(matrix[0], matrix[1])
    for item in items:
        match item:
            case Group():
                yield from shapes(item.items, within(matrix, placing(item)))
            case Line(start, end, stroke):
                way = moved(matrix, start), moved(matrix, end)
                yield _straight(way, grey_of(stroke.colour), scale * stroke.width)
            case Rect(stroke=None) | Path(stroke=None):
                yield from path_shapes(outline(item), matrix, _filled(item))
            case Rect(stroke=Stroke() as stroke) | Path(stroke=Stroke() as stroke):
                pen, width = grey_of(stroke.colour), scale * stroke.width
                yield from path_shapes(outline(item), matrix, _filled(item), pen, width)
            case Text():
                for character, x in letters(item):
                    placed = within(matrix, (item.size, 0.0, 0.0, item.size, x, item.y))
                    yield from letter(character, item.font, placed, grey_of(item.colour))


def _filled(item: Rect | Path) -> Grey | None:
    return None if item.fill is None else grey_of(item.fill)


def _straight(way: Way, pen: Grey | None, width: float) -> Shape:
    made = Shape(lambda: (way,), lambda: way, box_of(way), None, pen, width)
    made.straight = True
    return made


def letter(character: str, font: str, matrix: Matrix, grey: Grey, edge: float = 0.0) -> Iterator[Shape]:
    """One letter in one of our fonts, an em of it taken to the page by the matrix; nothing where it has no ink. With an
    `edge`, white lies around it in half that width."""
    ways, box = _glyph(character, font)
    if ways:
        yield Shape(
            lambda: [tuple(moved(matrix, point) for point in way) for way in ways],
            lambda: (moved(matrix, (0.0, 0.0)), moved(matrix, (1.0, 0.0))),
            moved_box(matrix, box),
            grey,
            1.0 if edge else None,
            edge,
            character,
        )


def flat(segments: Iterable[Segment], matrix: Matrix = IDENTITY) -> list[Way]:
    """Segments as straight stretches; a closed one comes back to its first point."""
    found = flattened(segments, matrix, TOLERANCE)
    return [(*one.points, one.points[0]) if one.closed else one.points for one in found]


def _points(segment: Segment) -> tuple[Point, ...]:
    match segment:
        case Curve(first, second, to):
            return first, second, to
        case Close():
            return ()
        case _:
            return (segment.to,)


def box_of(points: Sequence[Point]) -> Box:
    """The box around some points."""
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs), max(ys)


@lru_cache(maxsize=1024)
def _glyph(character: str, font: str) -> tuple[tuple[Way, ...], Box]:
    """The outline of a letter per em, y down, and its box."""
    found = flattened(typeface(font).outline(character), (1.0, 0.0, 0.0, -1.0, 0.0, 0.0), 0.01)
    ways = tuple((*one.points, one.points[0]) for one in found)
    return ways, box_of([point for way in ways for point in way]) if ways else (0.0, 0.0, 0.0, 0.0)


def _inside(ways: Iterable[Way], point: Point, even_odd: bool) -> bool:
    """Do the closed ways go round the point? Counted on a ray to the right."""
    x, y = point
    winding = crossings = 0
    for way in ways:
        (ax, ay) = way[-1]
        for bx, by in way:
            if (ay > y) != (by > y) and x < ax + (y - ay) * (bx - ax) / (by - ay):
                crossings += 1
                winding += 1 if by > ay else -1
            ax, ay = bx, by
    return bool(crossings % 2) if even_odd else bool(winding)


def _passes(way: Way, point: Point, reach: float) -> bool:
    """Does the way pass within reach of the point?"""
    x, y = point
    for (ax, ay), (bx, by) in pairwise(way):
        ux, uy, px, py = bx - ax, by - ay, x - ax, y - ay
        span = ux * ux + uy * uy
        share = min(1.0, max(0.0, (px * ux + py * uy) / span)) if span else 0.0
        dx, dy = px - share * ux, py - share * uy
        if dx * dx + dy * dy <= reach * reach:
            return True
    return False


def _along(way: Way, step: float, aside: float) -> Iterator[Point]:
    """Points along a way, `step` apart and `aside` to its right, in the middle of their steps."""
    for (ax, ay), (bx, by) in pairwise(way):
        span = hypot(bx - ax, by - ay)
        if span:
            count = max(1, round(span / step))
            ux, uy = (bx - ax) / span, (by - ay) / span
            for index in range(count):
                far = (index + 0.5) * span / count
                yield ax + ux * far - uy * aside, ay + uy * far + ux * aside


def _filling(ways: Sequence[Way], even_odd: bool) -> list[Point]:
    """Points inside the ways, on a grid of about eight by eight over their box."""
    left, top, right, bottom = box_of([point for way in ways for point in way])
    step = max(right - left, bottom - top) / 8 or 1.0
    across, down = max(1, ceil((right - left) / step)), max(1, ceil((bottom - top) / step))
    grid = (
        (left + (column + 0.5) * (right - left) / across, top + (row + 0.5) * (bottom - top) / down)
        for row in range(down)
        for column in range(across)
    )
    return [point for point in grid if _inside(ways, point, even_odd)]
