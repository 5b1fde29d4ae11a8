"""The search: a problem in, its solutions, a count or a verdict out. Exact, deterministic, bounded by a node budget."""

from __future__ import annotations

import random
from collections.abc import Iterator

from bookmaker.solve.problem import Problem
from bookmaker.solve.propagate import Contradiction, Propagator
from bookmaker.solve.verdict import NoSolution, Several, Solution, Tally, Undecided, Unique, Verdict

DEFAULT_BUDGET = 200_000
"""Search nodes (positions in which a digit was guessed) after which a proof gives up."""


class _OutOfBudget(Exception):
    pass


class _Search:
    """A depth-first search; `nodes` counts the guesses made so far."""

    def __init__(self, problem: Problem, budget: int | None = None, order: random.Random | None = None) -> None:
        self.propagator = Propagator(problem)
        self.budget = budget
        self.order = order
        self.nodes = 0

    def __iter__(self) -> Iterator[Solution]:
        stack = [self.propagator.start()]
        while stack:
            masks = stack.pop()
            try:
                self.propagator.narrow(masks)
            except Contradiction:
                continue
            choice = [cell for cell, mask in enumerate(masks) if mask & (mask - 1)]
            if not choice:
                yield tuple(mask.bit_length() for mask in masks)
                continue
            if self.budget is not None and self.nodes >= self.budget:
                raise _OutOfBudget
            self.nodes += 1
            cell = min(choice, key=lambda at: masks[at].bit_count())
            bits = [1 << d for d in range(masks[cell].bit_length()) if masks[cell] >> d & 1]
            if self.order is not None:
                self.order.shuffle(bits)
            stack.extend([*masks[:cell], bit, *masks[cell + 1 :]] for bit in bits)


def prove(problem: Problem, budget: int = DEFAULT_BUDGET) -> Verdict:
    """Look for two solutions. `Undecided` if more than `budget` guesses would be needed."""
    search = _Search(problem, budget)
    found: list[Solution] = []
    try:
        for solution in search:
            found.append(solution)
            if len(found) == 2:
                return Several(found[0], found[1], search.nodes)
    except _OutOfBudget:
        return Undecided(budget, found[0] if found else None)
    return Unique(found[0], search.nodes) if found else NoSolution(search.nodes)


def tally(problem: Problem, limit: int, budget: int | None = None) -> Tally:
    """Count solutions exactly, up to `limit`; `complete` is False where the limit or the budget stopped the count.

    A count that ends exactly at the limit is complete only if the search saw that there are no more.
    """
    count = 0
    try:
        for _ in _Search(problem, budget):
            if count == limit:
                return Tally(count, complete=False)
            count += 1
    except _OutOfBudget:
        return Tally(count, complete=False)
    return Tally(count, complete=True)


def solutions(problem: Problem, order: random.Random | None = None) -> Iterator[Solution]:
    """Every solution, lazily. With a `random.Random` the branches are tried in a shuffled order, for makers."""
    return iter(_Search(problem, order=order))
