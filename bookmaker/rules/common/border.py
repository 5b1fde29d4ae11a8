"""Marks between two cells that share a side, and on the corner of four cells. Reading, drawing, reasoning.

Reading: pairs are typed as runs of two cells (`r1c1-r1c2`), a corner as two cells across it (`r1c1-r2c2`). Drawing:
every mark stands on white, so that the cell line under it is broken and a region line cannot be taken for a part of it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from bookmaker.display.items import Path, Point
from bookmaker.display.shapes import circle
from bookmaker.placed import Node, Word, read_items
from bookmaker.puzzle.cells import read_cell
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.candidates import digits_in, mask_of, removed_by
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.reading import parts_of
from bookmaker.rules.common.wording import cells_listed, digits_listed
from bookmaker.trouble import Desk, Place

Pair: TypeAlias = tuple[int, int]
"""Two cells that share a side, in the grid's order."""


@dataclass(frozen=True, slots=True)
class Border:
    """The border between two cells as it was typed: `cells` in the order typed."""

    cells: Pair
    place: Place

    @property
    def pair(self) -> Pair:
        """The two cells in the grid's order."""
        return min(self.cells), max(self.cells)


def read_borders(body: Node, what: str, grid: Grid, desk: Desk) -> tuple[Border, ...] | None:
    """One or more different borders; None after any trouble. `what` is the mark with its article."""
    nodes = read_items(body, what, desk)
    found: list[Border] = []
    sound = bool(nodes)
    for node in nodes:
        if not isinstance(node, Word):
            desk.error(node.place, "not-a-border", f"{what} should be pairs of cells such as r1c1-r1c2")
            sound = False
            continue
        parts = parts_of(node)
        if not parts:
            desk.error(node.place, "no-cells", f"{what} names no cells", "a pair of cells is written r1c1-r1c2")
            sound = False
        for word in parts:
            border = _border(word, what, grid, desk)
            if border is None:
                sound = False
            elif border.pair in (other.pair for other in found):
                text = f"{what} between {named(grid, border.pair)} is listed twice"
                desk.error(border.place, "mark-twice", text)
                sound = False
            else:
                found.append(border)
    return tuple(found) if sound else None


def _border(word: Word, what: str, grid: Grid, desk: Desk) -> Border | None:
    ends = _two_cells(word, what, grid, desk)
    if ends is None:
        return None
    one, other = ends
    if other in grid.orthogonal(one):
        return Border((one, other), word.place)
    text = f"{what} can't stand between {named(grid, (one, other))}, which do not share a side"
    desk.error(word.place, "not-neighbours", text)
    return None


def read_corner(word: Word, what: str, grid: Grid, desk: Desk) -> tuple[int, ...] | None:
    """The four cells around a corner, in the grid's order, from two of them that touch only there."""
    ends = _two_cells(word, what, grid, desk)
    if ends is None:
        return None
    one, other = ends
    if grid.touching(one, other) and other not in grid.orthogonal(one):
        rows, columns = (grid.row(one), grid.row(other)), (grid.column(one), grid.column(other))
        return tuple(sorted(grid.cell(row, column) for row in rows for column in columns))
    text = f"{what} can't stand between {named(grid, (one, other))}, which do not touch across a corner"
    desk.error(word.place, "not-a-corner", text, "name two cells that touch only at the corner: r2c3-r3c4")
    return None


def _two_cells(word: Word, what: str, grid: Grid, desk: Desk) -> Pair | None:
    """The two cells of `r1c1-r1c2`."""
    first, dash, second = word.value.partition("-")
    if not dash:
        text = f"{what} stands between two cells, and “{word.value}” is not two"
        desk.error(word.place, "one-of-two", text, "write the two with a dash between them: r1c1-r1c2")
        return None
    one = read_cell(Word(word.place, first), grid, desk)
    other = read_cell(Word(word.at_offset(len(first) + 1), second), grid, desk)
    return None if one is None or other is None else (one, other)


def neighbours(grid: Grid) -> tuple[Pair, ...]:
    """All pairs of cells that share a side, each once."""
    return tuple((cell, other) for cell in grid.cells for other in grid.orthogonal(cell) if cell < other)


def named(grid: Grid, cells: Sequence[int]) -> str:
    """“r1c1 and r1c2”."""
    return cells_listed(grid, cells)


def knock_out(at: Point, radius: float) -> Path:
    """White under a mark, wide enough to part it from the line it stands on."""
    return circle(at, radius, fill=1.0)


def partnerless(
    position: Position, pair: Pair, keeps: Callable[[int, int], bool], mark: str, rung: int = 5
) -> Iterator[Deduction]:
    """The digits of each cell that find no partner in the other; `keeps` says of two digits whether they go together.

    The cells share a side, so they share a row or column, and their digits differ. `mark` begins the words.
    """
    one, other = pair
    for cell, beyond, fits in ((one, other, keeps), (other, one, lambda d, e: keeps(e, d))):
        kept = mask_of(
            d
            for d in digits_in(position.masks[cell])
            if any(d != e and fits(d, e) for e in digits_in(position.masks[beyond]))
        )
        removed = removed_by(position, {cell: kept})
        if removed:
            gone = digits_listed((digit for _, digit in removed), "or")
            name, partner = position.grid.name(cell), position.grid.name(beyond)
            words = f"{mark} leaves no {gone} in {name}, since nothing in {partner} goes with it"
            yield Deduction(rung, 2, pair, removed, words)
