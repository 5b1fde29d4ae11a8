"""Diagonal sums: the sum of the digits along an arrow's diagonal; digits may repeat where other rules allow it.

Manifest: a list of sums, each with the cell at which its diagonal enters the grid and the way it goes, such as
`23 from r1c3 down-right`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from random import Random
from typing import Self

from bookmaker.display.items import Line, Point, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.bits import span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Bounds
from bookmaker.reasons.marks import Slanting
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.sums import open_limits, sum_limits
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures
from bookmaker.rules.common.drawing.frame import Frame, Layer, Margins, Mark
from bookmaker.rules.common.outside import number_clue
from bookmaker.rules.common.parts import Form, Part, Written
from bookmaker.rules.common.reading import parts_of
from bookmaker.rules.common.words.speech import line_said
from bookmaker.solve.problem import Constraint, Sum
from bookmaker.source.cells import read_cell
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Word, read_choice, read_items

WAYS = {"down-right": (1, 1), "down-left": (1, -1), "up-right": (-1, 1), "up-left": (-1, -1)}
"""The step (down, across) from one cell of a diagonal to the next."""

ACROSS, DOWN = 0.95, 0.85
"""Size of a clue's place in cells."""


@dataclass(frozen=True, slots=True)
class Diagonal:
    """A sum with the cell at which its diagonal enters the grid and its way, a word of `WAYS`."""

    total: int
    start: int
    way: str

    def cells(self, grid: Grid) -> tuple[int, ...]:
        """The cells of the diagonal, from the arrow on."""
        down, across = WAYS[self.way]
        row, column = grid.row(self.start), grid.column(self.start)
        found = []
        while grid.inside(row, column):
            found.append(grid.cell(row, column))
            row, column = row + down, column + across
        return tuple(found)


