"""Propagators of constraints on a few cells, with a memory.

A `Local` maps the candidates of its cells to a mask of the candidates to keep. A search meets the same candidates
again and again, so each answer is kept in a table under them. `Filtered` serves all constraints that work on the masks
of their cells, given as a `Filter`; sums have a propagator of their own (`sums.py`).
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping, Sequence
from typing import Protocol, final

from bookmaker.solve.candidates import CandidateLayout, each_bit

MEMORY = 4096
"""How many answers one constraint remembers before it starts afresh."""

A_CELL = 6
"""The effort (`Meter.effort`) that a cell costs whenever an answer is worked out, fitted to times."""

FEW_PLACES = 4
"""A digit with more places than this hardly ever rules out anything from all of them."""


class Local(ABC):
    """The propagator of one constraint. `bits` are all candidates of its cells; `memory` maps those of them that are
    left to the mask of candidates to keep in the whole grid; `cost` is the effort (`Meter.effort`) to work one out."""

    __slots__ = ("bits", "cells", "cost", "layout", "memory")

    def __init__(self, layout: CandidateLayout, cells: Sequence[int], a_cell: int = A_CELL) -> None:
        self.layout = layout
        self.cells = tuple(cells)
        self.bits = layout.bits(cells)
        self.cost = a_cell * len(self.cells)
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
        """The candidates `here` that are left, and a mask of the candidates of the whole grid that these allow.

        None if the constraint cannot be met. It is sound (removes no candidate that some filling of its cells uses),
        complete on filled cells (None if each has one candidate and together they break it) and idempotent (finds
        nothing more in its own answer).
        """


class Filter(Protocol):
    """The part of a propagator that knows the constraint: which digits of the cells can be part of a filling."""

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        """The masks without digits that no filling uses, and the digits that every filling has in one of the cells.

        None if there is no filling. Sound, complete on filled cells and idempotent, as `Local.narrow` is.
        """


class Filtered(Local):
    """A filter applied to the cells."""

    __slots__ = ("_at", "_filter", "_placement")

    def __init__(
        self,
        layout: CandidateLayout,
        cells: Sequence[int],
        filter_: Filter,
        placement: Mapping[int, int],
        a_cell: int = A_CELL,
    ) -> None:
        super().__init__(layout, cells, a_cell)
        self._at = [layout.places[cell] for cell in cells]
        self._filter = filter_
        self._placement = placement

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
        """A needed digit stands in one of its places here: what all of these places rule out is ruled out."""
        layout, placement = self.layout, self._placement
        keep = layout.everything
        for digit in each_bit(needed):
            places = here & layout.lows << digit
            if places.bit_count() <= FEW_PLACES:
                by_any = 0
                for place in each_bit(places):
                    by_any |= placement[place]
                keep &= by_any
        return keep


def refilled(places: Sequence[int], before: Sequence[int], after: Sequence[int], here: int) -> int:
    """`here` with other masks at these places."""
    for at, was, now in zip(places, before, after, strict=True):
        if was != now:
            here ^= (was ^ now) << at
    return here
