"""Extra regions: areas in which no digit repeats; one with as many cells as there are digits is a house.

Manifest: a list of areas, or a picture with a letter for each area and dots for the rest. The cells of an area need
not hang together.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations
from random import Random
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.placed import Node
from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import CLASSIC, Grid, House
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.area import outline, read_areas
from bookmaker.rules.common.candidates import removed_by
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.frame import Frame, Layer, Mark
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.strokes import BODY, THIN
from bookmaker.rules.common.wording import cells_listed, counted, digits_listed, one_or_many
from bookmaker.solve.problem import Constraint, Different
from bookmaker.trouble import Desk


@dataclass(frozen=True)
class ExtraRegion(Rule):
    """`regions` are sets of cells in the grid's order; `digits` is how many digits the grid has."""

    kind = "extra-region"
    title = "Extra regions"
    noun = "extra region"
    relabels = "any"
    example = """\
extra-region:
  - r2c2-r2c4 r3c2-r3c4 r4c2-r4c4
  - r6c6-r6c8 r7c8
"""
    form = Form.AREA
    usual_cells = (0, 0)

    regions: tuple[tuple[int, ...], ...]
    digits: int

    @classmethod
    def read(cls, body: Node, grid: Grid, desk: Desk) -> Self | None:
        areas = read_areas(body, "the extra region", grid, desk)
        if areas is None:
            return None
        sound = True
        for index, area in enumerate(areas):
            if len(area.cells) > grid.size:
                text = f"the extra region has {counted(len(area.cells), 'cell')}, but there are {grid.size} digits"
                desk.error(area.place, "region-large", text, "no digit repeats in an extra region")
                sound = False
            if area.cells in (other.cells for other in areas[:index]):
                desk.error(area.place, "region-twice", "the extra region with these cells is listed already")
                sound = False
        return cls(tuple(area.cells for area in areas), grid.size) if sound else None

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls((), grid.size)

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(map(Part, self.regions))

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, regions=tuple(tuple(sorted(part.cells)) for part in parts))

    def written(self, grid: Grid) -> Written:
        return [runs(grid, cells, slanting=False) for cells in self.regions]

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        if len({digits[cell] for cell in cells}) == len(cells):
            yield Part(tuple(sorted(cells)))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return (Different(cells) for cells in self.regions)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        return all(len({digits[cell] for cell in cells}) == len(cells) for cells in self.regions)

    def sentence(self) -> str:
        full = [len(cells) == self.digits for cells in self.regions]
        if all(full):
            return one_or_many(
                len(full), "The shaded region holds every digit once.", "Each shaded region holds every digit once."
            )
        return one_or_many(
            len(full), "No digit repeats in the shaded region.", "No digit repeats within any shaded region."
        )

    @classmethod
    def primer(cls) -> str:
        return (
            "A shaded region works like one more box: no digit appears in it twice. If it has as many cells as the "
            "grid has digits, it holds them all, so ask of it what you would ask of a row: where can this digit still "
            "go? A smaller one only keeps its digits apart. Start where a region lies across a box that is nearly "
            "full."
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        return shaded(frame, self.regions)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 9, 10, 11),), 9), CLASSIC, 2, 3)

    def houses(self, grid: Grid) -> tuple[House, ...]:
        full = (cells for cells in self.regions if len(cells) == grid.size)
        return tuple(House(f"the extra region at {grid.name(cells[0])}", cells) for cells in full)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """One to three cells of a small region that share as many digits; full regions are houses and need no more."""
        grid, masks = position.grid, position.masks
        for cells in self.regions:
            if len(cells) == grid.size:
                continue
            for size in (1, 2, 3):
                for few in combinations((cell for cell in cells if 0 < masks[cell].bit_count() <= size), size):
                    together = 0
                    for cell in few:
                        together |= masks[cell]
                    if together.bit_count() != size:
                        continue
                    removed = removed_by(position, {cell: ~together for cell in cells if cell not in few})
                    if removed:
                        held = digits_listed(digits_in(together))
                        verb = "holds" if size == 1 else "share"
                        where = f"in the extra region at {grid.name(cells[0])}"
                        words = f"{where}, {cells_listed(grid, few)} {verb} {held}, and no digit repeats there"
                        yield Deduction(4 + size, size, few, removed, words)


def shaded(frame: Frame, regions: Sequence[tuple[int, ...]]) -> Iterator[Mark]:
    """A flat light fill in a thin outline, a little inside the cells: the mark of every extra region."""
    inset = 0.12
    for cells in regions:
        yield Mark(Layer.FILL, outline(frame, cells, inset, fill=BODY))
    for cells in regions:
        yield Mark(Layer.FILL, outline(frame, cells, inset, Stroke(frame.thin() + 0.1, THIN)))
