"""The grid: its cells and houses with their names, and the signs of its digits. What is filled in is not its matter.

Cells are whole numbers from 0, row by row from the top left; digits are whole numbers from 1 to the size, whatever
they are written as: a grid knows by which signs it writes them, and what they are worth where marks add them.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cache, cached_property

SYMBOLS = "123456789ABCDEFGHJKLMNPQR"
"""How the digits 1 to 25 are written: without the letters I and O, which look like 1 and 0."""

FROM_ZERO = "0" + SYMBOLS[:-1]
"""How they are written where the first is 0."""

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
"""Signs that may stand in place of digits."""

REGION_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXY"
"""How irregular regions are called, in a text and on the picture beside it."""

SMALLEST, LARGEST = 4, 25
"""Sizes of grid that the project carries."""

USUAL_BOXES = {
    4: (2, 2),
    6: (2, 3),
    8: (2, 4),
    9: (3, 3),
    10: (2, 5),
    12: (3, 4),
    14: (2, 7),
    15: (3, 5),
    16: (4, 4),
    18: (3, 6),
    20: (4, 5),
    21: (3, 7),
    22: (2, 11),
    24: (4, 6),
    25: (5, 5),
}
"""Box height and width that a grid of a size has unless said otherwise."""


@dataclass(frozen=True, slots=True)
class HouseRef:
    """Which house is meant, without words: “row”, “column”, “box”, “region” or the kind of the rule that adds it, and
    its number among those of its kind, from 1. `at` is its first cell; `key` tells houses of one rule apart that are
    called differently."""

    kind: str
    number: int
    at: int
    key: str = ""
    square: str = ""
    """The letter of the grid it belongs to, where several overlap and it may be asked in which."""


@dataclass(frozen=True, slots=True)
class House:
    """Cells that hold different digits. `name` is how a message calls them, such as “row 3” or “the centre box”."""

    name: str
    cells: tuple[int, ...]
    ref: HouseRef


_DOWN = {2: ("top", "bottom"), 3: ("top", "middle", "bottom")}
_ACROSS = {2: ("left", "right"), 3: ("left", "centre", "right")}
"""Where a box lies, by how many there are below each other and side by side."""


@dataclass(frozen=True)
class Grid:
    """A square grid of `size` rows and columns, divided into `regions` of `size` cells each (none: a Latin square).

    `box` is the height and width of the regions where they are rectangles in rank and file, else None. `symbols` are
    the signs of its digits in order, the usual ones where none are said; `first` is what the first of them is worth, 1
    or 0, and None for letters, which are only told apart.
    """

    size: int
    regions: tuple[tuple[int, ...], ...]
    box: tuple[int, int] | None = None
    symbols: str = field(default="", repr=False)
    first: int | None = field(default=1, repr=False)

    def __post_init__(self) -> None:
        if not self.symbols:
            object.__setattr__(self, "symbols", (SYMBOLS if self.first else FROM_ZERO)[: self.size])

    @property
    def lettered(self) -> bool:
        """Do letters stand in place of digits?"""
        return self.first is None

    def symbol(self, digit: int) -> str:
        """How a digit is written."""
        return self.symbols[digit - 1]

    def worth(self, digit: int) -> int:
        """What a digit counts for in a sum."""
        return digit if self.first else digit - 1

    def raised(self, total: int, count: int) -> int:
        """What `count` digits come to by their own numbers if they are worth `total` together."""
        return total if self.first else total + count

    @property
    def called(self) -> str:
        """What the trade calls a puzzle on it: “classic” with boxes, “irregular”, “Latin square” without regions."""
        if self.box:
            return "classic"
        return "irregular" if self.regions else "Latin square"

    @property
    def divided(self) -> str:
        """What it is divided into: “boxes”, “regions” or “none”."""
        return "boxes" if self.box else "regions" if self.regions else "none"

    @property
    def plain(self) -> bool:
        """Is it a square without holes?"""
        return True

    @property
    def overlaps(self) -> bool:
        """Is it made of several that share cells?"""
        return len(self.squares) > 1

    @property
    def cells(self) -> Sequence[int]:
        """Its cells in its order."""
        return range(self.size * self.size)

    @property
    def numbered(self) -> int:
        """How many numbers its cells may have: one more than the greatest."""
        return self.size * self.size

    @property
    def shape(self) -> tuple[object, ...]:
        """What tells its cells and houses from those of other grids."""
        return self.size, self.regions

    @property
    def height(self) -> int:
        """How many rows there are, from the first to the last."""
        return self.size

    @property
    def width(self) -> int:
        """How many columns there are."""
        return self.size

    @property
    def extent(self) -> int:
        """The greater of the two: the side of the square that it fits into."""
        return max(self.height, self.width)

    @property
    def begins(self) -> tuple[int, int]:
        """The row and the column of all that is printed at which it begins."""
        return 0, 0

    def place(self, cell: int) -> tuple[int, int]:
        """Row and column of a cell in all that is printed, from 0."""
        return self.row(cell), self.column(cell)

    def at(self, row: int, column: int) -> int | None:
        """The cell at such a place; None where there is none."""
        return self.cell(row, column) if self.inside(row, column) else None

    def across(self, row: int) -> tuple[int | None, ...]:
        """The cells of a row of all that is printed, None where there is none."""
        return self._printed[row]

    @cached_property
    def _printed(self) -> tuple[tuple[int | None, ...], ...]:
        return tuple(tuple(self.at(row, column) for column in range(self.width)) for row in range(self.height))

    @property
    def squares(self) -> tuple[Grid, ...]:
        """The grids that overlap in it; itself where it is only one."""
        return (self,)

    @property
    def square_letters(self) -> tuple[str, ...]:
        """What these are called; "" where it is only one."""
        return ("",)

    def square(self, letter: str) -> Grid:
        """The grid of this letter; the whole where there is none."""
        return self

    @property
    def digits(self) -> range:
        return range(1, self.size + 1)

    @property
    def all_digits(self) -> int:
        """The set of all digits as a mask: digit d is bit d - 1."""
        return (1 << self.size) - 1

    def row(self, cell: int) -> int:
        """Row of a cell, from 0."""
        return cell // self.size

    def column(self, cell: int) -> int:
        """Column of a cell, from 0."""
        return cell % self.size

    def cell(self, row: int, column: int) -> int:
        """Cell at a row and column, both from 0."""
        return row * self.size + column

    def inside(self, row: int, column: int) -> bool:
        return 0 <= row < self.size and 0 <= column < self.size

    def name(self, cell: int) -> str:
        """“r3c5”, both counted from 1."""
        return f"r{self.row(cell) + 1}c{self.column(cell) + 1}"

    def orthogonal(self, cell: int) -> tuple[int, ...]:
        """Cells that share a side with a cell."""
        row, column = self.row(cell), self.column(cell)
        steps = ((-1, 0), (0, -1), (0, 1), (1, 0))
        return tuple(self.cell(row + r, column + c) for r, c in steps if self.inside(row + r, column + c))

    def touching(self, one: int, other: int) -> bool:
        """Do two different cells share a side or a corner?"""
        down, across = abs(self.row(one) - self.row(other)), abs(self.column(one) - self.column(other))
        return max(down, across) == 1

    def pieces(self, cells: Iterable[int]) -> tuple[tuple[int, ...], ...]:
        """The pieces of a set of cells that hang together by sides, each in the grid's order."""
        left = sorted(cells)
        found = []
        while left:
            piece, edge = {left[0]}, [left[0]]
            while edge:
                near = [cell for cell in self.orthogonal(edge.pop()) if cell in left and cell not in piece]
                piece.update(near)
                edge.extend(near)
            found.append(tuple(sorted(piece)))
            left = [cell for cell in left if cell not in piece]
        return tuple(found)

    @cached_property
    def rows(self) -> tuple[House, ...]:
        n = self.size
        return tuple(
            House(f"row {r + 1}", tuple(range(r * n, r * n + n)), HouseRef("row", r + 1, r * n)) for r in range(n)
        )

    @cached_property
    def columns(self) -> tuple[House, ...]:
        n = self.size
        return tuple(
            House(f"column {c + 1}", tuple(range(c, n * n, n)), HouseRef("column", c + 1, c)) for c in range(n)
        )

    @cached_property
    def region_houses(self) -> tuple[House, ...]:
        kind = "box" if self.box else "region"
        return tuple(
            House(self.region_name(i), cells, HouseRef(kind, i + 1, cells[0])) for i, cells in enumerate(self.regions)
        )

    @cached_property
    def houses(self) -> tuple[House, ...]:
        """Rows, columns, then regions: the houses of the grid itself. Rules may add their own."""
        return self.rows + self.columns + self.region_houses

    @cached_property
    def region_of(self) -> tuple[int, ...]:
        """Index of the region of each cell; empty where there are no regions."""
        home = {cell: index for index, cells in enumerate(self.regions) for cell in cells}
        return tuple(home[cell] for cell in self.cells) if self.regions else ()

    @cached_property
    def groupings(self) -> tuple[tuple[int, ...], ...]:
        """By rows, by columns and, if there are any, by regions: for each cell the number of one that holds it, from 0,
        among all of them. Where grids overlap, cells of one number share a line, but not the other way round."""
        found = []
        for houses in filter(None, (self.rows, self.columns, self.region_houses)):
            home = {cell: index for index, house in enumerate(houses) for cell in house.cells}
            found.append(tuple(home.get(cell, -1) for cell in range(self.numbered)))
        return tuple(found)

    def region_name(self, index: int) -> str:
        """“the top left box” where the boxes stand in two or three rows and columns; else by its first cell, since no
        number is printed in it: “the box of r1c5”, “the region of r1c5”."""
        first = self.name(self.regions[index][0])
        if self.box is None:
            return f"the region of {first}"
        rows, columns = self.size // self.box[0], self.size // self.box[1]
        if rows not in _DOWN or columns not in _ACROSS:
            return f"the box of {first}"
        down, across = _DOWN[rows][index // columns], _ACROSS[columns][index % columns]
        return "the centre box" if (down, across) == ("middle", "centre") else f"the {down} {across} box"


@cache
def boxed_grid(size: int, height: int, width: int) -> Grid:
    """A grid whose regions are boxes of `height` rows and `width` columns; raises ValueError where they don't fit."""
    if height * width != size or size % height or size % width:
        raise ValueError(f"boxes of {height}x{width} do not fill a {size}x{size} grid")
    regions = tuple(
        tuple((top + r) * size + left + c for r in range(height) for c in range(width))
        for top in range(0, size, height)
        for left in range(0, size, width)
    )
    return Grid(size, regions, (height, width))


def irregular_grid(size: int, labels: Sequence[object]) -> Grid:
    """A grid from one region label a cell; raises ValueError unless there are `size` regions of `size` cells."""
    groups: dict[object, list[int]] = {}
    for cell, label in enumerate(labels):
        groups.setdefault(label, []).append(cell)
    if len(groups) != size or any(len(cells) != size for cells in groups.values()):
        raise ValueError("regions of the wrong size")
    return Grid(size, tuple(tuple(cells) for cells in groups.values()))


CLASSIC = boxed_grid(9, 3, 3)
"""The everyday grid: 9×9 with 3×3 boxes."""
