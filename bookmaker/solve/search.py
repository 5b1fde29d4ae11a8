"""The search: a problem in, its solutions, a count or a verdict out. Exact, deterministic, bounded by a node budget."""

from __future__ import annotations

import random
from collections.abc import Iterator

from bookmaker.solve.compile import compile_problem
from bookmaker.solve.fields import each_bit
from bookmaker.solve.problem import Problem
from bookmaker.solve.verdict import NoSolution, Several, Solution, Tally, Undecided, Unique, Verdict

DEFAULT_BUDGET = 200_000
"""Search nodes (positions in which a digit was guessed) after which a proof gives up."""

REMEMBERED = 4
"""How many cells in which a guess failed are remembered: where the last one broke, the next is likely to break."""

FEW_CANDIDATES = 4
"""A cell with more candidates than this is left alone, though guesses failed in it."""


class _OutOfBudget(Exception):
    pass


class _Search:
    """A depth-first search; `nodes` counts the guesses made so far.

    With `learns` it guesses again where guesses failed lately, which makes proofs shorter. Lists of solutions do
    without, so that their order depends on the problem and the `order` alone.
    """

    def __init__(
        self, problem: Problem, budget: int | None = None, order: random.Random | None = None, learns: bool = False
    ) -> None:
        self.engine, self.start = compile_problem(problem)
        self.budget = budget
        self.order = order
        self.learns = learns
        self.failed: list[int] = []
        """The cells in which a guess failed, the latest first."""
        self.nodes = 0

    def __iter__(self) -> Iterator[Solution]:
        engine = self.engine
        layout, writing = engine.layout, engine.writing
        units = layout.units
        stack = [(self.start, layout.everything, 0, -1)]
        while stack:
            state, unwritten, seen, guess = stack.pop()
            settled = engine.settle(state, unwritten, seen)
            if settled is None:
                if self.learns and guess >= 0:
                    self._note(guess // layout.width)
                continue
            state, unwritten, seen = settled
            choice = (self.failed and self._failed_lately(state)) or self._choose(state)
            if not choice:
                yield layout.filled(state)
                continue
            if self.budget is not None and self.nodes >= self.budget:
                raise _OutOfBudget
            self.nodes += 1
            bits = list(each_bit(choice))
            if self.order is not None:
                self.order.shuffle(bits)
            stack.extend([(state & writing[bit], unwritten ^ units[bit], seen, bit) for bit in bits])

    def _note(self, cell: int) -> None:
        """A guess failed in the cell."""
        if cell in self.failed:
            self.failed.remove(cell)
        self.failed.insert(0, cell)
        del self.failed[REMEMBERED:]

    def _failed_lately(self, state: int) -> int:
        """The candidates of a cell that failed lately, the fewest first; 0 if all have one, or too many."""
        wholes = self.engine.layout.wholes
        best, fewest = 0, FEW_CANDIDATES + 1
        for cell in self.failed:
            here = state & wholes[cell]
            if here & here - 1 and here.bit_count() < fewest:
                best, fewest = here, here.bit_count()
        return best

    def _choose(self, state: int) -> int:
        """The candidates to branch on: those of a cell, or the places of a digit; 0 if every cell has one."""
        layout = self.engine.layout
        guards, lows, digits = layout.guards, layout.lows, layout.digits
        left = state & ((state | guards) - lows)
        cells = (left + guards - lows) & guards
        if not cells:
            return 0
        left &= (left | guards) - lows
        many = (left + guards - lows) & guards
        if cells != many:
            return self._two(state, cells ^ many)
        doubles = self.engine.houses.doubles(state)
        if doubles:
            return doubles
        while True:
            left &= (left | guards) - lows
            more = (left + guards - lows) & guards
            if more != many:
                guard = many ^ more
                guard &= -guard
                return state & (guard - (guard >> digits))
            many = more

    def _two(self, state: int, cells: int) -> int:
        """Among cells of two candidates, and of those that most constraints watch, one whose digits rule out most."""
        layout, writing, watched = self.engine.layout, self.engine.writing, self.engine.watched
        digits = layout.digits
        busiest = max(watched[at // layout.width] for at in each_bit(cells)) if self.engine.locals else 0
        best, least = 0, 2 * layout.cells * layout.width
        for at in each_bit(cells):
            if watched[at // layout.width] < busiest:
                continue
            pair = state & ((1 << at) - (1 << at - digits))
            high, low = pair.bit_length() - 1, (pair & -pair).bit_length() - 1
            left = (state & writing[high]).bit_count() + (state & writing[low]).bit_count()
            if left < least:
                best, least = pair, left
        return best


def prove(problem: Problem, budget: int = DEFAULT_BUDGET) -> Verdict:
    """Look for two solutions. `Undecided` if more than `budget` guesses would be needed."""
    search = _Search(problem, budget, learns=True)
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


def solutions(problem: Problem, order: random.Random | None = None, budget: int | None = None) -> Iterator[Solution]:
    """Every solution, lazily. With a `random.Random` the branches are tried in a shuffled order, for makers.

    With a budget, those that so many guesses find.
    """
    try:
        yield from _Search(problem, budget, order)
    except _OutOfBudget:
        return
