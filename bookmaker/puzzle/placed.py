"""Grids that do not fill a square: their cells are those at certain places, numbered from 0, row by row.

In: what a grid is made of. Out: the places of its cells, by which everything else of a grid is found.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from bookmaker.puzzle.grid import Grid

Place = tuple[int, int]
"""A row and a column, from 0."""


@dataclass(frozen=True)
class Placed(Grid):
    """A kind of grid says which `places` its cells have, in the order of their numbers, and how high and wide it is."""

    @property
    @abstractmethod
    def places(self) -> tuple[Place, ...]:
        """The place of each cell, sorted."""

    @cached_property
    def _numbers(self) -> Mapping[Place, int]:
        return {place: cell for cell, place in enumerate(self.places)}

    @property
    def plain(self) -> bool:
        return False

    @cached_property
    def cells(self) -> Sequence[int]:
        return range(len(self.places))

    @property
    def numbered(self) -> int:
        return len(self.places)

    def row(self, cell: int) -> int:
        return self.places[cell][0]

    def column(self, cell: int) -> int:
        return self.places[cell][1]

    def cell(self, row: int, column: int) -> int:
        return self._numbers[row, column]

    def inside(self, row: int, column: int) -> bool:
        return (row, column) in self._numbers
