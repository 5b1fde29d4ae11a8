"""Counts of solutions."""

from __future__ import annotations

from bookmaker.solve.problem import Problem
from bookmaker.solve.search import OutOfBudget, Search
from bookmaker.solve.verdict import Tally


def tally(problem: Problem, limit: int, budget: int | None = None) -> Tally:
    """Count solutions exactly, up to `limit`; `complete` is False where the limit or the budget stopped the count.

    A count that ends exactly at the limit is complete only if the search saw that there are no more.
    """
    count = 0
    try:
        for _ in Search(problem, budget):
            if count == limit:
                return Tally(count, complete=False)
            count += 1
    except OutOfBudget:
        return Tally(count, complete=False)
    return Tally(count, complete=True)
