"""Fences around areas, each of its own texture, with figures in the first cell's corner: how cages and their kin look.

In: an area's cells and what is printed in its corner. Out: marks and claims. A side begins and ends with a whole dash,
so that every corner is closed.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot
from typing import Literal

from bookmaker.display.items import Item, Line, Point, Rect, Stroke, Text
from bookmaker.rules.common.area import loops
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Box, InCell
from bookmaker.rules.common.drawing.strokes import THIN, fitting

INSET = 0.075
"""How far a fence stands inside the cells' edges, in cells."""

LEAST = 0.45
"""So much of a fence has to be left: what stands on all borders of a cage breaks it, and leaves its corners."""

SPOTS = (
    (0.045, 0.045, 0.2), (0.315, 0.045, 0.2), (0.135, 0.045, 0.2), (0.045, 0.25, 0.2), (0.28, 0.045, 0.16),
    (0.135, 0.045, 0.16), (0.045, 0.135, 0.16), (0.135, 0.135, 0.15), (0.28, 0.135, 0.15),
    (0.045, 0.27, 0.16), (0.135, 0.29, 0.15),
)  # fmt: skip
"""Where figures begin, from the left and from the top, and how high they are, in cells."""

FIGURE = 0.69
"""Width of a narrow figure for its height."""


@dataclass(frozen=True, slots=True)
class Texture:
    """What a fence is made of: dashes and gaps in turn, in cells, the first dash also at the end of a side; `broad`
    times as wide as the thin pen; its line ends. A round dash of no length is a dot."""

    dashes: tuple[float, ...]
    broad: float = 1.0
    cap: Literal["butt", "round"] = "butt"


DASHES = Texture((0.1, 0.075))


def fence(frame: Frame, cells: tuple[int, ...], texture: Texture, of: tuple[str, ...]) -> Iterator[Mark]:
    """The sides of an area's fence."""
    pen = (frame.thin() + 0.2) * texture.broad
    for corners in loops(frame.grid, cells, frame.inset(cells, INSET)):
        for start, end in zip(corners, (*corners[1:], corners[0]), strict=True):
            yield Mark(Layer.CAGE, _side(frame, start, end, pen, texture), of, "dashes", LEAST)


def _side(frame: Frame, start: Point, end: Point, pen: float, texture: Texture) -> Line:
    """One side, its gaps stretched so that it ends with a whole dash."""
    (ax, ay), (bx, by) = ((v * frame.cell for v in start), (v * frame.cell for v in end))
    length = hypot(bx - ax, by - ay)
    butt = texture.cap == "butt"  # a round end reaches as far beyond the corner as a butt one is moved there
    ux, uy = ((bx - ax) / length * pen / 2, (by - ay) / length * pen / 2) if butt else (0.0, 0.0)
    room = length + pen * butt - texture.dashes[0] * frame.cell
    inked, gaps = ((frame.cell * sum(texture.dashes[at::2])) for at in (0, 1))
    period = room / fitting(room, inked + gaps)
    wide = (period - inked) / gaps if period > inked else 1.0
    dashes = tuple(d * frame.cell * (wide if at % 2 else 1.0) for at, d in enumerate(texture.dashes))
    return Line((ax - ux, ay - uy), (bx + ux, by + uy), Stroke(pen, THIN, dashes, texture.cap))


def corner_claim(cell: int, text: str) -> InCell:
    """Where figures may stand: in the cell's top left corner, beside what covers it, or a little further in."""
    boxes = (Box(left, top, left + wide(text) * height + 0.04, top + height + 0.05) for left, top, height in SPOTS)
    return InCell(cell, tuple(boxes))


def wide(text: str) -> float:
    """Width of narrow figures for their height; spaces are half as wide."""
    return FIGURE * (len(text) - 0.5 * text.count(" "))


def corner_figures(frame: Frame, cell: int, text: str) -> Iterator[Item]:
    """The figures in their place, what lies under them knocked out."""
    x, y = frame.corner(cell)
    box = frame.box(corner_claim(cell, text))
    left, top = x + box.left * frame.cell, y + box.top * frame.cell
    height = box.bottom - box.top - 0.05
    size = height * frame.cell / frame.figure
    yield Rect(left, top, (box.right - box.left) * frame.cell, (height + 0.05) * frame.cell, fill=1.0)
    yield Text(left, top + height * frame.cell, text, frame.face(frame.narrow, size), size)
