"""Cages: digits in a cage differ and add up to its total, if it has one.

Manifest: a picture of letters with a table of totals, or a list of cells, each with or without a total. A cage hangs
together by sides, has at most as many cells as there are digits, and shares no cell with another.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache, reduce
from math import hypot
from operator import and_, or_
from random import Random
from typing import Self

from bookmaker.display.items import Item, Line, Point, Rect, Stroke, Text
from bookmaker.placed import Node, Table, Word, read_fields, read_items, read_whole
from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Needed, NoCombination, OneCombination
from bookmaker.rules.common import house_sums
from bookmaker.rules.common.area import LETTERS, Area, is_picture, loops, picture, read_area, read_letters
from bookmaker.rules.common.candidates import locked_out, removed_by
from bookmaker.rules.common.contract import Deduction, Relabelling, Rule, Sample
from bookmaker.rules.common.fillings import tried_out
from bookmaker.rules.common.frame import Frame, Layer, Mark
from bookmaker.rules.common.house_sums import Block
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.places import Box, Claim, InCell, Outlined
from bookmaker.rules.common.speech import cells_said
from bookmaker.rules.common.strokes import THIN
from bookmaker.rules.common.sums import different_limits, digit_sets
from bookmaker.rules.common.wording import counted, the_or_each
from bookmaker.solve.problem import Combination, Constraint, Different
from bookmaker.trouble import Desk, Place, nearest

INSET = 0.075
"""How far the dashes stand inside the cells' edges, in cells."""

DASH = 0.1
"""Length of a dash in cells."""

LEAST = 0.45
"""So much of the dashes has to be left: what stands on all borders of a cage breaks them, and leaves its corners."""

DRAWN_FROM = 5
"""So many cages are typed as a picture rather than a list."""

SPOTS = (
    (0.045, 0.045, 0.19), (0.28, 0.045, 0.19), (0.28, 0.045, 0.16), (0.135, 0.045, 0.16), (0.045, 0.135, 0.16),
    (0.135, 0.135, 0.15), (0.28, 0.135, 0.15),
)  # fmt: skip
"""Where a total begins, from the left and from the top, and how high its figures are, in cells."""

FIGURE = 0.69
"""Width of a narrow figure for its height."""


