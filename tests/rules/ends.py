"""The ends of rows and columns, where clues outside the grid stand; said anew here, so that a slip would show."""

from __future__ import annotations

from collections.abc import Iterator
from random import Random
from typing import Literal

from bookmaker.puzzle.grid import Grid

Side = Literal["left", "right", "top", "bottom"]


def line_from(grid: Grid, side: Side, line: int) -> list[int]:
    """The cells of a row or column in the order in which they are met from a side."""
    n = grid.size
    match side:
        case "left":
            return [line * n + at for at in range(n)]
        case "right":
            return [line * n + at for at in reversed(range(n))]
        case "top":
            return [at * n + line for at in range(n)]
        case "bottom":
            return [at * n + line for at in reversed(range(n))]


def clues_at_ends(grid: Grid, rng: Random, share: float, both: bool = True) -> Iterator[tuple[Side, int, list[int]]]:
    """A random share of the ends, each with its line; not `both` ends of one line unless said so."""
    pairs: tuple[tuple[Side, Side], ...] = (("left", "right"), ("top", "bottom"))
    for sides in pairs:
        for line in range(grid.size):
            for side in sides if both else [rng.choice(sides)]:
                if rng.random() < share:
                    yield side, line, line_from(grid, side, line)
