"""Where clues outside the grid are drawn: the room they take, the middle of each, and figures that fit into it.

In: clues and the size of their places, in cells. Out: room at each side in cells, points and text of the frame in
points. Each kind draws its own sign around the figures.
"""

from __future__ import annotations

from collections.abc import Iterable

from bookmaker.display.items import Point, Text
from bookmaker.rules.common.clue import Clue
from bookmaker.rules.common.drawing.frame import Frame, Margins

INK = 0.2
"""Grey of the signs around outside clues: a little lighter than their figures."""


def lane(clues: Iterable[Clue], across: float, down: float) -> Margins:
    """Room for clues that are `across` wide at the left and right and `down` high at the top and bottom, in cells."""
    sides = {clue.side for clue in clues}
    return Margins(
        down if "top" in sides else 0.0,
        across if "right" in sides else 0.0,
        down if "bottom" in sides else 0.0,
        across if "left" in sides else 0.0,
    )


def middle_of(clue: Clue, frame: Frame, across: float, down: float) -> Point:
    """The middle of a clue's place in the lane of that size, beyond the room that other clues have taken."""
    taken, sides = frame.outset, frame.sides
    along = (clue.line + 0.5) * frame.cell
    match clue.side:
        case "left":
            return sides.left - (taken.left + across / 2) * frame.cell, sides.top + along
        case "right":
            return sides.right + (taken.right + across / 2) * frame.cell, sides.top + along
        case "top":
            return sides.left + along, sides.top - (taken.top + down / 2) * frame.cell
        case "bottom":
            return sides.left + along, sides.bottom + (taken.bottom + down / 2) * frame.cell


def clue_figures(frame: Frame, at: Point, text: str, width: float, height: float = 0.32, narrow: bool = False) -> Text:
    """Figures centred on a point, as high as asked unless they would be wider than `width`, both in cells."""
    per_height = NARROW_FIGURE if narrow else FIGURE
    size = min(height, width / (len(text) * per_height))
    return frame.figures(at, text, size, font=frame.narrow if narrow else frame.font)


FIGURE, NARROW_FIGURE = 0.78, 0.65
"""Width of a figure for its height, in the plain and the narrow font."""