@dataclass(frozen=True)
class Cage(Rule):
    """`cages` are cells in the grid's order with a total, 0 where there is none."""

    kind = "cage"
    title = "Cages"
    noun = "cage"
    typed = ("lines", "[cells: text, total: whole]", "picture", "picture: picture, totals: numbers")
    example = """\
cage:
  - {cells: r1c1-r1c3 r2c1, total: 12}
  - {cells: r5c5 r5c6, total: 11}
  - r8c8 r8c9 r9c8
"""
    form = Form.AREA
    usual_cells = (2, 4)
    figures = "number"

    cages: tuple[tuple[tuple[int, ...], int], ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, desk: Desk) -> Self | None:
        errors = sum(1 for _ in desk.errors())
        placed = list(_read(body, grid, desk))
        _check(placed, grid, desk)
        if sum(1 for _ in desk.errors()) > errors:
            return None
        return cls(tuple((area.cells, total) for area, total, _ in placed))

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(cells, "", (total,) if total else ()) for cells, total in self.cages)

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, cages=tuple((tuple(sorted(part.cells)), sum(part.value)) for part in parts))

    def written(self, grid: Grid) -> Written:
        if DRAWN_FROM <= len(self.cages) <= len(LETTERS):
            letters = dict(zip(LETTERS, sorted(self.cages), strict=False))
            totals: dict[str, Written] = {letter: str(total) for letter, (_, total) in letters.items() if total}
            drawn = picture({letter: cells for letter, (cells, _) in letters.items()}, grid)
            return {"picture": drawn, "totals": totals} if totals else drawn
        listed = ((runs(grid, cells, slanting=False), total) for cells, total in self.cages)
        return [{"cells": cells, "total": str(total)} if total else cells for cells, total in listed]

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        inside = [digits[cell] for cell in cells]
        if len(set(inside)) == len(inside):
            yield Part(tuple(sorted(cells)), "", (sum(inside),))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for cells, total in self.cages:
            if total:
                yield Combination(cells, frozenset(digit_sets(grid.all_digits, len(cells), total)))
            elif len(cells) > 1:
                yield Different(cells)

    def relabelling(self, grid: Grid) -> Relabelling:
        return "reversed" if any(total for _, total in self.cages) else "any"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cells, total in self.cages:
            inside = [digits[cell] for cell in cells]
            if len(set(inside)) < len(inside) or (total and sum(inside) != total):
                return False
        return True

    def sentence(self) -> str:
        where = f"Inside {the_or_each(len(self.cages), self.noun)}, digits differ"
        if not any(total for _, total in self.cages):
            return f"{where}."
        if all(total for _, total in self.cages):
            return f"{where} and add up to the total in its corner."
        return f"{where} and add up to the total in its corner, if there is one."

    def spoken(self, grid: Grid) -> Iterator[str]:
        for cells, total in self.cages:
            yield f"Cage {f'of {total}' if total else 'without a total'}: {cells_said(grid, cells)}"

    @classmethod
    def primer(cls) -> str:
        return (
            "A cage is drawn with dashes. Its digits differ, even where it runs through several boxes, and add up to "
            "the small total in its corner. Some totals leave one choice: two cells that make 3 hold 1 and 2, three "
            "that make 24 hold 7, 8 and 9. On a 9×9 grid every row, column and box adds up to 45: where cages cover "
            "all but one cell of a box, subtract from 45."
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = frame.thin() + 0.2
        for cells, total in self.cages:
            of = (f"the cage at {frame.grid.name(cells[0])}",)
            for corners in loops(frame.grid, cells, INSET):
                for start, end in zip(corners, (*corners[1:], corners[0]), strict=True):
                    yield Mark(Layer.CAGE, _dashes(frame, start, end, pen), of, "dashes", LEAST)
            if total:
                for item in _total(frame, cells[0], str(total)):
                    yield Mark(Layer.FIGURE, item, of)

    def claims(self, grid: Grid) -> Iterator[Claim]:
        for cells, total in self.cages:
            yield Outlined(cells, INSET, firm=True)
            if total:
                yield _room(cells[0], str(total))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((((0, 1), 12),)), CLASSIC, 1, 2)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(_refer(cells, total) for cells, total in self.cages)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Combinations that fit, what every combination holds, all fillings of a cage, and sums over houses."""
        for cells, total in self.cages:
            if total and any(position.masks[cell].bit_count() > 1 for cell in cells):
                yield from _cage_steps(position, cells, total)
        blocks = tuple(Block(cells, total) for cells, total in self.cages if total)
        yield from house_sums.steps(position, blocks, self.kind)


Placed = tuple[Area, int, Place]
"""A cage as typed: its cells, its total (0 for none) and where the total stands."""


def _read(body: Node, grid: Grid, desk: Desk) -> Iterator[Placed]:
    if isinstance(body, Word) and is_picture(body, grid):
        for area in read_letters(body, "the cage", grid, desk) or ():
            yield area, 0, area.place
    elif isinstance(body, Table) and (body.get("picture") or body.get("totals")):
        yield from _drawn(body, grid, desk)
    else:
        items = (body,) if isinstance(body, Table) else read_items(body, "the cage", desk)
        if not items:
            desk.error(body.place, "no-areas", "no cage is listed here", "name one, or leave out the whole entry")
        for item in items:
            cage = _listed(item, grid, desk)
            if cage is not None:
                yield cage


def _drawn(body: Table, grid: Grid, desk: Desk) -> Iterator[Placed]:
    fields = read_fields(body, "a picture of cages", desk, ("picture", "totals"), ("picture",))
    picture = fields.get("picture")
    if picture is None:
        return
    if not isinstance(picture, Word):
        desk.error(picture.place, "not-text", "the picture of cages should be a block of text after “picture: |”")
        return
    areas = read_letters(picture, "the cage", grid, desk)
    if areas is None:
        return
    totals: dict[str, tuple[int, Place]] = {}
    table = fields.get("totals")
    if table is not None:
        letters = tuple(area.letter for area in areas)
        if not isinstance(table, Table):
            text = "the totals should be lines of “letter: total”"
            desk.error(table.place, "not-a-table", text, "or all in one line, in braces: {a: 12, b: 9}")
            return
        for letter, node in table.entries:
            total = read_whole(node, f"the total of cage {letter.value}", desk, 1, 999)
            if letter.value not in letters:
                text = f"there is no cage “{letter.value}” in the picture"
                desk.error(letter.place, "unknown-letter", text, nearest(letter.value, letters))
            elif total is not None:
                totals[letter.value] = total, node.place
    for area in areas:
        total, place = totals.get(area.letter, (0, area.place))
        yield area, total, place


def _listed(item: Node, grid: Grid, desk: Desk) -> Placed | None:
    if not isinstance(item, Table):
        area = read_area(item, "the cage", grid, desk)
        return None if area is None else (area, 0, area.place)
    fields = read_fields(item, "a cage", desk, ("cells", "total"), ("cells",))
    area = read_area(fields["cells"], "the cage", grid, desk) if "cells" in fields else None
    total = read_whole(fields["total"], "the total", desk, 1, 999) if "total" in fields else 0
    if area is None or total is None:
        return None
    return area, total, fields["total"].place if "total" in fields else area.place


def _check(placed: Sequence[Placed], grid: Grid, desk: Desk) -> None:
    """What no cage may be, however it was typed."""
    owner: dict[int, Area] = {}
    for area, total, place in placed:
        name = f"cage {area.letter}" if area.letter else f"the cage at {grid.name(area.cells[0])}"
        pieces = grid.pieces(area.cells)
        if len(pieces) > 1:
            text = f"{name} is in pieces: {grid.name(pieces[1][0])} shares no side with the cells before it"
            hint = "use another letter for another cage" if area.letter else "list it as two cages"
            desk.error(area.place, "cage-split", text, hint)
        taken = next((cell for cell in area.cells if cell in owner), None)
        if taken is not None:
            text = f"{name} overlaps the cage at {grid.name(owner[taken].cells[0])} in {grid.name(taken)}"
            desk.error(area.place, "cages-overlap", text)
        owner.update(dict.fromkeys(area.cells, area))
        count = len(area.cells)
        if count > grid.size:
            text = f"{name} has {counted(count, 'cell')}, but there are only {grid.size} different digits"
            desk.error(area.place, "cage-large", text)
        elif total:
            least, most = different_limits(count, grid.size)
            if not least <= total <= most:
                can = f"adds up to {least} at least and {most} at most" if count > 1 else f"holds 1 to {grid.size}"
                text = f"{name} can't add up to {total}: a cage of {counted(count, 'cell')} {can}"
                desk.error(place, "cage-total", text)


def _dashes(frame: Frame, start: Point, end: Point, pen: float) -> Line:
    """One side of a cage, dashed so that it begins and ends with a whole dash and every corner is closed."""
    (ax, ay), (bx, by) = ((v * frame.cell for v in start), (v * frame.cell for v in end))
    length = hypot(bx - ax, by - ay)
    ux, uy = (bx - ax) / length * pen / 2, (by - ay) / length * pen / 2
    dash = DASH * frame.cell
    period = (length + pen - dash) / max(round((length + pen - dash) / (1.75 * dash)), 1)
    return Line((ax - ux, ay - uy), (bx + ux, by + uy), Stroke(pen, THIN, (dash, period - dash)))


def _room(cell: int, total: str) -> InCell:
    """Where a total may stand: in the cell's top left corner, beside what covers it, or a little further in."""
    boxes = (
        Box(left, top, left + len(total) * FIGURE * height + 0.04, top + height + 0.05) for left, top, height in SPOTS
    )
    return InCell(cell, tuple(boxes))


