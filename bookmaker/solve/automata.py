"""Lines of cells read by a finite automaton.

In: the automaton. Out: a filter that is exact for the line on its own: it goes along the line with the set of all
states reached so far (bit s for state s) and back with the set of states from which the line can still be accepted.
What a set of states leads to is remembered, and lines with the same automaton remember together, for a search, and a
book, meets few different ones.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from typing import TypeVar

from bookmaker.solve.candidates import each_bit, places_in, replicate

MEMORY = 8192
"""How many answers of one kind an automaton remembers before it starts afresh."""


@lru_cache(maxsize=64)
def accepted_line(
    steps: tuple[tuple[int, ...], ...], accept: frozenset[int], places: tuple[int, ...], digits: int
) -> AcceptedLine:
    """The filter of an automaton: one for all lines of one shape that it reads."""
    return AcceptedLine(steps, accept, places, digits)


class AcceptedLine:
    """The digits along the cells are accepted. `places[i]` tells which of the masks the i-th step reads, so that a
    line may visit a cell twice."""

    def __init__(
        self, steps: Sequence[Sequence[int]], accept: frozenset[int], places: Sequence[int], digits: int
    ) -> None:
        into = [[0] * digits for _ in steps]
        out_of = [[0] * digits for _ in steps]
        for state, row in enumerate(steps):
            for digit, after in enumerate(row[1:]):
                if after >= 0:
                    into[state][digit] = 1 << after
                    out_of[after][digit] |= 1 << state
        self._into = _Unions(into)
        self._out_of = _Unions(out_of)
        self._accept = replicate(1, accept)
        self._places = tuple(places)
        self._returns = len(set(places)) < len(self._places)
        self._ahead: dict[tuple[int, int], int] = {}
        self._back: dict[tuple[int, int, int], tuple[int, int]] = {}

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        reached = 1
        passed = []
        for place in self._places:
            passed.append(reached)
            step = reached, masks[place]
            after = self._ahead.get(step)
            reached = self._reach(step) if after is None else after
        live = reached & self._accept
        if not live:
            return None
        kept = list(masks)
        for place, here in zip(reversed(self._places), reversed(passed), strict=True):
            step_back = live, here, masks[place]
            live, supported = self._back.get(step_back) or self._support(step_back)
            kept[place] &= supported
            if not kept[place]:
                return None
        if self._returns and kept != masks:
            return self.narrow(kept)  # what one visit to a cell rules out holds for the other visits too
        return kept, 0

    def _reach(self, step: tuple[int, int]) -> int:
        """The states reached from some states by any digit of a mask."""
        states, mask = step
        row = self._into.of(states)
        after = 0
        for digit in places_in(mask):
            after |= row[digit]
        return _remembered(self._ahead, step, after)

    def _support(self, step: tuple[int, int, int]) -> tuple[int, int]:
        """Which of the states `here` lead into `live` by a digit of a mask, and which of its digits do."""
        live, here, mask = step
        row = self._out_of.of(live)
        before = supported = 0
        for digit in places_in(mask):
            source = row[digit] & here
            if source:
                before |= source
                supported |= 1 << digit
        return _remembered(self._back, step, (before, supported))


class _Unions:
    """For a set of states and each digit, the union of what the states of the set have for the digit."""

    def __init__(self, table: Sequence[Sequence[int]]) -> None:
        self._shifts = range(0, len(table) * len(table[0]), len(table))
        self._states = (1 << len(table)) - 1
        self._table = table
        self._joined: dict[int, int] = {}
        """All digits of a state side by side in one whole number, so that one union joins them all."""
        self._known: dict[int, tuple[int, ...]] = {}

    def of(self, states: int) -> tuple[int, ...]:
        row = self._known.get(states)
        if row is None:
            union = 0
            for state in each_bit(states):
                union |= self._joined.get(state) or self._join(state)
            row = tuple([union >> shift & self._states for shift in self._shifts])
            _remembered(self._known, states, row)
        return row

    def _join(self, state: int) -> int:
        joined = 0
        for mask, shift in zip(self._table[state], self._shifts, strict=True):
            joined |= mask << shift
        self._joined[state] = joined
        return joined


_Key = TypeVar("_Key")
_Answer = TypeVar("_Answer")


def _remembered(memory: dict[_Key, _Answer], key: _Key, answer: _Answer) -> _Answer:
    if len(memory) >= MEMORY:
        memory.clear()
    memory[key] = answer
    return answer
