"""A what-if followed the plain way, with sets of digits: the measure for `bookmaker.grade.follow`, sharing none of it.

In: a puzzle, a position and a candidate. Out: after how many rounds it ends in a contradiction. Relations are read pair
by pair in their order and combinations by trying all arrangements; other marks are not read.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from itertools import permutations
from operator import contains

from bookmaker.puzzle.position import Position
from bookmaker.rules import houses_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.problem import Combination, Different, Relation

May = list[set[int]]
"""For each cell the digits that may stand there."""


def rounds_to_contradiction(puzzle: RuledPuzzle, position: Position, cell: int, digit: int) -> int | None:
    """Rounds of singles until a house has no place for a digit or a cell no digit; None if it comes to no such end."""
    cells, digits = puzzle.grid.cells, puzzle.grid.digits
    houses = [house.cells for house in houses_of(puzzle)]
    seen = _seen(puzzle, houses)
    may: May = [{d for d in digits if position.may(c, d)} for c in cells]
    written = {c for c in cells if position.placed >> c & 1}
    singles = {(cell, digit)}
    rounds = 0
    while singles:
        for c, d in singles:
            written.add(c)
            may[c] &= {d}
        for c, d in singles:
            for other in seen[c]:
                may[other].discard(d)
        _marks(puzzle, may)
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
        rounds += 1
    return None


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


def _marks(puzzle: RuledPuzzle, may: May) -> None:
    """Strike what the marks strike, each mark once."""
    for made in _constraints(puzzle):
        match made:
            case Relation(pairs, beside):
                for a, b in pairs:
                    together = [(x, y) for x in may[a] for y in may[b] if beside[x] >> (y - 1) & 1]
                    may[a], may[b] = {x for x, _ in together}, {y for _, y in together}
            case Combination(cells, sets):
                left = _arranged(tuple(frozenset(may[c]) for c in cells), sets)
                for c, fits in zip(cells, left, strict=True):
                    may[c] = set(fits)


@lru_cache(maxsize=10_000)
def _arranged(may: tuple[frozenset[int], ...], sets: frozenset[int]) -> list[set[int]]:
    """The digits of each cell in all arrangements of all sets."""
    either = set[int]().union(*may)
    digits = ({d for d in range(1, mask.bit_length() + 1) if mask >> (d - 1) & 1} for mask in sets)
    orders = (order for some in digits if some <= either for order in permutations(some))
    fit = [order for order in orders if all(map(contains, may, order))]
    return [{order[at] for order in fit} for at in range(len(may))]


def _constraints(puzzle: RuledPuzzle) -> Iterator[Different | Combination | Relation | object]:
    for rule in puzzle.rules:
        yield from rule.constraints(puzzle.grid)
