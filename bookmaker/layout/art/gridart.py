"""A grid as vectors: fills, lines, cages, grid lines, border marks, digits, in this order.

In: a puzzle and the size of a cell in points; for a key its solution. Out: items whose origin is the top left corner of
the grid's first cell. Clues outside the grid lie beyond its sides, as far as `outside` says. `gridtold` says what they
are to a reader who does not see them, and adds what figures have besides.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from functools import lru_cache
from itertools import product
from typing import TypeAlias

from bookmaker.display.items import Group, Item, Move, Path, Point, Rect, Straight, Stroke, Text
from bookmaker.language import catalogue
from bookmaker.layout.art.gridletters import beyond, grid_letters
from bookmaker.layout.art.gridtold import candidates_said, grid_told
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules import ruled_marks
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.drawing.frame import Frame, Layer, Margins, Mark

DIGIT = 0.46
"""Height of a digit as a share of its cell: read across a table, with room for marks and pencil around it."""

LARGE_DIGIT = 0.5
"""The same in the largest grids, whose cells are small: they keep digits of 14 points at 7 mm a cell."""

SHADE = 0.88
"""The light ground of cells to look along."""

HALO = 0.1
"""Width of the white stroke around a digit that lines pass under, per em; half of it shows."""


def frame_for(grid: Grid, cell: float) -> Frame:
    """The frame of a grid with cells of this size, in the fonts of the house."""
    return Frame(grid, cell, figure=FontBook().figure_height("sans"))


def outside(puzzle: RuledPuzzle) -> Margins:
    """Room that the clues of all rules claim at each side of the grid, in cells."""
    return beyond(puzzle)


def draw_grid(
    puzzle: RuledPuzzle,
    cell: float,
    name: str,
    solution: Sequence[int] | None = None,
    marks: bool = True,
    position: Position | None = None,
    shaded: Sequence[int] = (),
    weight: float = 1.0,
    said: Mapping[int, str] | None = None,
    language: str = "en",
) -> Group:
    """The grid with its givens; with `solution`, the other digits too, lighter than the givens.

    `marks` off leaves out the rules' marks. `position` pencils its candidates into the empty cells; `shaded` cells
    have a light ground. The grid's own lines are `weight` times as heavy as usual. `said` is what cells say to a reader
    who does not see them, if it is not what they hold; the `language` is theirs.
    """
    frame = frame_for(puzzle.grid, cell)
    art = [*art_of(puzzle, cell, marks, weight)]
    digits = digits_of(puzzle, cell, solution, lines_in(art))
    items: list[Item] = [Rect(*frame.corner(at), cell, cell, fill=SHADE) for at in shaded]
    items += (item for item, _ in art)
    if position is not None:
        said = candidates_said(catalogue(language), puzzle.grid, position)
    told = grid_told(puzzle, cell, items, digits, marks=marks, said=said, language=language)
    pencilled = () if position is None else _candidates(puzzle, frame, position)
    return Group((*told, *pencilled), name=name)


Owner: TypeAlias = tuple[Rule, Mark] | None
"""The mark that an item belongs to and that one's rule; None for lines and digits of the grid."""


def painted(
    puzzle: RuledPuzzle,
    cell: float,
    solution: Sequence[int] | None = None,
    marks: bool = True,
    weight: float = 1.0,
) -> Iterator[tuple[Item, Owner]]:
    """What a grid is drawn with, in this order, from its top left corner, each item with its owner."""
    art = [*art_of(puzzle, cell, marks, weight)]
    yield from art
    yield from ((item, None) for drawn in digits_of(puzzle, cell, solution, lines_in(art)).values() for item in drawn)


def art_of(puzzle: RuledPuzzle, cell: float, marks: bool = True, weight: float = 1.0) -> Iterator[tuple[Item, Owner]]:
    """Everything but the digits."""
    layers = {layer: list[tuple[Rule, Mark]]() for layer in Layer}
    if marks:
        for rule, mark in ruled_marks(puzzle.rules, frame_for(puzzle.grid, cell)):
            layers[mark.layer].append((rule, mark))
    for layer in Layer:
        yield from ((mark.item, (rule, mark)) for rule, mark in layers[layer])
        if layer is Layer.GRID:
            yield from ((item, None) for item in grid_lines(puzzle.grid, cell, weight))
            yield from ((item, None) for item in grid_letters(puzzle, frame_for(puzzle.grid, cell)))


def cell_pen(cell: float) -> Stroke:
    """The pen of the lines between cells; from cells of 6.5 mm on, heavy enough for a copy at 150 dots an inch."""
    return Stroke(min(0.6, max(0.3, cell * 0.028)))


def region_pen(cell: float) -> Stroke:
    """The pen of regions and of the grid's outline, at least three times the weight of the other."""
    return Stroke(min(2.2, max(3 * cell_pen(cell).width, cell * 0.045)), cap="square")


@lru_cache(maxsize=256)
def grid_lines(grid: Grid, cell: float, weight: float = 1.0) -> tuple[Item, ...]:
    """Lines between cells, then region borders, black cells, the outline; of each of several grids that overlap."""
    pen, thin_pen = (replace(pen, width=pen.width * weight) for pen in (region_pen(cell), cell_pen(cell)))
    thin, thick, outlines = list[Stretch](), list[Stretch](), list[Item]()
    for square in grid.squares:
        row, column = square.begins
        side, x, y = square.extent * cell, column * cell, row * cell
        for at in range(1, square.extent):
            upright, level = x + at * cell, y + at * cell
            thin += (((upright, y), (upright, y + side)), ((x, level), (x + side, level)))
        for (x0, y0), (x1, y1) in _runs(set(_walls(square))):
            thick.append(((x + x0 * cell, y + y0 * cell), (x + x1 * cell, y + y1 * cell)))
        outlines += (
            Rect(x + c * cell, y + r * cell, cell, cell, fill=0.0)
            for r, c in product(range(square.extent), repeat=2)
            if not square.inside(r, c)
        )
        outlines.append(Rect(x, y, side, side, Stroke(pen.width)))
    return (_strokes(thin, thin_pen), *([_strokes(thick, pen)] if thick else []), *outlines)


