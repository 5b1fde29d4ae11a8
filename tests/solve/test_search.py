"""The search: what it says when it must give up, that it is repeatable, and how it counts."""

from __future__ import annotations

from random import Random

import pytest

from bookmaker.solve import prove, solutions, tally
from bookmaker.solve.problem import Allowed, Automaton, Combination, Count, Different, DifferentCount, Problem, Sum
from bookmaker.solve.verdict import NoSolution, Several, Tally, Undecided, Unique
from tests.solve.boards import boxed, classic, givens, latin, square


def test_a_budget_that_runs_out_is_said_so() -> None:
    assert prove(classic("." * 81), budget=3) == Undecided(3)


def test_one_solution_met_before_the_budget_ran_out_is_shown() -> None:
    empty = square(4, *boxed(4, 2, 2))
    needed = prove(empty).nodes
    outcomes = [prove(empty, budget=budget) for budget in range(needed)]
    assert all(isinstance(outcome, Undecided) for outcome in outcomes)
    shown = [outcome.found for outcome in outcomes if isinstance(outcome, Undecided) and outcome.found]
    first = prove(empty)
    assert isinstance(first, Several)
    assert set(shown) <= {first.first}


def test_a_proof_without_guesses_needs_no_budget() -> None:
    solved = next(solutions(square(9, *boxed(9, 3, 3))))
    assert prove(square(9, *boxed(9, 3, 3), *givens(solved)), budget=0) == Unique(solved)


def test_nothing_left_is_no_solution_and_not_giving_up() -> None:
    assert prove(classic("11" + "." * 79), budget=0) == NoSolution()


def test_several_names_the_cells_that_differ() -> None:
    verdict = prove(square(4, *boxed(4, 2, 2)))
    assert isinstance(verdict, Several)
    assert verdict.differing
    assert all(verdict.first[cell] != verdict.second[cell] for cell in verdict.differing)


def test_verdicts_are_repeatable() -> None:
    problem = square(9, *boxed(9, 3, 3), *givens("1" + "." * 80))
    assert prove(problem) == prove(problem)
    assert list(solutions(square(4, *latin(4)))) == list(solutions(square(4, *latin(4))))


def test_shuffled_branches_give_the_same_solutions_in_another_order() -> None:
    problem = square(4, *boxed(4, 2, 2))
    plain, shuffled = list(solutions(problem)), list(solutions(problem, Random(5)))
    assert sorted(plain) == sorted(shuffled)
    assert plain != shuffled
    assert shuffled == list(solutions(problem, Random(5)))


@pytest.mark.parametrize(
    ("limit", "expected"),
    [(0, Tally(0, False)), (287, Tally(287, False)), (288, Tally(288, True)), (1000, Tally(288, True))],
)
def test_a_tally_stops_at_its_limit(limit: int, expected: Tally) -> None:
    assert tally(square(4, *boxed(4, 2, 2)), limit) == expected


def test_a_tally_within_a_budget_is_incomplete() -> None:
    counted = tally(square(4, *boxed(4, 2, 2)), 1000, budget=20)
    assert not counted.complete
    assert 0 < counted.solutions < 288


def test_parts_that_nothing_joins_are_counted_one_by_one() -> None:
    """OEIS A107739: 288 grids of 4×4; five of them side by side have 288⁵ fillings."""
    one = boxed(4, 2, 2)
    five = tuple(Different(tuple(cell + 16 * part for cell in house.cells)) for part in range(5) for house in one)
    assert tally(Problem(80, 4, five), 10**13, budget=2_000) == Tally(288**5, True)


def test_a_count_beyond_its_budget_says_at_least() -> None:
    counted = tally(classic("." * 81), 10**9, budget=300)
    assert not counted.complete
    assert counted.solutions > 10


@pytest.mark.parametrize("size", range(4, 17))
def test_every_size_of_grid_is_carried(size: int) -> None:
    verdict = prove(square(size, *latin(size)))
    assert isinstance(verdict, Several)
    for solution in (verdict.first, verdict.second):
        for house in latin(size):
            assert {solution[cell] for cell in house.cells} == set(range(1, size + 1))


@pytest.mark.parametrize(
    "constraint",
    [
        Different((0, 1, 2, 3, 4)),  # five cells, four digits
        Different((0, 0)),
        Combination((0, 0), frozenset({0b11})),
        Combination((0, 1), frozenset()),
        Sum((), 1, 1),
        Sum(((0, 1), (0, -1)), 1, 2),
        Count((), 0b1, 1, 1),
        Count((0,), 0b1, 2, 2),
        DifferentCount((), 1, 1),
        DifferentCount((0, 0), 2, 2),
        Automaton((), ((-1, 0, 0, 0, 0),), frozenset()),
        Allowed((0,), 0),
    ],
)
def test_what_cannot_be_is_refused_without_a_guess(constraint: Different | Sum) -> None:
    assert prove(Problem(5, 4, (constraint,)), budget=0) == NoSolution()
