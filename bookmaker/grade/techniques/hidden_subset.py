"""Hidden pairs, triples and quads: as many digits as places left for them in a house leave no room for others there."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import ClassVar

from bookmaker.grade.state import Area, Ground, State
from bookmaker.grade.subsets import as_many
from bookmaker.grade.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on, mask_of
from bookmaker.puzzle.position import Candidate


class HiddenSubset(Technique):
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
                    words = partial(_words, ground, area, digits, where)
                    yield Finding(self.name, self.rung, where, removed, words, self.size - 2)


def _words(ground: Ground, area: Area, digits: tuple[int, ...], cells: tuple[int, ...]) -> str:
    symbols = ground.symbols(mask_of(digits))
    return f"in {area.name}, {symbols} can stand in {ground.names(cells)} only"


class HiddenPair(HiddenSubset):
    """Two digits."""

    name = "hidden pair"
    rung = 6
    size = 2


class HiddenTriple(HiddenSubset):
    """Three digits."""

    name = "hidden triple"
    rung = 7
    size = 3


class HiddenQuad(HiddenSubset):
    """Four digits."""

    name = "hidden quad"
    rung = 7
    size = 4
