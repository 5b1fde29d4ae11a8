"""Inequality signs between neighbours: the sign opens towards the greater digit.

Manifest: one or more comparisons such as `r1c1 > r1c2`, which may run on: `r1c1 > r1c2 < r1c3`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from random import Random
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.border import knock_out
from bookmaker.rules.common.comparison import bounds, read_comparisons
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import OnBorder, PlaceClaim
from bookmaker.rules.common.neighbours import Pair, neighbours
from bookmaker.rules.common.parts import Form, Part, Written
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

REACH, SPREAD = 0.055, 0.12
"""How far the tip and the ends of a sign lie from its middle, across the border and along it, in cells."""


@dataclass(frozen=True)
class Inequality(Rule):
    """`pairs` of cells that share a side: the first holds the greater digit."""

    kind = "inequality"
    title = "Inequalities"
    noun = "inequality sign"
    typed = ("lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
inequality:
  - r1c1 > r1c2
  - r5c5 < r5c6 < r6c6
"""
    form = Form.BORDER
    directed = True

    pairs: tuple[Pair, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        pairs = read_comparisons(body, grid, collector)
        return None if pairs is None else cls(pairs)

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(map(Part, self.pairs))

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, pairs=tuple((part.cells[0], part.cells[1]) for part in parts))

    def written(self, grid: Grid) -> Written:
        return [f"{grid.name(greater)} > {grid.name(lesser)}" for greater, lesser in self.pairs]

    def places(self, grid: Grid) -> tuple[Pair, ...]:
        return neighbours(grid)

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        yield Part(tuple(sorted(cells, key=lambda cell: -digits[cell])))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        yield relation(self.pairs, grid.size, ((a, b) for a in grid.digits for b in grid.digits if a > b))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        return all(digits[greater] > digits[lesser] for greater, lesser in self.pairs)

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return {"n": len(self.pairs)}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        """The signs of a line together: “Row 1: column 2 is greater than column 1”."""
        found: dict[tuple[bool, int], list[tuple[int, int]]] = {}
        for greater, lesser in sorted(self.pairs, key=min):
            along = grid.row(greater) == grid.row(lesser)
            number, place = (grid.row(greater), grid.column) if along else (grid.column(greater), grid.row)
            found.setdefault((not along, number), []).append((place(greater) + 1, place(lesser) + 1))
        for (down, number), signs in sorted(found.items()):
            line = "column" if down else "row"
            said = [words.say(f"inequality-{line}-sign", more=str(more), less=str(less)) for more, less in signs]
            yield words.say(f"inequality-{line}", number=str(number + 1), signs="; ".join(said))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.4, cap="round", join="miter")
        for greater, lesser in self.pairs:
            of = (f"the sign between {cells_listed(frame.grid, (greater, lesser))}",)
            ((x, y), scale), (gx, gy), (lx, ly) = (
                frame.seat(greater, lesser),
                frame.centre(greater),
                frame.centre(lesser),
            )
            reach, spread = REACH * scale * frame.cell, SPREAD * scale * frame.cell
            # One unit towards the lesser cell; turned by a right angle it spreads the sign.
            ux, uy = (lx - gx) / frame.cell, (ly - gy) / frame.cell
            tip = (x + ux * reach, y + uy * reach)
            ends = [(x - ux * reach + s * uy * spread, y - uy * reach + s * ux * spread) for s in (1, -1)]
            yield Mark(Layer.WHITE, knock_out((x, y), 0.14 * scale * frame.cell), of)
            yield Mark(Layer.BORDER, polyline([ends[0], tip, ends[1]], pen), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (OnBorder((min(pair), max(pair)), 2.3 * SPREAD, 3.0 * REACH) for pair in self.pairs)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((0, 1), (2, 1))), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Bounds up and down the stairs of signs."""
        return bounds(position, self.pairs, self._refer)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(self._refer([pair]) for pair in self.pairs)

    def _refer(self, pairs: Sequence[Pair]) -> MarkRef:
        """A sign, or the signs of a stair."""
        if len(pairs) == 1:
            return MarkRef.between(self.kind, sorted(pairs[0]))
        return MarkRef.joined(self.kind, dict.fromkeys(cell for pair in pairs for cell in pair))
