"""Windows: inner areas of the size of a box, one cell away from the border and from each other, hold every digit.

Manifest: `windows: yes`. They are extra regions with a name of their own; a grid has them if its boxes are square:
four on the everyday 9×9.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Self

from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import Grid, House, HouseRef, boxed_grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import HeldByRest
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.frame import Frame, Mark
from bookmaker.rules.common.drawing.places import Outlined, PlaceClaim
from bookmaker.rules.common.parts import Written
from bookmaker.rules.common.reading import read_yes
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.rules.extra_region import INSET, shaded
from bookmaker.solve.problem import Constraint, Different
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node


@dataclass(frozen=True)
class Windows(Rule):
    """Nothing to say but that they are there."""

    kind = "windows"
    title = "Windows"
    noun = "window"
    typed = ("yes",)
    relabels = "any"
    from_zero = True
    lettered = True
    example = "windows: yes\n"

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        if grid.box is None or grid.box[0] != grid.box[1]:
            text = "windows need square boxes, as on the 9×9 grid"
            collector.error(body.place, "windows-grid", text, "draw other inner areas as “extra-region”")
            return None
        return cls() if read_yes(body, "windows", collector) else None

    def written(self, grid: Grid) -> Written:
        return "yes"

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return (Different(house.cells) for house in self.houses(grid))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        assert grid.box is not None
        side, _ = grid.box
        for top in range(1, grid.size - side, side + 1):
            for left in range(1, grid.size - side, side + 1):
                seen = {digits[grid.cell(top + r, left + c)] for r in range(side) for c in range(side)}
                if len(seen) < grid.size:
                    return False
        return True

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        return (words.say("windows-spoken", cells=cells_said(words, grid, house.cells)) for house in self.houses(grid))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        return shaded(frame, [house.cells for house in self.houses(frame.grid)], "the window")

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (Outlined(house.cells, INSET) for house in self.houses(grid))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(), boxed_grid(4, 2, 2), 3, 3)

    def houses(self, grid: Grid) -> tuple[House, ...]:
        inner = _bands(grid)[1:]
        return tuple(
            House(f"the window at {grid.name(cells[0])}", cells, HouseRef("windows", number, cells[0]))
            for number, cells in enumerate((_crossing(grid, rows, columns) for rows in inner for columns in inner), 1)
        )

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Hidden houses: what the windows leave of their rows, or of their columns, holds every digit once too."""
        grid, masks = position.grid, position.masks
        for rest, cells in _hidden_houses(grid):
            for digit in grid.digits:
                places = [cell for cell in cells if position.may(cell, digit)]
                sure = [cell for cell in places if masks[cell].bit_count() == 1]
                if len(sure) == 1:
                    removed = removed_by(position, {c: ~(1 << (digit - 1)) for c in places if c != sure[0]})
                elif len(places) == 1:
                    removed = removed_by(position, {places[0]: 1 << (digit - 1)})
                else:
                    continue
                if removed:
                    place = (sure if len(sure) == 1 else places)[0]
                    claim = HeldByRest(rest, digit, place, settled=len(sure) == 1)
                    yield Deduction(Rung.PAIR, 3, cells, removed, MarkRef.whole(self.kind), claim)


def _bands(grid: Grid) -> tuple[tuple[int, ...], ...]:
    """First the rows between the windows (1, 5 and 9), then those of each window; the same for columns."""
    assert grid.box is not None
    side = grid.box[0]
    starts = range(1, grid.size - side, side + 1)
    return tuple(range(0, grid.size, side + 1)), *(tuple(range(start, start + side)) for start in starts)


def _crossing(grid: Grid, rows: Sequence[int], columns: Sequence[int]) -> tuple[int, ...]:
    return tuple(grid.cell(row, column) for row in rows for column in columns)


def _hidden_houses(grid: Grid) -> Iterator[tuple[HouseRef, tuple[int, ...]]]:
    """The rows of a window hold `side` of each digit, and the windows in them one each: the rest holds one as well.

    The same with columns; and what those leave of the rows between the windows is the last of them.
    """
    between, *inner = _bands(grid)
    for rows in inner:
        cells = _crossing(grid, rows, between)
        yield HouseRef(Windows.kind, rows[0] + 1, cells[0], "rows"), cells
    for columns in inner:
        cells = _crossing(grid, between, columns)
        yield HouseRef(Windows.kind, columns[0] + 1, cells[0], "columns"), cells
    cells = _crossing(grid, between, between)
    yield HouseRef(Windows.kind, 1, cells[0], "crossing"), cells
