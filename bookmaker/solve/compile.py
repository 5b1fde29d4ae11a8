"""From a problem to an engine: every constraint goes to the kind of reasoning that handles it best.

In: a `Problem`. Out: an `Engine` (`engine.py`) with its first state. What depends on the houses alone is kept for
the next problem on the same grid.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import combinations

from bookmaker.solve.arithmetic import Total, house_sums
from bookmaker.solve.automata import AcceptedLine
from bookmaker.solve.consequences import Consequences, Forbidding, add_peers, peers_of
from bookmaker.solve.counts import CountWithin
from bookmaker.solve.engine import Engine
from bookmaker.solve.fields import Fields, each_bit, fields
from bookmaker.solve.houses import Houses, gather
from bookmaker.solve.local import Filter, Local
from bookmaker.solve.problem import Allowed, Automaton, Combination, Count, Different, Problem, Relation, Sum
from bookmaker.solve.sets import OneOfTheSets, set_of_sets
from bookmaker.solve.sums import sum_within
from bookmaker.solve.sweeps import Beside, follows_from_writing, reverse, sweep


class _Frame:
    """What the houses of a problem make of a grid: folding, peers and consequences. Shared between problems."""

    def __init__(self, layout: Fields, groups: tuple[tuple[int, ...], ...]) -> None:
        self.impossible = any(len(cells) > layout.digits or len(set(cells)) < len(cells) for cells in groups)
        self.full = tuple(cells for cells in groups if len(cells) == layout.digits)
        self.partial = tuple(cells for cells in groups if 2 < len(cells) < layout.digits)
        self.houses: Houses = gather(layout, self.full)
        self.peers = peers_of(layout, groups)
        self.writing = Consequences(layout, self.peers)


@lru_cache(maxsize=64)
def _frame(layout: Fields, groups: tuple[tuple[int, ...], ...]) -> _Frame:
    return _Frame(layout, groups)


def compile_problem(problem: Problem) -> tuple[Engine, int]:
    """The engine for a problem, and the state it starts from (0 if the problem contradicts itself on sight)."""
    return _Compiler(problem).engine()


class _Compiler:
    def __init__(self, problem: Problem) -> None:
        self.layout = fields(problem.cells, problem.digits)
        self.state = self.layout.everything
        self.different: list[tuple[int, ...]] = []
        self.relations: dict[Beside, list[tuple[int, int]]] = {}
        self.others: list[Combination | Sum | Count | Automaton] = []
        for constraint in problem.constraints:
            match constraint:
                case Allowed(cells, digits):
                    self._allow(cells, digits)
                case Different(cells):
                    self.different.append(cells)
                case Relation(pairs, beside):
                    self._relate(pairs, beside)
                case _:
                    self.others.append(constraint)

    def engine(self) -> tuple[Engine, int]:
        layout = self.layout
        frame = _frame(layout, tuple(self.different))
        self.peers: Sequence[int] = frame.peers
        writing = frame.writing
        if self.relations or self.others:
            writing = self._own_consequences(frame)
        quick: list[Local] = []
        if self.others:
            quick = [Local(layout, cells, filter_, writing) for cells, filter_ in self._filters(frame)]
        any_set = OneOfTheSets(layout.digits, -1)
        quick.extend(Local(layout, cells, any_set, writing) for cells in frame.houses.lone)
        quick.extend(Local(layout, cells, any_set, writing) for cells in frame.partial if not self._held(cells, frame))
        sweeps = [
            sweep(layout, pairs, beside) for beside, pairs in self.relations.items() if not follows_from_writing(beside)
        ]
        engine = Engine(layout, frame.houses, writing, tuple(sweeps), tuple(quick))
        return engine, 0 if frame.impossible else self.state

    def _allow(self, cells: Iterable[int], digits: int) -> None:
        layout = self.layout
        for cell in cells:
            self.state &= ~((layout.full & ~digits) << cell * layout.width)

    def _relate(self, pairs: Iterable[tuple[int, int]], beside: Beside) -> None:
        """Collect the pairs of one relation; a cell related to itself is just a cell with fewer digits."""
        kept = self.relations.setdefault(beside, [])
        for a, b in pairs:
            if a == b:
                self._allow((a,), sum(1 << d - 1 for d in range(1, len(beside)) if beside[d] >> d - 1 & 1))
            else:
                kept.append((a, b))

    def _own_consequences(self, frame: _Frame) -> Consequences:
        layout = self.layout
        peers = list(frame.peers)
        add_peers(layout, peers, (c.cells for c in self.others if isinstance(c, Combination)))
        related: list[list[Forbidding]] = [[] for _ in range(layout.cells)]
        for beside, pairs in self.relations.items():
            back = reverse(beside)
            for a, b in pairs:
                related[a].append((b, beside))
                related[b].append((a, back))
        self.peers = peers
        return Consequences(layout, peers, related)

    def _filters(self, frame: _Frame) -> Iterable[tuple[Sequence[int], Filter]]:
        digits = self.layout.digits
        totals: list[Total] = []
        for constraint in self.others:
            match constraint:
                case Combination(cells, sets):
                    if len(set(cells)) < len(cells):
                        self.state = 0
                    yield cells, OneOfTheSets(digits, set_of_sets(sets))
                    sums = {_digit_sum(mask) for mask in sets}
                    if len(sums) == 1:
                        totals.append(Total(_board(cells), 0, sums.pop()))
                case Sum(terms, least, most):
                    factors: dict[int, int] = {}
                    for cell, factor in terms:
                        factors[cell] = factors.get(cell, 0) + factor
                    yield self._sum_filter(factors, least, most)
                    if least == most and all(factor == 1 for factor in factors.values()):
                        totals.append(Total(_board(factors), 0, least))
                case Count(cells, mask, least, most):
                    once = tuple(dict.fromkeys(cells))
                    yield once, CountWithin(mask, least, most, tuple(cells.count(cell) for cell in once))
                case Automaton(cells, steps, accept):
                    once = tuple(dict.fromkeys(cells))
                    yield once, AcceptedLine(steps, accept, [once.index(cell) for cell in cells], digits)
        if totals:
            for found in house_sums([_board(cells) for cells in frame.full], totals, digits):
                factors = dict.fromkeys(each_bit(found.plus), 1) | dict.fromkeys(each_bit(found.minus), -1)
                yield self._sum_filter(factors, found.total, found.total)

    def _sum_filter(self, factors: dict[int, int], least: int, most: int) -> tuple[Sequence[int], Filter]:
        """A sum; where its cells differ from each other and count alike, exactly by the sets of digits."""
        digits, cells = self.layout.digits, tuple(factors)
        if len(cells) <= digits and set(factors.values()) == {1} and self._all_peers(cells):
            return cells, OneOfTheSets(digits, _sets_with_sum(digits, len(cells), least, most))
        return cells, sum_within(tuple(factors.values()), least, most, digits)

    def _all_peers(self, cells: Sequence[int]) -> bool:
        width = self.layout.width
        return all(self.peers[a] >> b * width & 1 for a, b in combinations(cells, 2))

    def _held(self, cells: Sequence[int], frame: _Frame) -> bool:
        """Does some full house hold all these cells, so that their being different adds nothing?"""
        return any(set(cells) <= set(house) for house in frame.full)


def _board(cells: Iterable[int]) -> int:
    board = 0
    for cell in cells:
        board |= 1 << cell
    return board


def _digit_sum(mask: int) -> int:
    return sum(bit + 1 for bit in each_bit(mask))


@lru_cache(maxsize=4096)
def _sets_with_sum(digits: int, size: int, least: int, most: int) -> int:
    """All sets of so many digits with a sum within limits, as a set of sets."""
    return set_of_sets(
        frozenset(
            sum(1 << digit - 1 for digit in chosen)
            for chosen in combinations(range(1, digits + 1), size)
            if least <= sum(chosen) <= most
        )
    )
