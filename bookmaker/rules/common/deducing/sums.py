"""Sums a person can bound in the head: what some cells can add up to, and which digits can share out a total.

In: a position and cells, or sizes and totals. Out: limits that every filling keeps, in what digits are worth. They use
that cells in one row, column or region hold different digits: three cells of a row add up to at least 1 + 2 + 3.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import accumulate, combinations
from math import comb

from bookmaker.puzzle.bits import digits_in, highest, lowest, mask_of, span_mask
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position

MOST_WAYS = 50_000
"""Sets of digits that are gone through, as many as there are of nine of 18 digits."""


def too_many(available: int, count: int) -> bool:
    """Are there too many sets of `count` digits of a mask to go through all of them?"""
    return comb(available.bit_count(), count) > MOST_WAYS


@lru_cache(maxsize=4096)
def digit_sets(available: int, count: int, total: int) -> tuple[int, ...]:
    """The sets of `count` different digits of a mask that add up to `total` by their own numbers, as masks; not to be
    asked where there are `too_many`."""
    return tuple(mask_of(digits) for digits in combinations(digits_in(available), count) if sum(digits) == total)


def worth_from(grid: Grid, least: int, most: int) -> int:
    """The digits that are worth `least` to `most`, as a mask."""
    return span_mask(grid.raised(least, 1), min(grid.size, grid.raised(most, 1)))


def different_limits(count: int, grid: Grid) -> tuple[int, int]:
    """Least and greatest sum of `count` different digits."""
    less = grid.raised(0, count)
    return count * (count + 1) // 2 - less, count * (2 * grid.size + 1 - count) // 2 - less


def limits_by_count(worth: Sequence[int]) -> list[tuple[int, int]]:
    """Least and greatest sum of none of some different numbers, which rise, of one of them, of two and so on."""
    return list(zip(accumulate(worth, initial=0), accumulate(reversed(worth), initial=0), strict=True))


def open_limits(grid: Grid, cells: Sequence[int]) -> tuple[int, int]:
    """Limits of a sum over these cells in the empty grid."""
    return _limits(grid, cells, [1] * len(cells), [grid.size] * len(cells))


def sum_limits(position: Position, cells: Sequence[int]) -> tuple[int, int]:
    """Limits of a sum over these cells, each of which still has a candidate."""
    masks = [position.masks[cell] for cell in cells]
    return _limits(position.grid, cells, [lowest(mask) for mask in masks], [highest(mask) for mask in masks])


def _limits(grid: Grid, cells: Sequence[int], lows: Sequence[int], highs: Sequence[int]) -> tuple[int, int]:
    """The best of three ways to group the cells: by rows, by columns, by regions."""
    least, most = sum(lows), sum(highs)
    for home in grid.groupings:
        groups: dict[int, list[int]] = {}
        for index, cell in enumerate(cells):
            groups.setdefault(home[cell], []).append(index)
        least = max(least, sum(_rising(lows[i] for i in group) for group in groups.values()))
        top = grid.size + 1
        most = min(most, sum(len(g) * top - _rising(top - highs[i] for i in g) for g in groups.values()))
    return least - grid.raised(0, len(cells)), most - grid.raised(0, len(cells))


def _rising(lows: Iterable[int]) -> int:
    """Least sum of different numbers of which each has a least value of its own."""
    total = last = 0
    for low in sorted(lows):
        last = max(last + 1, low)
        total += last
    return total
