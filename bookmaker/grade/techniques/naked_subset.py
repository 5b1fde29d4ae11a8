"""Naked pairs, triples and quads: as many cells of a house as digits left for them keep those digits to themselves."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from itertools import combinations
from typing import ClassVar

from bookmaker.grade.state import Area, Ground, State
from bookmaker.grade.technique import Finding, Technique


class NakedSubset(Technique):
    """`size` cells of a house whose candidates are `size` digits together."""

    size: ClassVar[int]

    def find(self, state: State) -> Iterator[Finding]:
        size = self.size
        masks = state.masks()
        seen: set[frozenset[tuple[int, int]]] = set()
        for area in state.ground.areas:
            empty = [cell for cell in area.cells if masks[cell]]
            small = [cell for cell in empty if masks[cell].bit_count() <= size]
            if len(empty) <= size or len(small) < size:
                continue
            for cells in combinations(small, size):
                together = 0
                for cell in cells:
                    together |= masks[cell]
                if together.bit_count() != size:
                    continue
                removed = tuple(
                    (cell, digit)
                    for cell in empty
                    if cell not in cells and masks[cell] & together
                    for digit in state.ground.grid.digits
                    if masks[cell] & together & 1 << (digit - 1)
                )
                key = frozenset(removed)
                if removed and key not in seen:
                    seen.add(key)
                    words = partial(_words, state.ground, area, cells, together)
                    yield Finding(self.name, self.rung, cells, removed, words, size - 2)


def _words(ground: Ground, area: Area, cells: tuple[int, ...], together: int) -> str:
    return f"in {area.name}, {ground.names(cells)} share {ground.symbols(together)} among themselves"


class NakedPair(NakedSubset):
    """Two cells."""

    name = "naked pair"
    rung = 6
    size = 2


class NakedTriple(NakedSubset):
    """Three cells."""

    name = "naked triple"
    rung = 7
    size = 3


class NakedQuad(NakedSubset):
    """Four cells."""

    name = "naked quad"
    rung = 7
    size = 4
