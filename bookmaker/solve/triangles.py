"""Two relations that meet in a cell, between cells that must differ: three dots in a row, a bar round a corner.

In: a cell and two neighbours of it. Out: a `Triangle`, exact for the three cells together, where sweeping the pairs
one by one lets through that the outer cells would be equal.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from bookmaker.solve.fields import Fields, each_bit
from bookmaker.solve.local import MEMORY


class Triangle:
    """Three cells; what they ask of each other is in the consequences of writing a digit in one of them."""

    __slots__ = ("_elsewhere", "_middle", "_outer", "_writing", "bits", "cells", "memory")

    def __init__(self, layout: Fields, middle: int, outer: tuple[int, int], writing: Mapping[int, int]) -> None:
        self.cells = (middle, *outer)
        self.bits = layout.bits(self.cells)
        self.memory: dict[int, int] = {}
        self._elsewhere = layout.everything ^ self.bits
        self._middle = layout.wholes[middle]
        self._outer = (layout.wholes[outer[0]], layout.wholes[outer[1]])
        self._writing = writing

    def work_out(self, here: int) -> int:
        """The mask of candidates to keep when `here` are the candidates of the cells; 0 for a contradiction."""
        writing = self._writing
        first, second = self._outer
        left = 0
        for middle in each_bit(here & self._middle):
            beside = here & writing[middle]
            for one in each_bit(beside & first):
                others = beside & writing[one] & second
                if others:
                    left |= 1 << middle | 1 << one | others
        keep = left | self._elsewhere if left else 0
        if len(self.memory) >= MEMORY:
            self.memory.clear()
        self.memory[here] = self.memory[left] = keep
        return keep


def triangles(
    layout: Fields, pairs: Iterable[tuple[int, int]], peers: Sequence[int], writing: Mapping[int, int]
) -> Iterator[Triangle]:
    """Every two pairs that share a cell and whose other cells must differ."""
    beside: dict[int, list[int]] = {}
    for a, b in dict.fromkeys(pairs):
        beside.setdefault(a, []).append(b)
        beside.setdefault(b, []).append(a)
    for middle, near in beside.items():
        outer = sorted(set(near))
        for i, one in enumerate(outer):
            for other in outer[i + 1 :]:
                if peers[one] >> layout.places[other] & 1:
                    yield Triangle(layout, middle, (one, other), writing)
