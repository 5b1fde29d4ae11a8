"""A relation between pairs of cells, read on boards for the whole grid at once, until it says no more.

In: a `Relation` and boards. Out: the boards that go: wherever a digit has no partner left at the other end of a pair.
Whoever follows a thermometer sees its bounds from end to end at once, so one reading goes as far as the pairs lead;
that also makes it the same in whatever order they are written.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bookmaker.solve.problem import Relation

FEW = 3
"""With so few ways to have partners, digits are gathered one by one."""


@dataclass(frozen=True, slots=True)
class Partners:
    """Digits that have the same partners: so many from 1 upwards, so many from the top downwards, and the rest."""

    digits: tuple[int, ...]
    low: int
    high: int
    rest: tuple[int, ...]


class Pairs:
    """A relation with its pairs gathered by the shift that leads from one cell to the other."""

    __slots__ = ("_ends",)

    def __init__(self, relation: Relation) -> None:
        beside = tuple(relation.allowed)
        digits = range(1, len(beside))
        turned = (0, *(sum(1 << (a - 1) for a in digits if beside[a] >> (b - 1) & 1) for b in digits))
        ends: dict[tuple[int, ...], dict[int, int]] = {}
        for a, b in relation.pairs:
            for cell, other, masks in ((a, b, beside), (b, a, turned)):
                sides = ends.setdefault(masks, {})
                sides[other - cell] = sides.get(other - cell, 0) | 1 << cell
        self._ends = tuple((_partners(masks), tuple(sides.items())) for masks, sides in ends.items())
        """For each end of the pairs, or for both if they are alike: who stands beside whom, and cells by shift."""

    def strikes(self, boards: Sequence[int]) -> tuple[int, ...]:
        """The boards that go; empty if nothing does."""
        left = list(boards)
        moved = True
        while moved:
            moved = False
            for partners, sides in self._ends:
                upwards, downwards = [0], [0]
                if len(partners) > FEW:
                    for digit in range(1, len(left)):
                        upwards.append(upwards[-1] | left[digit])
                        downwards.append(downwards[-1] | left[-digit])
                for alike in partners:
                    partnered = upwards[alike.low] | downwards[alike.high]
                    for digit in alike.rest:
                        partnered |= left[digit]
                    lonely = 0
                    for shift, cells in sides:
                        lonely |= cells & ~(partnered >> shift if shift > 0 else partnered << -shift)
                    if lonely:
                        for digit in alike.digits:
                            if left[digit] & lonely:
                                left[digit] &= ~lonely
                                moved = True
        if not any(map(int.__ne__, boards, left)):
            return ()
        return tuple([board & ~stays for board, stays in zip(boards, left, strict=True)])

    def settled(self, boards: Sequence[int]) -> bool:
        """Is the relation kept however these boards are filled, so that it will never strike anything?"""
        for partners, sides in self._ends:
            for alike in partners:
                here = there = 0
                for digit in range(1, len(boards)):
                    if digit in alike.digits:
                        here |= boards[digit]
                    if digit > alike.low and digit <= len(boards) - 1 - alike.high and digit not in alike.rest:
                        there |= boards[digit]
                for shift, cells in sides:
                    if here & cells & (there >> shift if shift > 0 else there << -shift):
                        return False
        return True


def _partners(masks: Sequence[int]) -> tuple[Partners, ...]:
    """Digits by their partners; a digit that may stand beside any is never alone."""
    size = len(masks) - 1
    alike: dict[int, list[int]] = {}
    for digit in range(1, size + 1):
        alike.setdefault(masks[digit], []).append(digit)
    alike.pop((1 << size) - 1, None)
    found = []
    for mask, digits in alike.items():
        low = high = 0
        while low < size and mask >> low & 1:
            low += 1
        while high < size - low and mask >> (size - 1 - high) & 1:
            high += 1
        if len(alike) <= FEW:
            low = high = 0
        rest = tuple(digit for digit in range(low + 1, size - high + 1) if mask >> (digit - 1) & 1)
        found.append(Partners(tuple(digits), low, high, rest))
    return tuple(found)
