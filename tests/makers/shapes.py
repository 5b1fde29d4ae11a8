"""Mark shapes for recipes: a chain typed once, turned or mirrored about the centre of the grid, and written as runs."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from bookmaker.placed import Word
from bookmaker.puzzle.cells import read_cells
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.trouble import Desk, Place


def cells_of(text: str, grid: Grid = CLASSIC) -> tuple[int, ...]:
    """Cells of a typed chain; raises ValueError where it can't be read."""
    desk = Desk()
    cells = read_cells(Word(Place("shape"), text), grid, desk)
    if cells is None:
        raise ValueError([t.text for t in desk.found])
    return cells


def as_runs(grid: Grid, cells: Sequence[int]) -> str:
    """Cells of a chain as people type them, straight stretches shortened: “r1c1-r1c4 r2c5”."""
    stretches: list[list[int]] = [[cells[0]]]
    for before, cell in pairwise(cells):
        last = stretches[-1]
        step = _step(grid, before, cell)
        straight = len(last) == 1 or _step(grid, last[-2], last[-1]) == step
        if straight and max(abs(step[0]), abs(step[1])) == 1:
            last.append(cell)
        else:
            stretches.append([cell])
    parts = [grid.name(s[0]) if len(s) == 1 else f"{grid.name(s[0])}-{grid.name(s[-1])}" for s in stretches]
    return " ".join(parts)


def turned(text: str, quarters: int, grid: Grid = CLASSIC) -> str:
    """The chain turned clockwise about the centre by quarter turns."""
    cells = list(cells_of(text, grid))
    for _ in range(quarters):
        cells = [grid.cell(grid.column(c), grid.size - 1 - grid.row(c)) for c in cells]
    return as_runs(grid, cells)


def mirrored(text: str, grid: Grid = CLASSIC) -> str:
    """The chain mirrored left to right."""
    return as_runs(grid, [grid.cell(grid.row(c), grid.size - 1 - grid.column(c)) for c in cells_of(text, grid)])


def wheel(*texts: str, arms: int = 4) -> tuple[str, ...]:
    """Each chain with its copies turned about the centre: four arms, or two that face each other."""
    return tuple(turned(text, arm * 4 // arms) for text in texts for arm in range(arms))


def sides(*texts: str) -> tuple[str, ...]:
    """Each chain and its mirror image."""
    return tuple(shape for text in texts for shape in (text, mirrored(text)))


def entry(kind: str, chains: Iterable[str]) -> str:
    """A manifest entry that lists chains under a kind."""
    return f"{kind}:\n" + "".join(f"  - {chain}\n" for chain in chains)


def _step(grid: Grid, one: int, other: int) -> tuple[int, int]:
    return grid.row(other) - grid.row(one), grid.column(other) - grid.column(one)
