"""Look-alikes among puzzles on grids that fill no square: the eight ways to turn and reflect all there is together.

In: puzzles with their only solutions. Out: `Keys` and the `Move` as on other grids, and names for cells. Lines that
could change places as well, such as rows that only one of two overlapping grids has, are let be: nobody would see the
same puzzle in it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.holed import Holed, holed_grid
from bookmaker.puzzle.overlapping import Overlapping, overlapping_grids
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.symmetry.carrying import Keys, carries, relabelling_of, renaming_of, short
from bookmaker.symmetry.forms import digest, forms_of
from bookmaker.symmetry.moves import EIGHT, Move, Turn, reversed_digits, unmoved_digits

Cells = tuple[int, ...]


def turned_names(grid: Grid, solution: Sequence[int]) -> list[int]:
    """A number for each cell that goes along with turns: its own in the turn that puts shape and solution first."""
    ways = ((laid.shape, _renamed(_moved(solution, cells)), cells) for _, laid, cells in _turned(grid))
    *_, first = min(ways)
    return list(first)


def turned_keys(grid: Grid, puzzle: RuledPuzzle, solution: Solution) -> Keys:
    """The keys of a puzzle on such a grid; none for its marks alone."""
    renaming = relabelling_of(puzzle)
    whole, filled = [], []
    for _, laid, cells in _turned(grid):
        moved = _moved(solution, cells)
        by_place = _by_first_place(moved, grid.size)
        filled.append((laid.shape, tuple(by_place[digit] for digit in moved)))
        ways = {"any": [by_place], "none": [unmoved_digits(grid.size)]}.get(
            renaming, [unmoved_digits(grid.size), reversed_digits(grid.size)]
        )
        for digits in ways:
            given = _moved(puzzle.givens, cells)
            solved, started = (tuple(digits[digit] for digit in each) for each in (moved, given))
            whole.append((laid.shape, solved, started, digest(forms_of(puzzle, cells, digits))))
    size = repr((grid.size, grid.box and min(grid.box), renaming))
    return Keys(short(size, repr(min(whole))), short(size, repr(min(filled))), "")


def turned_mapping(one: RuledPuzzle, its: Solution, other: RuledPuzzle, others: Solution) -> Move | None:
    """The move that carries one puzzle to the other; None where there is none."""
    for name, cells, digits in _onto(one, its, other, others):
        if carries(move := Move(cells, digits, name), one, other):
            return move
    return None


def turned_difference(one: RuledPuzzle, its: Solution, other: RuledPuzzle, others: Solution) -> int | None:
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
    for name, laid, cells in _turned(one.grid):
        digits = renaming_of(its, others, cells) if laid == other.grid else None
        if digits is not None:
            yield name, cells, digits


def _turned(grid: Grid) -> Iterator[tuple[str, Grid, Cells]]:
    """Each turn, what it makes of the grid, and the image of each cell there; none for a grid that is plain."""
    for name, turn in EIGHT.items() if not grid.plain else ():
        laid, cells = turned_grid(grid, turn)
        yield name, laid, cells


def turned_grid(grid: Grid, turn: Turn) -> tuple[Grid, Cells]:
    """A grid that is no plain square after a turn, and the image of each cell there."""
    around = grid.extent
    places = [turn(grid.row(cell), grid.column(cell), around) for cell in grid.cells]
    laid: Grid
    match grid:
        case Overlapping():
            assert grid.box
            corners = [min(places[cell] for cell in square.cells) for square in grid.squares]
            crossed = turn(0, 0, around)[0] != turn(0, 1, around)[0]
            laid = overlapping_grids(grid.size, grid.box[::-1] if crossed else grid.box, corners)
        case Holed():
            bare = holed_grid(grid.size, grid.side, (turn(*hole, around) for hole in grid.holes))
            regions = (tuple(sorted(bare.cell(*places[cell]) for cell in region)) for region in grid.regions)
            laid = replace(bare, regions=tuple(sorted(regions)))
        case _:
            raise TypeError("a plain grid is turned by its rows and columns")
    top, left = min(row for row, _ in places), min(column for _, column in places)
    return replace(laid, symbols=grid.symbols, first=grid.first), tuple(
        laid.cell(row - top, column - left) for row, column in places
    )


def _moved(digits: Sequence[int], cells: Cells) -> Solution:
    moved = [0] * len(cells)
    for cell, digit in enumerate(digits):
        moved[cells[cell]] = digit
    return tuple(moved)


def _renamed(solution: Solution) -> Solution:
    called = _by_first_place(solution, max(solution))
    return tuple(called[digit] for digit in solution)


def _by_first_place(solution: Solution, size: int) -> tuple[int, ...]:
    """Digits called by the order in which they come."""
    met = dict.fromkeys(solution)
    order = {digit: number for number, digit in enumerate(met, start=1)}
    return (0, *(order.get(digit, 0) for digit in range(1, size + 1)))
