"""The second stage of a proof: SAT solvers that learn clauses from conflicts, for what the search has not decided.

In: a problem. Out: the same verdicts as the search's, or None where the budget of steps runs out. The solvers are
Glucose and, for what takes that over a second, CaDiCaL, through python-sat. It is imported only here and only when it
is needed, so that puzzles that the search decides pay nothing for it.

Of several solutions the two shown are the first in the order of the search, and so depend neither on the machine nor
on the solvers and their versions: these only tell the search where there are none, which spares it guesses that fail.
This may take no more than the proof has taken; where it would, the two found so far are shown, as one thread of one
version of the solver, which never draws lots, comes to them.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import suppress
from functools import cache
from typing import TYPE_CHECKING

from bookmaker.solve import underway
from bookmaker.solve.candidates import each_bit
from bookmaker.solve.clauses import Clauses
from bookmaker.solve.problem import Problem
from bookmaker.solve.search import Search
from bookmaker.solve.underway import Effort, Unit
from bookmaker.solve.verdict import NoSolution, Prover, Several, Solution, Unique

if TYPE_CHECKING:
    from pysat.solvers import Solver

SOLVERS = ("glucose4", 3_000_000), ("cadical153", 20_000_000)
"""Who is asked in turn, and the steps (literals propagated) after which each gives up: about one second, and four.
Of mixtures the first decides most in two thirds of the time that the second takes, which simplifies the clauses as it
goes; that pays where a proof is long. Conflicts would bound it worse: one takes from 30 µs to 110 µs."""

ORDERING = 300_000
"""Steps that it may spend on looking for the first two solutions; more where the proof took more."""

BREATH = 2_000
"""Conflicts after which the solver comes back for a moment, so that a signal ends it and other threads can say how far
it is: about a fifth of a second."""


@cache
def learner() -> str:
    """The learning prover with the version of its package: “glucose4 and cadical153 of python-sat 1.9”."""
    from importlib.metadata import version  # takes longer to read than most puzzles to prove

    return f"{' and '.join(name for name, _ in SOLVERS)} of python-sat {version('python-sat')}"


class OutOfSteps(Exception):
    """A question would need more steps than are left."""


def decided(
    problem: Problem, state: int, search: Search, known: Solution | None
) -> Unique | Several | NoSolution | None:
    """The verdict on what a search has left open, after it met at most the solution `known`. All solutions lie in
    `state`, which has been propagated.

    Clauses go to the solver one by one: a list of all of them would have Python look through it for garbage.
    """
    from pysat.solvers import Solver

    for name, steps in SOLVERS:
        with Solver(name=name) as solver, suppress(OutOfSteps):
            clauses = Clauses(problem, search.engine, state, solver.add_clause)
            return _verdict(_Questions(solver, clauses, steps), search, known)
    return None


def _verdict(ask: _Questions, search: Search, known: Solution | None) -> Unique | Several | NoSolution:
    first = known or ask.solution()
    if first is None:
        return NoSolution(search.nodes, Prover.LEARNING)
    ask.exclude(first)
    second = ask.solution()
    if second is None:
        return Unique(first, search.nodes, Prover.LEARNING)
    ask.allow(max(ORDERING, ask.taken))
    with suppress(OutOfSteps):
        in_order = _in_order(search, ask)
        if known is None:
            earliest = next(in_order)
            if earliest != first:
                first, second = earliest, first
        second = next(in_order)
    return Several(first, second, search.nodes, Prover.LEARNING)


def _in_order(search: Search, ask: _Questions) -> Iterator[Solution]:
    """Further solutions in the order of the search, which is spared every guess that leads to none."""
    engine = search.engine
    layout, placement = engine.layout, engine.placement
    stack = list(search.open)
    while stack:
        here = stack.pop()
        settled = engine.settle(*here) if ask.is_solvable(here[0]) else None
        if settled is None:
            continue
        state, unplaced, seen = settled
        choice = search.choose(state)
        if choice:
            stack.extend([(state & placement[bit], unplaced ^ layout.owners[bit], seen) for bit in each_bit(choice)])
        else:
            yield layout.filled(state)


class _Questions:
    """Questions to the solver. Raises OutOfSteps where more steps would be needed than are `left`."""

    def __init__(self, solver: Solver, clauses: Clauses, steps: int) -> None:
        self.solver = solver
        self.clauses = clauses
        self.taken = 0
        self.allow(steps)
        self._met: list[int] = []
        """All solutions met, as states."""

    def allow(self, budget: int) -> None:
        """From now on, that many steps."""
        self.left = budget
        underway.begin(lambda: Effort(Unit.STEPS, budget - self.left, budget))

    def solution(self, assumed: Sequence[int] = ()) -> Solution | None:
        """A solution in which the assumed literals hold; None if there is none."""
        answer = None
        while answer is None:
            before = self.solver.accum_stats()["propagations"]
            self.solver.conf_budget(BREATH)
            answer = self.solver.solve_limited(assumptions=assumed)
            steps = self.solver.accum_stats()["propagations"] - before
            self.taken, self.left = self.taken + steps, self.left - steps
            if self.left <= 0:
                raise OutOfSteps
        if not answer:
            return None
        found = self.clauses.solution(self.solver.get_model())
        self._met.append(self.clauses.state_of(found))
        return found

    def exclude(self, solution: Solution) -> None:
        """Have no more answers with this solution."""
        self.solver.add_clause([-literal for literal in self.clauses.literals_of(solution)])

    def is_solvable(self, state: int) -> bool:
        """Is there a solution among these candidates, one of those excluded perhaps?"""
        if any(met & state == met for met in self._met):
            return True
        decided = self.clauses.decided_in(state)
        return all(decided) and self.solution(decided) is not None
