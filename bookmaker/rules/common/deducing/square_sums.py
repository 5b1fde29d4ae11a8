"""Square blocks of cells whose lines have the same sum: which lines these are, and what sums they can have.

In: the cells of a block, 2×2 or 3×3, in the grid's order, and its sort: all rows, all columns, or these and the
diagonals (“magic”). Out: its lines, the sums that they can have in a position, and what these leave.

A fact of magic squares: the four lines through the middle of 3×3 cells count it four times and all else once. With s
the sum of a line, 4s = 3s + 3·middle, so s is three times the middle (common knowledge, no source).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache
from typing import TypeAlias

from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.deducing.sums import sum_limits, worth_from

Cells: TypeAlias = tuple[int, ...]

MAGIC, ROWS, COLUMNS = SORTS = ("magic", "rows", "columns")


def lines_of(cells: Cells, sort: str) -> tuple[Cells, ...]:
    """The lines that have the same sum."""
    side = 3 if len(cells) == 9 else 2
    rows = tuple(cells[at : at + side] for at in range(0, len(cells), side))
    columns = tuple(cells[at::side] for at in range(side))
    slanting = (cells[:: side + 1], cells[side - 1 : -1 : side - 1])
    return {ROWS: rows, COLUMNS: columns, MAGIC: (*rows, *columns, *slanting)}[sort]


def sum_in_region(grid: Grid, cells: Cells) -> int:
    """The sum of a line by the digits' own numbers, where the block is a whole region; else 0."""
    whole = any(set(region) == set(cells) for region in grid.regions)
    return grid.size * (grid.size + 1) // 2 // (3 if len(cells) == 9 else 2) if whole else 0


def possible_sums(position: Position, cells: Cells, sort: str) -> tuple[int, ...]:
    """The sums that all lines can have, in what digits are worth."""
    grid, lines = position.grid, lines_of(cells, sort)
    total = sum_in_region(grid, cells)
    if total:
        return (total - grid.raised(0, len(lines[0])),)
    limits = [sum_limits(position, line) for line in lines]
    sums = range(max(low for low, _ in limits), min(high for _, high in limits) + 1)
    if sort == MAGIC:
        thrice = {3 * grid.worth(digit) for digit in digits_in(position.masks[cells[4]])}
        return tuple(total for total in sums if total in thrice)
    return tuple(sums)


def left_by(position: Position, lines: Sequence[Cells], sums: Sequence[int]) -> dict[int, int]:
    """What the sums leave for each cell."""
    grid, kept = position.grid, dict[int, int]()
    for line in lines:
        for cell in line:
            low, high = sum_limits(position, [other for other in line if other != cell])
            kept[cell] = kept.get(cell, grid.all_digits) & worth_from(grid, sums[0] - high, sums[-1] - low)
    return kept


@lru_cache(maxsize=256)
def equal_lines(count: int, cells: Cells, one: Cells, other: Cells, total: int) -> Callable[[Sequence[int]], bool]:
    """Of the digits of one line and then of those cells of another that it does not have: may their sums be equal, and
    the one that is told?"""
    places = [cells.index(cell) for cell in other]

    def fits(digits: Sequence[int]) -> bool:
        if len(digits) < count:
            return True
        wanted = sum(digits[:count])
        if total and wanted != total:
            return False
        left = wanted - sum(digits[at] for at in places if at < len(digits))
        return left == 0 if len(digits) == len(cells) else left > 0

    return fits


@lru_cache(maxsize=64)
def whole_block(sort: str, count: int, total: int) -> Callable[[Sequence[int]], bool]:
    """Of the digits of a block's cells so far: have all full lines one sum, and the one that is told?"""
    lines = lines_of(tuple(range(count)), sort)

    def fits(digits: Sequence[int]) -> bool:
        sums = {sum(digits[at] for at in line) for line in lines if max(line) < len(digits)}
        if total:
            sums.add(total)
        if sort == MAGIC and len(digits) > 4:
            sums.add(3 * digits[4])
        return len(sums) < 2

    return fits
