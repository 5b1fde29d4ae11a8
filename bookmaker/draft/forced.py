"""Marks that can force givens, found on a solution: for each kind that can, all of them or the tidiest.

In: a grid and its solution. Out: `Forcing`s. Facts of the trade (common practice, no source): a thermometer as long as
the grid is wide holds all digits in order; the digits of a house add up to one sum, so that a cage around all of its
cells but one gives that one away, and an oval on a shaft through all of it holds this sum.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.parts import Part
from bookmaker.solve.verdict import Solution

SHAFTS = 400
"""Ways through a house that are looked at for the one with the fewest turns."""


@dataclass(frozen=True, slots=True)
class Forcing:
    """A mark, the cells whose digits it forces, and those whose givens it needs for that."""

    part: Part
    forced: frozenset[int]
    needed: frozenset[int] = frozenset()


def rising(grid: Grid, solution: Solution) -> Iterator[Forcing]:
    """All chains of touching cells along which the solution counts from one to the last digit."""
    for cells in _counting(grid, solution):
        yield Forcing(Part(cells), frozenset(cells))


def counting(grid: Grid, solution: Solution) -> Iterator[Forcing]:
    """The same as runs: which end is the lower, a given at one end tells."""
    for cells in _counting(grid, solution):
        yield Forcing(Part(cells), frozenset(cells[1:]), frozenset(cells[:1]))


def _counting(grid: Grid, solution: Solution) -> Iterator[tuple[int, ...]]:
    def longer(chain: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
        if len(chain) == grid.size:
            yield chain
            return
        for cell in grid.cells:
            if solution[cell] == len(chain) + 1 and grid.touching(chain[-1], cell):
                yield from longer((*chain, cell))

    for cell in grid.cells:
        if solution[cell] == 1:
            yield from longer((cell,))


def all_but_one(grid: Grid, solution: Solution) -> Iterator[Forcing]:
    """Cages around a house but for one cell, where they hang together."""
    total = sum(grid.digits)
    for house in grid.houses:
        for cell in house.cells:
            rest = tuple(other for other in house.cells if other != cell)
            if len(grid.pieces(rest)) == 1:
                yield Forcing(Part(tuple(sorted(rest)), "", (total - solution[cell],)), frozenset({cell}))


def house_sums(grid: Grid, solution: Solution) -> Iterator[Forcing]:
    """Arrows from an oval of two cells through all cells of a house."""
    total = sum(grid.digits)
    tens, units = divmod(total, 10)
    if total > 99 or not {tens, units} <= set(grid.digits):
        return
    for cell in grid.cells:
        for other in grid.orthogonal(cell):
            if other > cell and (solution[cell], solution[other]) == (tens, units):
                for house in grid.houses:
                    if not {cell, other} & set(house.cells):
                        shaft = _through(grid, house.cells, (cell, other))
                        if shaft:
                            yield Forcing(Part((cell, other, *shaft), "", (2,)), frozenset({cell, other}))


def _through(grid: Grid, house: tuple[int, ...], oval: tuple[int, int]) -> tuple[int, ...]:
    """A way from beside the oval through all cells of a house: that with the fewest turns of some; empty if none."""
    best: tuple[int, ...] = ()
    fewest, seen = len(house), 0
    stack: list[tuple[int, ...]] = [(cell,) for cell in house if any(grid.touching(cell, end) for end in oval)]
    while stack and seen < SHAFTS:
        way = stack.pop()
        if len(way) == len(house):
            seen += 1
            steps = [b - a for a, b in pairwise(way)]
            turns = sum(before != after for before, after in pairwise(steps))
            if turns < fewest:
                best, fewest = way, turns
            continue
        stack += [(*way, cell) for cell in house if cell not in way and grid.touching(way[-1], cell)]
    return best


FINDERS: Mapping[str, Callable[[Grid, Solution], Iterator[Forcing]]] = {
    "thermometer": rising,
    "cage": all_but_one,
    "arrow": house_sums,
    "even-step-line": counting,
}
"""The kinds that can force givens."""
