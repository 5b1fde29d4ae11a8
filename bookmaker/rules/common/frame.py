"""Where the cells of a grid lie on paper: the ruler with which rules draw their marks.

In: the grid and the size of a cell in points. Out: points. The frame's origin is the top left corner of the
grid's top left cell, so a mark outside the grid has negative coordinates or lies beyond `side`.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

from bookmaker.display.items import Item, Point, Text
from bookmaker.puzzle.grid import Grid

SMALL = 7.0
"""Figures of a smaller type size, in points, are bold."""


class Layer(IntEnum):
    """The order in which marks are drawn, first to last. Digits and pencil come after all of them."""

    FILL = 0
    """Light areas, no darker than 20 % black, and lines that belong under every chain (the diagonals)."""
    LINE = 1
    """Chains through cell centres: thermometers, arrows and their kin."""
    CAGE = 2
    """Dashed outlines inside cells, with their totals."""
    GRID = 3
    """Cell lines and region lines: drawn by the layout, never by a rule."""
    BORDER = 4
    """Marks that sit on cell borders and corners, and outside the grid."""


@dataclass(frozen=True, slots=True)
class Mark:
    """One display item of a rule on its layer."""

    layer: Layer
    item: Item


@dataclass(frozen=True, slots=True)
class Margins:
    """Room that clues outside the grid claim, in cells (1.0 is one cell), at each side."""

    top: float = 0.0
    right: float = 0.0
    bottom: float = 0.0
    left: float = 0.0

    def __add__(self, other: Margins) -> Margins:
        """Room for both, one beyond the other."""
        return Margins(
            self.top + other.top, self.right + other.right, self.bottom + other.bottom, self.left + other.left
        )


@dataclass(frozen=True, slots=True)
class Frame:
    """`cell` is the side of a cell in points. Fonts are names from `fonts/`; `figure` is a figure's height per em.

    `outset` is the room outside the grid, in cells at each side, that other kinds' clues have taken already: clues
    stand beyond it. `corners` are the cells whose top left corner lies under a mark of some kind.
    """

    grid: Grid
    cell: float
    font: str = "sans"
    bold: str = "sans-bold"
    narrow: str = "sans-narrow"
    figure: float = 0.7
    outset: Margins = Margins()
    corners: frozenset[int] = frozenset()

    @property
    def side(self) -> float:
        """Side of the whole grid in points."""
        return self.cell * self.grid.size

    def corner(self, cell: int) -> Point:
        """Top left corner of a cell."""
        return self.grid.column(cell) * self.cell, self.grid.row(cell) * self.cell

    def centre(self, cell: int) -> Point:
        """Middle of a cell."""
        x, y = self.corner(cell)
        return x + self.cell / 2, y + self.cell / 2

    def between(self, one: int, other: int) -> Point:
        """The point halfway between two cells: the middle of their border, or their shared corner."""
        (ax, ay), (bx, by) = self.centre(one), self.centre(other)
        return (ax + bx) / 2, (ay + by) / 2

    def thin(self) -> float:
        """Width in points of the thinnest stroke a mark may have at this cell size."""
        return max(0.4, min(0.5, self.cell * 0.028), self.cell * 0.02)

    def figures(
        self, at: Point, text: str, height: float, bold: bool = False, font: str = "", mark: bool = False
    ) -> Text:
        """Figures centred on a point by their own height, `height` being a share of the cell's side; those of a `mark`
        have the `face` that their size asks for."""
        size = height * self.cell / self.figure
        x, y = at
        plain = font or (self.bold if bold else self.font)
        face = self.face(plain, size) if mark else plain
        return Text(x, y + height * self.cell / 2, text, face, size, anchor="middle")

    def face(self, font: str, size: float) -> str:
        """The font, or its bold one for figures so small that a copy would lose their stems."""
        return f"{font}-bold" if size < SMALL and not font.endswith("-bold") else font
