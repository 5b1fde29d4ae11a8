"""Hidden pairs, triples and quads: as many digits as places left for them in a house leave no room for others there."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import ClassVar

from bookmaker.logic.state import State
from bookmaker.logic.subsets import as_many
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import HiddenSubset


class SubsetTechnique(Technique):
    """`size` digits of a house whose places are `size` cells together."""

    size: ClassVar[int]

    def find(self, state: State) -> Iterator[Finding]:
        ground = state.ground
        seen: set[frozenset[Candidate]] = set()
        for area in ground.areas:
            places = {digit: board for digit in ground.grid.digits if (board := state.boards[digit] & area.board)}
            for digits, cells in as_many(places, self.size):
                others = [(digit, board & cells) for digit, board in places.items() if digit not in digits]
                removed = tuple((cell, digit) for digit, board in others for cell in cells_on(board))
                key = frozenset(removed)
                if removed and key not in seen:
                    seen.add(key)
                    where = tuple(cells_on(cells))
                    reason = partial(Reason, self.name, None, HiddenSubset(where, digits, area.ref))
                    yield Finding(self.rung, where, removed, reason, self.size - 2)


class HiddenPair(SubsetTechnique):
    """Two digits."""

    name = "hidden-pair"
    rung = Rung.PAIR
    size = 2


class HiddenTriple(SubsetTechnique):
    """Three digits."""

    name = "hidden-triple"
    rung = Rung.WHOLE
    size = 3


class HiddenQuad(SubsetTechnique):
    """Four digits."""

    name = "hidden-quad"
    rung = Rung.WHOLE
    size = 4
