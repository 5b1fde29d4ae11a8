"""Square blocks: 2×2 or 3×3 cells whose rows, whose columns, or all of whose lines have the same sum.

Manifest: `magic`, `rows` and `columns` are lists of blocks, each told by two opposite corners (`r2c2-r4c4`). A magic
block has 3×3 cells; its rows, columns and both diagonals have the same sum. Digits may repeat where rows, columns and
boxes allow it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import combinations
from random import Random
from typing import Self

from bookmaker.display.items import Item, Line, Rect, Stroke
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import CommonSum
from bookmaker.rules.common.area import blocks, outline
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.enumeration import APART, can_be_filled, tried_out
from bookmaker.rules.common.deducing.square_sums import (
    COLUMNS,
    MAGIC,
    ROWS,
    SORTS,
    Cells,
    equal_lines,
    left_by,
    lines_of,
    possible_sums,
    sum_in_region,
    whole_block,
)
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Box, InCell, Outlined, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN
from bookmaker.rules.common.parts import Form, Part, Written
from bookmaker.rules.common.reading import parts_of
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.solve.problem import Constraint, Sum
from bookmaker.source.cells import read_cell, read_rectangle
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, Word, read_fields, read_items

INSET, DOUBLE = 0.06, 0.05
"""How far the outer of the two outlines runs inside the cells' edges, and the inner one inside it, in cells."""

SPOTS = (
    Box(0.13, 0.13, 0.33, 0.33),
    Box(0.3, 0.13, 0.5, 0.33),
    Box(0.13, 0.36, 0.33, 0.56),
    Box(0.13, 0.67, 0.33, 0.87),
)
"""Where the sign of a block may stand in its first cell."""


