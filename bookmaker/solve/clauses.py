"""A problem as clauses: the one place where the primitives are translated for a SAT solver.

In: a problem and a state that its engine has propagated to a fixed point. Out: clauses, said one by one, and `Clauses`,
which has a variable for each candidate of a cell that has several; there are further ones inside sums, automata and
sets. What the state has decided is left out, so that the clauses shrink with what is known.

Encodings: all different, pairwise; relations, as support or as conflicts, whichever is shorter (I. Gent, “Arc
consistency in SAT”, ECAI 2002); sums by how great partial sums are at least (`sum_clauses.py`), and so the number of
digits that occur; automata and, read as such, counts by a variable for each state at each step (C.-G. Quimper and T.
Walsh, “Global grammar constraints”, CP 2006); a few sets by a variable each, many by a decision diagram over the digits
that occur. States that no filling of the candidates can pass are left out.
"""

from __future__ import annotations

from collections.abc import Callable, Container, Iterable, Mapping, Sequence
from itertools import combinations
from typing import assert_never

from bookmaker.solve.candidates import places_in
from bookmaker.solve.engine import Engine
from bookmaker.solve.problem import (
    Allowed,
    Automaton,
    Combination,
    Constraint,
    Count,
    Different,
    DifferentCount,
    Problem,
    Relation,
    Sum,
)
from bookmaker.solve.relations import forbidden, reverse
from bookmaker.solve.sum_clauses import Say, SumClauses
from bookmaker.solve.sums import in_parts
from bookmaker.solve.verdict import Solution

FEW_SETS = 24
"""Up to this number, each set that a combination allows gets a variable of its own."""

FEW_STATES = 12
"""Up to this number, the states of a step exclude each other pair by pair, which makes for stronger propagation."""

Moves = Callable[[int, int, Sequence[int]], dict[int, int]]
"""For the i-th cell of a line, a state before it and the places of digits: the states behind it, by place; a digit that
is refused has none."""


