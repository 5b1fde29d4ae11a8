"""Arrows: the digits along a shaft add up to the number in its circle.

Manifest: a list of arrows, each with its circle and one or more shafts; or, short, one chain that begins in the circle.
An oval of two or three cells in a row or a column is read as a number, from left to right or from the top down. Where
digits begin with 0, such a number does not.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from operator import mul
from random import Random
from typing import Self

from bookmaker.display.items import Rect, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import LimitsMeet, OnlyDigits
from bookmaker.rules.common.arrowreading import Arrow, arrow_on, numbers_in, read_arrow
from bookmaker.rules.common.chain import Chain
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.deducing.sums import sum_limits, worth_from
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, Around, PlaceClaim
from bookmaker.rules.common.drawing.strokes import HALF_SEEN, THIN, Trace, arrow_head, halo, to_rim, trace
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.words.speech import cells_said, lines_said
from bookmaker.rules.common.words.wording import ends_named
from bookmaker.solve.problem import Allowed, Constraint, Sum
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, read_items

RING = 0.39
"""Radius of the circle, and half the breadth of an oval, in cells."""

HEAD = 0.22
"""Length of the barbs of an arrow head in cells."""

BEYOND = 0.36
"""How far the tip reaches past the middle of its cell, so that a digit there leaves the head in sight."""


@dataclass(frozen=True)
class Arrows(Rule):
    """All arrows of a puzzle."""

    kind = "arrow"
    title = "Arrows"
    noun = "arrow"
    typed = ("lines", "[circle: text, shafts: lines]")
    relabels = "none"
    example = """\
arrow:
  - r1c1-r1c4                       # the first cell is the circle
  - circle: r5c5
    shafts: [r5c6-r5c7, r6c5-r7c5]  # each adds up to the circle
  - circle: r9c1 r9c2               # an oval, read as a number such as 21
    shafts: r8c2-r6c4
