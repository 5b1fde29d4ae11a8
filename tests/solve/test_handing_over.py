"""What the search hands over: the same verdicts from the learning prover, repeatable, bounded, free until needed."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator, Sequence
from itertools import islice
from random import Random

import pytest

from bookmaker.solve import clauses, learning, prove
from bookmaker.solve.engine import Engine
from bookmaker.solve.problem import (
    Allowed,
    Automaton,
    Combination,
    Constraint,
    Count,
    Different,
    DifferentCount,
    Problem,
    Sum,
    relation,
)
from bookmaker.solve.search import solutions
from bookmaker.solve.sum_clauses import Say
from bookmaker.solve.verdict import NoSolution, Prover, Several, Solution, Undecided, Unique
from tests.solve.boards import boxed, classic, digits_of, givens, square
from tests.solve.oracle import all_solutions

# G. McGuire, B. Tugemann, G. Civario, “There is no 16-clue sudoku”, Exp. Math. 23 (2014) 190–217.
SEVENTEEN = "000801000 000000043 500000000 000070800 000000100 020030000 600000075 003400000 000200600"
SEVENTEEN_SOLVED = "237841569 186795243 594326718 315674892 469582137 728139456 642918375 853467921 971253684"


def test_a_17_clue_grid_has_one_solution() -> None:
    assert prove(classic(SEVENTEEN), effort=0) == Unique(digits_of(SEVENTEEN_SOLVED), 0, Prover.LEARNING)


def _apart() -> Problem:
    """Grids of 9×9 in which no neighbours are consecutive: there are some, and none is found without conflicts."""
    apart = [(a, b) for a in range(1, 10) for b in range(1, 10) if abs(a - b) > 1]
    pairs = [
        (cell, cell + step)
        for cell in range(81)
        for step in ([1] if (cell + 1) % 9 else []) + ([9] if cell < 72 else [])
    ]
    return square(9, *boxed(9, 3, 3), relation(pairs, 9, apart))


def _first_of_search(problem: Problem) -> list[Solution]:
    return list(islice(solutions(problem), 2))


def _several() -> Iterator[Problem]:
    """Puzzles with few solutions and with many, which the search finds soon and late."""
    yield classic(SEVENTEEN.replace("000000043", "000000430"))
    yield _apart()
    rng = Random(5)
    for _ in range(12):
        shown = [digit if rng.random() < 0.3 else "." for digit in SEVENTEEN_SOLVED.replace(" ", "")]
        yield square(9, *boxed(9, 3, 3), *givens("".join(shown)))


class _Shuffled(clauses.Clauses):
    """The same clauses, in another order and with their literals in another order."""

    def __init__(self, problem: Problem, engine: Engine, state: int, say: Say) -> None:
        said: list[Sequence[int]] = []
        super().__init__(problem, engine, state, said.append)
        rng = Random(len(said))
        for clause in rng.sample(said, len(said)):
            say(rng.sample(clause, len(clause)))


@pytest.mark.parametrize("solver", ["cadical153", "glucose4", "minisat22"])
@pytest.mark.parametrize("written", [clauses.Clauses, _Shuffled])
def test_the_two_solutions_shown_are_the_first_of_the_search_whichever_the_solver(
    monkeypatch: pytest.MonkeyPatch, solver: str, written: type[clauses.Clauses]
) -> None:
    monkeypatch.setattr(learning, "SOLVERS", ((solver, 25_000_000),))
    monkeypatch.setattr(learning, "Clauses", written)
    monkeypatch.setattr(learning, "ORDERING", 40_000_000)
    for problem in _several():
        verdict = prove(problem, effort=0)
        assert isinstance(verdict, Several)
        assert verdict.prover is Prover.LEARNING
        assert [verdict.first, verdict.second] == _first_of_search(problem)


@pytest.mark.parametrize("met", [0, 1])
def test_where_the_budget_ends_after_the_first_of_them_there_are_two_all_the_same(
    monkeypatch: pytest.MonkeyPatch, met: int
) -> None:
    two = Problem(2, 2, (Different((0, 1)),))
    both = sorted(all_solutions(two))

    def in_order(search: object, ask: object) -> Iterator[Solution]:
        yield both[met]
        raise learning.OutOfSteps

    monkeypatch.setattr(learning, "_in_order", in_order)
    verdict = prove(two, effort=0)
    assert isinstance(verdict, Several)
    assert [verdict.first, verdict.second] == [both[met], both[1 - met]]


def test_a_contradiction_is_found() -> None:
    pairs = (0, 1), (1, 2), (0, 2)
    clash: tuple[Constraint, ...] = Different((0, 1, 2)), *(Sum(((a, 1), (b, 1)), 5, 5) for a, b in pairs)
    assert prove(Problem(3, 9, clash), effort=0) == NoSolution(0, Prover.LEARNING)


def test_a_solution_that_the_search_has_met_is_kept() -> None:
    empty = square(4, *boxed(4, 2, 2))
    efforts = [prove(empty, effort=effort) for effort in range(0, 400, 16)]
    assert {verdict.prover for verdict in efforts if isinstance(verdict, Several)} == set(Prover) - {Prover.AUDIT}
    assert all(isinstance(verdict, Several) and verdict.first != verdict.second for verdict in efforts)


@pytest.mark.parametrize("few", [0, 1_000])
def test_sets_have_two_encodings_that_say_the_same(monkeypatch: pytest.MonkeyPatch, few: int) -> None:
    monkeypatch.setattr(clauses, "FEW_SETS", few)
    cage = Combination((0, 1, 2), frozenset({0b00111, 0b01011, 0b11001, 0b10110}))
    problem = Problem(4, 5, (cage, Sum(((0, 1), (3, -1)), 1, 3), Count((1, 2, 3), 0b10001, 1, 1)))
    verdict = prove(problem, effort=0)
    assert isinstance(verdict, Several)
    assert [verdict.first, verdict.second] == _first_of_search(problem)
    assert {verdict.first, verdict.second} <= set(all_solutions(problem))


def test_an_automaton_may_visit_a_cell_twice() -> None:
    rising = tuple((-1, *(d if d > last else -1 for d in range(1, 4))) for last in range(4))
    assert prove(Problem(2, 3, (Automaton((0, 1, 0), rising, frozenset(range(4))),)), effort=0) == NoSolution()


@pytest.mark.parametrize(
    ("least", "most", "apart"), [(0, 2, 1), (3, 5, 0), (3, 3, 2)], ids=["too many", "too few", "as many as there are"]
)
def test_different_digits_are_counted_with_those_of_decided_cells(least: int, most: int, apart: int) -> None:
    digits = range(2, 6)
    pairs = relation([(1, 2)], 5, [(a, b) for a in digits for b in digits if abs(a - b) == apart])
    problem = Problem(3, 5, (Allowed((0,), 1), pairs, DifferentCount((0, 1, 2, 1), least, most)))
    verdict = prove(problem, effort=0)
    assert isinstance(verdict, Several if all_solutions(problem) else NoSolution)
    assert verdict.prover is Prover.LEARNING


def test_a_budget_of_steps_that_runs_out_is_said_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(learning, "SOLVERS", [(name, 1) for name, _ in learning.SOLVERS])
    assert prove(_apart(), effort=0) == Undecided(0)


def test_what_one_solver_gives_up_the_next_decides(monkeypatch: pytest.MonkeyPatch) -> None:
    first, second = learning.SOLVERS
    monkeypatch.setattr(learning, "SOLVERS", [(first[0], 1), second])
    assert prove(classic(SEVENTEEN), effort=0) == Unique(digits_of(SEVENTEEN_SOLVED), 0, Prover.LEARNING)


def test_two_runs_show_the_same() -> None:
    empty = square(9, *boxed(9, 3, 3), *givens("1" + "." * 80))
    assert prove(empty, effort=0) == prove(empty, effort=0)


def test_a_puzzle_that_the_search_decides_does_not_load_the_solver() -> None:
    script = (
        "import sys; from tests.solve.boards import classic; from bookmaker.solve import prove\n"
        f"prove(classic({SEVENTEEN!r})); sys.exit(any(name.startswith('pysat') for name in sys.modules))"
    )
    assert subprocess.run([sys.executable, "-c", script], check=False).returncode == 0
