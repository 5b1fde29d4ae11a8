"""House sum arithmetic: what sticks out of, or into, one to three houses has a known sum.

In: the houses of a problem and the groups of cells (cages, sum lines) whose total is fixed. Out: further sums over
few cells that follow from them. A house's digits total n(n + 1)/2; groups inside are taken away, a group that
sticks out by fewer cells than it has inside is taken away too and its cells outside are counted back.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

MOST_CELLS = 6
"""Sums over more cells than this say too little to be worth keeping."""


@dataclass(frozen=True, slots=True)
class Total:
    """The digits in `plus` less those in `minus` come to `total`; both are sets of cells as boards (bit c: cell c)."""

    plus: int
    minus: int
    total: int


def house_sums(houses: Sequence[int], groups: Sequence[Total], digits: int) -> Iterator[Total]:
    """Sums that follow from houses and groups, all as boards; each once, none that says more than one given."""
    seen = {(group.plus, group.minus) for group in groups}
    for union in _unions(houses, groups):
        found = _left_over(union, groups, digits)
        if (found.plus | found.minus).bit_count() <= MOST_CELLS and (found.plus, found.minus) not in seen:
            seen.add((found.plus, found.minus))
            yield found


@dataclass(frozen=True, slots=True)
class _Union:
    board: int
    houses: int


def _unions(houses: Sequence[int], groups: Sequence[Total]) -> Iterable[_Union]:
    """Up to three houses that share no cell and are tied together by groups that cross from one to the next."""
    reach = [_joined(house, groups) for house in houses]
    for size in (1, 2, 3):
        for chosen in combinations(range(len(houses)), size):
            board = 0
            tied = True
            for index in chosen:
                if board & houses[index] or (board and not reach[index] & board):
                    tied = False
                    break
                board |= houses[index]
            if tied:
                yield _Union(board, size)


def _joined(house: int, groups: Sequence[Total]) -> int:
    board = house
    for group in groups:
        if group.plus & house:
            board |= group.plus
    return board


def _left_over(union: _Union, groups: Sequence[Total], digits: int) -> Total:
    plus, minus = union.board, 0
    total = union.houses * digits * (digits + 1) // 2
    for group in groups:
        inside, outside = group.plus & union.board, group.plus & ~union.board
        if outside.bit_count() < inside.bit_count() and inside & ~plus == 0 and not outside & minus:
            plus ^= inside
            minus |= outside
            total -= group.total
    return Total(plus, minus, total)
