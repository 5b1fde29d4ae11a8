"""Grids for the browser: what is printed of a grid, drawn once as SVG, and the measures by which a page adds digits.

In: puzzles. Out: for each its ground (all that is printed but the digits), shared by puzzles that have the same; the
outlines of letters that the grounds use; and where digits and candidates stand in a cell, as `layout` has them.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Any

from bookmaker.ink.svg import Drawing
from bookmaker.layout.art.gridart import DIGIT, HALO, PENCIL, SHADE, frame_for, outside, painted
from bookmaker.layout.art.ridge import HEIGHT, ridge
from bookmaker.layout.art.scenepicture import ARM, FEW, FIELD, HEAVY, INSET
from bookmaker.layout.sheets.single_picture import CELL, MARGIN, grid_picture
from bookmaker.puzzle.grid import CLASSIC, LETTERS, SYMBOLS
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.drawing.frame import Layer
from bookmaker.typeface import typeface

FACES = ("sans", "sans-bold")
"""The faces of digits: those found, and those given."""

SIGNS = "".join(dict.fromkeys("0" + SYMBOLS + LETTERS))
"""All signs that a grid may be filled with."""

RIDGE = 60.0
"""Width of a ridge, in points."""


def drawn(puzzle: RuledPuzzle, drawing: Drawing) -> tuple[str, dict[str, Any]]:
    """The ground of a puzzle as SVG elements; its width and height and where its first cell begins, in points; whether
    digits need a white edge, because lines pass under them."""
    beyond = outside(puzzle)
    bare = replace(puzzle, givens=(0,) * len(puzzle.givens))
    page = grid_picture(bare, "")
    return "".join(drawing.draw(page.items)), {
        "symbols": puzzle.grid.symbols,
        "wide": round(page.width, 3),
        "high": round(page.height, 3),
        "left": round(MARGIN + beyond.left * CELL, 3),
        "top": round(MARGIN + beyond.top * CELL, 3),
        "halo": any(owner and owner[1].layer in (Layer.LINE, Layer.TUBE) for _, owner in painted(bare, CELL)),
    }


def new_drawing() -> Drawing:
    """A drawing that has the outlines of all digits."""
    drawing = Drawing()
    for face in FACES:
        for symbol in SIGNS:
            drawing.glyph(face, symbol)
    return drawing


@dataclass(slots=True)
class Pictures:
    """The grounds of the grids drawn so far, each once."""

    drawing: Drawing = field(default_factory=new_drawing)
    grounds: dict[str, int] = field(default_factory=dict)

    def ground(self, puzzle: RuledPuzzle) -> dict[str, Any]:
        """What `drawn` says of a puzzle, with the number of its ground in place of the ground."""
        body, about = drawn(puzzle, self.drawing)
        return about | {"ground": self.grounds.setdefault(body, len(self.grounds))}

    @property
    def outlines(self) -> str:
        """What the grounds refer to."""
        return "".join(self.drawing.shared)


def measures() -> dict[str, Any]:
    """How digits and candidates stand in cells, in points, and the signs of a crib, as shares of a cell."""
    frame = frame_for(CLASSIC, CELL)
    return {
        "cell": CELL,
        "figure": frame.figure,
        "digit": DIGIT,
        "halo": HALO,
        "pencil": PENCIL,
        "advances": {face: {sign: round(typeface(face).advance(sign), 4) for sign in SIGNS} for face in FACES},
        "signs": {"inset": INSET, "arm": ARM, "heavy": HEAVY, "shade": SHADE, "field": FIELD, "few": FEW},
    }


def ridges() -> list[dict[str, Any]]:
    """The ridges of bands 0 to 5: what they hold, their width and height."""
    drawing = Drawing()
    return [
        {"body": "".join(drawing.draw((ridge(band, RIDGE),))), "wide": RIDGE, "high": HEIGHT * RIDGE}
        for band in range(6)
    ]
