"""House sum arithmetic: every row, column and region adds up to the same, so what sticks out of known sums is known.

In: blocks of cells with known totals that share no cell. Out: steps for the few cells of a house (or of two or three
rows or columns side by side) that no whole block covers, and for the few that blocks covering a house put outside it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.fillings import never_stand
from bookmaker.rules.common.wording import cells_listed

FEW = 3
"""The most cells left over that a person works with."""


@dataclass(frozen=True, slots=True)
class Block:
    """Cells and what they add up to."""

    cells: tuple[int, ...]
    total: int


@dataclass(frozen=True, slots=True)
class _LeftOver:
    """A few cells whose sum the arithmetic gives, why, and how many sums that takes."""

    cells: tuple[int, ...]
    total: int
    words: str
    held: int


def steps(position: Position, blocks: tuple[Block, ...], noun: str) -> Iterator[Deduction]:
    """Steps from all houses; `noun` is what the blocks are called, in the plural (“cages”)."""
    for left in _left_over(position.grid, blocks, noun):
        if all(position.masks[cell].bit_count() == 1 for cell in left.cells):
            continue
        removed = never_stand(position, left.cells, _comes_to(left.total, len(left.cells)))
        if removed:
            yield Deduction(6, left.held, left.cells, removed, left.words)


@lru_cache(maxsize=256)
def _comes_to(total: int, count: int) -> Callable[[Sequence[int]], bool]:
    def fits(digits: Sequence[int]) -> bool:
        return sum(digits) == total if len(digits) == count else sum(digits) < total

    return fits


@lru_cache(maxsize=256)
def _left_over(grid: Grid, blocks: tuple[Block, ...], noun: str) -> tuple[_LeftOver, ...]:
    found: dict[tuple[int, ...], _LeftOver] = {}
    for name, area, total in _stretches(grid):
        whole = [block for block in blocks if area.issuperset(block.cells)]
        parted = [block for block in blocks if block not in whole and area.intersection(block.cells)]
        covered = {cell for block in whole for cell in block.cells}
        within = sum(block.total for block in whole)
        adds = "adds up" if total == grid.size * (grid.size + 1) // 2 else "add up"
        if whole and 0 < len(area - covered) <= FEW:
            cells = tuple(sorted(area - covered))
            rest = total - within
            words = f"{name} {adds} to {total} and the whole {noun} there to {within}, {_leaving(grid, cells, rest)}"
            found.setdefault(cells, _LeftOver(cells, rest, words, len(whole) + 1))
        touched = covered.union(*(block.cells for block in parted))
        if parted and touched >= area and 0 < len(touched - area) <= FEW:
            cells = tuple(sorted(touched - area))
            reach = within + sum(block.total for block in parted)
            words = (
                f"{name} {adds} to {total} and the {noun} over it to {reach}, {_leaving(grid, cells, reach - total)}"
            )
            found.setdefault(cells, _LeftOver(cells, reach - total, words, len(whole) + len(parted) + 1))
    return tuple(found.values())


def _leaving(grid: Grid, cells: tuple[int, ...], total: int) -> str:
    return f"which leaves {total} for {cells_listed(grid, cells)}" + (" together" if len(cells) > 1 else "")


def _stretches(grid: Grid) -> Iterator[tuple[str, set[int], int]]:
    """Each house, then two or three rows or columns side by side: name, cells and sum."""
    one = grid.size * (grid.size + 1) // 2
    for house in grid.houses:
        yield house.name, set(house.cells), one
    for lines, word in ((grid.rows, "rows"), (grid.columns, "columns")):
        for count, joint in ((2, "and"), (3, "to")):
            for first in range(grid.size - count + 1):
                cells = {cell for line in lines[first : first + count] for cell in line.cells}
                yield f"{word} {first + 1} {joint} {first + count}", cells, one * count
