"""Neighbouring cells for cases of rules between them, said without the rules' own tools."""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.puzzle.grid import Grid


def beside_and_below(grid: Grid) -> Iterator[tuple[int, int]]:
    """Every two cells that share a side, once: each cell with the one to its right and the one below it."""
    for cell in range(grid.size * grid.size):
        if cell % grid.size < grid.size - 1:
            yield cell, cell + 1
        if cell // grid.size < grid.size - 1:
            yield cell, cell + grid.size
