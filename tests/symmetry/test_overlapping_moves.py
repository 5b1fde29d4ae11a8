"""Look-alikes on overlapping grids: every turn of all of them together is found, and carries one to the other."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from bookmaker.puzzle.overlapping import Overlapping, overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.knight import Knight
from bookmaker.rules.thermometer import Thermometer
from bookmaker.solve import solutions
from bookmaker.symmetry import different_givens, keys_of, mapping
from bookmaker.symmetry.moves import EIGHT
from bookmaker.symmetry.outline import outline_of

CORNERS = [(0, 0), (0, 2), (2, 4)]
"""Grids of 4×4 that no turn lays on themselves."""


def turned(name: str, digits: tuple[int, ...]) -> tuple[RuledPuzzle, RuledPuzzle, tuple[int, ...], tuple[int, ...]]:
    """A puzzle with its solution filled in but for two cells, the same turned by hand with other digits."""
    grid = overlapping_grids(4, (2, 2), CORNERS)
    places = [EIGHT[name](grid.row(cell), grid.column(cell), 8) for cell in grid.cells]
    top, left = min(row for row, _ in places), min(column for _, column in places)
    corners = [min(places[cell] for cell in square.cells) for square in grid.squares]
    there = overlapping_grids(4, (2, 2), corners)
    images = [there.cell(row - top, column - left) for row, column in places]
    solution = next(solutions(problem_of(Puzzle(grid, (0,) * len(grid.cells))), Random(1)))
    givens = tuple(0 if cell in (3, 17) else digit for cell, digit in enumerate(solution))

    def moved(filled: tuple[int, ...]) -> tuple[int, ...]:
        out = [0] * len(filled)
        for cell, digit in enumerate(filled):
            out[images[cell]] = digits[digit]
        return tuple(out)

    return Puzzle(grid, givens), Puzzle(there, moved(givens)), solution, moved(solution)


@pytest.mark.parametrize("name", EIGHT)
def test_turned_grids_with_other_digits_are_look_alikes(name: str) -> None:
    one, other, its, others = turned(name, (0, 3, 1, 4, 2))
    assert keys_of(one, its) == keys_of(other, others)
    assert outline_of(one) == outline_of(other)
    move = mapping(one, its, other, others)
    assert move is not None and move.apply(one.givens) == other.givens
    assert different_givens(one, its, other, others) == 0
    fewer = replace(other, givens=(0, *other.givens[1:]))
    assert keys_of(fewer, others).puzzle != keys_of(one, its).puzzle
    assert keys_of(fewer, others).solution == keys_of(one, its).solution
    assert different_givens(one, its, fewer, others) == 1
    assert mapping(one, its, fewer, others) is None


def test_rules_count_and_rising_digits_are_not_renamed() -> None:
    one, _, its, _ = turned("", (0, 1, 2, 3, 4))
    low, high = next(
        pair
        for pair in ((cell, near) for cell in one.grid.cells for near in one.grid.orthogonal(cell))
        if its[pair[0]] < its[pair[1]]
    )
    ruled: RuledPuzzle = replace(one, rules=(Thermometer(((low, high),)),))
    assert keys_of(ruled, its).puzzle != keys_of(one, its).puzzle
    swapped = tuple((0, 2, 1, 3, 4)[digit] for digit in its)
    assert isinstance(one.grid, Overlapping)
    if swapped[low] < swapped[high]:
        other = replace(ruled, givens=tuple((0, 2, 1, 3, 4)[digit] for digit in ruled.givens))
        assert keys_of(other, swapped).puzzle != keys_of(ruled, its).puzzle


def test_the_grid_in_which_a_rule_stands_counts() -> None:
    one, _, its, _ = turned("", (0, 1, 2, 3, 4))
    keys = {keys_of(replace(one, rules=(Knight(square=letter),)), its).puzzle for letter in "ABC"}
    assert len(keys) >= 2
