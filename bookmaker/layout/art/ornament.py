"""Ornament: the pieces of a book's puzzles laid side by side on a field of cells, in the colours of a theme.

In: puzzles, a theme and a field. Out: one group. The same puzzles give the same ornament and other puzzles another one,
for it holds nothing but their marks and digits. How puzzles follow each other and which way round they lie is drawn by
a hash of them; the fullest of a few draws is taken. A piece is drawn whole or not at all, so no field cuts through one
inside the page. Figures are drawn as outlines: they are not to be read, by no reader and by no check.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from hashlib import sha256
from itertools import product
from math import ceil, floor
from random import Random
from typing import NamedTuple

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.colour import Colour, contrast
from bookmaker.display.items import Close, Group, Item, Line, Move, Path, Point, Rect, Segment, Straight, Stroke
from bookmaker.display.shapes import circle, polyline
from bookmaker.layout.art.pieces import BROAD, Cell, Piece, Pieces, Shape, marks_of, pieces_of
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.layout.theme import Palette, Theme
from bookmaker.rules.common.area import loops_around

BOX = 3
"""Cells across a patch that has a ground of its own."""

TUBE, BULB, DISC, RING, SIGN, FIGURE = 0.34, 0.36, 0.2, 0.3, 0.3, 0.52
"""In cells: breadth of a chain, radii of its bulb, of a disc on a border, a ring and a sign; height of a digit."""

DRAWS = 16
"""Ways to lay the puzzles that are compared."""

FILLING = (*BROAD, Shape.TRAIL, Shape.HOUSE)
"""What makes a field full."""

CLEAR = 1.25
"""Least contrast of a mark to its ground: what is fainter is drawn in the next colour."""


@dataclass(frozen=True, slots=True)
class Field:
    """A field of cells, `cell` points wide, whose cell (0, 0) has its corner at the origin. `first` and `last` are the
    cells at its corners; the pieces keep to the cells that are `shown`."""

    cell: float
    first: Cell
    last: Cell
    shown: Callable[[Cell], bool] = lambda cell: True

    @property
    def cells(self) -> Iterator[Cell]:
        """All that are shown, row by row."""
        rows, columns = range(self.first[1], self.last[1] + 1), range(self.first[0], self.last[0] + 1)
        return ((column, row) for row, column in product(rows, columns) if self.shown((column, row)))


@lru_cache(maxsize=2)  # the pages of a book between its parts show all of it or a chapter, again and again
def seed_of(puzzles: tuple[BookPuzzle, ...]) -> bytes:
    """A hash of what the puzzles ask: their givens and their marks."""
    asked = [(puzzle.puzzle.givens, marks_of(puzzle.puzzle)) for puzzle in puzzles]
    return sha256(repr(asked).encode()).digest()


def ornament(
    puzzles: Sequence[BookPuzzle], theme: Theme, palette: Palette, field: Field, name: str = "", salt: str = ""
) -> Group:
    """The field, filled; it paints no ground but for patches of a second tone. `salt` tells apart what is made of the
    same puzzles."""
    painter = _Painter(theme, palette, field)
    seed = seed_of(tuple(puzzles)) + salt.encode()
    order = _in_turn(puzzles, Random(seed.hex()))
    draws = [tuple(_laid(order, field, Random(f"{seed.hex()} {draw}"), painter)) for draw in range(DRAWS)]
    laid = max(draws, key=lambda draw: sum(len(one.piece.cells) for one in draw if one.piece.shape in FILLING))
    items = list(painter.patches()) if theme.pattern == "patchwork" else []
    for one in laid:
        items += painter.tile(one) if theme.pattern == "mosaic" else painter.draw(one.piece, one.turn)
    return Group(tuple(items), name=name)


class _Laid(NamedTuple):
    """A piece where it lies on the field, the turn that its colour has, and the side of its puzzle."""

    piece: Piece
    turn: int
    size: int


def _laid(order: Sequence[BookPuzzle], field: Field, draw: Random, painter: _Painter) -> Iterator[_Laid]:
    """The pieces that lie wholly on the field; figures only where nothing else does."""
    taken: set[Cell] = set()
    for at, (pieces, column, row) in enumerate(_blocks(order, field, draw)):
        for index, piece in enumerate(pieces.all):
            cells = tuple((column + x, row + y) for x, y in piece.cells)
            figure = piece.shape is Shape.FIGURE
            if painter.theme.pattern == "mosaic" and not figure:
                continue
            if all(map(painter.inside, cells)) and not (figure and cells[0] in taken):
                if not figure:
                    taken.update(cells)
                turn = at + (index if piece.shape in (Shape.CHAIN, Shape.TRAIL) else 0)
                yield _Laid(piece._replace(cells=cells), turn, pieces.size)


def _blocks(order: Sequence[BookPuzzle], field: Field, draw: Random) -> Iterator[tuple[Pieces, int, int]]:
    """Puzzles as they lie on the field, turned or mirrored, with the cell of their corner: in rows, each pushed along a
    little."""
    at, row = draw.randrange(len(order)), field.first[1] - draw.randrange(3)
    while row <= field.last[1]:
        column, high = field.first[0] - draw.randrange(5), 0
        while column <= field.last[0]:
            pieces = _turned(pieces_of(order[at % len(order)]), draw.randrange(8))
            yield pieces, column, row
            at, column, high = at + 1, column + pieces.size, max(high, pieces.size)
        row += high


def _in_turn(puzzles: Sequence[BookPuzzle], draw: Random) -> list[BookPuzzle]:
    """The puzzles, those of a kind far from each other, those with much to see first."""
    groups: dict[tuple[str, ...], list[BookPuzzle]] = {}
    for puzzle in puzzles:
        groups.setdefault(tuple(sorted({rule.kind for rule in puzzle.puzzle.rules})), []).append(puzzle)
    stacks = [draw.sample(group, len(group)) for _, group in sorted(groups.items())]
    draw.shuffle(stacks)
    stacks.sort(key=lambda stack: not _rich(stack[0]))
    return [stack[deep] for deep in range(max(map(len, stacks))) for stack in stacks if deep < len(stack)]


def _rich(puzzle: BookPuzzle) -> bool:
    return sum(piece.shape in BROAD for piece in pieces_of(puzzle).all) > 1


@lru_cache(maxsize=256)
def _turned(pieces: Pieces, way: int) -> Pieces:
    """The pieces turned by `way` % 4 quarters, and mirrored from 4 on."""

    def placed(cell: Cell) -> Cell:
        x, y = (pieces.size - 1 - cell[0], cell[1]) if way > 3 else cell
        for _ in range(way % 4):
            x, y = pieces.size - 1 - y, x
        return x, y

    return Pieces(pieces.size, tuple(piece._replace(cells=tuple(map(placed, piece.cells))) for piece in pieces.all))


class _Painter:
    """Draws pieces on a field in a palette."""

    def __init__(self, theme: Theme, palette: Palette, field: Field) -> None:
        self.theme, self.palette, self.field = theme, palette, field
        self.cell = field.cell
        self.pen = max(0.5, 0.06 * field.cell * theme.weight)
        self.inside = lru_cache(maxsize=None)(field.shown)

    def colour(self, turn: int, ground: Colour | None = None) -> Colour:
        """The colour whose turn it is, or the next that stands out from the ground."""
        marks = self.palette.marks
        for step in range(len(marks)):
            found = marks[(turn + step) % len(marks)]
            if contrast(found, self.palette.ground if ground is None else ground) >= CLEAR:
                return found
        return marks[turn % len(marks)]

    def centre(self, cell: Cell) -> Point:
        return (cell[0] + 0.5) * self.cell, (cell[1] + 0.5) * self.cell

    def patches(self) -> Iterator[Item]:
        """Boxes in the second tone, as on a chessboard."""
        for column, row in self.field.cells:
            if (floor(column / BOX) + floor(row / BOX)) % 2:
                yield Rect(column * self.cell, row * self.cell, self.cell, self.cell, fill=self.palette.tone)

    def tile(self, laid: _Laid) -> Iterator[Item]:
        """A square on a given, as large as its digit."""
        side = self.cell * (0.25 + 0.65 * laid.piece.value / laid.size)
        x, y = self.centre(laid.piece.cells[0])
        yield Rect(x - side / 2, y - side / 2, side, side, fill=self.colour(laid.turn))

    def draw(self, piece: Piece, turn: int) -> Iterator[Item]:
        match piece.shape:
            case Shape.CHAIN:
                yield from self._chain(piece, self.colour(turn))
            case Shape.TRAIL:
                yield from self._trail(piece, self.colour(turn))
            case Shape.CAGE:
                yield from self._cage(piece, self.colour(turn))
            case Shape.HATCH:
                yield from self._hatch(piece, self.colour(turn))
            case Shape.DOT:
                yield self._dot(piece, self.colour(turn))
            case Shape.RING:
                yield self._ring(piece, self.colour(turn))
            case Shape.SIGN:
                yield self._sign(piece, self.colour(turn))
            case Shape.HOUSE:
                yield self._house(piece, self.colour(turn))
            case Shape.FIGURE:
                yield self._figure(piece)

    def _chain(self, piece: Piece, colour: Colour) -> Iterator[Item]:
        points = [self.centre(cell) for cell in piece.cells]
        yield polyline(points, Stroke(TUBE * self.cell * self.theme.weight, colour, cap="round", join="round"))
        yield circle(points[0], BULB * self.cell, None, colour)
        yield circle(points[0], BULB * self.cell / 2.2, None, self.palette.ground)

    def _trail(self, piece: Piece, colour: Colour) -> Iterator[Item]:
        points = [self.centre(cell) for cell in piece.cells]
        pen = Stroke(1.5 * self.pen, colour, cap="round", join="round")
        yield polyline(points, pen)
        yield circle(points[0], DISC * self.cell, pen, self.palette.ground)

    def _area(self, piece: Piece, inset: float) -> Path:
        """The edges of the cells together, drawn a little inside."""
        segments: list[Segment] = []
        for corners in loops_around(set(piece.cells), inset):
            first, *others = ((x * self.cell, y * self.cell) for x, y in corners)
            segments += [Move(first), *map(Straight, others), Close()]
        return Path(tuple(segments))

    def _cage(self, piece: Piece, colour: Colour) -> Iterator[Item]:
        dash = self.cell * 0.18
        area = self._area(piece, 0.1)
        yield Path(area.segments, None, self.palette.tone)
        yield Path(area.segments, Stroke(1.3 * self.pen, colour, (dash, 0.8 * dash)))

    def _hatch(self, piece: Piece, colour: Colour) -> Iterator[Item]:
        area = self._area(piece, 0.12)
        xs, ys = [x for x, _ in piece.cells], [y for _, y in piece.cells]
        left, right = min(xs) * self.cell, (max(xs) + 1) * self.cell
        top, bottom = min(ys) * self.cell, (max(ys) + 1) * self.cell
        step, high = self.cell / 3.5, bottom - top
        pen = Stroke(1.2 * self.pen, colour)
        lines = tuple(
            Line((left + at * step, bottom), (left + at * step + high, top), pen)
            for at in range(-ceil(high / step), ceil((right - left) / step))
        )
        yield Group(lines, clip=area)
        yield Path(area.segments, Stroke(1.3 * self.pen, colour))

    def _dot(self, piece: Piece, colour: Colour) -> Item:
        (ax, ay), (bx, by) = self.centre(piece.cells[0]), self.centre(piece.cells[-1])
        at, radius = ((ax + bx) / 2, (ay + by) / 2), DISC * self.cell
        if piece.sort % 2:
            return circle(at, radius, Stroke(1.4 * self.pen, colour), self.palette.ground)
        return circle(at, radius, None, colour)

    def _ring(self, piece: Piece, colour: Colour) -> Item:
        points = [self.centre(cell) for cell in piece.cells]
        x, y = (sum(values) / len(points) for values in zip(*points, strict=True))
        return circle((x, y), RING * self.cell, Stroke(1.8 * self.pen, colour), self.palette.ground)

    def _sign(self, piece: Piece, colour: Colour) -> Item:
        x, y = self.centre(piece.cells[0])
        half = SIGN * self.cell
        if piece.sort % 2:
            return Rect(x - half, y - half, 2 * half, 2 * half, None, colour)
        return circle((x, y), half, None, colour)

    def _house(self, piece: Piece, colour: Colour) -> Item:
        x, y = self.centre(piece.cells[0])
        half, foot = 0.3 * self.cell, y + 0.45 * self.cell
        eaves = foot - self.cell * (0.25 + 0.04 * min(piece.value, 9))
        roof = eaves - 0.28 * self.cell
        corners = [(x - half, foot), (x - half, eaves), (x, roof), (x + half, eaves), (x + half, foot)]
        return polyline(corners, None, colour, closed=True)

    def _figure(self, piece: Piece) -> Item:
        x, y = self.centre(piece.cells[0])
        font, symbol = self.theme.digits, piece.sign
        size = FIGURE * self.cell / FontBook().figure_height(font)
        left = FontBook().width(symbol, font, size) / 2
        outline = Path(FontBook().outline(symbol, font, size, -left), None, self._quiet(piece.cells[0]))
        return Group((outline,), x, y + FIGURE * self.cell / 2)

    def _quiet(self, cell: Cell) -> Colour:
        """Figures are in the tone of the ground that they do not stand on."""
        patched = self.theme.pattern == "patchwork" and (floor(cell[0] / BOX) + floor(cell[1] / BOX)) % 2
        return self.palette.ground if patched else self.palette.tone
