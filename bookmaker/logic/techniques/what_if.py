"""What-if: a candidate is tried in mind, singles and marks are followed in rounds, and it falls where these contradict.

The shortest only: all candidates that fall after the least number of rounds are found, those that take longer wait.
What a round is, and why its number depends on no order, is said in `follow.py`.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from bookmaker.logic.follow import Clash, Follower, follow
from bookmaker.logic.state import Ground, State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.whatif import Refuted


class WhatIf(Technique):
    """One candidate at a time; nothing is assumed twice."""

    name = "what-if"
    rung = Rung.WHAT_IF

    def find(self, state: State) -> Iterator[Finding]:
        tried = ((cell, digit) for digit in state.ground.grid.digits for cell in cells_on(state.boards[digit]))
        for pair, clash in Follower(state).nearest(tried):
            yield self._finding(state.ground, pair, clash)

    def find_for(self, state: State, removed: tuple[Candidate, ...]) -> Iterator[Finding]:
        """The candidate tried for itself, however long it takes."""
        for tried in removed:
            if clash := follow(state, *tried):
                yield self._finding(state.ground, tried, clash)

    def _finding(self, ground: Ground, tried: Candidate, clash: Clash) -> Finding:
        reason, again = partial(_reason, self.name, ground, tried, clash), partial(_again, *tried, clash)
        return Finding(self.rung, (tried[0],), (tried,), reason, clash.rounds, again=again)


def _again(cell: int, digit: int, clash: Clash, other: State) -> bool:
    return follow(other, cell, digit, clash.rounds) == clash


def _reason(name: str, ground: Ground, tried: Candidate, clash: Clash) -> Reason:
    return Reason(name, None, Refuted(tried, clash.rounds, clash.end(ground)))
