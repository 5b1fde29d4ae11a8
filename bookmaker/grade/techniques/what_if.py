"""What-if: a candidate is tried in mind, singles are followed in rounds, and it falls where they contradict.

The shortest only: all candidates that fall after the least number of rounds are found, those that take longer wait.
A round places at once every single that is open at its start, so that its number depends on no order.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from bookmaker.grade.follow import Clash, follow
from bookmaker.grade.state import Ground, State, cells_on
from bookmaker.grade.technique import Finding, Technique


class WhatIf(Technique):
    """One candidate at a time; nothing is assumed twice."""

    name = "what-if"
    rung = 11

    def find(self, state: State) -> Iterator[Finding]:
        tries = [(cell, digit) for digit in state.ground.grid.digits for cell in cells_on(state.boards[digit])]
        least: int | None = None
        fallen: list[tuple[tuple[int, int], Clash]] = []
        for cell, digit in tries:
            clash = follow(state, cell, digit, least)
            if clash is None:
                continue
            if least is None or clash.rounds < least:
                least, fallen = clash.rounds, []
            fallen.append(((cell, digit), clash))
        for tried, clash in fallen:
            yield Finding(
                self.name, self.rung, (tried[0],), (tried,), partial(_words, state.ground, *tried, clash), clash.rounds
            )


def _words(ground: Ground, cell: int, digit: int, clash: Clash) -> str:
    return f"with {ground.symbol(digit)} in {ground.grid.name(cell)}, {clash.words()}"
