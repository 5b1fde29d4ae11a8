"""Marks on single cells, listed by name: which cells are even and which odd, which greater and which smaller.

In: a manifest table of names and cells. Out: for each name its cells with their places, or diagnostics.
"""

from __future__ import annotations

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.reading import parts_of
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Table, Word, read_fields, read_items


def read_cell_marks(
    body: Node, what: str, names: tuple[str, ...], grid: Grid, collector: Collector
) -> dict[str, list[tuple[int, Place]]] | None:
    """The cells under each of the names, every cell once; None after any diagnostic."""
    fields = read_fields(body, what, collector, names)
    sound = isinstance(body, Table) and len(fields) == len(body.entries)
    found: dict[str, list[tuple[int, Place]]] = {name: [] for name in names}
    home: dict[int, str] = {}
    for name, node in fields.items():
        for item in read_items(node, name, collector):
            if not isinstance(item, Word):
                collector.error(item.place, "not-cells", f"{name} should be cells such as r1c1 r2c4-r2c6")
                sound = False
                continue
            for part in parts_of(item) or (item,):
                cells = read_cells(part, grid, collector)
                sound &= cells is not None
                for cell in cells or ():
                    if cell in home:
                        both = f"listed twice as {name}" if home[cell] == name else f"both {home[cell]} and {name}"
                        code = "mark-twice" if home[cell] == name else "marks-clash"
                        collector.error(part.place, code, f"{grid.name(cell)} is {both}")
                        sound = False
                    else:
                        home[cell] = name
                        found[name].append((cell, part.place))
    if sound and not home:
        collector.error(body.place, "no-marks", f"{what} names no cell", "name some, or leave out the whole entry")
        sound = False
    return found if sound else None
