"""Filled grids to test rule kinds on: random solutions, and near misses made of them. No code of the engine is used."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random

from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid

SMALL = boxed_grid(4, 2, 2)
MIDDLE = boxed_grid(6, 2, 3)
GRIDS = (SMALL, MIDDLE, CLASSIC)

Solution = tuple[int, ...]


def random_solution(grid: Grid, rng: Random) -> Solution:
    """A filled grid with full houses: the cell with the fewest choices first, its digits in random order."""
    peers = [
        {other for house in grid.houses if cell in house.cells for other in house.cells if other != cell}
        for cell in grid.cells
    ]
    digits = [0] * len(grid.cells)
    choices = [set(grid.digits) for _ in grid.cells]

    def fill() -> bool:
        empty = [cell for cell in grid.cells if not digits[cell]]
        if not empty:
            return True
        fewest = min(len(choices[cell]) for cell in empty)
        cell = rng.choice([cell for cell in empty if len(choices[cell]) == fewest])
        options = sorted(choices[cell])
        rng.shuffle(options)
        for digit in options:
            digits[cell] = digit
            narrowed = [peer for peer in peers[cell] if not digits[peer] and digit in choices[peer]]
            for peer in narrowed:
                choices[peer].discard(digit)
            if all(choices[peer] for peer in narrowed) and fill():
                return True
            for peer in narrowed:
                choices[peer].add(digit)
        digits[cell] = 0
        return False

    assert fill()
    return tuple(digits)


def near_misses(grid: Grid, solution: Solution, rng: Random) -> Iterator[Solution]:
    """Filled grids with full houses that differ little from a solution: two digits, rows or columns change places.

    Neighbouring digits changing places is what catches a comparison that is wrong by one.
    """
    for low in grid.digits[:-1]:
        swap = {low: low + 1, low + 1: low}
        yield tuple(swap.get(digit, digit) for digit in solution)
    if grid.box is None:
        return
    height, width = grid.box
    for _ in range(3):
        band, stack = rng.randrange(grid.size // height) * height, rng.randrange(grid.size // width) * width
        first, second = rng.sample(range(band, band + height), 2)
        rows = {first: second, second: first}
        yield tuple(solution[grid.cell(rows.get(grid.row(c), grid.row(c)), grid.column(c))] for c in grid.cells)
        first, second = rng.sample(range(stack, stack + width), 2)
        columns = {first: second, second: first}
        yield tuple(solution[grid.cell(grid.row(c), columns.get(grid.column(c), grid.column(c)))] for c in grid.cells)
