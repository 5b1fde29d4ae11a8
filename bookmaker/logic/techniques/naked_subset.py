"""Naked pairs, triples and quads: as many cells of a house as digits left for them keep those digits to themselves."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import ClassVar

from bookmaker.logic.state import State
from bookmaker.logic.subsets import as_many
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import NakedSubset


class SubsetTechnique(Technique):
    """`size` cells of a house whose candidates are `size` digits together."""

    size: ClassVar[int]

    def find(self, state: State) -> Iterator[Finding]:
        ground, masks = state.ground, state.masks()
        seen: set[frozenset[Candidate]] = set()
        for area in ground.areas:
            empty = {cell: masks[cell] for cell in area.cells if masks[cell]}
            for cells, digits in as_many(empty, self.size):
                others = [(cell, mask & digits) for cell, mask in empty.items() if cell not in cells]
                removed = tuple((cell, digit) for cell, mask in others for digit in digits_in(mask))
                key = frozenset(removed)
                if removed and key not in seen:
                    seen.add(key)
                    reason = partial(Reason, self.name, None, NakedSubset(cells, digits_in(digits), area.ref))
                    yield Finding(self.rung, cells, removed, reason, self.size - 2)


class NakedPair(SubsetTechnique):
    """Two cells."""

    name = "naked-pair"
    rung = Rung.PAIR
    size = 2


class NakedTriple(SubsetTechnique):
    """Three cells."""

    name = "naked-triple"
    rung = Rung.WHOLE
    size = 3


class NakedQuad(SubsetTechnique):
    """Four cells."""

    name = "naked-quad"
    rung = Rung.WHOLE
    size = 4
