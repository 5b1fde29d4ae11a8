"""Marks between two cells that share a side, and on the corner of four cells. Reading and drawing.

Reading: pairs are typed as runs of two cells (`r1c1-r1c2`), a corner as two cells across it (`r1c1-r2c2`). Drawing:
every mark stands on white, so that the cell line under it is broken and a region line cannot be taken for a part of it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from bookmaker.display.items import Path, Point
from bookmaker.display.shapes import circle
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.deducing.enumeration import APART, Fits, can_be_filled
from bookmaker.rules.common.neighbours import MarkKind, Pair, strings
from bookmaker.rules.common.reading import parts_of
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.source import placed
from bookmaker.source.cells import read_cell, read_rectangle
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Table, Word, read_fields, read_items, read_switch

LEAVE_OUT = "name one, or leave out the whole entry"


@dataclass(frozen=True, slots=True)
class Border:
    """The border between two cells as it was typed: `cells` in the order typed."""

    cells: Pair
    place: Place

    @property
    def pair(self) -> Pair:
        """The two cells in the grid's order."""
        return min(self.cells), max(self.cells)


def read_borders(
    body: Node, what: str, grid: Grid, collector: Collector, none: str = LEAVE_OUT
) -> tuple[Border, ...] | None:
    """One or more different borders; None after any diagnostic. `what` is the mark with its article, `none` the hint
    where none is named."""
    nodes = read_items(body, what, collector)
    if isinstance(body, placed.Sequence) and not nodes:
        collector.error(body.place, "no-marks", f"{what} names no pair of cells", none)
    found: list[Border] = []
    sound = bool(nodes)
    for node in nodes:
        if not isinstance(node, Word):
            collector.error(node.place, "not-a-border", f"{what} should be pairs of cells such as r1c1-r1c2")
            sound = False
            continue
        parts = parts_of(node)
        if not parts:
            collector.error(
                node.place, "no-marks", f"{what} names no pair of cells", "a pair of cells is written r1c1-r1c2"
            )
            sound = False
        for word in parts:
            border = _border(word, what, grid, collector)
            if border is None:
                sound = False
            elif border.pair in (other.pair for other in found):
                text = f"{what} between {cells_listed(grid, border.pair)} is listed twice"
                collector.error(border.place, "mark-twice", text)
                sound = False
            else:
                found.append(border)
    return tuple(found) if sound else None


def read_marks(
    body: Node, what: str, kinds: Mapping[str, MarkKind], grid: Grid, collector: Collector
) -> tuple[Mapping[str, tuple[Pair, ...]], bool] | None:
    """Borders under the name of their mark, and whether all are marked; None after any diagnostic.

    `kinds` has the mark for each name in the manifest (“white”). Where all are marked there may be none at all: then
    that is the rule.
    """
    fields = read_fields(body, what, collector, (*kinds, "all-marked"))
    sound = isinstance(body, Table) and len(fields) == len(body.entries)
    found: dict[Pair, str] = {}
    placed: list[tuple[Border, MarkKind]] = []
    pairs: dict[str, tuple[Pair, ...]] = dict.fromkeys(kinds, ())
    for name, node in fields.items():
        if name == "all-marked":
            continue
        borders = read_borders(node, kinds[name].called, grid, collector)
        sound &= borders is not None
        for border in borders or ():
            if border.pair in found:
                both = f"both {kinds[found[border.pair]].called} and {kinds[name].called}"
                text = f"{both} stand between {cells_listed(grid, border.pair)}"
                collector.error(border.place, "marks-clash", text, "a border can carry only one mark")
                sound = False
            found.setdefault(border.pair, name)
            placed.append((border, kinds[name]))
        pairs[name] = tuple(border.pair for border in borders or ())
    if sound:
        sound = not crowded(placed, grid, collector)
    all_marked = read_switch(fields["all-marked"], "all-marked", collector) if "all-marked" in fields else False
    if sound and not found and all_marked is False:
        hint = "name some, or “all-marked: yes” if there are none anywhere, or leave out the whole entry"
        collector.error(body.place, "no-marks", f"{what} names no pair of cells", hint)
        sound = False
    return (pairs, all_marked) if sound and all_marked is not None else None


