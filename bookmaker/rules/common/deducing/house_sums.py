"""House sum arithmetic: every row, column and region adds up to the same, so what sticks out of known sums is known.

In: blocks of cells with known totals that share no cell. Out: steps for the few cells of a house (or of two or three
rows or columns side by side) that no whole block covers, and for the few that blocks covering a house put outside it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

from bookmaker.puzzle.grid import Grid, HouseRef
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import LeftOver
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.enumeration import unsupported_candidates

FEW = 3
"""The most cells left over that a person works with."""


@dataclass(frozen=True, slots=True)
class Block:
    """Cells and what they add up to."""

    cells: tuple[int, ...]
    total: int


@dataclass(frozen=True, slots=True)
class _LeftOver:
    """A few cells whose sum the arithmetic gives, the blocks it takes, and how many sums must be held together."""

    claim: LeftOver
    mark: MarkRef
    held: int

    @property
    def cells(self) -> tuple[int, ...]:
        return self.claim.cells

    @property
    def total(self) -> int:
        return abs(self.claim.total - self.claim.within)


def steps(position: Position, blocks: tuple[Block, ...], kind: str) -> Iterator[Deduction]:
    """Steps from all houses; the blocks are marks of a rule's `kind`."""
    for left in _left_over(position.grid, blocks, kind):
        if all(position.masks[cell].bit_count() == 1 for cell in left.cells):
            continue
        removed = unsupported_candidates(
            position, left.cells, _comes_to(position.grid.raised(left.total, len(left.cells)), len(left.cells))
        )
        if removed:
            yield Deduction(Rung.PAIR, left.held, left.cells, removed, left.mark, left.claim)


@lru_cache(maxsize=256)
def _comes_to(total: int, count: int) -> Callable[[Sequence[int]], bool]:
    def fits(digits: Sequence[int]) -> bool:
        return sum(digits) == total if len(digits) == count else sum(digits) < total

    return fits


@lru_cache(maxsize=256)
def _left_over(grid: Grid, blocks: tuple[Block, ...], kind: str) -> tuple[_LeftOver, ...]:
    found: dict[tuple[int, ...], _LeftOver] = {}
    for houses, area, total in _stretches(grid):
        whole = [block for block in blocks if area.issuperset(block.cells)]
        parted = [block for block in blocks if block not in whole and area.intersection(block.cells)]
        covered = {cell for block in whole for cell in block.cells}
        within = sum(block.total for block in whole)
        if whole and 0 < len(area - covered) <= FEW:
            cells = tuple(sorted(area - covered))
            claim = LeftOver(houses, total, within, False, cells)
            found.setdefault(cells, _LeftOver(claim, _together(kind, whole), len(whole) + 1))
        touched = covered.union(*(block.cells for block in parted))
        if parted and touched >= area and 0 < len(touched - area) <= FEW:
            cells = tuple(sorted(touched - area))
            reach = within + sum(block.total for block in parted)
            claim = LeftOver(houses, total, reach, True, cells)
            found.setdefault(cells, _LeftOver(claim, _together(kind, whole + parted), len(whole) + len(parted) + 1))
    return tuple(found.values())


def _together(kind: str, blocks: Sequence[Block]) -> MarkRef:
    return MarkRef.joined(kind, sorted(cell for block in blocks for cell in block.cells))


def _stretches(grid: Grid) -> Iterator[tuple[tuple[HouseRef, ...], set[int], int]]:
    """Each house, then two or three rows or columns side by side: which they are, their cells and their sum."""
    one = sum(map(grid.worth, grid.digits))
    for house in grid.houses:
        yield (house.ref,), set(house.cells), one
    for lines in (lines for square in grid.squares for lines in (square.rows, square.columns)):
        for count in (2, 3):
            for first in range(grid.size - count + 1):
                beside = lines[first : first + count]
                cells = {cell for line in beside for cell in line.cells}
                yield tuple(line.ref for line in beside), cells, one * count
