"""Frame sums: the sum of the nearest few digits from that side.

Manifest: by side, a row of clues with dots for none. How many cells are added is said by `cells`; if it is not, it is
as many as the nearest box has there, or three without boxes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bookmaker.display.items import Line, Stroke
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing import house_sums
from bookmaker.rules.common.deducing.house_sums import Block
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.framed import FrameRule

ARM, GAP = 0.1, 0.05
"""Of the plus: half its length, and white between it and the figures, in cells."""


class FrameSum(FrameRule):
    """Each clue's value is the sum."""

    kind = "frame-sum"
    title = "Frame sums"
    noun = "frame sum"
    relabels = "reversed"
    from_zero = True
    result = "sum"
    example = """\
frame-sum:
  left: 12 . . 20 . . 7 . .
  bottom: . 15 . . . 9 . 22 .
"""
    room = (0.98, 0.64)

    @staticmethod
    def worth(digits: Sequence[int]) -> int:
        return sum(digits)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            count = self.in_row if clue.side in ("left", "right") else self.in_column
            if sum(grid.worth(digits[cell]) for cell in clue.cells(grid)[:count]) != clue.value:
                return False
        return True

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.cell * 0.05, INK)
        arm = ARM * frame.cell
        for clue in self.clues:
            of = (f"the {self.noun} {clue.value} {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            text = str(clue.value)
            half = min(0.5, len(text) * 0.25) / 2 * frame.cell
            plus = x - half - GAP / 2 * frame.cell
            figures = clue_figures(frame, (x + arm + GAP / 2 * frame.cell, y), text, 0.5)
            yield Mark(Layer.BORDER, figures, of)
            yield Mark(Layer.BORDER, Line((plus - arm, y), (plus + arm, y), pen), of)
            yield Mark(Layer.BORDER, Line((plus, y - arm), (plus, y + arm), pen), of)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """The combinations of each clue, and what sums leave over in a house."""
        yield from super().deductions(position)
        for along_row in (True, False):
            taken: set[int] = set()
            blocks = []
            for clue in self.clues:
                cells = self.near(clue, position.grid)
                if clue.along_row is along_row and taken.isdisjoint(cells):
                    taken.update(cells)
                    blocks.append(Block(cells, clue.value))
            yield from house_sums.steps(position, tuple(blocks), self.kind)
