"""How many Latin squares there are, counted by the engine; values of the OEIS (oeis.org)."""

from __future__ import annotations

import pytest

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import tally

SQUARES = {2: 2, 3: 12, 4: 576, 5: 161_280}
"""A002860, Latin squares of order n."""

REDUCED = {2: 1, 3: 1, 4: 4, 5: 56, 6: 9_408}
"""A000315, those whose first row and first column are in order."""


def latin(size: int, givens: dict[int, int]) -> RuledPuzzle:
    grid = Grid(size, ())
    return Puzzle(grid, tuple(givens.get(cell, 0) for cell in grid.cells))


@pytest.mark.parametrize(("size", "count"), SQUARES.items())
def test_all_latin_squares_are_counted(size: int, count: int) -> None:
    found = tally(problem_of(latin(size, {})), 10**9)
    assert (found.solutions, found.complete) == (count, True)


@pytest.mark.parametrize(("size", "count"), REDUCED.items())
def test_reduced_ones_are_counted_and_give_all_others(size: int, count: int) -> None:
    """Any square comes from a reduced one by an order of its columns and of its rows but the first: n! (n − 1)!."""
    givens = {at: at + 1 for at in range(size)} | {at * size: at + 1 for at in range(size)}
    found = tally(problem_of(latin(size, givens)), 10**9)
    assert (found.solutions, found.complete) == (count, True)
    orders = 1
    for number in range(2, size + 1):
        orders *= number * max(number - 1, 1)
    assert count * orders == {**SQUARES, 6: 812_851_200}[size]
