"""As many things as places: the counting behind naked and hidden subsets and behind fish.

In: for each of some things the set of its places, as bits. Out: choices of things that take up as many places
together as there are things, so that nothing else stands there.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from itertools import combinations


def joined(sets: Iterable[int]) -> int:
    """The union of some sets."""
    union = 0
    for one in sets:
        union |= one
    return union


def as_many(places: Mapping[int, int], size: int) -> Iterator[tuple[tuple[int, ...], int]]:
    """Every choice of `size` things that have `size` places together, with these places."""
    few = [thing for thing, own in places.items() if own.bit_count() <= size]
    for chosen in combinations(few, size):
        taken = 0
        for thing in chosen:
            taken |= places[thing]
        if taken.bit_count() == size:
            yield chosen, taken