"""
    form = Form.CHAIN
    usual_cells = (3, 4)
    directed = True
    from_zero = True

    arrows: tuple[Arrow, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        nodes = (body,) if isinstance(body, Table) else read_items(body, "the arrow", collector)
        if not nodes:
            collector.error(
                body.place, "no-chains", "no arrow is listed here", "name one, or leave out the whole entry"
            )
        arrows = [read_arrow(node, grid, collector) for node in nodes]
        good: list[Arrow] = []
        listed: set[tuple[tuple[int, ...], Chain]] = set()
        for node, arrow in zip(nodes, arrows, strict=True):
            if arrow is None:
                continue
            shafts = {(arrow.circle, shaft) for shaft in arrow.shafts}
            if len(shafts) < len(arrow.shafts) or shafts & listed:
                collector.error(node.place, "chain-twice", "the arrow through these cells is listed already")
            else:
                good.append(arrow)
                listed |= shafts
        return cls(tuple(good)) if good and len(good) == len(arrows) else None

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        """A circle with one of its shafts each; the value of a part says how many of its cells are the circle's."""
        return tuple(
            Part(arrow.circle + shaft, "", (len(arrow.circle),)) for arrow in self.arrows for shaft in arrow.shafts
        )

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        shafts: dict[tuple[int, ...], list[Chain]] = {}
        for part in parts:
            rim = sum(part.value)
            shafts.setdefault(tuple(sorted(part.cells[:rim])), []).append(part.cells[rim:])
        return replace(self, arrows=tuple(arrow_on(grid, circle, found) for circle, found in shafts.items()))

    def written(self, grid: Grid) -> Written:
        return [_written(arrow, grid) for arrow in self.arrows]

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """With a circle of one cell, or of the two that a row or a column begins with; an oval of two can be read where
        every digit is one figure."""
        for rim in (1, 2) if grid.size <= 9 else (1,):
            part = Part(tuple(cells), "", (rim,))
            way = cells[1] - cells[0] if len(cells) > rim else 0
            if way and (rim == 1 or cells[1] in grid.orthogonal(cells[0])) and self.keeps(part, grid, digits):
                yield part

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for arrow in self.arrows:
            number = tuple(zip(arrow.circle, (-weight for weight in arrow.weights), strict=True))
            for shaft in arrow.shafts:
                apart = grid.raised(0, len(shaft)) - grid.raised(0, sum(arrow.weights))
                yield Sum((*((cell, 1) for cell in shaft), *number), apart, apart)
            if len(arrow.circle) > 1 and grid.first == 0:
                yield Allowed(arrow.circle[:1], _first_digits(grid))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for arrow in self.arrows:
            number = "".join(str(grid.worth(digits[cell])) for cell in arrow.circle)
            if len(arrow.circle) > 1 and number[0] == "0":
                return False
            for shaft in arrow.shafts:
                if sum(grid.worth(digits[cell]) for cell in shaft) != int(number):
                    return False
        return True

    def sentence(self, words: Catalogue) -> str:
        ovals = [arrow for arrow in self.arrows if arrow.way]
        ways = {arrow.way for arrow in ovals}
        return words.say(
            "arrow-sentence-ovals" if ovals else "arrow-sentence",
            n=sum(len(arrow.shafts) for arrow in self.arrows),
            all="yes" if len(ovals) == len(self.arrows) else "no",
            ways=ways.pop() if len(ways) == 1 else "both",
        )

    def of_zero(self, words: Catalogue) -> str:
        return words.say("arrow-zero") if any(arrow.way for arrow in self.arrows) else ""

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for arrow in self.arrows:
            said = cells_said(words, grid, arrow.circle)
            start = words.say("arrow-oval" if arrow.way else "arrow-circle", cells=said, way=arrow.way)
            yield from lines_said(words, grid, "arrow-spoken", arrow.shafts, start=start)

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.3, THIN, join="miter")
        for arrow in self.arrows:
            radius = min(frame.radius(cell, RING) for cell in arrow.circle) * frame.cell
            for shaft in arrow.shafts:
                of = (_named(frame.grid, arrow, shaft),)
                way = _shaft_way(frame, arrow.circle, shaft, radius)
                tip, onward = way.at(way.length)
                yield Mark(Layer.LINE, halo(frame, way.points, pen.width), of)
                yield Mark(Layer.LINE, polyline(way.points, pen), of)
                yield Mark(Layer.LINE, polyline(arrow_head(tip, onward, HEAD * frame.cell), pen), of, "head")
        for arrow in self.arrows:
            (left, top), (right, bottom) = frame.centre(arrow.circle[0]), frame.centre(arrow.circle[-1])
            radius = min(frame.radius(cell, RING) for cell in arrow.circle) * frame.cell
            ring = Rect(
                left - radius, top - radius, right - left + 2 * radius, bottom - top + 2 * radius, pen, None, radius
            )
            yield Mark(
                Layer.LINE, ring, tuple(_named(frame.grid, arrow, shaft) for shaft in arrow.shafts), "circle", HALF_SEEN
            )

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for arrow in self.arrows:
            yield from (Around(cell, RING, 1) for cell in arrow.circle)
            yield from (Along(_with_start(grid, arrow.circle, shaft), 0.1) for shaft in arrow.shafts)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Arrow((0,), ((1, 2),)),)), CLASSIC, 1, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(_refer(arrow, shaft) for arrow in self.arrows for shaft in arrow.shafts)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """No number begins with 0; limits of the sum on both sides of the circle's rim; a short arrow is tried out as a
        whole."""
        least = position.grid.worth(1)
        for arrow in self.arrows:
            if found := list(_no_zero_first(position, arrow)):
                yield from found
                continue
            for shaft in arrow.shafts:
                found = list(_limits(position, arrow, shaft))
                yield from found
                if not found and len(shaft) + len(arrow.circle) <= 5:
                    cells, mark = arrow.circle + shaft, _refer(arrow, shaft)
                    yield from tried_out(position, cells, _adds_up(arrow.weights, len(shaft), least), mark)


def _written(arrow: Arrow, grid: Grid) -> Written:
    if len(arrow.circle) == 1 == len(arrow.shafts):
        return runs(grid, arrow.circle + arrow.shafts[0])
    return {"circle": runs(grid, arrow.circle), "shafts": [runs(grid, shaft) for shaft in arrow.shafts]}


def _first_digits(grid: Grid) -> int:
    """The digits with which a number may begin, as a mask: not with 0."""
    return worth_from(grid, 1, grid.worth(grid.size))


