"""The path as a whole: complete, true to the proof, repeatable."""

from __future__ import annotations

import pytest

from bookmaker.grade import grade
from bookmaker.grade.effort import WEIGHTS, Practice
from bookmaker.grade.simulation import mean_looks, solvers
from bookmaker.logic.state import ground_of, start
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from bookmaker.symmetry.canonical_labels import canonical_labels
from bookmaker.trace.rounds import rounds
from tests.digits import classic
from tests.published import SEVENTEEN


@pytest.fixture(scope="module")
def solution() -> tuple[int, ...]:
    verdict = prove(problem_of(classic(SEVENTEEN)))
    assert isinstance(verdict, Unique)
    return verdict.solution


def test_path_fills_the_grid_with_the_proven_digits(solution: tuple[int, ...]) -> None:
    graded = grade(classic(SEVENTEEN), solution)
    filled = {cell: digit for step in graded.path.steps for cell, digit in step.placed}
    givens = {cell: digit for cell, digit in enumerate(classic(SEVENTEEN).givens) if digit}
    assert givens | filled == dict(enumerate(solution))
    assert not givens.keys() & filled.keys()


def test_no_step_strikes_a_digit_of_the_solution(solution: tuple[int, ...]) -> None:
    graded = grade(classic(SEVENTEEN), solution)
    assert all(solution[cell] != digit for step in graded.path.steps for cell, digit in step.removed)


def test_same_puzzle_same_grade(solution: tuple[int, ...]) -> None:
    assert grade(classic(SEVENTEEN), solution) == grade(classic(SEVENTEEN), solution)


def test_steps_of_one_rung_take_together_the_root_of_the_sum_of_their_squares() -> None:
    practice = Practice()
    assert practice.looks(9, 30.0) == 30.0
    assert practice.looks(10, 7.0) == 7.0  # another rung has not been met yet
    assert practice.looks(9, 40.0) == pytest.approx(50.0 - 30.0)


def test_lone_naked_singles_take_together_the_root_of_the_sum_of_their_squares(solution: tuple[int, ...]) -> None:
    """An empty grid but for three cells, none in sight of another, that have one candidate each."""
    state = start(ground_of(classic("." * 81)))
    for cell in (0, 40, 80):
        state.remove((cell, digit) for digit in CLASSIC.digits if digit != solution[cell])
    assert len({solution[cell] for cell in (0, 40, 80)}) == 3  # so that none is the digit just written
    looks = mean_looks(state, solution, solvers(canonical_labels(CLASSIC, solution)), WEIGHTS)
    alone = [82 / (1 + 3 * 0.05), 81 / (1 + 2 * 0.05), 80 / (1 + 0.05)]
    assert looks[0] == pytest.approx(alone[0])
    assert sum(looks) == pytest.approx(sum(one * one for one in alone) ** 0.5)


def test_what_the_last_digit_opened_counts_half_until_the_next_is_found(solution: tuple[int, ...]) -> None:
    """An empty grid; the first cell has one candidate, its neighbour that one and its own."""
    state = start(ground_of(classic("." * 81)))
    one, other = solution[:2]
    state.remove((0, digit) for digit in CLASSIC.digits if digit != one)
    state.remove((1, digit) for digit in CLASSIC.digits if digit not in (one, other))
    looks = mean_looks(state, solution, solvers(canonical_labels(CLASSIC, solution)), WEIGHTS)
    alone = [82 / (1 + 0.05), 81 / (1 + 0.05 / 2)]
    assert looks[0] == pytest.approx(alone[0])
    assert sum(looks) == pytest.approx((alone[0] ** 2 + alone[1] ** 2) ** 0.5)


def test_being_stuck_costs_whole_rounds_of_looking(solution: tuple[int, ...]) -> None:
    """The first strikes of a rung take the empty cells and one, times 1 + reach, however many findings there are."""
    path = grade(classic(SEVENTEEN), solution).path
    first: dict[int, tuple[float, int]] = {}
    for this in rounds(path):
        if not this.places:
            looks, rung = sum(step.effort for step in this.steps), this.steps[0].rung
            first.setdefault(rung, (looks, this.steps[0].empty))
    assert first
    for looks, empty in first.values():
        assert looks / (empty + 1) == pytest.approx(round(looks / (empty + 1)))