Stretch = tuple[Point, Point]
"""A straight line from one point to another."""


def _strokes(stretches: Sequence[Stretch], pen: Stroke) -> Path:
    return Path(tuple(segment for start, end in stretches for segment in (Move(start), Straight(end))), pen)


Wall = tuple[bool, int, int]
"""A side of a cell between two regions: upright or level, then the line it lies on and how far along."""


def _walls(grid: Grid) -> Iterator[Wall]:
    home, size = grid.region_of, grid.extent
    for line, along in product(range(1, size), range(size)) if home else ():
        for upright in (True, False):
            before, after = ((along, at) if upright else (at, along) for at in (line - 1, line))
            one, other = grid.at(*before), grid.at(*after)
            if one is not None and other is not None and home[one] != home[other]:
                yield upright, line, along


def _runs(walls: set[Wall]) -> Iterator[tuple[tuple[int, int], tuple[int, int]]]:
    """Walls joined into the longest straight stretches, in cells."""
    for upright, line, along in sorted(walls):
        if (upright, line, along - 1) in walls:
            continue
        end = along
        while (upright, line, end) in walls:
            end += 1
        yield ((line, along), (line, end)) if upright else ((along, line), (end, line))


def digit_height(grid: Grid) -> float:
    """Height of a digit of the grid as a share of its cell."""
    return LARGE_DIGIT if grid.size > 16 else DIGIT


@lru_cache(maxsize=4096)
def legible(puzzle: RuledPuzzle, least: float) -> float:
    """The smallest cell at which no figure of the puzzle is set smaller than `least` points."""
    frame = frame_for(puzzle.grid, 1.0)
    marks = (mark.item for _, mark in ruled_marks(puzzle.rules, frame))
    sizes = [digit_height(puzzle.grid) / frame.figure, *(item.size for item in marks if isinstance(item, Text))]
    return least / min(sizes)


def lines_in(art: Iterable[tuple[Item, Owner]]) -> bool:
    """Are there lines that pass under digits?"""
    return any(owner is not None and owner[1].layer in (Layer.LINE, Layer.TUBE) for _, owner in art)


def digits_of(
    puzzle: RuledPuzzle, cell: float, solution: Sequence[int] | None = None, halo: bool = False
) -> dict[int, tuple[Item, ...]]:
    """What is drawn of the digits, in the middle of their cells, by these; with `halo`, lines that pass under them keep
    a little away."""
    art, bold, drawn = _digits(puzzle.grid, cell), solution is not None, dict[int, tuple[Item, ...]]()
    for at, given in enumerate(puzzle.givens):
        if digit := given or (solution[at] if solution else 0):
            drawn[at] = art[at, digit, bold and given > 0, halo]
    return drawn


class _Digits(dict[tuple[int, int, bool, bool], tuple[Item, ...]]):
    """What is drawn of a digit, by its cell and itself, and whether it is bold and has a halo: the same objects in all
    grids of one size, so that what is made of them is found again."""

    def __init__(self, grid: Grid, cell: float) -> None:
        super().__init__()
        self._grid, self._frame = grid, frame_for(grid, cell)

    def __missing__(self, key: tuple[int, int, bool, bool]) -> tuple[Item, ...]:
        at, digit, bold, halo = key
        symbol, high = self._grid.symbol(digit), digit_height(self._grid)
        text = self._frame.figures(self._frame.centre(at), symbol, high, bold)
        under = (Group((_halo(text.text, text.font, text.size),), text.x, text.y),) if halo else ()
        self[key] = drawn = (*under, text)
        return drawn


_digits = lru_cache(maxsize=64)(_Digits)


PENCIL = 0.14, 0.19, 0.72
"""Where pencil marks stand in a cell, as shares of it: from the left, from the top (under a total), and how wide."""


@lru_cache(maxsize=512)
def _halo(symbol: str, font: str, size: float) -> Path:
    """A digit's outline as a broad white stroke, set around the point under its middle."""
    left = FontBook().width(symbol, font, size) / 2
    return Path(FontBook().outline(symbol, font, size, -left), Stroke(HALO * size, 1.0, join="round"))


def _candidates(puzzle: RuledPuzzle, frame: Frame, position: Position) -> Iterator[Item]:
    """Pencil marks: each digit at its own place in the cell, row by row."""
    left, top, wide = PENCIL
    across = 5 if puzzle.grid.size > 16 else 4 if puzzle.grid.size > 9 else 3
    step = wide / across
    for at in puzzle.grid.cells:
        if puzzle.givens[at] or position.placed >> at & 1:
            continue
        x, y = frame.corner(at)
        for digit in puzzle.grid.digits:
            if position.may(at, digit):
                row, column = divmod(digit - 1, across)
                centre = x + (left + (column + 0.5) * step) * frame.cell, y + (top + (row + 0.5) * step) * frame.cell
                yield frame.figures(centre, puzzle.grid.symbol(digit), 0.48 / across)