def _no_zero_first(position: Position, arrow: Arrow) -> Iterator[Deduction]:
    first, kept = arrow.circle[0], _first_digits(position.grid)
    removed = removed_by(position, {first: kept}) if len(arrow.circle) > 1 else ()
    if removed:
        mark, told = _refer(arrow, arrow.shafts[0]), OnlyDigits((first,), digits_in(kept))
        yield Deduction(Rung.SIMPLE, 1, arrow.circle, removed, mark, told)


def _limits(position: Position, arrow: Arrow, shaft: Chain) -> Iterator[Deduction]:
    """From below: what the shaft adds up to at least. From above: what it adds up to at most."""
    grid = position.grid
    numbers = numbers_in([position.masks[cell] for cell in arrow.circle], grid)
    least, most = sum_limits(position, shaft)
    others = {cell: sum_limits(position, [other for other in shaft if other != cell]) for cell in shaft}
    first, last = grid.worth(1), grid.worth(grid.size)
    held, where = len(shaft) + 1, arrow.circle + shaft
    enough = {value: way for value, way in numbers.items() if value >= least}
    if enough:
        kept = {cell: mask_of(way[i] for way in enough.values()) for i, cell in enumerate(arrow.circle)}
        kept |= {cell: worth_from(grid, first, max(enough) - low) for cell, (low, _) in others.items()}
        removed = removed_by(position, kept)
        if removed:
            meet = LimitsMeet(least, max(enough), from_above=False)
            yield Deduction(Rung.PAIR, held, where, removed, _refer(arrow, shaft), meet)
    few = {value: way for value, way in numbers.items() if value <= most}
    if few:
        kept = {cell: mask_of(way[i] for way in few.values()) for i, cell in enumerate(arrow.circle)}
        kept |= {cell: worth_from(grid, min(few) - high, last) for cell, (_, high) in others.items()}
        removed = removed_by(position, kept)
        if removed:
            meet = LimitsMeet(min(few), most, from_above=True)
            yield Deduction(Rung.PAIR, held, where, removed, _refer(arrow, shaft), meet)


def _refer(arrow: Arrow, shaft: Chain) -> MarkRef:
    """A shaft with its circle is a mark of its own."""
    return MarkRef.line(Arrows.kind, arrow.circle + shaft)


@lru_cache(maxsize=64)
def _adds_up(weights: tuple[int, ...], count: int, least: int) -> Callable[[Sequence[int]], bool]:
    """The circle's digits first, then the `count` of the shaft: may the sum still come out? `least` is what the first
    digit is worth."""
    rim = len(weights)

    def fits(digits: Sequence[int]) -> bool:
        if len(digits) <= rim:
            return True
        worth = [digit - 1 + least for digit in digits]
        left: int = sum(map(mul, weights, worth)) - sum(worth[rim:])
        return left == 0 if len(digits) == rim + count else left >= least

    return fits


def _named(grid: Grid, arrow: Arrow, shaft: Chain) -> str:
    return f"the arrow {ends_named(grid, (arrow.circle[0], *shaft))}"


def _with_start(grid: Grid, circle: tuple[int, ...], shaft: Chain) -> Chain:
    """A shaft with the cell of its circle that it leaves."""
    beside = [cell for cell in circle if grid.touching(shaft[0], cell)]
    return min(beside, key=lambda cell: (shaft[0] not in grid.orthogonal(cell), cell)), *shaft


def _shaft_way(frame: Frame, circle: tuple[int, ...], shaft: Chain, radius: float) -> Trace:
    """From the circle's rim, `radius` points from its middle, to a little beyond the middle of the last cell."""
    chain = _with_start(frame.grid, circle, shaft)
    start, way = chain[0], trace(frame, chain)
    _, (ux, uy) = way.at(0)
    out = to_rim(radius, frame.lane(chain).aside * frame.cell)
    # A shaft that leaves the end of an oval slantwise over the oval's other cells meets its straight side.
    if len(circle) > 1:
        (ax, ay), (bx, by) = frame.centre(start), frame.centre(circle[-1] if start == circle[0] else circle[0])
        along = (bx - ax) * ux + (by - ay) * uy
        if along > 0:
            out = radius / max(abs(uy) if ay == by else abs(ux), 0.1)
    return Trace(way.between(out, way.length)).beyond(0.0, BEYOND * frame.cell)
