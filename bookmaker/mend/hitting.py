"""Smallest sets that meet every one of some sets.

In: sets as whole numbers with one bit for each member. Out: all sets of the smallest possible size that share a member
with each of them. Exact: sizes are tried from a lower bound on, the set with the fewest open members first.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from bookmaker.puzzle.bits import cells_on


def hitting_sets(sets: Sequence[int], size: int, stop: Callable[[], bool] = lambda: False) -> Iterator[int]:
    """All sets of exactly this size at most, none of whose members could be spared, that hit every set; each once.

    Ends early where `stop` says so.
    """
    yield from _extended(0, 0, list(dict.fromkeys(sets)), size, stop)


def lower_bound(sets: Sequence[int]) -> int:
    """How many of the sets can be chosen so that no two share a member: so many members are needed at least."""
    taken, count = 0, 0
    for one in sorted(sets, key=int.bit_count):
        if not one & taken:
            taken |= one
            count += 1
    return count


def _extended(chosen: int, barred: int, left: list[int], size: int, stop: Callable[[], bool]) -> Iterator[int]:
    if not left:
        yield chosen
        return
    if size <= 0 or stop() or lower_bound([one & ~barred for one in left]) > size:
        return
    fewest = min((one & ~barred for one in left), key=int.bit_count)
    for member in cells_on(fewest):
        bit = 1 << member
        yield from _extended(chosen | bit, barred, [one for one in left if not one & bit], size - 1, stop)
        barred |= bit