def crowded(placed: Sequence[tuple[Border, MarkKind]], grid: Grid, collector: Collector) -> bool:
    """Do marks hang together so that no digits are left for their cells? If so, a diagnostic at the first mark too
    many.

    Strings are looked at one by one; where there is too much to try, they are taken to be sound.
    """
    for cells in strings([border.pair for border, _ in placed]):
        marks = [(border, kind) for border, kind in placed if border.pair[0] in cells]
        if _leaves_room(marks, grid):
            continue
        upto = next(count for count in range(1, len(marks) + 1) if not _leaves_room(marks[:count], grid))
        border, kind = marks[upto - 1]
        between = cells_listed(grid, border.pair)
        if _leaves_room([(border, kind)], grid):
            text = f"with the marks before it, {kind.called} between {between} leaves no digits that fit"
            collector.error(border.place, "marks-clash", text, APART)
        else:
            digits = f"digits from {grid.symbols[0]} to {grid.symbols[-1]}"
            text = f"no two different {digits} fit {kind.called} between {between}"
            collector.error(border.place, "mark-large", text)
        return True
    return False


def _leaves_room(marks: Sequence[tuple[Border, MarkKind]], grid: Grid) -> bool:
    """Can the cells of these marks be filled, each string by itself?"""
    keeps = {border.pair: kind.keeps for border, kind in marks}
    return all(can_be_filled(grid, cells, _joined(grid, cells, keeps)) for cells in strings(list(keeps)))


def _joined(grid: Grid, cells: Sequence[int], keeps: Mapping[Pair, Callable[[int, int], bool]]) -> Fits:
    """Does the last of the digits so far keep every mark between its cell and an earlier one?"""
    earlier = [
        [
            (at, keeps[pair])
            for at, other in enumerate(cells[:last])
            if (pair := (min(cell, other), max(cell, other))) in keeps
        ]
        for last, cell in enumerate(cells)
    ]

    def fits(digits: Sequence[int]) -> bool:
        here = grid.worth(digits[-1])
        return all(kept(grid.worth(digits[at]), here) for at, kept in earlier[len(digits) - 1])

    return fits


def _border(word: Word, what: str, grid: Grid, collector: Collector) -> Border | None:
    ends = _two_cells(word, what, grid, collector)
    if ends is None:
        return None
    one, other = ends
    if other in grid.orthogonal(one):
        return Border((one, other), word.place)
    text = f"{what} can't stand between {cells_listed(grid, (one, other))}, which do not share a side"
    collector.error(word.place, "not-neighbours", text)
    return None


def read_corner(word: Word, what: str, grid: Grid, collector: Collector) -> tuple[int, ...] | None:
    """The four cells around a corner, in the grid's order, from two of them that touch only there."""
    ends = _two_cells(word, what, grid, collector, "r2c3-r3c4")
    if ends is None:
        return None
    one, other = ends
    if grid.touching(one, other) and other not in grid.orthogonal(one):
        return read_rectangle(word, one, other, grid, collector)
    text = f"{what} can't stand between {cells_listed(grid, (one, other))}, which do not touch across a corner"
    collector.error(word.place, "not-a-corner", text, "name two cells that touch only at the corner: r2c3-r3c4")
    return None


def _two_cells(word: Word, what: str, grid: Grid, collector: Collector, such_as: str = "r1c1-r1c2") -> Pair | None:
    """The two cells of `r1c1-r1c2`."""
    first, _, second = word.value.partition("-")
    if word.value.count("-") != 1:
        text = f"{what} stands between two cells, and “{word.value}” is not two"
        collector.error(word.place, "one-of-two", text, f"write the two with a dash between them: {such_as}")
        return None
    one = read_cell(Word(word.place, first), grid, collector)
    other = read_cell(Word(word.at_offset(len(first) + 1), second), grid, collector)
    return None if one is None or other is None else (one, other)


def knock_out(at: Point, radius: float) -> Path:
    """White under a mark, wide enough to part it from the line it stands on."""
    return circle(at, radius, fill=1.0)
