"""The second stage of a proof: a SAT solver that learns clauses from conflicts, for what the search has not decided.

In: a problem as clauses. Out: the same verdicts as the search's, or None where the budget of conflicts runs out. The
solver is CaDiCaL through python-sat. It is imported only here and only when it is needed, so that puzzles that the
search decides pay nothing for it.

Of several solutions the two shown should not depend on the machine. One that the search has met is kept, for the search
is the same everywhere; otherwise they are the first in lexicographic order. To find these may take longer than all the
rest, so it has a budget as well; where that runs out, the two found so far are shown, as one thread of one version of
the solver, which never draws lots, comes to them.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from functools import cache
from importlib.metadata import version
from typing import TYPE_CHECKING

from bookmaker.solve import underway
from bookmaker.solve.clauses import Clauses
from bookmaker.solve.underway import Effort, Unit
from bookmaker.solve.verdict import NoSolution, Prover, Several, Solution, Unique

if TYPE_CHECKING:
    from pysat.solvers import Solver

SOLVER = "cadical153"

CONFLICTS = 4_000_000
"""Conflicts after which the solver gives up on a proof."""

ORDERING = 1_000
"""Conflicts that it may spend on looking for the first solutions in lexicographic order."""

BREATH = 20_000
"""Conflicts after which the solver comes back for a moment, so that other threads can say how far it is."""


@cache
def learner() -> str:
    """The learning prover with the version of its package: “cadical153 of python-sat 1.9”."""
    return f"{SOLVER} of python-sat {version('python-sat')}"


class _OutOfBudget(Exception):
    pass


def decided(clauses: Clauses, known: Solution | None, nodes: int) -> Unique | Several | NoSolution | None:
    """The verdict on a problem of which the search has met at most the solution `known`, after `nodes` guesses."""
    from pysat.solvers import Solver

    with Solver(name=SOLVER, bootstrap_with=clauses.clauses) as solver, suppress(_OutOfBudget):
        return _verdict(_Questions(solver, clauses), known, nodes)
    return None


def _verdict(ask: _Questions, known: Solution | None, nodes: int) -> Unique | Several | NoSolution:
    first = known or ask.solution()
    if first is None:
        return NoSolution(nodes, Prover.LEARNING)
    other = ask.unless(first)
    if ask.solution([other]) is None:
        return Unique(first, nodes, Prover.LEARNING)
    ask.allow(ORDERING)
    with suppress(_OutOfBudget):
        if known is None:
            other = ask.unless(ask.least())
        ask.least([other])
    first, second = sorted(ask.met)[:2] if known is None else (known, min(ask.met))
    return Several(first, second, nodes, Prover.LEARNING)


class _Questions:
    """Questions to the solver. Raises _OutOfBudget where more conflicts would be needed than are `left`."""

    def __init__(self, solver: Solver, clauses: Clauses) -> None:
        self.solver = solver
        self.clauses = clauses
        self.variables = clauses.variables
        self.allow(CONFLICTS)
        self.met: set[Solution] = set()
        """All solutions met."""
        self._excluded: dict[int, Solution] = {}

    def allow(self, budget: int) -> None:
        """From now on, that many conflicts."""
        self.left = budget
        underway.begin(lambda: Effort(Unit.CONFLICTS, budget - self.left, budget))

    def solution(self, assumed: Sequence[int] = ()) -> Solution | None:
        """A solution under which the assumed literals hold; None if there is none."""
        answer = None
        while answer is None:
            before = self.solver.accum_stats()["conflicts"]
            self.solver.conf_budget(min(self.left, BREATH))
            answer = self.solver.solve_limited(assumptions=assumed)
            self.left -= self.solver.accum_stats()["conflicts"] - before
            if self.left <= 0:
                raise _OutOfBudget
        if not answer:
            return None
        found = self.clauses.solution(self.solver.get_model())
        self.met.add(found)
        return found

    def unless(self, solution: Solution) -> int:
        """A literal that, assumed, excludes a solution."""
        self.variables += 1
        self.solver.add_clause([-self.variables, *(-literal for literal in self.clauses.literals_of(solution))])
        self._excluded[self.variables] = solution
        return self.variables

    def least(self, assumed: Sequence[int] = ()) -> Solution:
        """The first solution in lexicographic order under the assumptions; one that keeps them has been met."""
        best = min(self.met.difference(self._excluded[literal] for literal in assumed))
        assumed = list(assumed)
        for cell, row in enumerate(self.clauses.literals):
            if row is None:
                continue
            while any(row[: best[cell] - 1]):
                less = self.solution([*assumed, *(-literal for literal in row[best[cell] - 1 :] if literal)])
                if less is None:
                    break
                best = less
            assumed.append(row[best[cell] - 1])
        return best
