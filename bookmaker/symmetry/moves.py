"""Moves: what may be done to a puzzle that leaves it the same puzzle.

A move sends each cell to a cell and each digit to a digit. Cells move with their whole row and their whole column, and
rows may become columns; digits are renamed, all alike, in the whole grid.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache

from bookmaker.language import catalogue
from bookmaker.puzzle.grid import SYMBOLS, Grid

Turn = Callable[[int, int, int], tuple[int, int]]
"""New row and column of a row and column on a grid of a size."""

TURNS: dict[str, Turn] = {
    "half": lambda r, c, n: (n - 1 - r, n - 1 - c),
    "left-right": lambda r, c, n: (r, n - 1 - c),
    "top-bottom": lambda r, c, n: (n - 1 - r, c),
    "falling": lambda r, c, n: (c, r),
    "rising": lambda r, c, n: (n - 1 - c, n - 1 - r),
    "quarter": lambda r, c, n: (c, n - 1 - r),
}
"""The symmetries of a square: a half turn, reflections from side to side and in a diagonal, named by which way that
runs from the left, and a quarter turn, which stands for both directions. `phrases` has their words."""

EIGHT: dict[str, Turn] = {
    "": lambda r, c, n: (r, c),
    **{name: turn for name, turn in TURNS.items() if name != "quarter"},
    "quarter-right": TURNS["quarter"],
    "quarter-left": lambda r, c, n: (n - 1 - c, r),
}
"""All eight ways to lay a square on itself; the first leaves it as it is."""


@cache
def turned_cells(turn: Turn, size: int) -> tuple[int, ...]:
    """The image of each cell under a turn."""
    turned = (turn(row, column, size) for row in range(size) for column in range(size))
    return tuple(row * size + column for row, column in turned)


@cache
def turned_onto_itself(turn: Turn, grid: Grid) -> tuple[int, ...] | None:
    """The same on any grid; None where grids overlap and the turn does not lay them on themselves."""
    if grid.plain:
        return turned_cells(turn, grid.size)
    places = [turn(grid.row(cell), grid.column(cell), max(grid.height, grid.width)) for cell in grid.cells]
    top, left = min(row for row, _ in places), min(column for _, column in places)
    there = [(row - top, column - left) for row, column in places]
    if not all(grid.inside(*place) for place in there):
        return None
    images = tuple(grid.cell(*place) for place in there)
    squares = {frozenset(square.cells) for square in grid.squares}
    return images if {frozenset(images[cell] for cell in cells) for cells in squares} == squares else None


def unmoved_digits(size: int) -> tuple[int, ...]:
    """Each digit its own image; member 0, the empty cell, as always."""
    return tuple(range(size + 1))


def reversed_digits(size: int) -> tuple[int, ...]:
    """Digits counted from the other end: d becomes size + 1 − d."""
    return (0, *range(size, 0, -1))


@dataclass(frozen=True, slots=True)
class Move:
    """`cells[c]` is the image of cell c, `digits[d]` that of digit d (member 0 is 0). `turned` is the turn of `EIGHT`
    that the cells make, where grids overlap and it cannot be told from the numbers of the cells alone."""

    cells: tuple[int, ...]
    digits: tuple[int, ...]
    turned: str | None = None

    @property
    def size(self) -> int:
        return len(self.digits) - 1

    @property
    def turn(self) -> str | None:
        """The turn of `EIGHT` that the cells make, "" where they stay; None where rows or columns change places."""
        if self.turned is not None:
            return self.turned
        return next((name for name, turn in EIGHT.items() if turned_cells(turn, self.size) == self.cells), None)

    @property
    def crossed(self) -> bool:
        """Do rows become columns?"""
        return self.cells[0] // self.size != self.cells[1] // self.size

    def lines(self, rows: bool) -> tuple[int, ...]:
        """The image of each row, or else of each column, from 0: a column's number where rows become columns."""
        n = self.size
        firsts = (self.cells[i * n] if rows else self.cells[i] for i in range(n))
        return tuple(cell // n if rows is not self.crossed else cell % n for cell in firsts)

    def apply(self, digits: Sequence[int]) -> tuple[int, ...]:
        """A grid's digits, 0 for an empty cell, after the move."""
        moved = [0] * len(self.cells)
        for cell, digit in enumerate(digits):
            moved[self.cells[cell]] = self.digits[digit]
        return tuple(moved)


def words_of(move: Move) -> tuple[str, ...]:
    """The move in a few lines: how the grid is turned or where its rows and columns go, and which digit becomes which.

    A list such as “4 5 6 1 2 3 7 8 9” tells for the first, the second … where it goes.
    """
    lines = []
    if move.turn is None:
        across = ("columns", "rows") if move.crossed else ("rows", "columns")
        for name, to, rows in zip(("rows", "columns"), across, (True, False), strict=True):
            images = move.lines(rows)
            if move.crossed or images != tuple(range(move.size)):
                lines.append(f"{name} 1 to {move.size} become {to} {' '.join(str(i + 1) for i in images)}")
    elif move.turn:
        lines.append(catalogue("en").say(f"turn-{move.turn}"))
    if move.digits == reversed_digits(move.size):
        lines.append(f"each digit d becomes {move.size + 1} − d")
    elif move.digits != unmoved_digits(move.size):
        pairs = ((SYMBOLS[d - 1], SYMBOLS[move.digits[d] - 1]) for d in range(1, move.size + 1))
        lines.append("digits " + ", ".join(f"{one} → {other}" for one, other in pairs if one != other))
    return tuple(lines) or ("nothing is changed",)
