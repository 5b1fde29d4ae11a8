"""Locked candidates: a digit's places in one house all lie in another, so it stands nowhere else there."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from bookmaker.logic.state import State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import Locked


class LockedCandidates(Technique):
    """Both directions (from box to line, from line to box), and any two houses that share two cells or more."""

    name = "locked-candidates"
    rung = Rung.SIMPLE

    def find(self, state: State) -> Iterator[Finding]:
        ground = state.ground
        for digit in ground.grid.digits:
            board = state.boards[digit]
            if not board:
                continue
            for home, other, shared in ground.crossings:
                inside = board & shared
                if inside and inside & (inside - 1) and not board & home.board & ~shared:
                    gone = board & other.board & ~shared
                    if gone:
                        removed = tuple((cell, digit) for cell in cells_on(gone))
                        at = tuple(cells_on(inside))
                        reason = partial(Reason, self.name, None, Locked(digit, home.ref, other.ref, at))
                        yield Finding(self.rung, at, removed, reason)
