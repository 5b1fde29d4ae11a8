"""Even and odd cells.

Manifest: `even` and `odd` are lists of cells.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Self

from bookmaker.display.items import Rect, Stroke
from bookmaker.display.shapes import circle
from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import OnlyDigits
from bookmaker.reasons.patterns import NakedSubset
from bookmaker.rules.common.cellmarks import read_cell_marks
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Around, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN
from bookmaker.rules.common.parts import Form
from bookmaker.rules.common.sorts import SortedRule
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.rules.common.words.wording import number
from bookmaker.solve.problem import Allowed, Constraint
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

SQUARE, CIRCLE = 0.34, 0.425
"""How far the marks reach from the middle of the cell, in cells."""


@dataclass(frozen=True)
class Parity(SortedRule):
    """`even` and `odd` are cells."""

    kind = "parity"
    title = "Even and odd"
    noun = "even or odd cell"
    typed = ("even: lines, odd: lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
parity:
  even: r1c1 r4c4-r4c6
  odd: r2c2 r9c9
"""
    form = Form.CELL
    sorts = (("even", "even"), ("odd", "odd"))

    even: tuple[int, ...] = ()
    odd: tuple[int, ...] = ()

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        marks = read_cell_marks(body, "parity", ("even", "odd"), grid, collector)
        if marks is None:
            return None
        sound = True
        for name, room in zip(("even", "odd"), map(int.bit_count, _even_and_odd(grid)), strict=True):
            for house in grid.houses:
                inside = [place for cell, place in marks[name] if cell in house.cells]
                if len(inside) > room:
                    text = f"{number(len(inside))} cells of {house.name} are {name}, but only {number(room)} digits are"
                    collector.error(inside[-1], "parity-crowd", text)
                    sound = False
        return cls(*(tuple(cell for cell, _ in cells) for cells in marks.values())) if sound else None

    def true_sorts(self, cells: tuple[int, ...], grid: Grid, digits: Sequence[int]) -> Iterator[str]:
        yield "odd" if grid.worth(digits[cells[0]]) % 2 else "even"

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        even, odd = _even_and_odd(grid)
        for cells, mask in ((self.even, even), (self.odd, odd)):
            for cell in cells:  # one by one: each is a mark of its own
                yield Allowed((cell,), mask)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        worth = [grid.worth(digit) for digit in digits]
        return all(worth[cell] % 2 == 0 for cell in self.even) and all(worth[cell] % 2 == 1 for cell in self.odd)

    def sentence(self, words: Catalogue) -> str:
        sorts = "both" if self.even and self.odd else "even" if self.even else "odd"
        return words.say(f"parity-sentence-{sorts}", even=len(self.even), odd=len(self.odd))

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for cells, sort in ((self.even, "even"), (self.odd, "odd")):
            if cells:
                yield words.say(f"parity-spoken-{sort}", n=len(cells), cells=cells_said(words, grid, cells))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        # The ground lies under the lines through the cell, the outline over them.
        rim, fill = Stroke(frame.thin() + 0.1, THIN), 0.92
        for cell in self.even:
            (x, y), half = frame.centre(cell), frame.radius(cell, SQUARE) * frame.cell
            of = (f"the square of {frame.grid.name(cell)}",)
            square = Rect(x - half, y - half, 2 * half, 2 * half, rim)
            yield Mark(Layer.GROUND, replace(square, stroke=None, fill=fill), of)
            yield Mark(Layer.CAGE, square, of)
        for cell in self.odd:
            radius = frame.radius(cell, CIRCLE) * frame.cell
            of = (f"the circle of {frame.grid.name(cell)}",)
            yield Mark(Layer.GROUND, circle(frame.centre(cell), radius, fill=fill), of)
            yield Mark(Layer.CAGE, circle(frame.centre(cell), radius, rim), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        yield from (Around(cell, SQUARE, 0) for cell in self.even)
        yield from (Around(cell, CIRCLE, 0) for cell in self.odd)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(even=(0,), odd=(1,)), CLASSIC, 1, 2)

    def key(self) -> Sample:
        if self.even and self.odd:
            return self.sample()
        return Sample(Parity(even=(0,)) if self.even else Parity(odd=(0,)), CLASSIC, 1, 1)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """The marks themselves; and the rest of a house whose even, or odd, cells are all known."""
        grid, masks = position.grid, position.masks
        even, odd = _even_and_odd(grid)
        for cells, name, kind in ((self.even, "even", even), (self.odd, "odd", odd)):
            for cell in cells:
                removed = removed_by(position, {cell: kind})
                if removed:
                    mark, claim = MarkRef.at(self.kind, (cell,), variety=name), OnlyDigits((cell,), digits_in(kind))
                    yield Deduction(Rung.SIMPLE, 1, (cell,), removed, mark, claim)
            for house in grid.houses:
                sure = tuple(cell for cell in house.cells if cell in cells or not masks[cell] & ~kind)
                if len(sure) == kind.bit_count():
                    removed = removed_by(position, {cell: ~kind for cell in house.cells if cell not in sure})
                    if removed:
                        mark = MarkRef.joined(self.kind, sure, name)
                        used_up = NakedSubset(sure, digits_in(kind), house.ref)
                        yield Deduction(Rung.PAIR, 2, sure, removed, mark, used_up)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        named = [("even", cell) for cell in self.even] + [("odd", cell) for cell in self.odd]
        return tuple(MarkRef.at(self.kind, (cell,), variety=name) for name, cell in named)


def _even_and_odd(grid: Grid) -> tuple[int, int]:
    """The even digits and the odd digits as masks."""
    halves = mask_of(grid.digits[1::2]), mask_of(grid.digits[0::2])
    return halves if grid.first else halves[::-1]
