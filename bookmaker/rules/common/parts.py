"""A rule's marks one by one, as plain data: what can be taken away, moved, counted, read off a solution, and typed.

`Part`s are what a rule is taken apart into and put together from; `Form` says what sort of thing a part is on the grid,
so that whoever moves, turns or draws marks need not know the kinds. `Written` is a manifest body before it is YAML.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from itertools import pairwise
from typing import Literal, TypeAlias

from bookmaker.puzzle.grid import Grid
from bookmaker.source.diagnostics import Place
from bookmaker.source.placed import Node, Table, Word
from bookmaker.source.placed import Sequence as Items

Written: TypeAlias = "str | list[Written] | dict[str, Written]"
"""A body as a person types it: text, a list, or names with their values."""

Figures: TypeAlias = Literal["", "number", "digits"]


class Form(Enum):
    """What one mark is on the grid."""

    CHAIN = "a line through touching cells, in order"
    AREA = "a set of cells"
    TWINS = "areas of one shape, one after the other"
    BORDER = "two cells that share a side"
    CORNER = "the four cells around a corner"
    CELL = "a single cell"
    EDGE = "cells that a clue outside the grid looks along, from the clue on"
    WHOLE = "the whole grid; there are no marks to tell apart"


@dataclass(frozen=True, slots=True)
class Part:
    """One mark: the cells it speaks of, which of its kind's sorts it is, and the figures written at it.

    `name` is "" where a kind has one sort of mark; else it is the sort's word in the manifest (“white”). `value` is a
    number (a total), or digits; of arrows and clones it is how their cells are divided.
    """

    cells: tuple[int, ...]
    name: str = ""
    value: tuple[int, ...] = ()


def runs(grid: Grid, cells: Sequence[int], slanting: bool = True) -> str:
    """Cells in order as people type them, straight stretches shortened: “r1c1-r1c4 r2c5”. Slanting stretches are only
    where they are longer than two cells, and not at all without `slanting`."""
    told, at = [], 0
    while at < len(cells):
        after = at + 1
        while after < len(cells) and _goes_on(grid, cells[at:after], cells[after]):
            after += 1
        level = after - at > 1 and cells[at + 1] in grid.orthogonal(cells[at])
        if after - at > 1 and not level and (not slanting or after - at == 2):
            after = at + 1
        first, last = grid.name(cells[at]), grid.name(cells[after - 1])
        told.append(first if after - at == 1 else f"{first}-{last}")
        at = after
    return " ".join(told)


def _goes_on(grid: Grid, stretch: Sequence[int], cell: int) -> bool:
    """Does a cell continue a straight stretch?"""
    if not grid.touching(stretch[-1], cell):
        return False
    steps = {(grid.row(b) - grid.row(a), grid.column(b) - grid.column(a)) for a, b in pairwise((*stretch[-2:], cell))}
    return len(steps) == 1


def node_of(written: Written, place: Place) -> Node:
    """A body as the node that a manifest's reader would make of it, everything at one place."""
    match written:
        case str(text):
            return Word(place, text)
        case list(items):
            return Items(place, tuple(node_of(item, place) for item in items))
        case dict(entries):
            return Table(place, tuple((Word(place, key), node_of(value, place)) for key, value in entries.items()))
