"""Arrows: the digits along a shaft add up to the number in its circle.

Manifest: a list of arrows, each with its circle and one or more shafts; or, short, one chain that begins in the circle.
An oval of two or three cells in a row or a column is read as a number, from left to right or from the top down.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import reduce
from itertools import dropwhile, pairwise, product
from operator import mul
from random import Random
from typing import Self

from bookmaker.display.items import Rect, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of, span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import LimitsMeet
from bookmaker.rules.common.chain import Chain, read_chain
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.deducing.sums import open_limits, sum_limits
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, Around, PlaceClaim
from bookmaker.rules.common.drawing.strokes import HALF_SEEN, THIN, Trace, arrow_head, halo, to_rim, trace
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.words.speech import cells_said, lines_said
from bookmaker.rules.common.words.wording import ends_named, number
from bookmaker.solve.problem import Constraint, Sum
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, Word, read_fields, read_items

RING = 0.39
"""Radius of the circle, and half the breadth of an oval, in cells."""

LONGEST_OVAL = 3

HEAD = 0.22
"""Length of the barbs of an arrow head in cells."""

BEYOND = 0.36
"""How far the tip reaches past the middle of its cell, so that a digit there leaves the head in sight."""


@dataclass(frozen=True, slots=True)
class Arrow:
    """A circle of one to three cells in reading order, and shafts that each begin beside it, without the circle."""

    circle: tuple[int, ...]
    shafts: tuple[Chain, ...]

    @property
    def weights(self) -> tuple[int, ...]:
        """What a digit in each cell of the circle counts: 100, 10, 1."""
        return tuple(10**power for power in reversed(range(len(self.circle))))


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

    arrows: tuple[Arrow, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        nodes = (body,) if isinstance(body, Table) else read_items(body, "the arrow", collector)
        if not nodes:
            collector.error(
                body.place, "no-chains", "no arrow is listed here", "name one, or leave out the whole entry"
            )
        arrows = [_read_arrow(node, grid, collector) for node in nodes]
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
        return replace(self, arrows=tuple(Arrow(circle, tuple(found)) for circle, found in shafts.items()))

    def written(self, grid: Grid) -> Written:
        return [_written(arrow, grid) for arrow in self.arrows]

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """With a circle of one cell, or of the two that a row or a column begins with; an oval of two can be read where
        every digit is one figure."""
        for rim in (1, 2) if grid.size <= 9 else (1,):
            part = Part(tuple(cells), "", (rim,))
            way = cells[1] - cells[0] if len(cells) > rim else 0
            if way and (rim == 1 or way in (1, grid.size)) and self.keeps(part, grid, digits):
                yield part

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for arrow in self.arrows:
            number = tuple(zip(arrow.circle, (-weight for weight in arrow.weights), strict=True))
            for shaft in arrow.shafts:
                yield Sum((*((cell, 1) for cell in shaft), *number), 0, 0)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for arrow in self.arrows:
            number = int("".join(str(digits[cell]) for cell in arrow.circle))
            for shaft in arrow.shafts:
                if sum(digits[cell] for cell in shaft) != number:
                    return False
        return True

    def sentence(self, words: Catalogue) -> str:
        ovals = [arrow for arrow in self.arrows if len(arrow.circle) > 1]
        ways = {_way(arrow.circle) for arrow in ovals}
        return words.say(
            "arrow-sentence-ovals" if ovals else "arrow-sentence",
            n=sum(len(arrow.shafts) for arrow in self.arrows),
            all="yes" if len(ovals) == len(self.arrows) else "no",
            ways=ways.pop() if len(ways) == 1 else "both",
        )

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for arrow in self.arrows:
            oval = len(arrow.circle) > 1
            way, said = _way(arrow.circle) if oval else "", cells_said(words, grid, arrow.circle)
            start = words.say("arrow-oval" if oval else "arrow-circle", cells=said, way=way)
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
        """Limits of the sum on both sides of the circle's rim; a short arrow is tried out as a whole."""
        for arrow in self.arrows:
            for shaft in arrow.shafts:
                found = list(_limits(position, arrow, shaft))
                yield from found
                if not found and len(shaft) + len(arrow.circle) <= 5:
                    cells, mark = arrow.circle + shaft, _refer(arrow, shaft)
                    yield from tried_out(position, cells, _adds_up(arrow, len(shaft)), mark)


def _written(arrow: Arrow, grid: Grid) -> Written:
    if len(arrow.circle) == 1 == len(arrow.shafts):
        return runs(grid, arrow.circle + arrow.shafts[0])
    return {"circle": runs(grid, arrow.circle), "shafts": [runs(grid, shaft) for shaft in arrow.shafts]}


def _read_arrow(node: Node, grid: Grid, collector: Collector) -> Arrow | None:
    if isinstance(node, Word):
        chain = read_chain(node, "the arrow", grid, collector, 2)
        placed: list[tuple[Chain, Node]] | None = None if chain is None else [(chain[1:], node)]
        circle = None if chain is None else chain[:1]
    else:
        fields = read_fields(node, "an arrow", collector, ("circle", "shafts"), ("circle", "shafts"))
        circle = _read_circle(fields["circle"], grid, collector) if "circle" in fields else None
        placed = None
        if circle is not None and "shafts" in fields:
            placed = _read_shafts(fields["shafts"], circle, grid, collector)
    if circle is None or placed is None:
        return None
    fits = [_can_add_up(circle, shaft, shaft_node, grid, collector) for shaft, shaft_node in placed]
    return Arrow(circle, tuple(shaft for shaft, _ in placed)) if all(fits) else None