@dataclass(frozen=True)
class DiagonalSum(Rule):
    """All sums along diagonals."""

    kind = "diagonal-sum"
    title = "Diagonal sums"
    noun = "diagonal sum"
    typed = ("lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
diagonal-sum:
  - 23 from r1c3 down-right
  - 12 from r4c9 up-left
"""
    hugs_grid = True
    form = Form.EDGE
    directed = True
    figures = "number"
    usual_cells = (2, 4)

    diagonals: tuple[Diagonal, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        already = len(collector.found)
        placed: dict[Diagonal, Place] = {}
        for node in read_items(body, "diagonal-sum", collector):
            diagonal = _read_diagonal(node, grid, collector)
            if diagonal is None:
                continue
            other = next((d for d in placed if set(d.cells(grid)) == set(diagonal.cells(grid))), None)
            if other is None:
                placed[diagonal] = node.place
                continue
            said = f"the diagonal {_named(diagonal, grid)} has a sum already: {other.total} {_named(other, grid)}"
            collector.error(node.place, "diagonal-twice", said, "keep one of the two", also=(placed[other],))
        if len(collector.found) == already and not placed:
            collector.error(
                body.place, "no-clues", "no diagonal sum is listed here", "name one, or leave out the whole entry"
            )
        return cls(tuple(placed)) if len(collector.found) == already else None

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(diagonal.cells(grid), "", (diagonal.total,)) for diagonal in self.diagonals)

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, diagonals=tuple(_diagonal(part, grid) for part in parts))

    def written(self, grid: Grid) -> Written:
        return [f"{diagonal.total} {_named(diagonal, grid)}" for diagonal in self.diagonals]

    def places(self, grid: Grid) -> tuple[tuple[int, ...], ...]:
        ends = (Diagonal(0, start, way) for start in grid.cells for way in WAYS)
        lines = (end.cells(grid) for end in ends if not grid.inside(*_outside(end, grid)))
        return tuple(cells for cells in lines if len(cells) > 1)

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        yield Part(tuple(cells), "", (sum(grid.worth(digits[cell]) for cell in cells),))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for diagonal in self.diagonals:
            terms = tuple((cell, 1) for cell in diagonal.cells(grid))
            total = grid.raised(diagonal.total, len(terms))
            yield Sum(terms, total, total)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        return all(
            sum(grid.worth(digits[cell]) for cell in diagonal.cells(grid)) == diagonal.total
            for diagonal in self.diagonals
        )

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return {"n": len(self.diagonals)}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for diagonal in self.diagonals:
            line = line_said(words, grid, diagonal.cells(grid))
            yield words.say("diagonal-sum-spoken", total=str(diagonal.total), line=line)

    def margins(self, grid: Grid) -> Margins:
        rows, columns = zip(*(_outside(diagonal, grid) for diagonal in self.diagonals), strict=True)
        return Margins(
            DOWN if -1 in rows else 0.0,
            ACROSS if grid.size in columns else 0.0,
            DOWN if grid.size in rows else 0.0,
            ACROSS if -1 in columns else 0.0,
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.cell * 0.035, INK)
        for diagonal in self.diagonals:
            of = (f"the {self.noun} {diagonal.total} {_named(diagonal, frame.grid)}",)
            tip, (down, across) = _corner(diagonal, frame), WAYS[diagonal.way]

            def at(back: float, aside: float, tip: Point = tip, down: int = down, across: int = across) -> Point:
                """A point `back` cells from the corner along columns and `aside` cells along rows."""
                return tip[0] - across * aside * frame.cell, tip[1] - down * back * frame.cell

            yield Mark(Layer.BORDER, Line(at(0.37, 0.37), at(0.12, 0.12), pen), of)
            yield Mark(
                Layer.BORDER, polyline([at(0.05, 0.05), at(0.09, 0.22), at(0.22, 0.09)], None, INK, closed=True), of
            )
            row, column = _outside(diagonal, frame.grid)
            if frame.grid.inside(row, 0):
                middle = at(0.26, 0.62)
            elif frame.grid.inside(0, column):
                middle = at(0.58, 0.25)
            else:
                middle = at(0.55, 0.6)
            yield Mark(Layer.BORDER, clue_figures(frame, middle, str(diagonal.total), 0.42, 0.31, narrow=True), of)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Diagonal(38, 1, "down-right"),)), CLASSIC, 2, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """What the others can add up to at least and at most leaves each cell its bounds."""
        grid = position.grid
        for diagonal in self.diagonals:
            cells = diagonal.cells(grid)
            kept, spans = {}, []
            for cell in cells:
                least, most = sum_limits(position, [other for other in cells if other != cell])
                total = grid.raised(diagonal.total, 1)
                low, high = max(1, total - most), min(grid.size, total - least)
                kept[cell] = span_mask(low, high)
                spans.append((cell, low, high))
            removed = removed_by(position, kept)
            if removed:
                mark = self._refer(diagonal, grid)
                yield Deduction(Rung.PAIR, len(cells), cells, removed, mark, Bounds(tuple(spans)))

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(self._refer(diagonal, grid) for diagonal in self.diagonals)

    def _refer(self, diagonal: Diagonal, grid: Grid) -> MarkRef:
        anchor = Slanting(diagonal.start, diagonal.way)
        return MarkRef(self.kind, diagonal.cells(grid), anchor, str(diagonal.total))


def _read_diagonal(node: Node, grid: Grid, collector: Collector) -> Diagonal | None:
    """One sum, “23 from r1c3 down-right”; None after a diagnostic."""
    parts = parts_of(node) if isinstance(node, Word) else ()
    such_as = "such as “23 from r1c3 down-right”"
    if len(parts) != 4 or parts[1].value != "from":
        said = "a diagonal sum is written as its number, the cell where it enters and its direction"
        collector.error(node.place, "diagonal-form", said, such_as)
        return None
    total = number_clue(parts[0].value, parts[0].place, "a diagonal sum", collector, 1, grid.size * grid.size, such_as)
    start = read_cell(parts[2], grid, collector)
    way = read_choice(parts[3], "the way of a diagonal", collector, tuple(WAYS))
    if total is None or start is None or way is None:
        return None
    diagonal = Diagonal(total, start, way)
    row, column = _outside(diagonal, grid)
    if grid.inside(row, column):
        while grid.inside(row - WAYS[way][0], column - WAYS[way][1]):
            row, column = row - WAYS[way][0], column - WAYS[way][1]
        said = f"{grid.name(start)} is not at the edge from which a diagonal goes {way}"
        collector.error(
            parts[2].place, "not-at-that-edge", said, f"this diagonal enters at {grid.name(grid.cell(row, column))}"
        )
        return None
    cells = diagonal.cells(grid)
    if len(cells) == 1:
        said = f"the diagonal from {grid.name(start)} {way} leaves the grid at once: it has one cell"
        collector.error(parts[3].place, "diagonal-short", said, "was another direction from this cell meant?")
        return None
    least, most = open_limits(grid, cells)
    if not least <= total <= most:
        said = (
            f"the {len(cells)} cells of this diagonal can add up to {least} at least and {most} at most, not to {total}"
        )
        collector.error(parts[0].place, "sum-cannot-be", said)
        return None
    return diagonal


def _diagonal(part: Part, grid: Grid) -> Diagonal:
    """The sum along the cells of a part."""
    first, second = part.cells[:2]
    step = grid.row(second) - grid.row(first), grid.column(second) - grid.column(first)
    return Diagonal(sum(part.value), first, next(way for way, steps in WAYS.items() if steps == step))


def _named(diagonal: Diagonal, grid: Grid) -> str:
    return f"from {grid.name(diagonal.start)} {diagonal.way}"


def _outside(diagonal: Diagonal, grid: Grid) -> tuple[int, int]:
    """Row and column, one of them off the grid, of the place before the diagonal's first cell."""
    down, across = WAYS[diagonal.way]
    return grid.row(diagonal.start) - down, grid.column(diagonal.start) - across


def _corner(diagonal: Diagonal, frame: Frame) -> Point:
    """The corner of the first cell at which the diagonal enters."""
    down, across = WAYS[diagonal.way]
    x, y = frame.corner(diagonal.start)
    return x + (0 if across > 0 else frame.cell), y + (0 if down > 0 else frame.cell)
