"""Frame products: the product of the nearest few digits from that side.

Manifest: by side, a row of clues with dots for none. How many cells are multiplied is said by `cells`; if it is not, it
is as many as the nearest box has there, or three without boxes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import prod

from bookmaker.display.shapes import circle
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.framed import FrameRule

RADIUS, GAP = 0.065, 0.05
"""Of the dot, and white between it and the figures, in cells."""


class FrameProduct(FrameRule):
    """Each clue's value is the product."""

    kind = "frame-product"
    title = "Frame products"
    noun = "frame product"
    relabels = "none"
    from_zero = True
    result = "product"
    example = """\
frame-product:
  left: 24 . . 189 . . 8 . .
  bottom: . 120 . . . 54 . 160 .
"""
    room = (1.04, 0.64)

    @staticmethod
    def worth(digits: Sequence[int]) -> int:
        return prod(digits)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            product = 1
            for cell in clue.cells(grid)[: self.in_row if clue.side in ("left", "right") else self.in_column]:
                product *= grid.worth(digits[cell])
            if product != clue.value:
                return False
        return True

    def marks(self, frame: Frame) -> Iterator[Mark]:
        for clue in self.clues:
            of = (f"the {self.noun} {clue.value} {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            text = str(clue.value)
            radius, gap = RADIUS * frame.cell, GAP * frame.cell
            half = min(0.62, len(text) * 0.25) / 2 * frame.cell
            figures = clue_figures(frame, (x + radius + gap / 2, y), text, 0.62, narrow=len(text) > 2)
            yield Mark(Layer.BORDER, figures, of)
            yield Mark(Layer.BORDER, circle((x - half - gap / 2, y), radius, fill=INK), of)
