"""Hidden pairs, triples and quads: as many digits as places left for them in a house leave no room for others there."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from itertools import combinations
from typing import ClassVar

from bookmaker.grade.state import Area, Ground, State
from bookmaker.grade.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on, mask_of


class HiddenSubset(Technique):
    """`size` digits of a house whose places are `size` cells together."""

    size: ClassVar[int]

    def find(self, state: State) -> Iterator[Finding]:
        size, ground = self.size, state.ground
        seen: set[frozenset[tuple[int, int]]] = set()
        for area in ground.areas:
            places = {digit: state.boards[digit] & area.board for digit in ground.grid.digits}
            open_digits = [digit for digit, board in places.items() if board]
            few = [digit for digit in open_digits if places[digit].bit_count() <= size]
            if len(open_digits) <= size or len(few) < size:
                continue
            for digits in combinations(few, size):
                together = 0
                for digit in digits:
                    together |= places[digit]
                if together.bit_count() != size:
                    continue
                removed = tuple(
                    (cell, digit)
                    for digit in open_digits
                    if digit not in digits
                    for cell in cells_on(places[digit] & together)
                )
                key = frozenset(removed)
                if removed and key not in seen:
                    seen.add(key)
                    cells = tuple(cells_on(together))
                    words = partial(_words, ground, area, digits, cells)
                    yield Finding(self.name, self.rung, cells, removed, words, size - 2)


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
