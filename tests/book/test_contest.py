"""Points and check rows: what must hold of them is the house's own, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bookmaker.book.contents import BookPuzzle, Rating
from bookmaker.book.contest import check_cells, check_digits, enter_contest, usual_points
from tests.layout.sample_book import picked, sample_book

PUZZLES = sample_book().puzzles
by_id = pytest.mark.parametrize("puzzle", PUZZLES, ids=[puzzle.id for puzzle in PUZZLES])


@by_id
def test_check_cells_are_empty_and_in_houses_of_their_own(puzzle: BookPuzzle) -> None:
    grid, cells = puzzle.puzzle.grid, check_cells(puzzle.puzzle)
    assert len(cells) == min(5, grid.size - 2)
    assert list(cells) == sorted(cells)
    assert not any(puzzle.puzzle.givens[cell] for cell in cells)
    for house in grid.houses:
        assert len(set(house.cells) & set(cells)) <= 1


@by_id
def test_they_are_told_by_where_givens_stand_alone(puzzle: BookPuzzle) -> None:
    """Other digits in the same places, as in a grid with its digits renamed, and no rules: the same cells."""
    renamed = tuple(given and given % puzzle.puzzle.grid.size + 1 for given in puzzle.puzzle.givens)
    assert check_cells(replace(puzzle.puzzle, givens=renamed, rules=())) == check_cells(puzzle.puzzle)


def test_they_keep_away_from_givens() -> None:
    """One given in a corner of an empty grid: no cell of the check row shares its row, column or box."""
    puzzle = picked("kettle").puzzles[0].puzzle
    lone = replace(puzzle, givens=(5, *[0] * 80))
    for cell in check_cells(lone):
        assert lone.grid.row(cell) and lone.grid.column(cell) and lone.grid.region_of[cell]


def test_check_digits_are_those_of_the_solution() -> None:
    (puzzle,) = enter_contest(picked("kettle")).puzzles
    assert check_digits(puzzle) == tuple(puzzle.solution[cell] for cell in puzzle.check)
    assert check_digits(replace(puzzle, solution=None)) == ()


@pytest.mark.parametrize(("difficulty", "points"), [(1.0, 10), (1.24, 10), (1.26, 15), (3.0, 30), (5.9, 60)])
def test_points_are_ten_times_the_difficulty_in_fives(difficulty: float, points: int) -> None:
    (puzzle,) = picked("kettle").puzzles
    assert usual_points(replace(puzzle, rating=Rating(1, "", difficulty, (), ()))) == points


def test_points_can_be_given() -> None:
    book = enter_contest(picked("kettle", "stairs"), (7, 90))
    assert [puzzle.points for puzzle in book.puzzles] == [7, 90]
    assert all(puzzle.points == 0 and puzzle.check == () for puzzle in picked("kettle", "stairs").puzzles)
    with pytest.raises(ValueError, match="shorter"):
        enter_contest(picked("kettle", "stairs"), (7,))
