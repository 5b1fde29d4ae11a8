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

from bookmaker.solve.fields import each_bit, spread

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
        columns = [[row[digit + 1] for row in steps] for digit in range(digits)]
        self._into = [[1 << after if after >= 0 else 0 for after in column] for column in columns]
        self._from = [_sources(column) for column in columns]
        self._accept = spread(1, accept)
        self._places = tuple(places)
        self._returns = len(set(places)) < len(self._places)
        self._ahead: dict[tuple[int, int], int] = {}
        self._back: dict[tuple[int, int, int], tuple[int, int]] = {}
        self._images: dict[tuple[int, int], int] = {}
        self._origins: dict[tuple[int, int], int] = {}

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
        after = 0
        for digit in each_bit(mask):
            after |= self._gathered(self._images, self._into, states, digit)
        return _remembered(self._ahead, step, after)

    def _support(self, step: tuple[int, int, int]) -> tuple[int, int]:
        """Which of the states `here` lead into `live` by a digit of a mask, and which of its digits do."""
        live, here, mask = step
        before = supported = 0
        for digit in each_bit(mask):
            source = self._gathered(self._origins, self._from, live, digit) & here
            if source:
                before |= source
                supported |= 1 << digit
        return _remembered(self._back, step, (before, supported))

    def _gathered(self, known: dict[tuple[int, int], int], table: list[list[int]], states: int, digit: int) -> int:
        """The union of what a table has for a digit and each of some states."""
        union = known.get((states, digit))
        if union is None:
            row = table[digit]
            union = 0
            for state in each_bit(states):
                union |= row[state]
            _remembered(known, (states, digit), union)
        return union


_Key = TypeVar("_Key")
_Answer = TypeVar("_Answer")


def _remembered(memory: dict[_Key, _Answer], key: _Key, answer: _Answer) -> _Answer:
    if len(memory) >= MEMORY:
        memory.clear()
    memory[key] = answer
    return answer


def _sources(column: Sequence[int]) -> list[int]:
    """For each state the states from which a digit leads into it, as bits."""
    sources = [0] * len(column)
    for state, after in enumerate(column):
        if after >= 0:
            sources[after] |= 1 << state
    return sources
