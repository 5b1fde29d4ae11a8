"""Constraints that look at a few cells: each narrows its own cells and remembers what it found.

In: a `Filter` over some cells. Out: a `Local`, which turns the candidates of its cells into a mask of candidates to
keep. A search meets the same few candidates again and again, so the answer is kept in a table, keyed by them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Protocol

from bookmaker.solve.fields import Fields, each_bit

MEMORY = 4096
"""How many answers one constraint remembers before it starts afresh."""


FEW_PLACES = 4
"""A digit with more places than this hardly ever rules out anything from all of them."""


class Filter(Protocol):
    """What a kind of constraint knows: which digits of its cells can be part of a filling that keeps it."""

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        """The masks without hopeless digits, and the digits that stand somewhere in the cells in every filling.

        None if no filling is left. Never takes a digit that some filling needs, refuses a broken filling of masks
        of one digit each, and finds nothing more in its own answer.
        """


class Local:
    """A filter on its cells. `bits` are all candidates of the cells; `memory` maps those left to those to keep."""

    __slots__ = ("_at", "_filter", "_layout", "_writing", "bits", "cells", "memory")

    def __init__(self, layout: Fields, cells: Sequence[int], filter_: Filter, writing: Mapping[int, int]) -> None:
        self.cells = tuple(cells)
        self.bits = layout.bits(cells)
        self.memory: dict[int, int] = {}
        self._at = [layout.places[cell] for cell in cells]
        self._filter = filter_
        self._layout = layout
        self._writing = writing

    def work_out(self, here: int) -> int:
        """The mask of candidates to keep when `here` are the candidates of the cells; 0 for a contradiction."""
        full = self._layout.full
        before = [here >> at & full for at in self._at]
        answer = self._filter.narrow(before)
        if len(self.memory) >= MEMORY:
            self.memory.clear()
        if answer is None:
            self.memory[here] = 0
            return 0
        after, needed = answer
        gone = 0
        if after != before:
            for at, was, now in zip(self._at, before, after, strict=True):
                gone |= (was ^ now) << at
        left, keep = here ^ gone, self._layout.everything ^ gone
        if needed:
            keep &= self._pointed(left, needed)
        self.memory[here] = self.memory[left] = keep
        return keep

    def _pointed(self, here: int, needed: int) -> int:
        """A needed digit stands in one of its places here: what every one of them rules out can go."""
        layout, writing = self._layout, self._writing
        keep = layout.everything
        for digit in each_bit(needed):
            places = here & layout.lows << digit
            if places.bit_count() <= FEW_PLACES:
                by_any = 0
                for place in each_bit(places):
                    by_any |= writing[place]
                keep &= by_any
        return keep