def _total(frame: Frame, cell: int, total: str) -> Iterator[Item]:
    """The total in its place, the dashes knocked out around it."""
    x, y = frame.corner(cell)
    box = frame.box(_room(cell, total))
    left, top = x + box.left * frame.cell, y + box.top * frame.cell
    height = box.bottom - box.top - 0.05
    size = height * frame.cell / frame.figure
    yield Rect(left, top, (box.right - box.left) * frame.cell, (height + 0.05) * frame.cell, fill=1.0)
    yield Text(left, top + height * frame.cell, total, frame.face(frame.narrow, size), size)


def _cage_steps(position: Position, cells: tuple[int, ...], total: int) -> Iterator[Deduction]:
    masks, mark = position.masks, _refer(cells, total)
    open_to, ways = 0, list[int]()
    for cell in cells:
        open_to |= masks[cell]
    for digits in digit_sets(open_to, len(cells), total):
        if all(masks[cell] & digits for cell in cells):
            ways.append(digits)
    if not ways:
        return
    some = reduce(or_, ways)
    removed = removed_by(position, dict.fromkeys(cells, some))
    if removed:
        gone = tuple(sorted({digit for _, digit in removed}))
        claim = OneCombination(digits_in(some)) if len(ways) == 1 else NoCombination(gone)
        yield Deduction(Rung.SIMPLE, len(cells), cells, removed, mark, claim)
    for digit in digits_in(reduce(and_, ways)):
        out = locked_out(position, cells, digit)
        if out:
            places = tuple(cell for cell in cells if position.may(cell, digit))
            yield Deduction(Rung.PAIR, 2, cells, out, mark, Needed(digit, places))
    if not removed:
        yield from tried_out(position, cells, _adds_up(len(cells), total), mark)


def _refer(cells: tuple[int, ...], total: int) -> MarkRef:
    return MarkRef.at(Cage.kind, cells, str(total) if total else "")


@lru_cache(maxsize=256)
def _adds_up(count: int, total: int) -> Callable[[Sequence[int]], bool]:
    """Digits so far differ, and may still come to the total; all of them do."""

    def fits(digits: Sequence[int]) -> bool:
        left = total - sum(digits)
        return digits[-1] not in digits[:-1] and (left >= count - len(digits) if len(digits) < count else left == 0)

    return fits
