"""House sum arithmetic: what sticks out of, or into, one or two houses has a known sum.

In: the houses of a problem and the groups of cells (cages, sum lines) whose total is fixed. Out: further sums over
few cells that follow from them. A house's digits total n(n + 1)/2; groups inside are taken away, a group that
sticks out by fewer cells than it has inside is taken away too and its cells outside are counted back.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

MOST_CELLS = 4
"""Sums over more cells than this say too little to be worth keeping."""


@dataclass(frozen=True, slots=True)
class Total:
    """The digits in `plus` less those in `minus` come to `total`; both are sets of cells as boards (bit c: cell c)."""

    plus: int
    minus: int
    total: int


def house_sums(houses: Sequence[int], groups: Sequence[Total], digits: int) -> Iterator[Total]:
    """Sums that follow from full houses (as boards) and groups of known total; each once, none that is given."""
    seen = {(group.plus, group.minus) for group in groups}
    house_total = digits * (digits + 1) // 2
    known = 0
    for group in groups:
        known |= group.plus
    for board, count in _unions(houses, groups):
        if (board & ~known).bit_count() > MOST_CELLS:
            continue  # cells of no group are left over in any case
        found = _left_over(board, count * house_total, groups)
        if found is not None and (found.plus, found.minus) not in seen:
            seen.add((found.plus, found.minus))
            yield found


def _unions(houses: Sequence[int], groups: Sequence[Total]) -> Iterator[tuple[int, int]]:
    """Single houses, then pairs that share no cell and are tied together by a group that crosses from one to the other.

    With how many houses each is made of. Unions of three were tried: they cost more time than they saved.
    """
    for house in houses:
        yield house, 1
    for i, house in enumerate(houses):
        reach = 0
        for group in groups:
            if group.plus & house:
                reach |= group.plus
        for other in houses[i + 1 :]:
            if reach & other and not house & other:
                yield house | other, 2


def _left_over(union: int, total: int, groups: Sequence[Total]) -> Total | None:
    """What is left of the sum over some houses when known groups are taken away; None if it is replicate too widely."""
    plus, minus = union, 0
    for group in groups:
        cells = group.plus
        inside = cells & plus
        if not inside:
            continue
        outside = cells & ~union
        if not outside:
            if inside == cells:
                plus ^= inside
                total -= group.total
        elif not outside & minus and outside.bit_count() < inside.bit_count() and inside | outside == cells:
            plus ^= inside
            minus |= outside
            total -= group.total
    return Total(plus, minus, total) if plus.bit_count() + minus.bit_count() <= MOST_CELLS else None
