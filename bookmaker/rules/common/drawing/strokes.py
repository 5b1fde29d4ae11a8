"""Lines through cell centres as paper sees them: measured along their way, shortened, shifted, and held apart.

In: points in the frame's measure. Out: points and display items. The body of each kind of line is made from these
few tools; what the bodies mean is the grammar in DEVELOPERS.md.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise
from math import cos, floor, hypot, pi, sin, sqrt

from bookmaker.display.colour import Grey
from bookmaker.display.items import Item, Point, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.rules.common.chain import Chain
from bookmaker.rules.common.drawing.frame import Frame

THIN: Grey = 0.2
"""Grey of thin strokes, dark enough to survive a photocopy."""

BODY: Grey = 0.88
"""Grey of broad bodies, light enough for pencil."""

ROUNDED = 0.01
"""More than rounding to a thousandth of a point changes how many times a spacing goes into a line."""

HALF_SEEN = 0.45
"""So much has to be left of a ring or a bulb in which other lines begin, and of ticks that come at every border."""

HALO = 0.035
"""Width of the white edge, in cells, that holds a line apart from one that it crosses."""


NEAR = 0.01
"""Two points on a way nearer than that, in points, are one."""


class Trace:
    """A way along straight stretches, measured from its start in points."""

    def __init__(self, points: Sequence[Point]) -> None:
        self.points = tuple(points)
        self.stops = [0.0]
        for (ax, ay), (bx, by) in pairwise(self.points):
            self.stops.append(self.stops[-1] + hypot(bx - ax, by - ay))

    @property
    def length(self) -> float:
        return self.stops[-1]

    def at(self, distance: float) -> tuple[Point, Point]:
        """The point at a distance from the start, and the unit vector that points onward there."""
        last = len(self.points) - 2
        stretch = next((i for i in range(last) if distance < self.stops[i + 1]), last)
        (ax, ay), (bx, by) = self.points[stretch], self.points[stretch + 1]
        span = self.stops[stretch + 1] - self.stops[stretch]
        ux, uy = (bx - ax) / span, (by - ay) / span
        step = distance - self.stops[stretch]
        return (ax + ux * step, ay + uy * step), (ux, uy)

    def between(self, start: float, end: float) -> tuple[Point, ...]:
        """The part of the way from one distance to another, with its bends, but for one right at an end."""
        low, high = start + NEAR, end - NEAR
        bends = (point for point, stop in zip(self.points, self.stops, strict=True) if low < stop < high)
        return (self.at(start)[0], *bends, self.at(end)[0])

    def beside(self, distance: float, aside: float) -> Point:
        """The point at a distance from the start, `aside` to the right of the way."""
        (x, y), (ux, uy) = self.at(distance)
        return x - uy * aside, y + ux * aside

    def beyond(self, start: float, end: float) -> Trace:
        """The same way, longer by so much at its start and its end."""
        (ax, ay), (ux, uy) = self.at(0.0)
        (bx, by), (vx, vy) = self.at(self.length)
        first, last = (ax - ux * start, ay - uy * start), (bx + vx * end, by + vy * end)
        return Trace((first, *self.points[1:-1], last))

    def steps(self, spacing: float, start: float = 0.0, end: float = 0.0) -> list[float]:
        """Distances from `start` to `end` before the way's end, evenly spaced, as near to `spacing` as fits."""
        span = self.length - start - end
        count = fitting(span, spacing)
        return [start + span * index / count for index in range(count + 1)]


def fitting(length: float, spacing: float) -> int:
    """How many times a spacing goes into a length if it is stretched or shrunk as little as can be; once at least.
    Where two counts are as good the greater one is taken, also where a file has rounded the length: preflight draws a
    mark again at the size that it was printed in."""
    return max(floor(length / spacing + 0.5 + ROUNDED), 1)


def trace(frame: Frame, chain: Chain) -> Trace:
    """The way through the centres of a chain's cells, or beside them where the line has a lane of its own."""
    return Trace(middles(frame, chain))


def middles(frame: Frame, chain: Chain) -> list[Point]:
    """The points of `trace`, one a cell."""
    centres = [frame.centre(cell) for cell in chain]
    aside = frame.lane(chain).aside * frame.cell
    return moved_aside(centres, aside) if aside else centres


def moved_aside(points: Sequence[Point], aside: float) -> list[Point]:
    """A way moved to its right, each stretch by `aside`; at a bend sharper than a right angle a little less."""
    headings = []
    for (ax, ay), (bx, by) in pairwise(points):
        span = hypot(bx - ax, by - ay)
        headings.append(((bx - ax) / span, (by - ay) / span))
    moved = []
    for (x, y), (ux, uy), (vx, vy) in zip(points, [headings[0], *headings], [*headings, headings[-1]], strict=True):
        # Both stretches keep their distance where the corner moves along the sum of their normals.
        far = aside / max(1 + ux * vx + uy * vy, 1 / 1.5)
        moved.append((x - (uy + vy) * far, y + (ux + vx) * far))
    return moved


def to_rim(radius: float, aside: float) -> float:
    """How far a way that passes the middle of a circle `aside` of it runs inside the circle from there."""
    return sqrt(max(radius * radius - aside * aside, 0.0))


def halo(frame: Frame, points: Sequence[Point], width: float) -> Item:
    """A white edge under a line of this width, so that one it crosses seems to pass beneath."""
    return polyline(points, Stroke(width + 2 * HALO * frame.cell, 1.0, cap="butt", join="round"))


def tube(points: Sequence[Point], width: float, rim: float, body: Grey, round_ends: bool = True) -> tuple[Item, Item]:
    """An outline and the body that goes over it; draw the outlines of all that joins, then all the bodies."""

    def pen(across: float, grey: Grey) -> Stroke:
        return Stroke(across, grey, cap="round", join="round") if round_ends else Stroke(across, grey)

    return polyline(points, pen(width, THIN)), polyline(points, pen(width - 2 * rim, body))


def arrow_head(tip: Point, onward: Point, size: float) -> tuple[Point, Point, Point]:
    """An open arrow head: two barbs, each turned a fifth of a half-turn from the way back."""

    def barb(turn: float) -> Point:
        c, s = cos(turn), sin(turn)
        return tip[0] - size * (onward[0] * c - onward[1] * s), tip[1] - size * (onward[0] * s + onward[1] * c)

    return barb(pi / 5), tip, barb(-pi / 5)


def joined(chains: Iterable[Chain]) -> Iterator[list[Chain]]:
    """Chains grouped so that those which share a cell, directly or through others, are together."""
    groups: list[list[Chain]] = []
    for chain in chains:
        touching = [group for group in groups if any(set(chain) & set(other) for other in group)]
        groups = [group for group in groups if group not in touching]
        groups.append([*(other for group in touching for other in group), chain])
    return iter(groups)
