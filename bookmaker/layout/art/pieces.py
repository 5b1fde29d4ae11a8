"""What ornament is made of: the marks of a puzzle as plain shapes on its cells.

In: a puzzle of the book. Out: pieces, in cells: chains, areas, dots, rings, signs, houses and figures, as the rules of
the puzzle say what their marks are (`Rule.form`), so that a new kind needs nothing here. What room the marks leave is
taken by chains of cells that rise by one digit after the other in the puzzle's solution, without saying which; they are
broad where no mark is.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

from bookmaker.book.contents import BookPuzzle
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part


class Shape(Enum):
    """How a piece is drawn."""

    CHAIN = "a line with a bulb at its start"
    TRAIL = "a thin line with a ring at its start"
    CAGE = "an area with a dashed outline"
    HATCH = "an area with slanting lines"
    DOT = "a disc on the border of two cells"
    RING = "a ring around a corner"
    SIGN = "a disc in a cell"
    HOUSE = "a house in a cell"
    FIGURE = "a digit"


Cell = tuple[int, int]
"""Column and row."""


class Piece(NamedTuple):
    """A shape on some cells. `sort` tells pieces of one kind apart, as their rule does; `value` is a digit, written as
    `sign`, or how high a house is."""

    shape: Shape
    cells: tuple[Cell, ...]
    sort: int = 0
    value: int = 0
    sign: str = ""


@dataclass(frozen=True, slots=True)
class Pieces:
    """The pieces of a puzzle and its side in cells."""

    size: int
    all: tuple[Piece, ...]


FORMS = {
    Form.CHAIN: Shape.CHAIN,
    Form.AREA: Shape.CAGE,
    Form.TWINS: Shape.HATCH,
    Form.BORDER: Shape.DOT,
    Form.CORNER: Shape.RING,
    Form.CELL: Shape.SIGN,
    Form.EDGE: Shape.HOUSE,
}

BROAD = (Shape.CHAIN, Shape.CAGE, Shape.HATCH)
"""What takes much room."""

LONGEST = 7
"""Cells of a chain that is made of a solution."""


@lru_cache(maxsize=256)  # those of a whole book would take much room, and an ornament shows a few
def pieces_of(puzzle: BookPuzzle) -> Pieces:
    """A puzzle's pieces; those that go together stand together, the figures last."""
    grid = puzzle.puzzle.grid
    found = marks_of(puzzle.puzzle)
    rising = Shape.TRAIL if any(piece.shape in BROAD for piece in found) else Shape.CHAIN
    taken = {cell for piece in found for cell in piece.cells}
    free = {at for at in grid.cells if (grid.column(at), grid.row(at)) not in taken}
    found += (Piece(rising, _cells(grid, chain)) for chain in _rising(puzzle, free))
    givens = enumerate(puzzle.puzzle.givens)
    found += (
        Piece(Shape.FIGURE, _cells(grid, (at,)), value=digit, sign=grid.symbol(digit)) for at, digit in givens if digit
    )
    return Pieces(grid.extent, tuple(found))


def marks_of(puzzle: RuledPuzzle) -> list[Piece]:
    """The pieces that are its marks."""
    return [piece for rule in puzzle.rules for piece in _of_rule(rule, puzzle.grid)]


def _of_rule(rule: Rule, grid: Grid) -> Iterator[Piece]:
    shape = FORMS.get(rule.form)
    parts = rule.parts(grid) if shape else ()
    sorts = sorted({part.name for part in parts})
    for part in parts:
        for cells in _divided(shape, part, grid):
            value = sum(part.value) if shape is Shape.HOUSE else 0
            assert shape is not None
            yield Piece(shape, _cells(grid, cells), sorts.index(part.name), value)


def _divided(shape: Shape | None, part: Part, grid: Grid) -> Iterable[tuple[int, ...]]:
    """The cells that one piece takes: of twins each, of a clue the first, of a line with branches each."""
    cells = part.cells
    if shape is Shape.HATCH and part.value:
        count = len(cells) // part.value[0]
        return tuple(cells[at : at + count] for at in range(0, len(cells), count))
    if shape is Shape.CHAIN:
        breaks = [at for at in range(1, len(cells)) if not grid.touching(cells[at - 1], cells[at])]
        ends = [0, *breaks, len(cells)]
        return tuple(cells[start:stop] for start, stop in pairwise(ends) if stop - start > 1)
    return (cells[:1],) if shape is Shape.HOUSE else (cells,)


def _cells(grid: Grid, cells: Iterable[int]) -> tuple[Cell, ...]:
    return tuple((grid.column(at), grid.row(at)) for at in cells)


def _rising(puzzle: BookPuzzle, free: set[int]) -> Iterator[tuple[int, ...]]:
    """Chains of free cells that touch whose digits rise by one, the longest that find room beside each other."""
    grid, digits = puzzle.puzzle.grid, puzzle.solution
    if digits is None:
        return
    steps = [[to for to in near if digits[to] == digits[at] + 1] for at, near in enumerate(_beside(grid))]
    longest = [1] * len(steps)
    for at in sorted(grid.cells, key=digits.__getitem__, reverse=True):
        longest[at] += max((longest[to] for to in steps[at]), default=0)
    for length in range(min(LONGEST, grid.size), 2, -1):
        for start in grid.cells:
            if longest[start] >= length and start in free:
                chain = _climb(steps, start, length, free)
                free.difference_update(chain)
                if chain:
                    yield chain


@lru_cache(maxsize=16)
def _beside(grid: Grid) -> tuple[tuple[int, ...], ...]:
    """For each cell those that share a side with it."""
    return tuple(map(grid.orthogonal, grid.cells))


def _climb(steps: Sequence[Sequence[int]], start: int, length: int, free: set[int]) -> tuple[int, ...]:
    """A chain of so many free cells from a start, or nothing; `steps` has the cells to go on to from each."""
    waiting: list[tuple[int, ...]] = [(start,)]
    while waiting:
        chain = waiting.pop()
        if len(chain) == length:
            return chain
        waiting += [(*chain, at) for at in steps[chain[-1]] if at in free]
    return ()
