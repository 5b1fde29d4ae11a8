"""Names for the cells of a solved grid that do not depend on how the grid is turned or its digits are called.

In: a grid and its solution. Out: one number a cell. Two puzzles that differ only by relabelled digits, swapped bands,
stacks, rows in a band or columns in a stack, or by exchanging rows and columns, give matching cells the same number;
so does one puzzle before and after a given is added. This is what lets solvers with different luck
(`solvers.py`) come to exactly the same effort for each.

A cell's first name comes from the squares in which it is a corner: for each other digit, what stands at the corner
opposite, seen from that digit in its row and in its column. Names are then mixed with those of the cells in the same
row, column, region, and with the same digit (colour refinement, as in tests for graph isomorphism).
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.puzzle.grid import Grid

ROUNDS = 3
PRIME = (1 << 61) - 1


def labels(grid: Grid, solution: Sequence[int], marked: int = 0) -> list[int]:
    """A number below `PRIME` for each cell; cells on the board `marked` start from another name than the others."""
    names = _first_names(grid, solution, marked)
    for _ in range(ROUNDS):
        names = _mixed(grid, solution, names)
        if len(set(names)) == len(names):
            break
    return names


def _first_names(grid: Grid, solution: Sequence[int], marked: int) -> list[int]:
    """A name for each cell by the squares in which it is a corner."""
    n = grid.size
    column_in_row = [[0] * (n + 1) for _ in range(n)]
    row_in_column = [[0] * (n + 1) for _ in range(n)]
    for cell in grid.cells:
        column_in_row[cell // n][solution[cell]] = cell % n
        row_in_column[cell % n][solution[cell]] = cell // n
    region = _regions(grid)
    names = []
    for cell in grid.cells:
        row, column, digit = cell // n, cell % n, solution[cell]
        across, down = column_in_row[row], row_in_column[column]
        # 1: met in the region along the row, 2: along the column, 3: in neither, 4: the digit itself
        way = [0] * (n + 1)
        turned = [0] * (n + 1)
        for other in grid.digits:
            if other == digit:
                way[other] = turned[other] = 4
            elif region[row * n + across[other]] == region[cell]:
                way[other], turned[other] = 1, 2
            elif region[down[other] * n + column] == region[cell]:
                way[other], turned[other] = 2, 1
            else:
                way[other] = turned[other] = 3
        one = two = 0
        for other in grid.digits:
            if other != digit:
                opposite = solution[down[other] * n + across[other]]
                one += 1 << 4 * (way[other] * 4 + way[opposite] - 5)
                two += 1 << 4 * (turned[other] * 4 + turned[opposite] - 5)
        names.append(_mix(min(one, two), max(one, two), marked >> cell & 1))
    return names


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


def _mix(one: int, two: int, three: int, four: int = 0, five: int = 0) -> int:
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
