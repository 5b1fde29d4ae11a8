"""Clues outside the grid that look at the nearest few cells of their line, as many as the nearest box has there.

In: a table of sides as in `outside.py`, and `cells`, where the number of cells is another. Out: a rule that knows
which cells each clue looks at.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from random import Random
from typing import ClassVar, Self

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.clue import Clue, Placed
from bookmaker.rules.common.outside import OutsideRule, read_clues
from bookmaker.rules.common.parts import Part, Written
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, read_switch, read_whole

WITHOUT_BOXES = 3
"""How many cells are looked at in a grid without boxes."""


def usually_near(grid: Grid) -> tuple[int, int]:
    """How many cells the nearest box has in a row and in a column."""
    down, across = grid.box or (min(WITHOUT_BOXES, grid.size - 1),) * 2
    return across, down


@dataclass(frozen=True)
class NearRule(OutsideRule):
    """`in_row` and `in_column` are how many cells are looked at."""

    typed = ("left: text, right: text, top: text, bottom: text, cells: whole",)
    fewest: ClassVar[int] = 1
    """The least number of cells that may be asked for."""

    in_row: int = 3
    in_column: int = 3

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        already = len(collector.found)
        across, down = cls.usually(grid)
        entries = body.entries if isinstance(body, Table) else ()
        table = {key.value: node for key, node in entries}
        if "cells" in table:
            said = read_whole(table["cells"], "the number of cells", collector, cls.fewest, grid.size - 1)
            down = across = said or across
        switched = {name: read_switch(table[name], name, collector) for name in cls.options if name in table}
        placed: Placed | None = {}
        # Where all are marked there may be no mark at all: then nothing but switches is typed.
        if not any(switched.values()) or table.keys() - {"cells", *cls.options}:
            read_value = partial(cls.read_clue, grid=grid, collector=collector)
            placed = read_clues(body, cls.kind, grid, collector, read_value, ("cells", *cls.options))
        if placed is None or len(collector.found) > already:
            return None
        rule = cls(tuple(placed), across, down).with_options({name: bool(on) for name, on in switched.items()})
        rule.check(placed, grid, collector)
        return rule if len(collector.found) == already else None

    def check(self, placed: Placed, grid: Grid, collector: Collector) -> None:
        """Report clues that can't be true, alone or together, where a kind can tell."""
        return

    def seen(self, clue: Clue) -> int:
        """How many cells a clue looks at."""
        return self.in_row if clue.along_row else self.in_column

    def near(self, clue: Clue, grid: Grid) -> tuple[int, ...]:
        """The cells that it looks at, the nearest first."""
        return clue.cells(grid)[: self.seen(clue)]

    @classmethod
    def usually(cls, grid: Grid) -> tuple[int, int]:
        """How many cells are looked at in a row and in a column where nothing is said."""
        return usually_near(grid)

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls((), *cls.usually(grid))

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """What is true of the nearest cells."""
        seen = self.in_row if grid.row(cells[0]) == grid.row(cells[1]) else self.in_column
        values = self.values_on([digits[cell] for cell in cells[:seen]], grid)
        return (Part(tuple(cells), "", (value,)) for value in values)

    def written(self, grid: Grid) -> Written:
        body = super().written(grid)
        assert isinstance(body, dict)
        said = {} if (self.in_row, self.in_column) == self.usually(grid) else {"cells": str(self.in_row)}
        return said | body | self.said_options()
