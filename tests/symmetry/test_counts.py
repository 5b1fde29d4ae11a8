"""The classes of small solved grids, counted: as many as are known, and their sizes add up to all grids there are.

A class is as large as the group of moves divided by those that leave one of its grids as it is (orbit and stabiliser).
If two grids of one class had different keys, the sum would come out too large; if two classes shared a key, too small.
"""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid, boxed_grid
from bookmaker.puzzle.puzzle import digits_from
from bookmaker.solve import solutions
from bookmaker.solve.verdict import Solution
from bookmaker.symmetry.arrangement import arranged, automorphisms
from tests.makers.grow import empty_grid

RAREST = digits_from("142365635412356124214536563241421653")
"""One of a class that only one 6×6 grid in 816 belongs to; drawn by this project."""


def class_sizes(grid: Grid, drawn: list[Solution], moves: int) -> list[int]:
    """The size of each class that one of these grids belongs to."""
    classes = {arranged(grid, solution).text: solution for solution in drawn}
    return [moves // sum(1 for _ in automorphisms(grid, solution)) for solution in classes.values()]


def test_all_grids_of_four() -> None:
    """288 grids (OEIS A107739) in 2 classes (from memory)."""
    grid = boxed_grid(4, 2, 2)
    every = list(solutions(empty_grid(grid)))
    assert len(every) == 288
    # 4! names; rows and columns: 2 bands of 2 in 2!·2!·2! ways each; exchanged or not.
    sizes = class_sizes(grid, every, 24 * 8 * 8 * 2)
    assert len(sizes) == 2
    assert sum(sizes) == 288


def test_all_grids_of_six() -> None:
    """28,200,960 grids with boxes of 2×3 (OEIS A291187) in 49 classes (from memory)."""
    grid = boxed_grid(6, 2, 3)
    rng = Random(0)
    drawn = [next(iter(solutions(empty_grid(grid), rng))) for _ in range(900)]
    # 6! names; 3 bands of 2 rows: 3!·2!³; 2 stacks of 3 columns: 2!·3!².
    sizes = class_sizes(grid, [*drawn, RAREST], 720 * 48 * 72)
    assert len(sizes) == 49
    assert sum(sizes) == 28_200_960
