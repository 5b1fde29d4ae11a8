"""Corner quadruples: the digits written at a corner, repeats included, are among the four cells around it.

Manifest: the corner as two cells that touch only there, a colon, and one to four digits: `r2c3-r3c4: 1 2 5`.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import combinations
from random import Random
from typing import Self

from bookmaker.display.items import Point, Stroke
from bookmaker.display.shapes import circle
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.bits import mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Needed, OneCombination, OnlyIn
from bookmaker.rules.common.area import blocks
from bookmaker.rules.common.border import read_corner
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import locked_out, removed_by, sees
from bookmaker.rules.common.deducing.enumeration import Fits, tried_out
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import OnCorner, PlaceClaim
from bookmaker.rules.common.parts import Form, Part, Written
from bookmaker.rules.common.reading import read_digits
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.rules.common.words.wording import counted, number
from bookmaker.solve.problem import Allowed, Constraint, Count
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table

RINGS = {1: 0.24, 2: 0.24, 3: 0.29, 4: 0.29}
"""Radius of a ring around so many digits, in cells."""


@dataclass(frozen=True, slots=True)
class Ring:
    """The four cells around a corner in the grid's order, and the digits written there, least first."""

    cells: tuple[int, ...]
    digits: tuple[int, ...]


@dataclass(frozen=True)
class Quadruple(Rule):
    """One ring at each of some corners."""

    kind = "quadruple"
    title = "Corner quadruples"
    noun = "corner quadruple"
    typed = ("*: text",)
    relabels = "any"
    from_zero = True
    lettered = True
    example = """\
quadruple:
  r2c3-r3c4: 1 2 5
  r6c6-r7c7: 4 4 8 9
"""
    form = Form.CORNER
    figures = "digits"

    rings: tuple[Ring, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        if not isinstance(body, Table) or not body.entries:
            hint = "such as “r2c3-r3c4: 1 2 5”: two cells that touch only at the corner"
            collector.error(
                body.place, "not-quadruples", "quadruples are lines of a corner, a colon, and its digits", hint
            )
            return None
        rings: list[Ring] = []
        sound = True
        for key, value in body.entries:
            cells = read_corner(key, "the quadruple", grid, collector)
            digits = read_digits(value, "the quadruple", grid, collector)
            if cells is None or digits is None:
                sound = False
                continue
            diagnostic = _trouble_with(cells, digits, grid)
            if cells in (ring.cells for ring in rings):
                collector.error(key.place, "corner-twice", "this corner already has its digits")
                sound = False
            elif diagnostic:
                collector.error(value.place, *diagnostic)
                sound = False
            else:
                rings.append(Ring(cells, tuple(sorted(digits))))
        return cls(tuple(rings)) if sound else None

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(ring.cells, "", ring.digits) for ring in self.rings)

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, rings=tuple(Ring(tuple(sorted(p.cells)), tuple(sorted(p.value))) for p in parts))

    def written(self, grid: Grid) -> Written:
        return {
            f"{grid.name(ring.cells[0])}-{grid.name(ring.cells[-1])}": " ".join(map(grid.symbol, ring.digits))
            for ring in self.rings
        }

    def places(self, grid: Grid) -> tuple[tuple[int, ...], ...]:
        return tuple(blocks(grid, 2))

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """One ring, with some of the digits by chance."""
        yield Part(tuple(cells), "", tuple(sorted(rng.sample([digits[cell] for cell in cells], rng.randint(1, 4)))))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for ring in self.rings:
            for digit, times in Counter(ring.digits).items():
                yield Count(ring.cells, 1 << (digit - 1), times, 4)
            if len(ring.digits) == 4:
                yield Allowed(ring.cells, mask_of(ring.digits))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for ring in self.rings:
            around = [digits[cell] for cell in ring.cells]
            for digit in ring.digits:
                if digit not in around:
                    return False
                around.remove(digit)
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        several = any(len(ring.digits) > 1 for ring in self.rings)
        repeats = any(len(set(ring.digits)) < len(ring.digits) for ring in self.rings)
        return {"n": len(self.rings), "several": "yes" if several else "no", "repeats": "yes" if repeats else "no"}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for ring in self.rings:
            digits = words.listed(map(grid.symbol, ring.digits))
            yield words.say("quadruple-spoken", digits=digits, cells=cells_said(words, grid, ring.cells))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        for ring in self.rings:
            radius = RINGS[len(ring.digits)] * frame.cell
            x, y = frame.between(ring.cells[0], ring.cells[3])
            of = (f"the quadruple at {frame.grid.name(ring.cells[0])}-{frame.grid.name(ring.cells[3])}",)
            yield Mark(Layer.BORDER, circle((x, y), radius, Stroke(frame.thin()), 1.0), of)
            height, places = _PLACES[len(ring.digits)]
            for digit, (dx, dy) in zip(ring.digits, places, strict=True):
                at = (x + dx * frame.cell, y + dy * frame.cell)
                yield Mark(Layer.BORDER, frame.figures(at, frame.grid.symbol(digit), height, mark=True), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (OnCorner(ring.cells, RINGS[len(ring.digits)] + 0.02) for ring in self.rings)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Ring((0, 1, 9, 10), (2, 5)),)), CLASSIC, 2, 2)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A full ring; a digit with just room enough; one that must be in the ring; the ring worked through."""
        for ring in self.rings:
            mark = self._refer(ring, position.grid)
            if len(ring.digits) == 4:
                removed = removed_by(position, dict.fromkeys(ring.cells, mask_of(ring.digits)))
                if removed:
                    yield Deduction(Rung.SIMPLE, 4, ring.cells, removed, mark, OneCombination(ring.digits))
            for digit, times in Counter(ring.digits).items():
                places = tuple(cell for cell in ring.cells if position.may(cell, digit))
                if len(places) == times:
                    removed = removed_by(position, dict.fromkeys(places, 1 << (digit - 1)))
                    if removed:
                        yield Deduction(Rung.SIMPLE, 2, ring.cells, removed, mark, OnlyIn((digit,), places))
                removed = locked_out(position, ring.cells, digit)
                removed = tuple((cell, gone) for cell, gone in removed if cell not in ring.cells)
                if places and removed:
                    yield Deduction(Rung.PAIR, len(places), ring.cells, removed, mark, Needed(digit, places))

            yield from tried_out(position, ring.cells, _holding(ring.digits), mark)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(self._refer(ring, grid) for ring in self.rings)

    def _refer(self, ring: Ring, grid: Grid) -> MarkRef:
        return MarkRef.between(self.kind, ring.cells, "".join(map(grid.symbol, ring.digits)))


_PLACES: dict[int, tuple[float, tuple[Point, ...]]] = {
    1: (0.21, ((0.0, 0.0),)),
    2: (0.2, ((-0.085, 0.0), (0.085, 0.0))),
    3: (0.2, ((-0.085, -0.12), (0.085, -0.12), (0.0, 0.12))),
    4: (0.2, ((-0.085, -0.12), (0.085, -0.12), (-0.085, 0.12), (0.085, 0.12))),
}
"""How high one to four digits are and where they stand in their ring, from its middle, in cells."""


def _trouble_with(cells: tuple[int, ...], digits: tuple[int, ...], grid: Grid) -> tuple[str, str] | None:
    """Code and text of what is wrong with a ring."""
    if len(digits) > 4:
        return (
            "quadruple-long",
            f"the quadruple has {counted(len(digits), 'digit')}, and only four cells lie around a corner",
        )
    across = [pair for pair in combinations(cells, 2) if not sees(grid, *pair)]
    for digit, times in Counter(digits).items():
        if times > 2:
            return (
                "quadruple-repeat",
                f"{grid.symbol(digit)} fits at most twice around a corner, not {number(times)} times",
            )
        if times == 2 and not across:
            return "quadruple-repeat", f"{grid.symbol(digit)} can't stand twice in four cells of one box"
    return None


@lru_cache(maxsize=1024)
def _holding(wanted: tuple[int, ...]) -> Fits:
    """Can four cells that begin with these digits still hold all that are wanted?"""

    def fits(digits: Sequence[int]) -> bool:
        missing = list(wanted)
        for digit in digits:
            if digit in missing:
                missing.remove(digit)
        return len(missing) <= 4 - len(digits)

    return fits