class Clauses:
    """The variables of a problem, whose clauses `say` is told.

    `literals[cell][d - 1]` is the variable of digit d at a cell, 0 where it is no candidate; None where the cell is
    decided. `variables` counts all variables, which are numbered from 1.
    """

    def __init__(self, problem: Problem, engine: Engine, state: int, say: Say) -> None:
        self._say = say
        self._layout = layout = engine.layout
        self._peers = engine.placement.peers
        self._digits = problem.digits
        self._masks = [state >> at & layout.full for at in layout.places]
        self.variables = 0
        self.literals = [self._of_cell(mask) if mask & mask - 1 else None for mask in self._masks]
        self._sums = SumClauses(say, self._new, self.literals, self._masks, problem.digits)
        for constraint in problem.constraints:
            self._add(constraint)

    def solution(self, model: Sequence[int]) -> Solution:
        """The digits of all cells in a model (all variables in order, each with its sign)."""
        digits = [mask.bit_length() for mask in self._masks]
        for cell, row in enumerate(self.literals):
            if row is not None:
                digits[cell] = next(digit for digit, literal in enumerate(row, 1) if literal and model[literal - 1] > 0)
        return tuple(digits)

    def literals_of(self, solution: Solution) -> list[int]:
        """The variables of the cells that hold in a solution."""
        return [row[digit - 1] for row, digit in zip(self.literals, solution, strict=True) if row is not None]

    def decided_in(self, state: int) -> list[int]:
        """The variables of the cells that have a single candidate in a state; 0 for one that no solution has."""
        full, found = self._layout.full, []
        for row, at in zip(self.literals, self._layout.places, strict=True):
            mask = state >> at & full
            if row is not None and not mask & mask - 1:
                found.append(row[mask.bit_length() - 1] if mask else 0)
        return found

    def state_of(self, solution: Solution) -> int:
        """The state that has the digits of a solution and no others."""
        return sum(1 << at + digit - 1 for at, digit in zip(self._layout.places, solution, strict=True))

    def _new(self) -> int:
        self.variables += 1
        return self.variables

    def _of_cell(self, mask: int) -> list[int]:
        """Variables for the candidates of a cell, of which exactly one holds."""
        row = [0] * self._digits
        for place in places_in(mask):
            row[place] = self._new()
        here = [literal for literal in row if literal]
        self._say(here)
        self._at_most_one(here)
        return row

    def _at_most_one(self, literals: Iterable[int]) -> None:
        for pair in combinations([-literal for literal in literals], 2):
            self._say(pair)

    def _add(self, constraint: Constraint) -> None:
        match constraint:
            case Allowed():
                pass  # in the state already
            case Different(cells):
                self._different(cells)
            case Relation(pairs, allowed):
                self._relation(pairs, allowed)
            case Combination(cells, sets):
                self._different(cells)
                self._one_of(cells, sets)
            case Sum(terms, least, most):
                self._sum(terms, least, most)
            case Count(cells, digits, least, most):
                meets, within = places_in(digits), range(least, most + 1)
                self._line(cells, lambda _, met, places: {place: met + (place in meets) for place in places}, within)
            case DifferentCount(cells, least, most):
                decided, places = self._open_to(tuple(dict.fromkeys(cells)))
                occurs, known = [self._any(here) for here in places.values()], decided.bit_count()
                self._sums.counted(occurs, least - known, most - known)
            case Automaton(cells, steps, accept, lean):
                steps, accept = lean() if lean else (steps, accept)
                rows = [row[1:] for row in steps]  # by place, no longer by digit
                self._line(
                    cells, lambda _, at, places: {place: to for place in places if (to := rows[at][place]) >= 0}, accept
                )
            case _ as never:
                assert_never(never)

    def _different(self, cells: Sequence[int]) -> None:
        """No digit twice; if there are as many cells as digits, every digit once."""
        rows = [row for cell in cells if (row := self.literals[cell]) is not None]
        full_house = len(cells) == self._digits
        for place in range(self._digits):
            here = [row[place] for row in rows if row[place]]
            if len(here) > 1:
                self._at_most_one(here)
            if full_house and here:
                self._say(here)

    def _relation(self, pairs: Iterable[tuple[int, int]], allowed: tuple[int, ...]) -> None:
        """Pairs with a decided cell are left out: the engine has drawn what follows."""
        back = reverse(allowed)
        tables = (allowed, forbidden(allowed)), (back, forbidden(back))
        for pair in pairs:
            conflicts: dict[tuple[int, int], None] = {}
            for (table, refused), (here, there) in zip(tables, (pair, pair[::-1]), strict=True):
                ours, theirs, mask = self.literals[here], self.literals[there], self._masks[there]
                if here == there or ours is None or theirs is None:
                    continue
                for place in places_in(self._masks[here]):
                    against = places_in(refused[place] & mask)
                    if len(against) > 2:
                        self._say([-ours[place], *(theirs[other] for other in places_in(table[place + 1] & mask))])
                    for other in against if len(against) <= 2 else ():
                        ends = (-ours[place], -theirs[other])
                        conflicts[ends if here < there else ends[::-1]] = None
            for ends in conflicts:
                self._say(ends)

    def _one_of(self, cells: Sequence[int], sets: Iterable[int]) -> None:
        """The digits of the cells, which differ, make one of the sets."""
        decided, places = self._open_to(cells)
        if not places:
            return
        open_to = decided | sum(1 << place for place in places)
        left = sorted({chosen & ~decided for chosen in sets if not chosen & ~open_to and not decided & ~chosen})
        if len(left) <= FEW_SETS:
            self._by_set(left, places)
        else:
            self._by_diagram(left, places)

    def _open_to(self, cells: Sequence[int]) -> tuple[int, dict[int, list[int]]]:
        """The digits of the decided cells, as a mask; of each other digit's place, its variables at the cells."""
        open_to = decided = 0
        rows = []
        for cell in cells:
            open_to |= self._masks[cell]
            if (row := self.literals[cell]) is None:
                decided |= self._masks[cell]
            else:
                rows.append(row)
        return decided, {place: [row[place] for row in rows if row[place]] for place in places_in(open_to & ~decided)}

    def _any(self, literals: Sequence[int]) -> int:
        """A variable that holds if one of the literals does."""
        variable = self._new()
        self._say([-variable, *literals])
        for literal in literals:
            self._say((-literal, variable))
        return variable

    def _by_set(self, sets: Sequence[int], places: Mapping[int, Sequence[int]]) -> None:
        chosen = {mask: self._new() for mask in sets}
        self._say(list(chosen.values()))
        for mask, variable in chosen.items():
            for place in places_in(mask):
                self._say((-variable, *places[place]))
        for place, literals in places.items():
            having = [variable for mask, variable in chosen.items() if mask >> place & 1]
            if len(having) < len(sets):
                for literal in literals:
                    self._say((-literal, *having))

    def _by_diagram(self, sets: Sequence[int], places: Mapping[int, Sequence[int]]) -> None:
        """Digit by digit, does it occur? A state is what is left of the sets that agree so far."""
        occurs = {place: self._any(literals) for place, literals in places.items()}
        states: dict[frozenset[int], int] = {frozenset(sets): 0}
        for place, variable in occurs.items():
            after: dict[frozenset[int], int] = {}
            for family, state in states.items():
                before = [-state] if state else []
                with_it = frozenset(mask ^ 1 << place for mask in family if mask >> place & 1)
                without = frozenset(mask for mask in family if not mask >> place & 1)
                for rest, literal in ((with_it, -variable), (without, variable)):
                    if rest and rest not in after:
                        after[rest] = self._new()
                    self._say([*before, literal, *([after[rest]] if rest else [])])
            states = after

    def _sum(self, terms: Iterable[tuple[int, int]], least: int, most: int) -> None:
        """What the decided cells add is taken off the limits; cells that differ go together."""
        factors: dict[int, int] = {}
        for cell, factor in terms:
            if self.literals[cell] is None:
                known = factor * self._masks[cell].bit_length()
                least, most = least - known, most - known
            else:
                factors[cell] = factors.get(cell, 0) + factor
        factors = {cell: factor for cell, factor in factors.items() if factor}
        if factors:
            self._sums.within(in_parts(self._layout, factors, self._peers), factors, least, most)

    def _line(self, cells: Sequence[int], moves: Moves, accepted: Container[int]) -> None:
        """The cells, read in order from state 0, end in an accepted state."""
        layers: list[dict[int, dict[int, int]]] = []
        reached = {0: None}
        for at, cell in enumerate(cells):
            places = places_in(self._masks[cell])
            layer = {state: moves(at, state, places) for state in reached}
            layers.append(layer)
            reached = dict.fromkeys([to for row in layer.values() for to in row.values()])
        good = {state for state in reached if state in accepted}
        alive = [good]  # from the end
        for layer in reversed(layers):
            good = {state for state, row in layer.items() if not good.isdisjoint(row.values())}
            alive.append(good)
        alive.reverse()
        here: Mapping[int, int] = {0: 0}  # the variable of each state; 0 for a state that is certain
        for cell, layer, ends in zip(cells, layers, alive[1:], strict=True):
            here = self._step(cell, here, layer, sorted(ends))

    def _step(
        self, cell: int, here: Mapping[int, int], layer: Mapping[int, Mapping[int, int]], ends: Sequence[int]
    ) -> dict[int, int]:
        """One step of a line: from the states before a cell to those behind it."""
        say = self._say
        behind = dict.fromkeys(ends, 0) if len(ends) == 1 else {state: self._new() for state in ends}
        row = self.literals[cell]
        places = places_in(self._masks[cell])
        unless = [(place, (-row[place],) if row else ()) for place in places]
        by_place: dict[int, list[int]] = {place: [] for place in places}
        by_end: dict[int, list[int]] = {}
        for state, variable in here.items():
            moves = layer[state]
            before = (-variable,) if variable else ()
            for place, other in unless:
                to = moves.get(place)
                after = None if to is None else behind.get(to)
                if to is None or after is None:
                    say(before + other)
                    continue
                by_place[place].append(variable)
                if after:
                    say((*before, *other, after))
                    by_end.setdefault(to, []).append(variable)
        if row:
            for place, support in by_place.items():
                if 0 not in support and len(support) < len(here):
                    say([-row[place], *support])
        for to, sources in by_end.items():
            support = list(dict.fromkeys(sources))
            if 0 not in support and len(support) < len(here):
                say([-behind[to], *support])
        if len(ends) > 1:
            say(list(behind.values()))
            if len(ends) <= FEW_STATES:
                self._at_most_one(behind.values())
        return behind
