"""The ends of rows and columns, where clues outside the grid stand."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random
from typing import Literal

from bookmaker.crosscheck.common import line_from
from bookmaker.puzzle.grid import Grid

Side = Literal["left", "right", "top", "bottom"]


def clues_at_ends(grid: Grid, rng: Random, share: float, both: bool = True) -> Iterator[tuple[Side, int, list[int]]]:
    """A random share of the ends, each with its line; not `both` ends of one line unless said so."""
    pairs: tuple[tuple[Side, Side], ...] = (("left", "right"), ("top", "bottom"))
    for sides in pairs:
        for line in range(grid.size):
            for side in sides if both else [rng.choice(sides)]:
                if rng.random() < share:
                    yield side, line, line_from(grid, side, line)
