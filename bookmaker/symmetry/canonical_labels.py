"""Names for the cells of a solved grid that do not depend on how the grid is turned or its digits are called.

In: a grid and its solution. Out: one number a cell. Two puzzles that differ only by relabelled digits, swapped bands,
stacks, rows in a band or columns in a stack, or by exchanging rows and columns, give matching cells the same number;
so does one puzzle before and after a given is added. This is what lets simulated solvers with different luck
(`grade/simulation.py`) come to exactly the same effort for each, and what look-alikes are found by (`arrangement.py`).

A cell's first name comes from the squares in which it is a corner: for each other digit, what stands at the corner
opposite, seen from that digit in its row and in its column. Names are then mixed with those of the cells in the same
row, column, region, and with the same digit (colour refinement, as in tests for graph isomorphism).
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from bookmaker.puzzle.grid import Grid
from bookmaker.symmetry.turning import turned_names

ROUNDS = 3
PRIME = (1 << 61) - 1

_TALLY = [[1 << max(4 * (way * 4 + opposite - 5), 0) for opposite in range(5)] for way in range(5)]
"""For a digit's way and that of the digit opposite, one in a field of four bits: how often a pair of ways is met."""


def canonical_labels(grid: Grid, solution: Sequence[int], marked: int = 0, seeds: Sequence[int] = ()) -> list[int]:
    """A number below `PRIME` for each cell; cells on the board `marked` start from another name than the others, and
    so do cells with different `seeds`, if there are any. Where a grid is no plain square, only turns keep the names."""
    if not grid.plain:
        return turned_names(grid, solution)
    names = _first_names(grid, solution, marked)
    if seeds:
        names = [_mix(name, seed) for name, seed in zip(names, seeds, strict=True)]
    for _ in range(ROUNDS):
        names = _mixed(grid, solution, names)
        if len(set(names)) == len(names):
            break
    return names


def refined(grid: Grid, solution: Sequence[int], names: list[int]) -> list[int]:
    """The names mixed until no more cells are told apart."""
    apart = len(set(names))
    while apart < len(names):
        names = _mixed(grid, solution, names)
        before, apart = apart, len(set(names))
        if apart <= before:
            break
    return names


def singled_out(names: Sequence[int], cell: int, depth: int) -> list[int]:
    """The names, that of one cell changed; `depth` tells the first cell that is singled out from the second."""
    changed = list(names)
    changed[cell] = _mix(names[cell], depth + 1, 1)
    return changed


def _first_names(grid: Grid, solution: Sequence[int], marked: int) -> list[int]:
    """A name for each cell by the squares in which it is a corner."""
    n = grid.size
    column_in_row = [[0] * (n + 1) for _ in range(n)]
    row_in_column = [[0] * (n + 1) for _ in range(n)]
    for cell in grid.cells:
        column_in_row[cell // n][solution[cell]] = cell % n
        row_in_column[cell % n][solution[cell]] = cell // n
    names = []
    for cell, (beside, below) in enumerate(_region_mates(grid)):
        digit = solution[cell]
        across, down = column_in_row[cell // n], row_in_column[cell % n]
        # 1: met in the region along the row, 2: along the column, 3: in neither, 4: the digit itself
        way = [3] * (n + 1)
        turned = [3] * (n + 1)
        way[digit] = turned[digit] = 4
        for mate in below:
            way[solution[mate]], turned[solution[mate]] = 2, 1
        for mate in beside:
            way[solution[mate]], turned[solution[mate]] = 1, 2
        one = two = 0
        for other in grid.digits:
            if other != digit:
                opposite = solution[down[other] * n + across[other]]
                one += _TALLY[way[other]][way[opposite]]
                two += _TALLY[turned[other]][turned[opposite]]
        names.append(_mix(min(one, two), max(one, two), marked >> cell & 1))
    return names


@lru_cache(maxsize=16)
def _region_mates(grid: Grid) -> list[tuple[list[int], list[int]]]:
    """For each cell the other cells of its region in its row, and those in its column."""
    n, region = grid.size, _regions(grid)
    mates = []
    for cell in grid.cells:
        row = [cell - cell % n + column for column in range(n)]
        column = [row * n + cell % n for row in range(n)]
        along, across = (
            [mate for mate in line if mate != cell and region[mate] == region[cell]] for line in (row, column)
        )
        mates.append((along, across))
    return mates


def _mixed(grid: Grid, solution: Sequence[int], names: Sequence[int]) -> list[int]:
    """Each name mixed with those in its cell's row, column and region, and with those of its digit."""
    n, region = grid.size, _regions(grid)
    rows, columns, regions, same = [0] * n, [0] * n, [0] * n, [0] * (n + 1)
    for cell, name in enumerate(names):
        rows[cell // n] += name
        columns[cell % n] += name
        regions[region[cell]] += name
        same[solution[cell]] += name
    mixed = []
    for cell, name in enumerate(names):
        row, column = rows[cell // n], columns[cell % n]
        mixed.append(_mix(name, row * column, row + column, regions[region[cell]], same[solution[cell]]))
    return mixed


def _regions(grid: Grid) -> Sequence[int]:
    """The region of each cell; without regions, one and the same for all."""
    return grid.region_of or (0,) * len(grid.cells)


def _mix(one: int, two: int, three: int = 0, four: int = 0, five: int = 0) -> int:
    """A number below `PRIME` that depends on all of these in their order; the cube keeps sums from meeting again."""
    return pow(
        one * 0x9E3779B97F4A7C1
        + two * 0x3C6EF372FE94F82
        + three * 0x5A5B2C1D7E3F49
        + four * 0x1B873593CC9E2D
        + five * 0x27D4EB2F165667C
        + 1,
        3,
        PRIME,
    )
