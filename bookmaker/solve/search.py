"""The search: a problem in, its solutions out, one by one. Exact, deterministic, bounded by a node budget."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator

from bookmaker.solve import underway
from bookmaker.solve.candidates import each_bit
from bookmaker.solve.compile import compile_problem
from bookmaker.solve.problem import Problem
from bookmaker.solve.underway import Effort, Unit
from bookmaker.solve.verdict import Solution

REMEMBERED = 4
"""How many cells in which a guess failed are remembered: where the last one broke, the next is likely to break."""

FEW_CANDIDATES = 4
"""A cell with more candidates than this is left alone, though guesses failed in it."""


LOOKED = 16
"""After so many guesses, whoever asked for the search may look how far it has come."""


class OutOfBudget(Exception):
    """A search would need more nodes (positions in which a digit is guessed), or more effort, than it was given."""


class Search:
    """A depth-first search; `nodes` counts the guesses made so far. Raises OutOfBudget where it would need
    more than `budget` of them, or has spent the `effort` (`Meter.effort`).

    With `learns` it guesses again where guesses failed lately, which makes proofs shorter. Lists of solutions do
    without, so that their order depends on the problem and the `order` alone.
    """

    def __init__(
        self,
        problem: Problem,
        budget: int | None = None,
        effort: int | None = None,
        order: random.Random | None = None,
        learns: bool = False,
        look: Callable[[int], None] | None = None,
    ) -> None:
        self.engine, self.start = compile_problem(problem)
        self.budget = budget
        self.effort = effort
        self.order = order
        self.learns = learns
        self.look = look
        self.told = 0
        """The effort that `look` knows of."""
        self.failed: list[int] = []
        """The cells in which a guess failed, the latest first."""
        self.nodes = 0
        self.open: list[tuple[int, int, int]] = []
        """Where the budget has run out: states that are still to be searched, the next one last, each as it goes into
        `Engine.settle`. All further solutions lie in them."""

    def __iter__(self) -> Iterator[Solution]:
        underway.begin(lambda: Effort(Unit.GUESSES, self.nodes, self.budget))
        engine = self.engine
        layout, placement = engine.layout, engine.placement
        owners = layout.owners
        stack = [(self.start, layout.guards, 0, -1)]
        while stack:
            state, unplaced, seen, guess = stack.pop()
            settled = engine.settle(state, unplaced, seen)
            if settled is None:
                if self.learns and guess >= 0:
                    self._note(guess // layout.width)
                continue
            state, unplaced, seen = settled
            if not unplaced:
                yield layout.filled(state)
                continue
            choice = (self.failed and self._failed_lately(state)) or self.choose(state)
            if self._over():
                self.open = [*(entry[:3] for entry in stack), settled]
                raise OutOfBudget
            self.nodes += 1
            if self.look is not None and self.nodes % LOOKED == 0:
                self.look(self.spent - self.told)
                self.told = self.spent
            bits = list(each_bit(choice))
            if self.order is not None:
                self.order.shuffle(bits)
            stack.extend([(state & placement[bit], unplaced ^ owners[bit], seen, bit) for bit in bits])

    @property
    def spent(self) -> int:
        """The effort so far (`Meter.effort`)."""
        return self.engine.meter.effort(self.nodes, self.engine.layout.cells)

    def _over(self) -> bool:
        if self.effort is not None:
            return self.spent >= self.effort
        return self.budget is not None and self.nodes >= self.budget

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

    def choose(self, state: int) -> int:
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
        layout, placement, watched = self.engine.layout, self.engine.placement, self.engine.watched
        digits = layout.digits
        busiest = max(watched[at // layout.width] for at in each_bit(cells)) if self.engine.locals else 0
        best, least = 0, 2 * layout.cells * layout.width
        for at in each_bit(cells):
            if watched[at // layout.width] < busiest:
                continue
            pair = state & ((1 << at) - (1 << at - digits))
            high, low = pair.bit_length() - 1, (pair & -pair).bit_length() - 1
            left = (state & placement[high]).bit_count() + (state & placement[low]).bit_count()
            if left < least:
                best, least = pair, left
        return best


def solutions(
    problem: Problem,
    order: random.Random | None = None,
    budget: int | None = None,
    look: Callable[[int], None] | None = None,
) -> Iterator[Solution]:
    """Every solution, lazily. With a `random.Random` the branches are tried in a shuffled order, for makers.

    With a budget, those that so many guesses find. `look` is told now and then what effort (`Meter.effort`) was spent
    since it was told last, and may end the search by raising.
    """
    try:
        yield from Search(problem, budget, order=order, look=look)
    except OutOfBudget:
        return
