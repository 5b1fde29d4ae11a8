"""Wings: a pivot whose every digit leads to the same digit in a wing, or two like pairs joined by a strong link."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from itertools import combinations
from typing import ClassVar

from bookmaker.logic.state import State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.grid import HouseRef
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import LinkedWing, PivotWing


def _pairs(masks: list[int]) -> dict[int, int]:
    """Cells with two candidates."""
    return {cell: mask for cell, mask in enumerate(masks) if mask.bit_count() == 2}


class PivotTechnique(Technique):
    """A pivot of `size` digits sees two cells of two; whatever it holds, one of the three cells holds one digit."""

    size: ClassVar[int]

    def find(self, state: State) -> Iterator[Finding]:
        ground, masks = state.ground, state.masks()
        pairs = _pairs(masks)
        for pivot, mask in enumerate(masks):
            if mask.bit_count() != self.size:
                continue
            near = [cell for cell in cells_on(ground.peers[pivot]) if self._leads_out(mask, pairs.get(cell, 0))]
            for one, other in combinations(near, 2):
                shared = pairs[one] & pairs[other]
                if shared.bit_count() != 1 or (self.size == 2 and shared & mask):
                    continue
                digit = shared.bit_length()
                gone = state.boards[digit] & ground.peers[one] & ground.peers[other]
                if shared & mask:  # the pivot itself may hold the digit
                    gone &= ground.peers[pivot]
                if gone:
                    removed = tuple((cell, digit) for cell in cells_on(gone))
                    reason = partial(Reason, self.name, None, PivotWing(pivot, (one, other), digit))
                    yield Finding(self.rung, (pivot, one, other), removed, reason, reach=1)

    def _leads_out(self, pivot: int, wing: int) -> bool:
        """Does a wing lack just those of its two digits that a pivot of this size leaves to it?"""
        return wing != 0 and (wing & ~pivot).bit_count() == 3 - self.size


class XYWing(PivotTechnique):
    """A pivot with two digits sees two cells that share one digit with it each, and a third with each other."""

    name = "xy-wing"
    rung = Rung.WING
    size = 2


class XYZWing(PivotTechnique):
    """A pivot with three digits sees two cells that hold two of them each; the third digit is common to all three."""

    name = "xyz-wing"
    rung = Rung.WING
    size = 3


class WWing(Technique):
    """Two cells with the same two digits see the ends of a strong link on one; the other digit is in one of them."""

    name = "w-wing"
    rung = Rung.WING

    def find(self, state: State) -> Iterator[Finding]:
        ground, pairs = state.ground, _pairs(state.masks())
        cells = sorted(pairs)
        for i, one in enumerate(cells):
            for other in cells[i + 1 :]:
                mask = pairs[one]
                if pairs[other] != mask or ground.peers[one] >> other & 1:
                    continue
                for digit in (mask.bit_length(), (mask & -mask).bit_length()):
                    joined = (mask & ~(1 << (digit - 1))).bit_length()
                    gone = state.boards[digit] & ground.peers[one] & ground.peers[other]
                    found = self._link(state, one, other, joined) if gone else None
                    if found:
                        house, link = found
                        removed = tuple((cell, digit) for cell in cells_on(gone))
                        reason = partial(Reason, self.name, None, LinkedWing((one, other), joined, house, link, digit))
                        yield Finding(self.rung, (one, other, *link), removed, reason, reach=1)

    def _link(self, state: State, one: int, other: int, digit: int) -> tuple[HouseRef, tuple[int, int]] | None:
        """A house with two places of the digit, one seen by each cell, neither being one of the cells; and these."""
        ground = state.ground
        ends = 1 << one | 1 << other
        for area in ground.areas:
            places = state.boards[digit] & area.board
            if places.bit_count() == 2 and not places & ends:
                first, second = cells_on(places)
                sees = ground.peers[first], ground.peers[second]
                if (sees[0] >> one & 1 and sees[1] >> other & 1) or (sees[1] >> one & 1 and sees[0] >> other & 1):
                    return area.ref, (first, second)
        return None
