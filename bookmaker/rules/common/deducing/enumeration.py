"""A whole shape tried out: every way to fill a few cells, as a patient solver lists them on paper.

In: a position, the cells in an order, and a check that says of the digits so far (a filling of the first cells)
whether they may go on; for all cells it says whether the filling is right. Cells that share a row, a column or a
region get different digits. Out: the candidates that stand in no filling at all, or nothing where there is too
much to try. It looks for one filling for each candidate rather than listing all, so loose shapes are quick too.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import lru_cache
from typing import TypeAlias

from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import NoFilling
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.candidates import sees

Fits: TypeAlias = Callable[[Sequence[int]], bool]
"""May these digits of a shape's first cells go on? For all its cells: is the filling right?"""

APART = "cells in one row, column or region hold different digits"
"""The hint where marks leave no digits that fit."""

CAP = 3000
"""Digits tried before a shape counts as too large to work through."""


def unsupported_candidates(
    position: Position, cells: Sequence[int], fits: Fits, cap: int = CAP
) -> tuple[Candidate, ...]:
    """The candidates (cell, digit) of these different cells that no filling holds; empty where `cap` runs out first.

    `fits` gets a list of 1 to len(cells) digits, which it must not keep or change. Results are remembered for each
    `fits`, so a rule does well to give the same one for the same question.
    """
    return _never_stand(position.grid, tuple(cells), tuple([position.masks[cell] for cell in cells]), fits, cap)


@lru_cache(maxsize=1024)
def _never_stand(
    grid: Grid, cells: tuple[int, ...], masks: tuple[int, ...], fits: Fits, cap: int
) -> tuple[Candidate, ...]:
    """Most steps change few cells, so the same shape with the same candidates comes up again and again."""
    search = _Search(grid, cells, masks, fits, cap)
    removed = []
    for index, cell in enumerate(cells):
        for digit in digits_in(masks[index]):
            if search.supported[index] >> (digit - 1) & 1:
                continue
            if search.finds(index, digit):
                continue
            if search.left < 0:
                return ()
            removed.append((cell, digit))
    return tuple(removed)


def can_be_filled(grid: Grid, cells: Sequence[int], fits: Fits, cap: int = CAP) -> bool:
    """Does the empty grid leave these different cells a filling? Yes, too, where `cap` runs out before one is found."""
    return _Search(grid, tuple(cells), (grid.all_digits,) * len(cells), fits, cap).finds_any()


def tried_out(
    position: Position, cells: Sequence[int], fits: Fits, mark: MarkRef, cap: int = CAP
) -> Iterator[Deduction]:
    """`unsupported_candidates` as a step: a whole shape enumerated."""
    removed = unsupported_candidates(position, cells, fits, cap)
    if removed:
        yield Deduction(Rung.WHOLE, len(cells), tuple(cells), removed, mark, NoFilling(tuple(cells)))


class _Search:
    """Depth-first over the cells in order, with one cell held at one digit."""

    def __init__(
        self,
        grid: Grid,
        cells: tuple[int, ...],
        masks: tuple[int, ...],
        fits: Fits,
        cap: int,
    ) -> None:
        self.masks = masks
        self.rivals = [[j for j, other in enumerate(cells) if sees(grid, cell, other)] for cell in cells]
        self.fits = fits
        self.left = cap
        self.supported = [0] * len(cells)

    def finds(self, index: int, digit: int) -> bool:
        """Is there a filling with this digit at this place? If so, note every candidate it supports."""
        bit = 1 << (digit - 1)
        options = list(self.masks)
        for rival in self.rivals[index]:
            options[rival] &= ~bit
        options[index] = bit
        filling = self._fill([], options)
        for at, placed in enumerate(filling or ()):
            self.supported[at] |= 1 << (placed - 1)
        return filling is not None

    def finds_any(self) -> bool:
        """Is there a filling, or no end to looking for one?"""
        return self._fill([], list(self.masks)) is not None or self.left < 0

    def _fill(self, digits: list[int], options: list[int]) -> list[int] | None:
        at = len(digits)
        if at == len(options):
            return digits
        open_here = options[at]
        for rival in self.rivals[at]:
            if rival < at:
                open_here &= ~(1 << (digits[rival] - 1))
        for digit in digits_in(open_here):
            self.left -= 1
            if self.left < 0:
                return None
            digits.append(digit)
            if self.fits(digits) and self._fill(digits, options) is not None:
                return digits
            digits.pop()
        return None
