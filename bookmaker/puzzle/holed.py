"""Grids with holes: a square in which some places are black and hold nothing.

In: the side of the square, its holes and how many digits there are. Out: a `Holed` grid, in whose rows, columns and
regions, if it has any, there are as many cells as digits, so that each holds every digit once.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

from bookmaker.puzzle.grid import House, HouseRef
from bookmaker.puzzle.placed import Place, Placed


@dataclass(frozen=True)
class Holed(Placed):
    """`side` is that of the square, `size` how many cells its lines have. Made by `holed_grid`."""

    side: int = 0
    holes: frozenset[Place] = frozenset()

    @cached_property
    def places(self) -> tuple[Place, ...]:
        lines = range(self.side)
        return tuple((row, column) for row in lines for column in lines if (row, column) not in self.holes)

    @property
    def height(self) -> int:
        return self.side

    @property
    def width(self) -> int:
        return self.side

    @property
    def shape(self) -> tuple[object, ...]:
        return self.size, self.regions, tuple(sorted(self.holes))

    @property
    def called(self) -> str:
        return "with holes"

    @cached_property
    def rows(self) -> tuple[House, ...]:
        return self._lines("row", 0)

    @cached_property
    def columns(self) -> tuple[House, ...]:
        return self._lines("column", 1)

    def _lines(self, kind: str, which: int) -> tuple[House, ...]:
        lines = [
            tuple(cell for cell, place in enumerate(self.places) if place[which] == line) for line in range(self.side)
        ]
        return tuple(
            House(f"{kind} {number}", cells, HouseRef(kind, number, cells[0]))
            for number, cells in enumerate(lines, start=1)
        )


def holed_grid(size: int, side: int, holes: Iterable[Place]) -> Holed:
    """A grid without regions whose square has these holes. Raises ValueError unless they leave `size` cells in every
    row and column."""
    holes = frozenset(holes)
    for which in (0, 1):
        counts = Counter(place[which] for place in holes)
        if any(counts[line] != side - size for line in range(side)):
            raise ValueError("the holes do not leave every row and column as many cells")
    return Holed(size, (), side=side, holes=holes)
