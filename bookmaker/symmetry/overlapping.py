"""Look-alikes among puzzles on overlapping grids: the eight ways to turn and reflect them all together.

In: puzzles with their only solutions. Out: `Keys` and the `Move` as on other grids. Rows that only one grid has could
change places as well; that is left out, as nobody would see the same puzzle in it.
"""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.puzzle.overlapping import Overlapping, overlapping_grids
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.symmetry.carrying import Keys, carries, relabelling_of, renaming_of, short
from bookmaker.symmetry.forms import digest, forms_of
from bookmaker.symmetry.moves import EIGHT, Move, Turn, reversed_digits, unmoved_digits

Cells = tuple[int, ...]


def overlapping_keys(grid: Overlapping, puzzle: RuledPuzzle, solution: Solution) -> Keys:
    """The keys of a puzzle on such a grid; none for its marks alone."""
    renaming = relabelling_of(puzzle)
    whole, filled = [], []
    for _, laid, cells in _turned(grid):
        moved = _moved(solution, cells)
        by_place = _by_first_place(moved, grid.size)
        filled.append((laid.corners, tuple(by_place[digit] for digit in moved)))
        ways = {"any": [by_place], "none": [unmoved_digits(grid.size)]}.get(
            renaming, [unmoved_digits(grid.size), reversed_digits(grid.size)]
        )
        for digits in ways:
            given = _moved(puzzle.givens, cells)
            solved, started = (tuple(digits[digit] for digit in each) for each in (moved, given))
            whole.append((laid.corners, solved, started, digest(forms_of(puzzle, cells, digits))))
    size = repr((grid.size, grid.box and min(grid.box), renaming))
    return Keys(short(size, repr(min(whole))), short(size, repr(min(filled))), "")


def overlapping_mapping(one: RuledPuzzle, its: Solution, other: RuledPuzzle, others: Solution) -> Move | None:
    """The move that carries one puzzle to the other; None where there is none."""
    for name, cells, digits in _onto(one, its, other, others):
        if carries(move := Move(cells, digits, name), one, other):
            return move
    return None


def overlapping_difference(one: RuledPuzzle, its: Solution, other: RuledPuzzle, others: Solution) -> int | None:
    """In how many cells only one of them has a given, where solutions are laid on each other; None where they can't."""
    filled = {cell for cell, digit in enumerate(other.givens) if digit}
    ways = (
        len({cells[cell] for cell, digit in enumerate(one.givens) if digit} ^ filled)
        for _, cells, _ in _onto(one, its, other, others)
    )
    return min(ways, default=None)


def _onto(
    one: RuledPuzzle, its: Solution, other: RuledPuzzle, others: Solution
) -> Iterator[tuple[str, Cells, tuple[int, ...]]]:
    """The turns that lay one solution on the other, with the images of cells and of digits."""
    if isinstance(one.grid, Overlapping):
        for name, laid, cells in _turned(one.grid):
            digits = renaming_of(its, others, cells) if laid == other.grid else None
            if digits is not None:
                yield name, cells, digits


def _turned(grid: Overlapping) -> Iterator[tuple[str, Overlapping, Cells]]:
    """Each turn, what it makes of the grids, and the image of each cell there."""
    for name, turn in EIGHT.items():
        laid, cells = _laid(grid, turn)
        yield name, laid, cells


def _laid(grid: Overlapping, turn: Turn) -> tuple[Overlapping, Cells]:
    assert grid.box
    around = max(grid.height, grid.width)
    places = [turn(grid.row(cell), grid.column(cell), around) for cell in grid.cells]
    top, left = min(row for row, _ in places), min(column for _, column in places)
    corners = [min(places[cell] for cell in square.cells) for square in grid.squares]
    crossed = turn(0, 0, around)[0] != turn(0, 1, around)[0]
    laid = overlapping_grids(grid.size, grid.box[::-1] if crossed else grid.box, corners)
    return laid, tuple(laid.cell(row - top, column - left) for row, column in places)


def _moved(digits: Solution, cells: Cells) -> Solution:
    moved = [0] * len(cells)
    for cell, digit in enumerate(digits):
        moved[cells[cell]] = digit
    return tuple(moved)


def _by_first_place(solution: Solution, size: int) -> tuple[int, ...]:
    """Digits called by the order in which they come."""
    met = dict.fromkeys(solution)
    order = {digit: number for number, digit in enumerate(met, start=1)}
    return (0, *(order[digit] for digit in range(1, size + 1)))
