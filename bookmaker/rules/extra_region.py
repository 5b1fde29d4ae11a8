"""Extra regions: areas in which no digit repeats; one with as many cells as there are digits is a house.

Manifest: a list of areas, or a picture with a letter for each area and dots for the rest. The cells of an area need
not hang together: the pieces of one that falls apart carry a letter, which also tells a single cell from an even one.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations, count
from random import Random
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import CLASSIC, Grid, House, HouseRef
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.patterns import NakedSubset
from bookmaker.rules.common.area import lettered, outline, read_areas
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Box, InCell, Outlined, PlaceClaim
from bookmaker.rules.common.drawing.strokes import BODY, THIN
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.rules.common.words.wording import counted
from bookmaker.solve.problem import Constraint, Different
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

INSET = 0.12
"""How far the outline runs inside the cells' edges, in cells."""

LETTERS = "KLMNPQRSTUWYZHJ"
"""For pieces that belong together. None is a digit of a large grid or a sum mark, or looks like a figure."""

SPOTS = (
    Box(0.64, 0.1, 0.89, 0.35),
    Box(0.615, 0.135, 0.865, 0.385),
    Box(0.68, 0.1, 0.89, 0.31),
    Box(0.655, 0.135, 0.865, 0.345),
    Box(0.52, 0.07, 0.73, 0.28),
    Box(0.68, 0.4, 0.89, 0.61),
)
"""Where a letter may stand in its cell: in the top right corner, or near it."""


@dataclass(frozen=True)
class ExtraRegion(Rule):
    """`regions` are sets of cells in the grid's order; `digits` is how many digits the grid has."""

    kind = "extra-region"
    title = "Extra regions"
    noun = "extra region"
    typed = ("lines", "picture")
    relabels = "any"
    from_zero = True
    lettered = True
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
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        areas = read_areas(body, "the extra region", grid, collector)
        if areas is None:
            return None
        sound = True
        for index, area in enumerate(areas):
            if len(area.cells) > grid.size:
                text = f"the extra region has {counted(len(area.cells), 'cell')}, but there are {grid.size} digits"
                collector.error(area.place, "region-large", text, "no digit repeats in an extra region")
                sound = False
            if area.cells in (other.cells for other in areas[:index]):
                collector.error(area.place, "region-twice", "the extra region with these cells is listed already")
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

    @property
    def in_pieces(self) -> bool:
        """Does a region fall apart?"""
        return any(True for _ in _labels(Grid(self.digits, ()), self.regions))

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        full = all(len(cells) == self.digits for cells in self.regions)
        return {"n": len(self.regions), "full": "yes" if full else "no", "pieces": "yes" if self.in_pieces else "no"}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        letters = {cells: letter for cells, _, letter in _labels(grid, self.regions)}
        for cells in self.regions:
            letter, said = letters.get(cells, "none"), cells_said(words, grid, cells)
            yield words.say("extra-region-spoken", letter=letter, cells=said)

    def marks(self, frame: Frame) -> Iterator[Mark]:
        yield from shaded(frame, self.regions, "the extra region")
        for cells, cell, letter in _labels(frame.grid, self.regions):
            for item in lettered(frame, InCell(cell, SPOTS, letter), letter):
                yield Mark(Layer.FIGURE, item, (f"the extra region at {frame.grid.name(cells[0])}",))

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for cells in self.regions:
            yield Outlined(cells, INSET)
        for _, cell, letter in _labels(grid, self.regions):
            yield InCell(cell, SPOTS, letter)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1, 9, 10, 11),), 9), CLASSIC, 2, 3)

    def key(self) -> Sample:
        return Sample(ExtraRegion(((0, 1, 11),), 9), CLASSIC, 2, 3) if self.in_pieces else self.sample()

    def houses(self, grid: Grid) -> tuple[House, ...]:
        full = (cells for cells in self.regions if len(cells) == grid.size)
        return tuple(
            House(f"the extra region at {grid.name(cells[0])}", cells, HouseRef("extra-region", number, cells[0]))
            for number, cells in enumerate(full, 1)
        )

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.at(self.kind, cells) for cells in self.regions)

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
                        mark, claim = MarkRef.at(self.kind, cells), NakedSubset(few, digits_in(together), None)
                        yield Deduction(Rung(Rung.NAKED + size), size, few, removed, mark, claim)


def shaded(frame: Frame, regions: Sequence[tuple[int, ...]], called: str) -> Iterator[Mark]:
    """A flat light fill in a thin outline, a little inside the cells: the mark of every extra region."""
    for cells in regions:
        of, inset = (f"{called} at {frame.grid.name(cells[0])}",), frame.inset(cells, INSET)
        yield Mark(Layer.GROUND, outline(frame, cells, inset, fill=BODY), of)
        yield Mark(Layer.FILL, outline(frame, cells, inset, Stroke(frame.thin() + 0.1, THIN)), of)


def _labels(grid: Grid, regions: Sequence[tuple[int, ...]]) -> Iterator[tuple[tuple[int, ...], int, str]]:
    """For each piece of a region in pieces: the region, the cell at whose top right its letter stands, the letter."""
    letters = (letter * times for times in count(1) for letter in LETTERS)
    for cells in regions:
        pieces = grid.pieces(cells)
        if len(pieces) > 1:
            letter = next(letters)
            for piece in pieces:
                top = grid.row(piece[0])
                yield cells, max(cell for cell in piece if grid.row(cell) == top), letter
