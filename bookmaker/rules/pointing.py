"""Pointing cells: the digit in a cell with an arrow tells how far along the arrow a named digit stands.

Manifest: `digit` names it (the highest if nothing is said); `left`, `right`, `up` and `down` are lists of cells. A 0
counts to no cell ahead, so no pointing cell holds one.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import Self

from bookmaker.display.shapes import polyline
from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import CountsTo
from bookmaker.rules.common.cellmarks import read_cell_marks
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Box, InCell, PlaceClaim
from bookmaker.rules.common.outside import digit_clue
from bookmaker.rules.common.parts import Form, Written
from bookmaker.rules.common.sorts import SortedRule
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.solve.problem import Allowed, Constraint, Relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, read_text

WAYS: Mapping[str, tuple[int, int]] = {"left": (0, -1), "right": (0, 1), "up": (-1, 0), "down": (1, 0)}
"""Where arrows point: rows down and columns to the right."""

DEEP, HALF = 0.15, 0.12
"""From the foot of an arrow to its tip, and half of its foot, in cells."""

TIP, BESIDE = 0.06, 0.29
"""How far its tip is from the edge, and how far aside the arrow may stand, in cells."""


@dataclass(frozen=True)
class Pointing(SortedRule):
    """`left`, `right`, `up` and `down` are cells; `digit` is what they point at."""

    kind = "pointing"
    title = "Pointing cells"
    noun = "pointing cell"
    typed = ("left: lines, right: lines, up: lines, down: lines, digit: whole",)
    relabels = "none"
    from_zero = True
    example = """\
pointing:
  digit: 9
  right: r1c1 r5c2
  up: r8c5
