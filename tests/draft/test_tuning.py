"""Tuned puzzles against all single changes of givens, tried one by one."""

from __future__ import annotations

from concurrent.futures import Executor
from time import monotonic

import pytest

from bookmaker.changes.arrangement import arrangement
from bookmaker.draft.attempt import Drafted, attempt
from bookmaker.draft.tuning import Tuned, Tuning
from bookmaker.proof.executors import processes
from bookmaker.puzzle.grid import boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from bookmaker.wishes.span import Span
from bookmaker.wishes.wish import Wish

SIX = boxed_grid(6, 2, 3)
FACING = arrangement("half-turn", SIX)


def drafted(seed: int, **wished: Span) -> Drafted:
    wish = Wish(grid=SIX, seed=seed, **wished)  # type: ignore[arg-type]
    made = (attempt(wish, number) for number in range(200))
    return next(each for each in made if isinstance(each, Drafted) and not each.amiss)


def tuned(puzzle: RuledPuzzle, solution: Solution, wish: Wish) -> list[Tuned]:
    executor: Executor
    with processes(1) as executor:
        return list(Tuning(puzzle, solution, wish).results(executor, 0, monotonic() + 600))


def one_given_fewer(puzzle: RuledPuzzle) -> set[tuple[int, ...]]:
    """The givens of all puzzles that are unique with one pair of givens that face each other gone."""
    found = set()
    for cell, digit in enumerate(puzzle.givens):
        if digit:
            pair = FACING.orbit(cell)
            givens = tuple(0 if other in pair else kept for other, kept in enumerate(puzzle.givens))
            if isinstance(prove(problem_of(Puzzle(SIX, givens))), Unique):
                found.add(givens)
    return found


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_fewer_givens_by_one_change(seed: int) -> None:
    sparse = drafted(seed)
    givens = list(sparse.puzzle.givens)
    spare = [cell for cell, digit in enumerate(givens) if not digit][:2]
    for cell in (other for one in spare for other in FACING.orbit(one)):
        givens[cell] = sparse.solution[cell]
    puzzle: RuledPuzzle = Puzzle(SIX, tuple(givens))
    found = tuned(puzzle, sparse.solution, Wish(grid=SIX, givens=Span(0, puzzle.given_count - 1)))
    counts = [each.changes for each in found]
    assert counts == sorted(counts)
    before = set(enumerate(puzzle.givens))
    singles = {each.puzzle.givens for each in found if each.changes == 1}
    gone = {one for one in singles if {pair for pair in enumerate(one) if pair[1]} <= before}
    assert gone == one_given_fewer(puzzle)
    assert gone
    for each in found:
        verdict = prove(problem_of(each.puzzle))
        assert isinstance(verdict, Unique)
        assert verdict.solution == sparse.solution
        given = {cell for cell, digit in enumerate(each.puzzle.givens) if digit}
        assert all(other in given for cell in given for other in FACING.orbit(cell))
        assert each.puzzle.given_count < puzzle.given_count


def test_a_wish_out_of_reach_is_none() -> None:
    sparse = drafted(1)
    assert tuned(sparse.puzzle, sparse.solution, Wish(grid=SIX, givens=Span(0, 3))) == []
