"""Lines of cells read by a finite automaton.

In: the automaton. Out: a filter that is exact for the line on its own: it goes along the line with the set of all
states reached so far (bit s for state s) and back with the set of states from which the line can still be accepted.
Images of sets of states are cached, for a search meets few different ones.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.solve.fields import each_bit, spread


class AcceptedLine:
    """The digits along the cells are accepted. `places[i]` tells which of the masks the i-th step reads, so that a
    line may visit a cell twice."""

    def __init__(
        self, steps: Sequence[Sequence[int]], accept: frozenset[int], places: Sequence[int], digits: int
    ) -> None:
        self._ahead: list[dict[int, int]] = [{} for _ in range(digits)]
        self._back: list[dict[int, int]] = [{} for _ in range(digits)]
        self._next = [[row[digit + 1] for row in steps] for digit in range(digits)]
        self._accept = spread(1, accept)
        self._places = tuple(places)
        self._returns = len(set(places)) < len(self._places)

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        reached = 1
        passed = []
        for place in self._places:
            passed.append(reached)
            after = 0
            for digit in each_bit(masks[place]):
                after |= self._image(reached, digit)
            reached = after
        live = reached & self._accept
        if not live:
            return None
        kept = list(masks)
        for place, here in zip(reversed(self._places), reversed(passed), strict=True):
            before, supported = 0, 0
            for digit in each_bit(masks[place]):
                source = self._source(live, digit) & here
                if source:
                    before |= source
                    supported |= 1 << digit
            kept[place] &= supported
            if not kept[place]:
                return None
            live = before
        if self._returns and kept != masks:
            return self.narrow(kept)  # what one visit to a cell rules out holds for the other visits too
        return kept, 0

    def _image(self, states: int, digit: int) -> int:
        """The states reached from some states by a digit."""
        image = self._ahead[digit].get(states)
        if image is None:
            step = self._next[digit]
            image = 0
            for state in each_bit(states):
                if step[state] >= 0:
                    image |= 1 << step[state]
            self._ahead[digit][states] = image
        return image

    def _source(self, states: int, digit: int) -> int:
        """The states from which a digit leads into some states."""
        source = self._back[digit].get(states)
        if source is None:
            source = 0
            for state, after in enumerate(self._next[digit]):
                if after >= 0 and states >> after & 1:
                    source |= 1 << state
            self._back[digit][states] = source
        return source
