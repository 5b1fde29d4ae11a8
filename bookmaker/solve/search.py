"""The search: a problem in, its solutions, a count or a verdict out. Exact, deterministic, bounded by a node budget."""

from __future__ import annotations

import random
from collections.abc import Iterator

from bookmaker.solve.compile import compile_problem
from bookmaker.solve.engine import Position
from bookmaker.solve.fields import each_bit
from bookmaker.solve.problem import Problem
from bookmaker.solve.verdict import NoSolution, Several, Solution, Tally, Undecided, Unique, Verdict

DEFAULT_BUDGET = 200_000
"""Search nodes (positions in which a digit was guessed) after which a proof gives up."""

TRIAL = 200
"""Search nodes after which a proof starts again, with the start worked through more thoroughly."""

FORGETTING = 1.02
"""A failed guess counts this much more than the one before it, so that old failures fade."""


class _OutOfBudget(Exception):
    pass


class _Search:
    """A depth-first search that learns where guesses fail; `nodes` counts the guesses made so far."""

    def __init__(self, problem: Problem, order: random.Random | None = None) -> None:
        self.engine, state = compile_problem(problem)
        self.root = self.engine.settle(self.engine.start(state))
        self.order = order
        self.nodes = 0
        self.limit: int | None = None
        self.failures = [1.0] * problem.cells
        self.weight = 1.0

    def solutions(self, budget: int | None = None) -> Iterator[Solution]:
        """Every solution; raises _OutOfBudget when `nodes` reaches the budget first (`limit`, which may be lifted)."""
        self.limit = budget
        engine = self.engine
        layout, width = engine.layout, engine.layout.width
        stack: list[tuple[Position | None, int]] = [(self.root, -1)]
        while stack:
            position, cell = stack.pop()
            if position is not None and cell >= 0:
                position = engine.settle(position)
            if position is None:
                if cell >= 0:
                    self.failures[cell] += self.weight
                    self.weight *= FORGETTING
                continue
            choice = self._choose(position.state)
            if not choice:
                yield layout.filled(position.state)
                continue
            if self.limit is not None and self.nodes >= self.limit:
                raise _OutOfBudget
            self.nodes += 1
            bits = list(each_bit(choice))
            if self.order is not None:
                self.order.shuffle(bits)
            stack.extend((engine.write(position, bit), bit // width) for bit in bits)

    def work_through_start(self) -> None:
        """Try every candidate of the start once: what all candidates of a cell lead to holds."""
        engine, root = self.engine, self.root
        for whole in engine.layout.wholes:
            if root is None:
                break
            here = root.state & whole
            if here & here - 1:
                together = 0
                for bit in each_bit(here):
                    after = engine.settle(engine.write(root, bit))
                    if after is not None:
                        together |= after.state
                if together != root.state:
                    root = engine.settle(root._replace(state=together))
        self.root = root

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
            guard = self._most_telling(cells ^ many)
            return state & (guard - (guard >> digits))
        places = self.engine.houses.pair(state)
        if places:
            return places
        while True:
            left &= (left | guards) - lows
            more = (left + guards - lows) & guards
            if more != many:
                guard = self._most_telling(many ^ more)
                return state & (guard - (guard >> digits))
            many = more

    def _most_telling(self, cells: int) -> int:
        """Among cells of one size, as guard bits, the one whose guesses failed most and bear on most of the others."""
        layout, peers, failures = self.engine.layout, self.engine.writing.peers, self.failures
        best, most = 0, 0.0
        for guard in each_bit(cells):
            cell = guard // layout.width
            partners = (peers[cell] << layout.digits & cells).bit_count()
            weight = failures[cell] * (1 + partners)
            if weight > most:
                best, most = guard, weight
        return 1 << best


def prove(problem: Problem, budget: int = DEFAULT_BUDGET) -> Verdict:
    """Look for two solutions. `Undecided` if more than `budget` guesses would be needed."""
    search = _Search(problem)
    found: list[Solution] = []
    for limit in (TRIAL, budget) if budget > TRIAL else (budget,):
        found.clear()
        try:
            for solution in search.solutions(limit):
                found.append(solution)
                if len(found) == 2:
                    return Several(found[0], found[1], search.nodes)
        except _OutOfBudget:
            if limit < budget:
                search.work_through_start()
        else:
            return Unique(found[0], search.nodes) if found else NoSolution(search.nodes)
    return Undecided(budget, found[0] if found else None)


def tally(problem: Problem, limit: int, budget: int | None = None) -> Tally:
    """Count solutions exactly, up to `limit`; `complete` is False where the limit or the budget stopped the count.

    A count that ends exactly at the limit is complete only if the search saw that there are no more.
    """
    count = 0
    try:
        for _ in _Search(problem).solutions(budget):
            if count == limit:
                return Tally(count, complete=False)
            count += 1
    except _OutOfBudget:
        return Tally(count, complete=False)
    return Tally(count, complete=True)


def solutions(problem: Problem, order: random.Random | None = None) -> Iterator[Solution]:
    """Every solution, lazily. With a `random.Random` the branches are tried in a shuffled order, for makers.

    Where the first is long in coming, the start is worked through, as a proof would do: there may be none at all.
    """
    search = _Search(problem, order)
    found = search.solutions(TRIAL)
    try:
        first = next(found, None)
    except _OutOfBudget:
        search.work_through_start()
        yield from search.solutions()
        return
    if first is not None:
        search.limit = None
        yield first
        yield from found
