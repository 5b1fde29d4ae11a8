"""Slips on grids that overlap, have holes or irregular regions: neighbours are those that are printed side by side."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from random import Random

import pytest

from bookmaker.changes.neighbouring import changes_of
from bookmaker.changes.slips import Slip, slips_in_givens, slips_in_marks
from bookmaker.draft.laying import lines_cross
from bookmaker.puzzle.grid import CLASSIC, Grid, irregular_grid
from bookmaker.puzzle.holed import holed_grid
from bookmaker.puzzle.overlapping import overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from tests.makers.turned import as_seen, turned, views
from tests.rules.harness import read_entry

TWO = overlapping_grids(4, (2, 2), [(0, 0), (2, 2)])
THREE = overlapping_grids(9, (3, 3), [(0, 0), (0, 12), (6, 6)])
HOLED = holed_grid(
    4, 6, [(0, 1), (0, 2), (1, 0), (2, 0), (1, 1), (2, 3), (3, 2), (3, 3), (4, 4), (4, 5), (5, 4), (5, 5)]
)
JIGSAW = irregular_grid(4, "aaabacbbccbdcddd")
SHAPES = {"two": TWO, "three": THREE, "holed": HOLED, "jigsaw": JIGSAW}


def puzzle_on(grid: Grid, seed: int = 1) -> RuledPuzzle:
    """Some digits, whatever they are: what goes wrong in typing does not ask for a solution."""
    rng = Random(seed)
    return Puzzle(grid, tuple(rng.choice([0, 0, *grid.digits]) for _ in grid.cells))


def slips_of(puzzle: RuledPuzzle, *sorts: str) -> Iterator[Slip]:
    return (slip for slip in slips_in_givens(puzzle) if slip.sort in sorts)


def only(grid: Grid, *at: tuple[int, int]) -> RuledPuzzle:
    """Ones at these places, counted from 1, and nothing else."""
    cells = {grid.cell(row - 1, column - 1) for row, column in at}
    return Puzzle(grid, tuple(int(cell in cells) for cell in grid.cells))


@pytest.mark.parametrize("grid", SHAPES.values(), ids=SHAPES)
def test_slips_do_not_ask_how_cells_are_numbered(grid: Grid) -> None:
    """Seen from another side, the same slips are found, all but lines out of step, which push others downward."""
    sorts = "digit", "swapped", "beside", "shifted", "extra given"
    puzzle = puzzle_on(grid)
    here = list(slips_of(puzzle, *sorts))
    for view in views(grid):
        there = {(slip.sort, slip.meant.givens) for slip in slips_of(turned(puzzle, view), *sorts)}
        assert {(slip.sort, as_seen(slip.meant.givens, view)) for slip in here} == there


@pytest.mark.parametrize("grid", SHAPES.values(), ids=SHAPES)
def test_lines_are_out_of_step_in_rows_as_in_columns(grid: Grid) -> None:
    puzzle = puzzle_on(grid)
    view = next(view for view in views(grid) if view.turn(0, 1, 9) == (1, 0) and view.turn(1, 1, 9) == (1, 1))
    there = {(slip.meant.givens, not slip.close) for slip in slips_of(turned(puzzle, view), "lines")}
    assert {(as_seen(slip.meant.givens, view), slip.close) for slip in slips_of(puzzle, "lines")} == there


def test_neighbours_in_a_row_are_the_easier_slip() -> None:
    """r1c2 and r2c2 have numbers that follow each other here, and stand below each other all the same."""
    grid = holed_grid(2, 3, [(0, 2), (1, 0), (2, 1)])
    assert grid.orthogonal(1) == (0, 2)
    found = {slip.meant.givens.index(1): slip.close for slip in slips_of(only(grid, (1, 2)), "beside")}
    assert found == {0: True, 2: False}


@pytest.mark.parametrize("letter", "AB")
def test_a_row_of_one_grid_is_shifted_or_exchanged_by_itself(letter: str) -> None:
    square = TWO.square(letter)
    top, below = square.rows[0].cells, square.rows[1].cells
    puzzle = Puzzle(TWO, tuple(int(cell == top[1]) for cell in TWO.cells))
    moved = replace(puzzle, givens=tuple(int(cell == top[2]) for cell in TWO.cells))
    assert moved in [slip.meant for slip in slips_of(puzzle, "shifted")]
    full = dict(zip((*top, *below), (1, 2, 3, 4, 3, 4, 1, 2), strict=True))
    exchanged = dict(zip((*below, *top), (1, 2, 3, 4, 3, 4, 1, 2), strict=True))
    puzzle, meant = (Puzzle(TWO, tuple(given.get(cell, 0) for cell in TWO.cells)) for given in (full, exchanged))
    assert meant in [slip.meant for slip in slips_of(puzzle, "lines")]


def test_a_stretch_between_black_cells_is_shifted_by_itself() -> None:
    """In row 1 there are two cells between two holes; what stands on both sides stays where it is."""
    grid = holed_grid(4, 6, [(row, (row + across) % 6) for row in range(6) for across in (1, 4)])
    puzzle, meant = (only(grid, (1, 1), (1, column), (1, 6)) for column in (3, 4))
    assert meant in [slip.meant for slip in slips_of(puzzle, "shifted")]


def test_lines_with_other_holes_are_not_exchanged() -> None:
    puzzle = only(HOLED, (1, 1), (2, 3))
    assert not list(slips_of(puzzle, "lines"))
    exchanged = only(HOLED, (5, 2), (6, 1)), only(HOLED, (6, 2), (5, 1))
    assert exchanged[1] in [slip.meant for slip in slips_of(exchanged[0], "lines")]


def test_a_clue_beside_another_looks_along_the_next_line() -> None:
    """In grid B of two, numbers of cells do not grow evenly from row to row."""
    square = TWO.square("B")
    rule, collector = read_entry("skyscraper: {top: . 2 . .}", square)
    assert rule is not None, collector.found
    (part,) = rule.parts(square)
    columns = {house.cells for house in square.columns}
    found = {change.part.cells for change in changes_of(part, rule, square) if change.sort == "moved"}
    assert found == {square.columns[0].cells, square.columns[2].cells}
    assert found <= columns


@pytest.mark.parametrize("grid", [CLASSIC, overlapping_grids(9, (3, 3), [(0, 0), (6, 6)])], ids=["one", "two"])
def test_lines_that_cross_between_cells(grid: Grid) -> None:
    for top in (0, 7):
        corner = [grid.cell(top + down, 6 + across) for down in (0, 1) for across in (0, 1)]
        assert lines_cross([(corner[0], corner[3]), (corner[2], corner[1])], grid)
        assert not lines_cross([(corner[0], corner[1]), (corner[2], corner[3])], grid)
        assert not lines_cross([(corner[0], corner[3]), (corner[0], corner[1])], grid)


def test_a_line_on_a_grid_without_regions_is_not_taken_for_one_that_needs_them() -> None:
    grid = Grid(6, ())
    rule, collector = read_entry("thermometer: r1c1-r1c4 r2c5", grid)
    assert rule is not None, collector.found
    meant = {other.kind for slip in slips_in_marks(Puzzle(grid, (0,) * 36, (rule,))) for other in slip.meant.rules}
    assert len(meant) > 3
    assert "equal-part-line" not in meant
