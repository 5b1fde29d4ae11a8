"""Grids that share boxes: one puzzle on all of them, and each of them by itself.

In: the size and boxes that all have, and where the top left corner of each lies. Out: an `Overlapping`, which numbers
the cells of all grids from 0, row by row over the whole figure; and in it, as `Square`, each grid with its own rows,
columns and boxes, whose cells keep the numbers they have in the whole. So what is said of cells by number holds in
both, and a rule for one grid is told that grid.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import combinations

from bookmaker.puzzle.grid import Grid, House, HouseRef, boxed_grid
from bookmaker.puzzle.placed import Place, Placed

LETTERS = "ABCDE"
"""What the grids are called, in the order of their corners."""

Corner = Place
"""Row and column of a grid's top left cell in the whole, from 0."""


@dataclass(frozen=True)
class Overlapping(Placed):
    """`corners` are those of its grids, all of one size and with the same boxes, `regions` all their boxes, each once.
    Made by `overlapping_grids`."""

    corners: tuple[Corner, ...] = ()

    @cached_property
    def places(self) -> tuple[Place, ...]:
        return tuple(
            sorted(
                {
                    (top + row, left + column)
                    for top, left in self.corners
                    for row in range(self.size)
                    for column in range(self.size)
                }
            )
        )

    @property
    def shape(self) -> tuple[object, ...]:
        return self.size, self.regions, self.corners

    @cached_property
    def height(self) -> int:
        return max(top for top, _ in self.corners) + self.size

    @cached_property
    def width(self) -> int:
        return max(left for _, left in self.corners) + self.size

    @property
    def called(self) -> str:
        return "overlapping"

    @cached_property
    def squares(self) -> tuple[Grid, ...]:
        assert self.box
        plain = boxed_grid(self.size, *self.box)
        squares = []
        for letter, (top, left) in zip(self.square_letters, self.corners, strict=True):
            numbers = tuple(self.cell(top + plain.row(cell), left + plain.column(cell)) for cell in plain.cells)
            regions = tuple(tuple(numbers[cell] for cell in region) for region in plain.regions)
            squares.append(Square(self.size, regions, self.box, self.symbols, self.first, self, letter, (top, left)))
        return tuple(squares)

    @property
    def square_letters(self) -> tuple[str, ...]:
        return tuple(LETTERS[: len(self.corners)])

    def square(self, letter: str) -> Grid:
        return self.squares[LETTERS.index(letter)] if letter else self

    @cached_property
    def rows(self) -> tuple[House, ...]:
        return tuple(house for square in self.squares for house in square.rows)

    @cached_property
    def columns(self) -> tuple[House, ...]:
        return tuple(house for square in self.squares for house in square.columns)

    def region_name(self, index: int) -> str:
        return f"the box of {self.name(self.regions[index][0])}"


@dataclass(frozen=True)
class Square(Grid):
    """One grid of `whole`. Rows and columns are counted from its own corner, which lies at `corner` of the whole, but
    called as in the whole: that is how they are printed."""

    whole: Overlapping = field(default=None, repr=False)  # type: ignore[assignment]  # always given
    letter: str = ""
    corner: Corner = (0, 0)

    @cached_property
    def cells(self) -> Sequence[int]:
        top, left = self.corner
        return tuple(
            self.whole.cell(top + row, left + column) for row in range(self.size) for column in range(self.size)
        )

    @property
    def numbered(self) -> int:
        return self.whole.numbered

    @property
    def shape(self) -> tuple[object, ...]:
        return *self.whole.shape, self.letter

    def row(self, cell: int) -> int:
        return self.whole.row(cell) - self.corner[0]

    def column(self, cell: int) -> int:
        return self.whole.column(cell) - self.corner[1]

    def cell(self, row: int, column: int) -> int:
        return self.whole.cell(row + self.corner[0], column + self.corner[1])

    def name(self, cell: int) -> str:
        return self.whole.name(cell)

    @property
    def begins(self) -> Place:
        return self.corner

    def place(self, cell: int) -> Place:
        return self.whole.place(cell)

    def at(self, row: int, column: int) -> int | None:
        own = self.inside(row - self.corner[0], column - self.corner[1])
        return self.whole.at(row, column) if own else None

    @cached_property
    def rows(self) -> tuple[House, ...]:
        return self._lines("row", self.corner[0], [self.cells[at : at + self.size] for at in self._starts])

    @cached_property
    def columns(self) -> tuple[House, ...]:
        return self._lines("column", self.corner[1], [self.cells[at :: self.size] for at in range(self.size)])

    @property
    def _starts(self) -> range:
        return range(0, self.size * self.size, self.size)

    def _lines(self, kind: str, before: int, lines: Sequence[Sequence[int]]) -> tuple[House, ...]:
        return tuple(
            House(
                f"{kind} {number} of grid {self.letter}",
                tuple(cells),
                HouseRef(kind, number, cells[0], square=self.letter),
            )
            for number, cells in enumerate(lines, start=before + 1)
        )

    @cached_property
    def region_houses(self) -> tuple[House, ...]:
        shared = {house.cells: house for house in self.whole.region_houses}
        return tuple(shared[cells] for cells in self.regions)

    @cached_property
    def region_of(self) -> tuple[int, ...]:
        """Index of the region of each cell of the whole; −1 for cells of other grids."""
        home = {cell: index for index, cells in enumerate(self.regions) for cell in cells}
        return tuple(home.get(cell, -1) for cell in self.whole.cells)

    def region_name(self, index: int) -> str:
        return self.whole.region_name(self.whole.regions.index(self.regions[index]))


def overlapping_grids(size: int, box: tuple[int, int], corners: Sequence[Corner]) -> Overlapping:
    """The grids with these top left corners, counted from the first row and column that one of them has.

    Raises ValueError where they do not share whole boxes, where cells touch by a side that share no grid, or where one
    of the grids shares no box.
    """
    top, left = min(row for row, _ in corners), min(column for _, column in corners)
    at = sorted((row - top, column - left) for row, column in corners)
    for (r1, c1), (r2, c2) in combinations(at, 2):
        down, across = abs(r1 - r2), abs(c1 - c2)
        if down % box[0] or across % box[1]:
            raise ValueError("the grids do not share whole boxes")
        if not down and not across:
            raise ValueError("two of the grids lie on each other")
    joined, left_over = {at[0]}, set(at[1:])
    while near := {one for one in left_over if any(_share(one, other, size) for other in joined)}:
        joined |= near
        left_over -= near
    if left_over or len(at) < 2:
        raise ValueError("the grids do not hang together")
    plain = Overlapping(size, (), box, corners=tuple(at))
    boxes = {
        tuple(plain.cell(row + r, column + c) for r in range(box[0]) for c in range(box[1]))
        for row_0, column_0 in at
        for row in range(row_0, row_0 + size, box[0])
        for column in range(column_0, column_0 + size, box[1])
    }
    made = Overlapping(size, tuple(sorted(boxes)), box, corners=tuple(at))
    homes = [{square for square in made.squares if cell in square.cells} for cell in made.cells]
    if not all(homes[cell] & homes[other] for cell in made.cells for other in made.orthogonal(cell)):
        raise ValueError("cells of two grids touch that share no grid")
    return made


def _share(one: Corner, other: Corner, size: int) -> bool:
    return max(abs(one[0] - other[0]), abs(one[1] - other[1])) < size
