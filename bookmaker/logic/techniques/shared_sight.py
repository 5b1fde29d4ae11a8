"""A cell seen by all places of a digit in a group: wherever the digit stands there, the cell cannot hold it.

The group is a house, or a cage all of whose combinations need the digit. Two houses that cross are locked candidates
already; this finds what knights, cages and other marks let the places see besides.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from bookmaker.logic.state import State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.grid import HouseRef
from bookmaker.reasons import MarkRef, Reason, Rung
from bookmaker.reasons.patterns import SeenByAll


class SharedSight(Technique):
    """Up to four places, which a person can check one after the other."""

    name = "seen-by-all-places"
    rung = Rung.WHOLE
    most = 4

    def find(self, state: State) -> Iterator[Finding]:
        ground = state.ground
        for digit in ground.grid.digits:
            board = state.boards[digit]
            for where, group in self._groups(state, digit):
                places = board & group
                if not 2 <= places.bit_count() <= self.most or state.stood[digit] & group:
                    continue
                gone = board & ground.sees_all(places) & ~group
                if gone:
                    removed = tuple((cell, digit) for cell in cells_on(gone))
                    at = tuple(cells_on(places))
                    house, mark = (where, None) if isinstance(where, HouseRef) else (None, where)
                    reason = partial(Reason, self.name, mark, SeenByAll(digit, house, at))
                    yield Finding(self.rung, at, removed, reason, reach=1)

    def _groups(self, state: State, digit: int) -> Iterator[tuple[HouseRef | MarkRef, int]]:
        for area in state.ground.areas:
            yield area.ref, area.board
        for mark, board, sets in state.ground.cages:
            held = state.held(board)
            if all(chosen >> (digit - 1) & 1 for chosen in sets if not held & ~chosen):
                yield mark, board
