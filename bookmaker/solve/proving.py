"""Proofs: a problem in, a verdict out. Exact and deterministic, and every stage is bounded.

The search (`search.py`) decides nearly all puzzles that people solve, in milliseconds. What it has not decided after a
small effort is handed over to a prover that learns (`learning.py`). Efforts are counted, never timed, so that the same
prover decides a puzzle on every machine.
"""

from __future__ import annotations

from contextlib import suppress

from bookmaker.solve.learning import decided
from bookmaker.solve.problem import Problem
from bookmaker.solve.search import OutOfBudget, Search
from bookmaker.solve.verdict import NoSolution, Several, Solution, Undecided, Unique, Verdict

EFFORT = 16_000
"""What the search may spend before it hands over, in the measure of `Meter.effort`: about 10 ms. More of it makes hard
puzzles slower, less of it those that the search would have had in a moment."""


def prove(problem: Problem, budget: int | None = None, effort: int = EFFORT) -> Verdict:
    """Look for two solutions.

    With a `budget`, search alone, and `Undecided` if that would need more guesses. Without one, hand over what takes
    the search more than the `effort`; `Undecided` only if the learning prover runs out of its own budget too.
    """
    search = Search(problem, budget, effort if budget is None else None, learns=True)
    verdict = _searched(search)
    if budget is None and isinstance(verdict, Undecided):
        return _handed_over(problem, search, verdict.found) or verdict
    return verdict


def proven(problem: Problem, effort: int | None = None, budget: int | None = None) -> tuple[Verdict, int]:
    """What search alone finds with so much effort (`Meter.effort`), or else with so many guesses; and the effort that
    it took."""
    search = Search(problem, budget, effort, learns=True)
    return _searched(search), search.spent


def _searched(search: Search) -> Verdict:
    """Two solutions, one, none; `Undecided` where it runs out of its budget."""
    found: list[Solution] = []
    try:
        for solution in search:
            found.append(solution)
            if len(found) == 2:
                return Several(found[0], found[1], search.nodes)
    except OutOfBudget:
        return Undecided(search.nodes, found[0] if found else None)
    return Unique(found[0], search.nodes) if found else NoSolution(search.nodes)


def refuted(problem: Problem, effort: int) -> tuple[bool | None, int]:
    """Whether search alone shows that there is no solution, and the effort it took (`Meter.effort`).

    The answer is None where more than the `effort` would be needed.
    """
    search = Search(problem, effort=effort, learns=True)
    answer: bool | None = None
    with suppress(OutOfBudget):
        answer = next(iter(search), None) is None
    return answer, search.spent


def _handed_over(problem: Problem, search: Search, known: Solution | None) -> Verdict | None:
    """The learning prover's verdict on what the search has left open; None where it gives up."""
    layout = search.engine.layout
    left = 0
    for state, _, _ in search.open:
        left |= state
    if known:
        for at, digit in zip(layout.places, known, strict=True):
            left |= 1 << at + digit - 1
    settled = search.engine.settle(left, layout.guards, 0)
    if settled is None:
        return Unique(known, search.nodes) if known else NoSolution(search.nodes)
    return decided(problem, settled[0], search, known)
