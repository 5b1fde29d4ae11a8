"""The ridge of five peaks: how hard a puzzle is, seen at a glance.

In: a band from 1 to 5 and a width in points. Out: the ridge, filled from the left up to the band's peak. It stands on
the line y = 0 and reaches up from there.
"""

from __future__ import annotations

from functools import lru_cache
from itertools import chain

from bookmaker.display.colour import Grey
from bookmaker.display.items import Group, Item, Point, Stroke
from bookmaker.display.shapes import polyline

PEAKS = ((0.42, 0.0), (0.56, 0.20), (0.68, 0.26), (0.84, 0.34), (1.0, 0.44))
"""For each peak its height and the height of the saddle before it, as shares of the ridge's height."""

HEIGHT = 0.30
"""Height of the ridge as a share of its width."""

LARGE = 100.0
"""A ridge wider than this, in points, has pointed peaks; in a small one points would blot."""

LAST_SLOPE = 1.5
"""How much wider the last slope is than the others, which rise and fall over equal widths."""


def skyline(width: float, height: float) -> tuple[Point, ...]:
    """The eleven points of the ridge from its left foot to its right foot: foot, peak, saddle, …, peak, foot."""
    step = width / (2 * len(PEAKS) - 1 + LAST_SLOPE)
    heights = [*chain.from_iterable((saddle, peak) for peak, saddle in PEAKS), 0.0]
    xs = [*(at * step for at in range(2 * len(PEAKS))), width]
    return tuple((x, -share * height) for x, share in zip(xs, heights, strict=True))


@lru_cache
def ridge(band: int, width: float, fill: Grey = 0.0) -> Group:
    """The ridge filled up to a band; 0 fills nothing. The band's name stands with it wherever it is printed."""
    points = skyline(width, HEIGHT * width)
    pen = Stroke(min(1.5, max(0.4, width * 0.011)), join="miter" if width > LARGE else "bevel")
    items: list[Item] = []
    if band:
        filled = points[: 2 * band + 1]
        items.append(polyline([*filled, (filled[-1][0], 0.0)], None, fill, closed=True))
    items.append(polyline([*points, points[0]], pen, closed=True))
    return Group(tuple(items), name=f"ridge {band}")
