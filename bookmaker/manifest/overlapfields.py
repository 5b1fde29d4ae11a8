"""Grids that overlap, from the field `grids`, the top left cell of each, counted over the whole figure.

In: the field. Out: an `Overlapping` grid; or None after diagnostics at the corners.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import combinations

from bookmaker.puzzle.grid import LARGEST, Grid
from bookmaker.puzzle.overlapping import LETTERS, Corner, overlapping_grids
from bookmaker.rules.common.contract import Rule
from bookmaker.source.cells import read_placed_cells
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Word

HINT = "such as “grids: r1c1 r1c13 r7c7 r13c1 r13c13”, the top left cell of each grid, counted over all of them"

CORNERS = re.compile(r"[rR][0-9]+[cC][0-9]+(?:[\s,;]+[rR][0-9]+[cC][0-9]+)+")
"""Corners as they are typed."""


def read_overlap(node: Node, size: int, box: tuple[int, int] | None, collector: Collector) -> Grid | None:
    """The grids of `size` with these boxes; None after a diagnostic."""
    if box is None:
        said = "grids that overlap share boxes, and these have none"
        collector.error(node.place, "grids-boxes", said, "leave out “grids”, or say the shape of their boxes")
        return None
    wide = Grid(LARGEST, ())
    if not isinstance(node, Word):
        collector.error(node.place, "not-cells", "“grids” should be one line of cells", HINT)
        return None
    cells = read_placed_cells(node, wide, collector)
    if not cells:
        return None
    if not 2 <= len(cells) <= len(LETTERS):
        corners_named = f"{len(cells)} corner{'s' if len(cells) > 1 else ''}"
        said = f"“grids” names {corners_named}, and 2 to {len(LETTERS)} grids can overlap"
        collector.error(node.place, "grids-count", said, HINT)
        return None
    corners = [(wide.row(cell), wide.column(cell)) for cell, _ in cells]
    places = [place for _, place in cells]
    if _mistaken(corners, places, size, box, collector):
        return None
    try:
        return overlapping_grids(size, box, corners)
    except ValueError as mistake:
        collector.error(node.place, "grids-apart", str(mistake), HINT)
        return None


def _mistaken(
    corners: Sequence[Corner], places: Sequence[Place], size: int, box: tuple[int, int], collector: Collector
) -> bool:
    """Is something wrong that is told at the corner of one grid?"""
    tall, wide = max(row for row, _ in corners) + size, max(column for _, column in corners) + size
    if max(tall, wide) > LARGEST:
        said = f"these grids take {tall} rows and {wide} columns; up to {LARGEST} of each can be printed"
        collector.error(places[0], "grids-large", said, HINT, tuple(places[1:]))
        return True
    if min(row for row, _ in corners) or min(column for _, column in corners):
        said = "one of the grids should begin in row 1, and one in column 1"
        collector.error(places[0], "grids-begin", said, HINT, tuple(places[1:]))
        return True
    for (one, (r1, c1)), (other, (r2, c2)) in combinations(enumerate(corners), 2):
        down, across = abs(r1 - r2), abs(c1 - c2)
        if not down and not across:
            said, hint = "two grids have the same corner", "leave out one of them"
        elif down % box[0] or across % box[1]:
            said = "these two grids do not share whole boxes"
            hint = f"move one by {box[0]} rows or {box[1]} columns at a time"
        else:
            continue
        collector.error(places[other], "grids-clash", said, hint, (places[one],))
        return True
    return False


def check_clues_free(rule: Rule, grid: Grid, square: str, place: Place, collector: Collector) -> None:
    """A diagnostic where clues of one grid would stand in cells of another; `place` is that of the rule."""
    held = grid.square(square)
    cells = []
    for part in rule.parts(held):
        (row, column), (r, c) = map(grid.place, part.cells[:2])
        beside = 2 * row - r, 2 * column - c
        if grid.inside(*beside):
            cells.append(grid.cell(*beside))
    if cells:
        names = ", ".join(grid.name(cell) for cell in sorted(set(cells)))
        said = f"clues of grid {square} would stand in cells of another grid: {names}"
        collector.error(place, "clue-in-cell", said, "leave these out with a dot; marks in the cells say the same")
