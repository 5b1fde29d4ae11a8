"""A what-if followed the plain way, with sets of digits: the measure for `bookmaker.logic.follow`, sharing none of it.

In: a puzzle, a position and a candidate. Out: after how many rounds it ends in a contradiction. A digit stays in a cell
of a mark if some filling of the mark's cells has it there; such fillings are looked for anew for each cell and digit.
Relations are read pair by pair until no pair says anything more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import lru_cache
from itertools import permutations
from operator import contains
from typing import TypeAlias

from bookmaker.puzzle.position import Position
from bookmaker.rules import houses_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.problem import (
    Automaton,
    Combination,
    Constraint,
    Count,
    Different,
    DifferentCount,
    Relation,
    Sum,
)

May: TypeAlias = list[set[int]]
"""For each cell the digits that may stand there."""

Held: TypeAlias = tuple[frozenset[int], ...]
"""The same for the cells of a mark, in their order."""


def rounds_to_contradiction(puzzle: RuledPuzzle, position: Position, cell: int, digit: int) -> int | None:
    """Rounds of singles and marks until a house has no place for a digit or a cell no digit; None if there is none."""
    cells, digits = puzzle.grid.cells, puzzle.grid.digits
    houses = [house.cells for house in houses_of(puzzle)]
    seen = _seen(puzzle, houses)
    may: May = [{d for d in digits if position.may(c, d)} for c in cells]
    written = {c for c in cells if position.placed >> c & 1}
    singles = {(cell, digit)}
    rounds = 0
    while True:
        for c, d in singles:
            written.add(c)
            may[c] &= {d}
        for c, d in singles:
            for other in seen[c]:
                may[other].discard(d)
        struck = _marks(puzzle, may)
        if not all(may):
            return rounds
        singles = {(c, d) for c in cells if c not in written and len(may[c]) == 1 for d in may[c]}
        for house in houses:
            for d in digits:
                places = [c for c in house if d in may[c]]
                if not places:
                    return rounds
                if len(places) == 1 and places[0] not in written:
                    singles.add((places[0], d))
        if not singles and not struck:
            return None
        rounds += 1


def _seen(puzzle: RuledPuzzle, houses: list[tuple[int, ...]]) -> list[set[int]]:
    """For each cell those that cannot hold the same digit."""
    groups = list(houses)
    for made in _constraints(puzzle):
        match made:
            case Different(cells) | Combination(cells, _):
                groups.append(cells)
            case Relation(pairs, beside) if not any(beside[d] >> (d - 1) & 1 for d in puzzle.grid.digits):
                groups += pairs
    return [{other for group in groups if c in group for other in group} - {c} for c in puzzle.grid.cells]


def _marks(puzzle: RuledPuzzle, may: May) -> bool:
    """Strike what the marks strike, all of them reading the same; is it anything?"""
    before = [set(digits) for digits in may]
    for made in _constraints(puzzle):
        match made:
            case Relation():
                cells, left = tuple(range(len(may))), _related(made, before)
            case Combination(cells, sets):
                left = _arranged(_held(before, cells), sets)
            case Sum(terms, _, _):
                cells = tuple(dict.fromkeys(cell for cell, _ in terms))
                left = _fillable(made, _held(before, cells))
            case Count(cells, _, _, _) | DifferentCount(cells, _, _) | Automaton(cells, _, _):
                left = _fillable(made, _held(before, cells))
            case _:
                continue
        for cell, fits in zip(cells, left, strict=True):
            may[cell] &= fits
    return may != before


def _held(may: May, cells: tuple[int, ...]) -> Held:
    return tuple(frozenset(may[cell]) for cell in cells)


def _related(made: Relation, may: May) -> May:
    """Pair by pair, from the first again as long as one says something; a relation that only asks to differ is left to
    what cells see."""
    left = [set(digits) for digits in may]
    digits = range(1, len(made.allowed))
    if all(made.allowed[d] >> (e - 1) & 1 == (d != e) for d in digits for e in digits):
        return left
    moved = True
    while moved:
        moved = False
        for a, b in made.pairs:
            together = [(x, y) for x in left[a] for y in left[b] if made.allowed[x] >> (y - 1) & 1]
            fits = {x for x, _ in together}, {y for _, y in together}
            moved |= fits != (left[a], left[b])
            left[a], left[b] = fits
    return left


@lru_cache(maxsize=10_000)
def _arranged(held: Held, sets: frozenset[int]) -> list[set[int]]:
    """The digits of each cell in all arrangements of all sets."""
    either = set[int]().union(*held)
    digits = ({d for d in range(1, mask.bit_length() + 1) if mask >> (d - 1) & 1} for mask in sets)
    orders = (order for some in digits if some <= either for order in permutations(some))
    fit = [order for order in orders if all(map(contains, held, order))]
    return [{order[at] for order in fit} for at in range(len(held))]


@lru_cache(maxsize=50_000)
def _fillable(made: Sum | Count | DifferentCount | Automaton, held: Held) -> list[set[int]]:
    """The digits of each cell with which the others can be filled so that the mark is kept."""
    return [
        {digit for digit in digits if _can(made, (*held[:at], frozenset({digit}), *held[at + 1 :]))}
        for at, digits in enumerate(held)
    ]


def _can(made: Sum | Count | DifferentCount | Automaton, held: Held) -> bool:
    """Is there a filling? What was met so far - a total, a number, a state - is gathered cell by cell."""
    match made:
        case Sum(terms, least, most):
            factors: dict[int, int] = {}
            for cell, factor in terms:
                factors[cell] = factors.get(cell, 0) + factor
            by_place = list(factors.values())
            return any(least <= total <= most for total in _met(0, held, lambda at, i, d: at + by_place[i] * d))
        case Count(_, mask, least, most):
            return any(least <= number <= most for number in _met(0, held, lambda at, _, d: at + (mask >> (d - 1) & 1)))
        case DifferentCount(_, least, most):
            return any(least <= met.bit_count() <= most for met in _met(0, held, lambda at, _, d: at | 1 << d))
        case Automaton(_, steps, accept):
            return any(at in accept for at in _met(0, held, lambda at, _, d: -1 if at < 0 else steps[at][d]))


def _met(start: int, held: Held, step: Callable[[int, int, int], int]) -> set[int]:
    met = {start}
    for place, digits in enumerate(held):
        met = {step(at, place, digit) for at in met for digit in digits}
    return met


def _constraints(puzzle: RuledPuzzle) -> Iterator[Constraint]:
    for rule in puzzle.rules:
        yield from rule.constraints(puzzle.grid)
