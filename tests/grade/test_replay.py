"""Paths run again. Candidates are set against networkx, which knows on its own which cells see each other."""

from __future__ import annotations

import networkx
import pytest

from bookmaker.grade import grade
from bookmaker.grade.replay import position_after
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle, classic, digits_from
from tests import published

WORKED, SOLUTION = classic(published.WORKED), digits_from(published.PULP_SOLVED)

HARD, HARD_SOLUTION = classic(published.SEVENTEEN), digits_from(published.SEVENTEEN_SOLVED)
"""Some of its steps strike candidates."""


def test_before_the_first_step_cells_hold_what_they_do_not_see() -> None:
    digits, position = position_after(WORKED, grade(WORKED, SOLUTION).path, 0)
    assert digits == WORKED.givens
    for cell, seen in networkx.sudoku_graph(3).adjacency():
        if not digits[cell]:
            beside = {digits[other] for other in seen}
            assert {d for d in range(1, 10) if position.may(cell, d)} == set(range(1, 10)) - beside


@pytest.mark.parametrize(("puzzle", "solution"), [(WORKED, SOLUTION), (HARD, HARD_SOLUTION)])
def test_step_by_step_to_the_solution(puzzle: Puzzle, solution: tuple[int, ...]) -> None:
    path = grade(puzzle, solution).path
    before = sum(board.bit_count() for board in position_after(puzzle, path, 0)[1].boards)
    for count, step in enumerate(path.steps, start=1):
        digits, position = position_after(puzzle, path, count)
        assert all(position.may(cell, solution[cell]) for cell in CLASSIC.cells)
        assert all(digits[cell] == digit for cell, digit in step.placed)
        assert not any(position.may(cell, digit) for cell, digit in step.removed)
        left = sum(board.bit_count() for board in position.boards)
        assert left <= before
        before = left
    assert digits == solution
    assert any(step.removed for step in path.steps) == (puzzle is HARD)


def test_a_step_that_is_not_there() -> None:
    path = grade(WORKED, SOLUTION).path
    for count in (-1, len(path.steps) + 1):
        with pytest.raises(ValueError, match="51 steps"):
            position_after(WORKED, path, count)
