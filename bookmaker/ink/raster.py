"""Areas as pixels, with smooth edges.

In: polygons in pixels, y down, pixel (0, 0) from 0 to 1. Out: how much of each pixel they cover. Exact along a row,
eight samples down a pixel.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import ceil, floor

from PIL import Image as Raster

from bookmaker.display.items import Point

_SAMPLES = 8


@dataclass(frozen=True, slots=True)
class Coverage:
    """A picture of how much is covered, 0 to 255, its top left pixel standing at (x, y)."""

    x: int
    y: int
    mask: Raster.Image

    def at(self, x: int, y: int) -> Coverage:
        """The same, moved by whole pixels."""
        return Coverage(self.x + x, self.y + y, self.mask)


def covered(polygons: Iterable[Sequence[Point]], evenodd: bool = False) -> Coverage | None:
    """What closed polygons cover, by the even-odd or the non-zero winding rule; None for nothing."""
    shapes = [polygon for polygon in polygons if len(polygon) > 2]
    if not shapes:
        return None
    xs = [x for shape in shapes for x, _ in shape]
    ys = [y for shape in shapes for _, y in shape]
    left, top = floor(min(xs)), floor(min(ys))
    width, height = ceil(max(xs)) - left, ceil(max(ys)) - top
    if not width or not height:
        return None
    crossings = _crossings(shapes, left, top, height)
    pixels = bytearray()
    before: _Crossings = []
    row = b""
    for start in range(0, len(crossings), _SAMPLES):
        lines = crossings[start : start + _SAMPLES]
        if lines != before:  # upright edges make many rows alike
            row, before = _row(lines, width, evenodd), lines
        pixels += row
    return Coverage(left, top, Raster.frombytes("L", (width, height), bytes(pixels)))


_Crossings = list[list[tuple[float, int]]]
"""For each sample line, from left to right, where outlines cross it, downwards (1) or upwards (−1)."""


def _crossings(shapes: Iterable[Sequence[Point]], left: int, top: int, height: int) -> _Crossings:
    lines: _Crossings = [[] for _ in range(height * _SAMPLES)]
    for shape in shapes:
        for (x0, y0), (x1, y1) in pairwise((*shape, shape[0])):
            way = 1
            if y0 > y1:
                x0, y0, x1, y1, way = x1, y1, x0, y0, -1
            # sample line i lies at height (i + ½) / samples under the top
            first = ceil((y0 - top) * _SAMPLES - 0.5)
            last = ceil((y1 - top) * _SAMPLES - 0.5)
            if first >= last:
                continue
            slope = (x1 - x0) / (y1 - y0)
            x = x0 - left + slope * ((first + 0.5) / _SAMPLES + top - y0)
            step = slope / _SAMPLES
            for line in range(first, last):
                lines[line].append((x, way))
                x += step
    for crossed in lines:
        crossed.sort()
    return lines


def _row(lines: _Crossings, width: int, evenodd: bool) -> bytes:
    """One row of pixels from its sample lines. `change` holds how much more a pixel is covered than the one before."""
    change: dict[int, float] = {}
    for line in lines:
        wound = 0
        for x, way in line:
            before = wound
            wound = 1 - wound if evenodd else wound + way
            if bool(wound) == bool(before):
                continue
            sign = 1.0 if wound else -1.0
            pixel = int(x)
            part = sign * (x - pixel)
            change[pixel] = change.get(pixel, 0.0) + sign - part
            change[pixel + 1] = change.get(pixel + 1, 0.0) + part
    stretches = []
    total, done = 0.0, 0
    for pixel in sorted(change):
        level = int(total * 255 / _SAMPLES + 0.5)
        stretches.append(_LEVELS[level] * (pixel - done))
        total, done = total + change[pixel], pixel
    stretches.append(bytes(width))
    return b"".join(stretches)[:width]


_LEVELS = [bytes([level]) for level in range(256)]