@dataclass(frozen=True)
class SquareBlock(Rule):
    """`blocks` are cells in the grid's order, each with its sort."""

    kind = "square-block"
    title = "Square blocks"
    noun = "square block"
    typed = ("magic: lines, rows: lines, columns: lines",)
    relabels = "reversed"
    from_zero = True
    example = """\
square-block:
  magic: r2c2-r4c4
  rows: [r6c6-r7c7, r6c1-r8c3]
  columns: r8c4-r9c5
"""
    form = Form.AREA
    usual_cells = (4, 9)

    blocks: tuple[tuple[Cells, str], ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        fields = read_fields(body, cls.kind, collector, SORTS)
        errors = sum(1 for _ in collector.errors())
        found: dict[Cells, str] = {}
        for sort, node in fields.items():
            for item in read_items(node, f"the {cls.noun}", collector):
                if not isinstance(item, Word):
                    collector.error(item.place, "not-a-block", f"the {cls.noun} should be two corners: r2c2-r4c4")
                    continue
                for word in parts_of(item) or (item,):
                    cells = _read_block(word, sort, grid, collector)
                    if cells is not None and cells in found:
                        text = f"the {cls.noun} at {grid.name(cells[0])} is listed already"
                        collector.error(word.place, "block-twice", text)
                    elif cells is not None:
                        found[cells] = sort
        sound = isinstance(body, Table) and len(fields) == len(body.entries)
        if sound and not found and sum(1 for _ in collector.errors()) == errors:
            collector.error(body.place, "no-areas", f"no {cls.noun} is listed here", "name one, or leave out the entry")
        return cls(tuple(found.items())) if sound and sum(1 for _ in collector.errors()) == errors and found else None

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(cells, sort) for cells, sort in self.blocks)

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        """A block that does not say what it is has equal rows, or is magic if it has nine cells."""
        usual = {9: MAGIC}
        blocks = tuple(
            (tuple(sorted(part.cells)), part.name if part.name in SORTS else usual.get(len(part.cells), ROWS))
            for part in parts
        )
        return replace(self, blocks=blocks)

    def written(self, grid: Grid) -> Written:
        lines: dict[str, Written] = {}
        for wanted in SORTS:
            named: list[Written] = [
                f"{grid.name(cells[0])}-{grid.name(cells[-1])}" for cells, sort in self.blocks if sort == wanted
            ]
            if named:
                lines[wanted] = named
        return lines

    def places(self, grid: Grid) -> tuple[Cells, ...]:
        return _blocks(grid)

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        at = tuple(sorted(cells))
        for sort in SORTS if len(at) == 9 else (ROWS, COLUMNS):
            if self.keeps(Part(at, sort), grid, digits):
                yield Part(at, sort)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for cells, sort in self.blocks:
            lines, total = lines_of(cells, sort), sum_in_region(grid, cells)
            if total:
                yield from (Sum(tuple((cell, 1) for cell in line), total, total) for line in lines)
            elif sort == MAGIC:
                middle = cells[4]
                yield from (Sum((*((cell, 1) for cell in line), (middle, -3)), 0, 0) for line in lines)
            else:
                for one, other in combinations(lines, 2):
                    yield Sum((*((cell, 1) for cell in one), *((cell, -1) for cell in other)), 0, 0)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cells, sort in self.blocks:
            if len(cells) not in self.usual_cells:
                return False  # a block that is no square, as `mend` tries it
            side = 3 if len(cells) == 9 else 2
            block = [[digits[cells[side * row + column]] for column in range(side)] for row in range(side)]
            rows = [sum(row) for row in block]
            columns = [sum(row[at] for row in block) for at in range(side)]
            slanting = [sum(block[i][i] for i in range(side)), sum(block[i][side - 1 - i] for i in range(side))]
            sums = {ROWS: rows, COLUMNS: columns, MAGIC: rows + columns + slanting}[sort]
            if len(set(sums)) > 1:
                return False
        return True

    def sentence(self, words: Catalogue) -> str:
        there = [sort for sort in SORTS if any(sort == other for _, other in self.blocks)]
        if len(there) == 1:
            return words.say(f"square-block-sentence-{there[0]}", n=len(self.blocks))
        lines = words.listed([words.say(f"square-block-lines-{sort}") for sort in there])
        return words.say("square-block-sentence", n=len(self.blocks), lines=lines)

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for cells, sort in self.blocks:
            yield words.say(f"square-block-spoken-{sort}", cells=cells_said(words, grid, cells))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.thin() + 0.1, THIN)
        for cells, sort in self.blocks:
            of = (f"the {self.noun} at {frame.grid.name(cells[0])}",)
            inset = frame.inset(cells, INSET)
            for edge in (inset, inset + DOUBLE):
                yield Mark(Layer.CAGE, outline(frame, cells, edge, pen), of, "frame", 0.45)
            for item in _sign(frame, cells[0], sort, pen):
                yield Mark(Layer.FIGURE, item, of, "sign")

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for cells, sort in self.blocks:
            yield Outlined(cells, INSET)
            yield InCell(cells[0], SPOTS, sort)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(((_blocks(CLASSIC)[64], MAGIC),)), CLASSIC, 3, 3)

    def key(self) -> Sample:
        there = [sort for sort in SORTS if any(sort == other for _, other in self.blocks)]
        shown, wide = list[tuple[Cells, str]](), 0
        for sort in there:
            side = 3 if sort == MAGIC else 2
            shown.append((tuple(row * CLASSIC.size + wide + at for row in range(side) for at in range(side)), sort))
            wide += side
        return Sample(SquareBlock(tuple(shown)), CLASSIC, 3 if MAGIC in there else 2, wide)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(MarkRef.at(self.kind, cells, variety=sort) for cells, sort in self.blocks)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Limits of the common sum and what they leave for each cell; then the block, or two lines of it, tried out."""
        for cells, sort in self.blocks:
            if all(position.masks[cell].bit_count() == 1 for cell in cells):
                continue
            lines, mark = lines_of(cells, sort), MarkRef.at(self.kind, cells, variety=sort)
            sums = possible_sums(position, cells, sort)
            removed = removed_by(position, left_by(position, lines, sums)) if sums else ()
            if removed:
                yield Deduction(Rung.PAIR, len(lines), cells, removed, mark, CommonSum(sums))
                continue
            total, found = sum_in_region(position.grid, cells), False
            for one, other in combinations(lines, 2):
                both = one + tuple(cell for cell in other if cell not in one)
                for step in tried_out(position, both, equal_lines(len(one), both, one, other, total), mark):
                    found = True
                    yield step
            if not found and len(cells) == 9:
                yield from tried_out(position, cells, whole_block(sort, 9, total), mark)


def _read_block(word: Word, sort: str, grid: Grid, collector: Collector) -> Cells | None:
    first, dash, second = word.value.partition("-")
    if not dash or "-" in second:
        collector.error(word.place, "one-of-two", "a square block is told by two opposite corners: r2c2-r4c4")
        return None
    one = read_cell(Word(word.place, first), grid, collector)
    other = read_cell(Word(word.at_offset(len(first) + 1), second), grid, collector)
    if one is None or other is None:
        return None
    rows, columns = (sorted(map(at, (one, other))) for at in (grid.row, grid.column))
    side = rows[1] - rows[0] + 1
    if side != columns[1] - columns[0] + 1 or side not in (2, 3):
        collector.error(word.place, "not-a-block", "a square block has 2×2 or 3×3 cells", "such as r2c2-r4c4")
        return None
    if sort == MAGIC and side == 2:
        text = "a block of 2×2 cells can't be magic: its cells would all be equal"
        collector.error(word.place, "block-small", text, "list it under “rows” or “columns”")
        return None
    cells = read_rectangle(word, one, other, grid, collector)
    if cells is None:
        return None
    if not can_be_filled(grid, cells, whole_block(sort, side * side, sum_in_region(grid, cells))):
        text = f"no digits fit the square block at {grid.name(cells[0])}, even in an empty grid"
        collector.error(word.place, "block-unfillable", text, APART)
        return None
    return cells


@lru_cache(maxsize=16)
def _blocks(grid: Grid) -> tuple[Cells, ...]:
    return tuple(block for side in (2, 3) for block in blocks(grid, side))


def _sign(frame: Frame, cell: int, sort: str, pen: Stroke) -> Iterator[Item]:
    """Level bars, upright bars, or a star of bars in all directions, on white."""
    x, y = frame.corner(cell)
    box = frame.box(InCell(cell, SPOTS, sort))
    left, top = x + box.left * frame.cell, y + box.top * frame.cell
    side = (box.right - box.left) * frame.cell
    yield Rect(left, top, side, side, fill=1.0)
    near, middle, far = 0.12 * side, 0.5 * side, 0.88 * side
    bars = {
        ROWS: [((near, at), (far, at)) for at in (0.2 * side, middle, 0.8 * side)],
        COLUMNS: [((at, near), (at, far)) for at in (0.2 * side, middle, 0.8 * side)],
        MAGIC: [
            ((near, middle), (far, middle)),
            ((middle, near), (middle, far)),
            ((near, near), (far, far)),
            ((near, far), (far, near)),
        ],
    }
    for (ax, ay), (bx, by) in bars[sort]:
        yield Line((left + ax, top + ay), (left + bx, top + by), pen)
