"""Grids with black cells, from the field `holes`: a picture of the square, with `#` where a cell is black.

In: the field and how many digits there are. Out: a `Holed` grid, without regions; or None after diagnostics at the
picture's rows.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.puzzle.grid import LARGEST
from bookmaker.puzzle.holed import Holed, holed_grid
from bookmaker.puzzle.placed import Place
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Word
from bookmaker.source.textgrid import NO_CELL, Drawn, drawn_in

HINT = (
    f"begin with “holes: |” and draw the square on the lines below, “{NO_CELL}” for a black cell and a dot for others"
)


def read_holes(node: Node, size: int, collector: Collector) -> Holed | None:
    """The grid; None after a diagnostic."""
    if not isinstance(node, Word):
        collector.error(node.place, "not-a-picture", "“holes” should be a picture of the grid", HINT)
        return None
    rows = [row for line, text in enumerate(node.value.splitlines()) if (row := drawn_in(text, line))]
    side = len(rows)
    if uneven := [row for row in rows if len(row) != side]:
        first, *more = (node.at(*row[0][1:]) for row in uneven)
        said = f"the picture of the holes has {side} rows, and this one has {len(uneven[0])} cells"
        collector.error(first, "picture-size", said, HINT, tuple(more))
        return None
    if not size < side <= LARGEST:
        said = f"the picture of the holes has {side} rows; with {size} digits there should be more, up to {LARGEST}"
        collector.error(node.place, "picture-size", said, "say “size:” for another number of digits")
        return None
    if strange := [each for row in rows for each in row if each[0] not in (NO_CELL, ".")]:
        first, *more = (node.at(*each[1:]) for each in strange)
        collector.error(first, "not-a-hole", "this is neither a black cell nor another", HINT, tuple(more))
        return None
    holes = [(row, column) for row, line in enumerate(rows) for column, each in enumerate(line) if each[0] == NO_CELL]
    if _uneven(node, rows, size, holes, collector):
        return None
    return holed_grid(size, side, holes)


def _uneven(
    node: Word, rows: Sequence[Sequence[Drawn]], size: int, holes: Sequence[Place], collector: Collector
) -> bool:
    """Has a line more or fewer cells than there are digits? The first that has is told."""
    for which, name in enumerate(("row", "column")):
        for line in range(len(rows)):
            left = len(rows) - sum(hole[which] == line for hole in holes)
            if left != size:
                drawn = rows[line][0] if which == 0 else rows[0][line]
                said = f"{name} {line + 1} has {left} cells between its holes, and each should have {size}"
                collector.error(node.at(*drawn[1:]), "holes-uneven", said, "as many cells as there are digits")
                return True
    return False
