"""Where the cells of a grid lie on paper: the ruler with which rules draw their marks.

In: the grid and the size of a cell in points. Out: points. The frame's origin is the top left corner of the
grid's top left cell, so a mark outside the grid has negative coordinates or lies beyond `side`.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

from bookmaker.display.items import Item, Point, Text
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.drawing.places import FREE, Box, Chain, InCell, Lane, Places, Seat

SMALL = 7.0
"""Figures of a smaller type size, in points, are bold."""


class Layer(IntEnum):
    """The order in which marks are drawn, first to last. Digits and pencil come after all of them."""

    GROUND = 0
    """Light grounds, no darker than 20 % black: what hatches or outlines them comes later, so that none hides it."""
    FILL = 1
    """Outlines and hatching of areas, and lines that belong under every chain (the diagonals)."""
    TUBE = 2
    """The broad chains, which would hide a thin one: thermometers, and filled rings at the ends of lines."""
    LINE = 3
    """The other chains through cell centres: arrows and their kin."""
    CAGE = 4
    """Outlines inside cells: of cages, of even and odd cells."""
    FIGURE = 5
    """Figures and small signs in cells, on white."""
    GRID = 6
    """Cell lines and region lines: drawn by the layout, never by a rule."""
    WHITE = 7
    """Knock-outs under the marks on borders and corners, so that none reaches into its neighbour."""
    BORDER = 8
    """Marks that sit on cell borders and corners, and outside the grid."""


@dataclass(frozen=True, slots=True)
class Mark:
    """One display item of a rule on its layer.

    `of` is what a person calls the mark that the item belongs to (“the cage at r1c1”); marks that are drawn as one
    shape on purpose have their names together. What is darker than a ground is the shape that must be seen; `part` is
    a part of it that must be seen by itself (“bulb”). How much of it has to be left is said in `bookmaker.sight`; a
    texture is still seen where less is left, and says how much is its `least`.
    """

    layer: Layer
    item: Item
    of: tuple[str, ...]
    part: str = ""
    least: float | None = None


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

    def covering(self, other: Margins) -> Margins:
        """Room for either, each beginning at the grid."""
        return Margins(
            max(self.top, other.top),
            max(self.right, other.right),
            max(self.bottom, other.bottom),
            max(self.left, other.left),
        )


@dataclass(frozen=True, slots=True)
class Frame:
    """`cell` is the side of a cell in points. Fonts are names from `fonts/`; `figure` is a figure's height per em.

    `outset` is the room outside the grid, in cells at each side, that other kinds' clues have taken already: clues
    stand beyond it. `places` are those that a rule's claims were given among the marks of other kinds.
    """

    grid: Grid
    cell: float
    font: str = "sans"
    bold: str = "sans-bold"
    narrow: str = "sans-narrow"
    figure: float = 0.7
    outset: Margins = Margins()
    places: Places = FREE

    @property
    def sides(self) -> Box:
        """The sides of the grid, from the origin, or of the one of several that the marks stand in."""
        row, column = self.grid.begins
        x, y = column * self.cell, row * self.cell
        return Box(x, y, x + self.grid.width * self.cell, y + self.grid.height * self.cell)

    def corner(self, cell: int) -> Point:
        """Top left corner of a cell."""
        row, column = self.grid.place(cell)
        return column * self.cell, row * self.cell

    def centre(self, cell: int) -> Point:
        """Middle of a cell."""
        x, y = self.corner(cell)
        return x + self.cell / 2, y + self.cell / 2

    def between(self, one: int, other: int) -> Point:
        """The point halfway between two cells: the middle of their border, or their shared corner."""
        (ax, ay), (bx, by) = self.centre(one), self.centre(other)
        return (ax + bx) / 2, (ay + by) / 2

    def seat(self, one: int, other: int) -> tuple[Point, float]:
        """Where a mark on the border of two cells has its middle, and how large it may be."""
        (x, y), seat = self.between(one, other), self.places.seats.get((min(one, other), max(one, other)), Seat())
        aside = seat.along * self.cell
        return ((x, y + aside) if abs(one - other) == 1 else (x + aside, y)), seat.scale

    def box(self, claim: InCell) -> Box:
        """The box that a claim in a cell was given, in cells from the cell's top left corner."""
        return self.places.boxes.get(claim, claim.boxes[0])

    def lane(self, chain: Chain) -> Lane:
        """Where a line runs beside others, and how broad it may be."""
        return self.places.lanes.get(chain, Lane())

    def radius(self, cell: int, wished: float) -> float:
        """How far a shape around the middle of a cell reaches, in cells: as wished where no other is there."""
        return self.places.radii.get(cell, wished)

    def inset(self, cells: tuple[int, ...], wished: float) -> float:
        """How far the outline of an area runs inside its edges, in cells: as wished where no other area is there."""
        return self.places.insets.get(cells, wished)

    def ringed(self, one: int, other: int) -> float:
        """Radius of the mark around the corner between two cells, in cells; 0 where there is none."""
        return self.places.ringed.get((min(one, other), max(one, other)), 0.0)

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