"""
    form = Form.CELL
    sorts = tuple((way, way) for way in WAYS)
    options = ("digit",)

    left: tuple[int, ...] = ()
    right: tuple[int, ...] = ()
    up: tuple[int, ...] = ()
    down: tuple[int, ...] = ()
    digit: int = 9
    symbols: str = CLASSIC.symbols
    """The signs of the grid's digits, one of which the rule names."""

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        named, digit = body.get("digit") if isinstance(body, Table) else None, grid.size
        if named is not None and isinstance(body, Table):
            text = read_text(named, "the digit pointed at", collector)
            read = digit_clue(text, named.place, grid, collector) if text is not None else None
            if read is None:
                return None
            digit = read
            body = Table(body.place, tuple(entry for entry in body.entries if entry[0].value != "digit"))
        marks = read_cell_marks(body, "pointing", tuple(WAYS), grid, collector)
        if marks is None:
            return None
        sound = True
        for way, cells in marks.items():
            for cell, place in cells:
                if not _ahead(grid, cell, way):
                    text = f"nothing lies {_SAID[way]} {grid.name(cell)}, so no arrow there can point {way}"
                    collector.error(place, "points-outside", text)
                    sound = False
        left, right, up, down = (tuple(cell for cell, _ in cells) for cells in marks.values())
        return cls(left, right, up, down, digit, grid.symbols) if sound else None

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(digit=grid.size, symbols=grid.symbols)

    def written(self, grid: Grid) -> Written:
        body = super().written(grid)
        assert isinstance(body, dict)
        return {"digit": grid.symbol(self.digit)} | {name: cells for name, cells in body.items() if name != "digit"}

    def true_sorts(self, cells: tuple[int, ...], grid: Grid, digits: Sequence[int]) -> Iterator[str]:
        far = grid.worth(digits[cells[0]])
        for way in WAYS:
            ahead = _ahead(grid, cells[0], way)
            if 0 < far <= len(ahead) and digits[ahead[far - 1]] == self.digit:
                yield way

    @classmethod
    def in_one_square(cls) -> bool:
        return True

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """Relations between the cell and each ahead of it: “it counts to here” exactly if “the digit stands here”.

        As the digit stands once in the line, and the cell counts to some place ahead, these say everything.
        """
        pairs: dict[int, list[tuple[int, int]]] = {}
        for cell, way in self._arrows():
            ahead = _ahead(grid, cell, way)
            counting = range(grid.raised(1, 1), grid.raised(len(ahead), 1) + 1)
            yield Allowed((cell,), mask_of(counting) & ~mask_of([self.digit]))
            for far, other in enumerate(ahead, start=1):
                pairs.setdefault(far, []).append((cell, other))
        for far, between in pairs.items():
            yield Relation(tuple(between), _counts_to(grid.size, grid.raised(far, 1), self.digit))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cells, down, across in (
            (self.left, 0, -1),
            (self.right, 0, 1),
            (self.up, -1, 0),
            (self.down, 1, 0),
        ):
            for cell in cells:
                far = grid.worth(digits[cell])
                row, column = grid.row(cell) + down * far, grid.column(cell) + across * far
                if far == 0 or not grid.inside(row, column) or digits[grid.cell(row, column)] != self.digit:
                    return False
        return True

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return {"n": len(self._arrows()), "digit": self.symbols[self.digit - 1]}

    def of_zero(self, words: Catalogue) -> str:
        return words.say("pointing-zero")

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for way in WAYS:
            cells = getattr(self, way)
            if cells:
                yield words.say("pointing-spoken", n=len(cells), way=way, cells=cells_said(words, grid, cells))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        for cell, way in self._arrows():
            x, y = frame.corner(cell)
            box = frame.box(_room(cell, way))
            left, top, right, bottom = (share * frame.cell for share in box)
            middle = (left + right) / 2, (top + bottom) / 2
            tips = {
                "left": ((right, top), (left, middle[1]), (right, bottom)),
                "right": ((left, top), (right, middle[1]), (left, bottom)),
                "up": ((left, bottom), (middle[0], top), (right, bottom)),
                "down": ((left, top), (middle[0], bottom), (right, top)),
            }
            shape = polyline([(x + across, y + down) for across, down in tips[way]], None, 0.0, closed=True)
            yield Mark(Layer.FIGURE, shape, (f"the arrow in {frame.grid.name(cell)}",))

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (_room(cell, way) for cell, way in self._arrows())

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(right=(0,), down=(2,)), CLASSIC, 2, 3)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(self._refer(cell, way) for cell, way in self._arrows())

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """The cell counts only to cells open to the digit; the digit stands in its line only where it can count to."""
        grid, masks = position.grid, position.masks
        goal = mask_of([self.digit])
        for cell, way in self._arrows():
            ahead = _ahead(grid, cell, way)
            along = grid.rows[grid.row(cell)] if WAYS[way][0] == 0 else grid.columns[grid.column(cell)]
            steps = [grid.worth(digit) for digit in digits_in(masks[cell] & ~goal)]
            steps = [far for far in steps if 0 < far <= len(ahead) and masks[ahead[far - 1]] & goal]
            counting = mask_of(grid.raised(far, 1) for far in steps)
            kept = dict.fromkeys(along.cells, grid.all_digits & ~goal) | {cell: counting}
            kept |= {ahead[far - 1]: grid.all_digits for far in steps}
            removed = removed_by(position, kept)
            if removed:
                claim = CountsTo(cell, tuple(steps))
                yield Deduction(Rung.SIMPLE, 2, (cell, *ahead), removed, self._refer(cell, way), claim)

    def _arrows(self) -> list[tuple[int, str]]:
        return [(cell, way) for way in WAYS for cell in getattr(self, way)]

    def _refer(self, cell: int, way: str) -> MarkRef:
        return replace(MarkRef.at(self.kind, (cell,)), variety=way)


_SAID = {"left": "to the left of", "right": "to the right of", "up": "above", "down": "below"}


@cache
def _ahead(grid: Grid, cell: int, way: str) -> tuple[int, ...]:
    """The cells that an arrow points along, the nearest first."""
    (down, across), (row, column) = WAYS[way], (grid.row(cell), grid.column(cell))
    steps = range(1, grid.size)
    return tuple(
        grid.cell(row + far * down, column + far * across)
        for far in steps
        if grid.inside(row + far * down, column + far * across)
    )


@cache
def _counts_to(size: int, counting: int, digit: int) -> tuple[int, ...]:
    """What may stand at a place ahead beside each digit of the cell: the digit if that is the one `counting` there,
    else all others."""
    goal = mask_of([digit])
    others = mask_of(range(1, size + 1)) & ~goal
    return (0, *(goal if held == counting else others for held in range(1, size + 1)))


@cache
def _room(cell: int, way: str) -> InCell:
    """Where an arrow may stand: in the middle of the edge it points at, or aside."""
    boxes = []
    for aside in (0.5, 0.5 - BESIDE, 0.5 + BESIDE):
        near, far = (TIP, TIP + DEEP) if way in ("left", "up") else (1 - TIP - DEEP, 1 - TIP)
        low, high = aside - HALF, aside + HALF
        boxes.append(Box(near, low, far, high) if way in ("left", "right") else Box(low, near, high, far))
    return InCell(cell, tuple(boxes), way)
