"""Digits with two places in a house: what both places rule out can go.

In: houses and consequences. Out: `PairedDigits`, for problems in which a digit rules out more than houses say (a
knight's move away, the digits next to it): there, two places of a digit often have more in common than a house.
"""

from __future__ import annotations

from bookmaker.solve.consequences import Consequences
from bookmaker.solve.fields import each_bit
from bookmaker.solve.houses import Houses

MEMORY = 65536
"""How many pairs of places are remembered before starting afresh."""


class PairedDigits:
    """What two places of a digit have in common is worked out once for each two places."""

    def __init__(self, houses: Houses, writing: Consequences) -> None:
        self._houses = houses
        self._writing = writing
        self._spans: dict[tuple[int, int], int] = {}
        self._memory: dict[int, int] = {}

    def used(self, state: int, done: tuple[int, ...]) -> tuple[int, tuple[int, ...]]:
        """The state without what pairs rule out, but for those already `done` (by family); with all that are done."""
        families = self._houses.pairs(state)
        for index, (pairs, already) in enumerate(zip(families, done, strict=True)):
            for start in each_bit(pairs ^ (pairs & already)):
                span = self._spans.get((index, start))
                if span is None:
                    span = self._spans[index, start] = self._houses.span(index, start)
                places = state & span
                keep = self._memory.get(places)
                state &= self._kept_by_any(places) if keep is None else keep
        return state, tuple([pairs | already for pairs, already in zip(families, done, strict=True)])

    def _kept_by_any(self, places: int) -> int:
        keep = 0
        for bit in each_bit(places):
            keep |= self._writing[bit]
        if len(self._memory) >= MEMORY:
            self._memory.clear()
        self._memory[places] = keep
        return keep