def _read_circle(node: Node, grid: Grid, collector: Collector) -> tuple[int, ...] | None:
    if not isinstance(node, Word):
        collector.error(node.place, "not-a-circle", "the circle should be a cell such as r5c5, an oval two or three")
        return None
    cells = read_cells(node, grid, collector)
    if cells is None:
        return None
    circle = tuple(sorted(cells))
    steps = {after - before for before, after in pairwise(circle)}
    in_line = len({grid.row(cell) for cell in circle}) == 1 or len({grid.column(cell) for cell in circle}) == 1
    if len(circle) > LONGEST_OVAL:
        collector.error(node.place, "oval-long", f"an oval covers at most three cells, not {number(len(circle))}")
    elif len(circle) > 1 and (not in_line or not steps <= {1, grid.size}):
        collector.error(
            node.place, "oval-crooked", "the cells of an oval should follow each other in a row or a column"
        )
    elif len(circle) > 1 and grid.size > 9:
        text = f"an oval is read as a number, which a {grid.size}×{grid.size} grid has too many digits for"
        collector.error(node.place, "oval-size", text, "use a circle of one cell")
    else:
        return circle
    return None


def _read_shafts(
    body: Node, circle: tuple[int, ...], grid: Grid, collector: Collector
) -> list[tuple[Chain, Node]] | None:
    nodes = read_items(body, "the shafts", collector)
    if not nodes:
        collector.error(body.place, "no-chains", "the arrow has no shaft")
    good: list[tuple[Chain, Node]] = []
    for node in nodes:
        cells = read_chain(node, "the shaft", grid, collector, 1)
        if cells is None:
            continue
        shaft = tuple(dropwhile(circle.__contains__, cells))
        inside = next((cell for cell in shaft if cell in circle), None)
        if not shaft:
            collector.error(node.place, "chain-short", "the shaft does not leave the circle")
        elif inside is not None:
            collector.error(
                node.place, "shaft-in-circle", f"the shaft comes back into its circle at {grid.name(inside)}"
            )
        elif not any(grid.touching(shaft[0], cell) for cell in circle):
            text = f"the shaft begins at {grid.name(shaft[0])}, which does not touch the circle"
            collector.error(node.place, "shaft-apart", text, "name its cells from the one beside the circle to the tip")
        else:
            good.append((shaft, node))
    return good if good and len(good) == len(nodes) else None


def _can_add_up(circle: tuple[int, ...], shaft: Chain, node: Node, grid: Grid, collector: Collector) -> bool:
    least, most = open_limits(grid, shaft)
    numbers = _numbers([grid.all_digits] * len(circle))
    low, high = min(numbers), max(numbers)
    if least <= high and most >= low:
        return True
    side = f"at least {least}" if least > high else f"at most {most}"
    what = "circle" if len(circle) == 1 else "oval"
    collector.error(node.place, "arrow-sum", f"this shaft adds up to {side}, but its {what} holds {low} to {high}")
    return False


def _numbers(masks: Sequence[int]) -> dict[int, tuple[int, ...]]:
    """What a circle can hold: each number with its digits, which differ as they stand in one row or column."""
    ways = product(*(digits_in(mask) for mask in masks))
    return {reduce(lambda n, d: 10 * n + d, way, 0): way for way in ways if len(set(way)) == len(way)}


def _limits(position: Position, arrow: Arrow, shaft: Chain) -> Iterator[Deduction]:
    """From below: what the shaft adds up to at least. From above: what it adds up to at most."""
    numbers = _numbers([position.masks[cell] for cell in arrow.circle])
    least, most = sum_limits(position, shaft)
    others = {cell: sum_limits(position, [other for other in shaft if other != cell]) for cell in shaft}
    size = position.grid.size
    held, where = len(shaft) + 1, arrow.circle + shaft
    enough = {value: way for value, way in numbers.items() if value >= least}
    if enough:
        kept = {cell: mask_of(way[i] for way in enough.values()) for i, cell in enumerate(arrow.circle)}
        kept |= {cell: span_mask(1, min(size, max(enough) - low)) for cell, (low, _) in others.items()}
        removed = removed_by(position, kept)
        if removed:
            meet = LimitsMeet(least, max(enough), from_above=False)
            yield Deduction(Rung.PAIR, held, where, removed, _refer(arrow, shaft), meet)
    few = {value: way for value, way in numbers.items() if value <= most}
    if few:
        kept = {cell: mask_of(way[i] for way in few.values()) for i, cell in enumerate(arrow.circle)}
        kept |= {cell: span_mask(max(1, min(few) - high), size) for cell, (_, high) in others.items()}
        removed = removed_by(position, kept)
        if removed:
            meet = LimitsMeet(min(few), most, from_above=True)
            yield Deduction(Rung.PAIR, held, where, removed, _refer(arrow, shaft), meet)


def _refer(arrow: Arrow, shaft: Chain) -> MarkRef:
    """A shaft with its circle is a mark of its own."""
    return MarkRef.line(Arrows.kind, arrow.circle + shaft)


def _adds_up(arrow: Arrow, count: int) -> Callable[[Sequence[int]], bool]:
    """The circle's digits first, then the shaft's: may the sum still come out?"""
    rim, weights = len(arrow.circle), arrow.weights

    def fits(digits: Sequence[int]) -> bool:
        if len(digits) <= rim:
            return True
        left: int = sum(map(mul, weights, digits)) - sum(digits[rim:])
        return left == 0 if len(digits) == rim + count else left > 0

    return fits


def _way(circle: tuple[int, ...]) -> str:
    """How the number in an oval is read."""
    return "across" if circle[1] - circle[0] == 1 else "down"


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
