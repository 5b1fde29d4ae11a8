"""Counts of solutions, without listing them where the puzzle falls into parts.

In: a problem. Out: a `Tally`. Wherever the undecided cells fall into groups that no constraint joins, the groups are
counted one by one and the counts multiplied; a group that comes back with the same candidates is not counted again
(as in counting models of formulas: R. Bayardo and J. Pehoushek, “Counting models using connected components”, AAAI
2000). Bounded by a budget of guesses: where it runs out, the count is a lower bound.
"""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.solve import underway
from bookmaker.solve.candidates import each_bit
from bookmaker.solve.problem import Problem
from bookmaker.solve.search import Search
from bookmaker.solve.underway import Effort, Unit
from bookmaker.solve.verdict import Tally

BUDGET = 120_000
"""Guesses after which a count says “at least”."""

EFFORT = 6_000_000
"""Effort (`Meter.effort`) after which it says so too: four seconds where guesses are dear, as in sums of cells that
may be alike."""

FEW_CELLS = 40
"""With more undecided cells than this, they hardly ever fall into groups, and are not looked at for it."""

REMEMBERED = 100_000
"""Groups whose counts are remembered."""


def tally(problem: Problem, limit: int, budget: int = BUDGET, effort: int = EFFORT) -> Tally:
    """Count solutions exactly, up to `limit`; `complete` is False where the limit, the `budget` of guesses or the
    `effort` stopped the count."""
    counter = _Counter(problem, budget, effort)
    count, complete = counter.count(limit)
    return Tally(limit, complete=False) if count > limit else Tally(count, complete)


class _Counter:
    def __init__(self, problem: Problem, budget: int, effort: int) -> None:
        self.effort = effort
        self.search = Search(problem)
        self.engine, self.start = self.search.engine, self.search.start
        self.budget = self.left = budget
        self.known: dict[int, int] = {}
        """Counts by the candidates of a group and of the cells, decided ones too, that local constraints join to it."""
        layout = self.engine.layout
        self.joined = [0] * layout.cells
        """For each cell, the candidates of all cells that a local constraint joins to it."""
        for local in self.engine.locals:
            for cell in local.cells:
                self.joined[cell] |= local.bits

    def count(self, enough: int) -> tuple[int, bool]:
        """Solutions, and whether these are all; it may stop when there are more than `enough`."""
        layout, budget = self.engine.layout, self.left
        underway.begin(lambda: Effort(Unit.GUESSES, budget - self.left, budget))
        return self._below(self.start, layout.guards, 0, layout.everything, enough)

    def _below(self, state: int, unplaced: int, seen: int, group: int, enough: int) -> tuple[int, bool]:
        """Fillings of the undecided cells in `group`, a mask of whole cells."""
        settled = self.engine.settle(state, unplaced, seen)
        if settled is None:
            return 0, True
        state, unplaced, seen = settled
        undecided = self._undecided(state) & group
        if not undecided:
            return 1, True
        product, complete = 1, True
        for part in self._parts(state, undecided):
            key = state & self._looked_at(part)
            count, whole = self.known.get(key, 0), True
            if not count:
                count, whole = self._branches(state, unplaced, seen, part, enough)
                if whole and count <= enough:
                    if len(self.known) >= REMEMBERED:
                        self.known.clear()
                    self.known[key] = count
            product, complete = product * count, complete and whole
            if not product:
                return 0, whole
        return product, complete

    def _branches(self, state: int, unplaced: int, seen: int, part: int, enough: int) -> tuple[int, bool]:
        """The same for cells that hang together: one guess after the other in one of them."""
        layout, placement = self.engine.layout, self.engine.placement
        total = 0
        for bit in each_bit(self._choice(state, part)):
            if self.left <= 0 or self._effort() >= self.effort:
                return total, False
            self.left -= 1
            count, whole = self._below(
                state & placement[bit], unplaced ^ layout.owners[bit], seen, part, enough - total
            )
            total += count
            if not whole or total > enough:
                return total, False
        return total, True

    def _effort(self) -> int:
        return self.engine.meter.effort(self.budget - self.left, self.engine.layout.cells)

    def _choice(self, state: int, part: int) -> int:
        """The candidates to branch on: those that the search would take, or else the fewest of a cell of the group."""
        choice = self.search.choose(state)
        if not choice & ~part:
            return choice
        return min((state & cell for cell in self.engine.layout.wholes if cell & part), key=int.bit_count)

    def _looked_at(self, part: int) -> int:
        """The candidates of a group and those that local constraints join to it."""
        layout = self.engine.layout
        looked_at = part
        for at in each_bit(part & layout.lows):
            looked_at |= self.joined[at // layout.width]
        return looked_at

    def _undecided(self, state: int) -> int:
        """All of the cells that have several candidates."""
        layout = self.engine.layout
        several = state & ((state | layout.guards) - layout.lows)
        guards = (several + layout.guards - layout.lows) & layout.guards
        return guards - (guards >> layout.digits)

    def _parts(self, state: int, undecided: int) -> Iterator[int]:
        """The undecided cells in groups that no constraint joins."""
        layout, placement = self.engine.layout, self.engine.placement
        if (undecided & layout.lows).bit_count() > FEW_CELLS:
            yield undecided
            return
        while undecided:
            part, edge = 0, undecided & -undecided
            while edge:
                cell = (edge & -edge).bit_length() // layout.width
                whole = layout.wholes[cell]
                part |= whole
                touched = self.joined[cell]
                for bit in each_bit(state & whole):
                    touched |= layout.everything ^ placement[bit]
                edge = (edge | touched & state) & undecided & ~part
            yield part
            undecided &= ~part
