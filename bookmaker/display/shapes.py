"""Common shapes said in the vocabulary's own segments."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from bookmaker.display.colour import Colour
from bookmaker.display.items import Close, Curve, Move, Path, Point, Segment, Straight, Stroke

ARC = 0.5522847498
"""Handle length of a quarter circle of radius 1 as a cubic Bézier, 4/3·(√2 − 1)."""


def polyline(points: Sequence[Point], stroke: Stroke | None, fill: Colour | None = None, closed: bool = False) -> Path:
    """Straight stretches through the points."""
    segments: list[Segment] = [Move(points[0]), *(Straight(p) for p in points[1:])]
    if closed:
        segments.append(Close())
    return Path(tuple(segments), stroke, fill)


@lru_cache(maxsize=8192)  # grids of one size share most of theirs
def ellipse(
    centre: Point, across: float, down: float, stroke: Stroke | None = None, fill: Colour | None = None
) -> Path:
    """An ellipse with half-axes `across` and `down`."""
    x, y = centre
    a, b = across * ARC, down * ARC
    return Path(
        (
            Move((x + across, y)),
            Curve((x + across, y + b), (x + a, y + down), (x, y + down)),
            Curve((x - a, y + down), (x - across, y + b), (x - across, y)),
            Curve((x - across, y - b), (x - a, y - down), (x, y - down)),
            Curve((x + a, y - down), (x + across, y - b), (x + across, y)),
            Close(),
        ),
        stroke,
        fill,
    )


def circle(centre: Point, radius: float, stroke: Stroke | None = None, fill: Colour | None = None) -> Path:
    """A circle."""
    return ellipse(centre, radius, radius, stroke, fill)
