"""Constraints that look at a few cells: each narrows its own cells and remembers what it found.

A `Local` turns the candidates of its cells into a mask of candidates to keep. A search meets the same few candidates
again and again, so the answer is kept in a table, keyed by them. `Filtered` is the one for all constraints that are
stated digit by digit, as a `Filter`; sums have one of their own (`sums.py`).
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping, Sequence
from typing import Protocol, final

from bookmaker.solve.fields import Fields, each_bit

MEMORY = 4096
"""How many answers one constraint remembers before it starts afresh."""

FEW_PLACES = 4
"""A digit with more places than this hardly ever rules out anything from all of them."""


class Local(ABC):
    """A constraint on its cells. `bits` are all candidates of them; `memory` maps those left to those to keep."""

    __slots__ = ("bits", "cells", "layout", "memory")

    def __init__(self, layout: Fields, cells: Sequence[int]) -> None:
        self.layout = layout
        self.cells = tuple(cells)
        self.bits = layout.bits(cells)
        self.memory: dict[int, int] = {}

    @final
    def work_out(self, here: int) -> int:
        """The mask of candidates to keep when `here` are the candidates of the cells; 0 for a contradiction."""
        if len(self.memory) >= MEMORY:
            self.memory.clear()
        answer = self.narrow(here)
        if answer is None:
            self.memory[here] = 0
            return 0
        left, around = answer
        keep = around if left == here else around & (self.layout.everything ^ here ^ left)
        self.memory[here] = self.memory[left] = keep
        return keep

    @abstractmethod
    def narrow(self, here: int) -> tuple[int, int] | None:
        """The candidates of its cells that can be part of a filling that keeps it, and those of the whole grid that
        what is left lets stand.

        None if no filling is left. Never takes a digit that some filling needs, refuses a broken filling of cells
        that have one candidate each, and finds nothing more in its own answer.
        """


class Filter(Protocol):
    """What a kind of constraint knows: which digits of its cells can be part of a filling that keeps it."""

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        """The masks without hopeless digits, and the digits that stand somewhere in the cells in every filling.

        None if no filling is left. It keeps the promises of `Local.narrow`.
        """


class Filtered(Local):
    """A filter on its cells."""

    __slots__ = ("_at", "_filter", "_writing")

    def __init__(self, layout: Fields, cells: Sequence[int], filter_: Filter, writing: Mapping[int, int]) -> None:
        super().__init__(layout, cells)
        self._at = [layout.places[cell] for cell in cells]
        self._filter = filter_
        self._writing = writing

    def narrow(self, here: int) -> tuple[int, int] | None:
        full = self.layout.full
        before = [here >> at & full for at in self._at]
        answer = self._filter.narrow(before)
        if answer is None:
            return None
        after, needed = answer
        left = here if after == before else refilled(self._at, before, after, here)
        return left, self._pointed(left, needed) if needed else self.layout.everything

    def _pointed(self, here: int, needed: int) -> int:
        """A needed digit stands in one of its places here: what every one of them rules out can go."""
        layout, writing = self.layout, self._writing
        keep = layout.everything
        for digit in each_bit(needed):
            places = here & layout.lows << digit
            if places.bit_count() <= FEW_PLACES:
                by_any = 0
                for place in each_bit(places):
                    by_any |= writing[place]
                keep &= by_any
        return keep


def refilled(places: Sequence[int], before: Sequence[int], after: Sequence[int], here: int) -> int:
    """`here` with other masks at these places."""
    for at, was, now in zip(places, before, after, strict=True):
        if was != now:
            here ^= (was ^ now) << at
    return here
