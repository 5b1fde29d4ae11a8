"""Marks without freedom: the puzzle in another dress has the same one solution, by both provers."""

from __future__ import annotations

from itertools import islice

import pytest

from bookmaker.crosscheck import auditor, second_opinion
from bookmaker.draft.forced import FINDERS, rising
from bookmaker.draft.forcing import disjoint, dresses, grown
from bookmaker.puzzle.grid import boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.solve import prove, solutions
from bookmaker.solve.verdict import Unique
from bookmaker.wishes.wish import Wish

SIX, FOUR = boxed_grid(6, 2, 3), boxed_grid(4, 2, 2)
GROW = [kind for kind in FINDERS if kind != "arrow"]
"""On a 6×6 grid a house adds up to 21, and an oval of 2 and 1 is as good as any; it is tried on 9×9 by hand."""


@pytest.mark.parametrize("kind", GROW)
def test_a_classic_grown_for_a_kind_and_its_dress(kind: str) -> None:
    grid = FOUR if kind == "cage" else SIX
    dress = grown(Wish(grid=grid), kind)
    assert dress is not None
    assert not dress.classic.rules
    assert [rule.kind for rule in dress.puzzle.rules] == [kind]
    covered = {cell for cell, digit in enumerate(dress.classic.givens) if digit and not dress.puzzle.givens[cell]}
    assert covered == set(dress.covered) != set()
    for puzzle in (dress.classic, dress.puzzle):
        verdict = second_opinion(puzzle) if auditor() else prove(problem_of(puzzle))
        assert isinstance(verdict, Unique)
        assert verdict.solution == dress.solution
    # The marks say no more than the givens: without either there is more than one solution.
    bare = Puzzle(grid, dress.puzzle.givens)
    assert len(list(islice(solutions(problem_of(bare)), 2))) == 2
    again = dresses(dress.classic, dress.solution, kind)
    assert any(set(one.covered) == set(dress.covered) for one in again)


def test_all_rising_chains_as_long_as_the_grid_is_wide() -> None:
    """Against chains grown cell by cell the other way round, from the last digit down."""
    solution = next(iter(solutions(problem_of(Puzzle(SIX, (0,) * 36)))))

    def down(chain: list[int]) -> list[tuple[int, ...]]:
        if solution[chain[-1]] == 1:
            return [tuple(reversed(chain))]
        below = [cell for cell in range(36) if solution[cell] == solution[chain[-1]] - 1]
        near = [c for c in below if max(abs(c // 6 - chain[-1] // 6), abs(c % 6 - chain[-1] % 6)) == 1]
        return [found for cell in near for found in down([*chain, cell])]

    wanted = {chain for cell in range(36) if solution[cell] == 6 for chain in down([cell])}
    found = list(rising(SIX, solution))
    assert {one.part.cells for one in found} == wanted
    for some in disjoint(found):
        cells = [cell for one in some for cell in one.part.cells]
        assert len(cells) == len(set(cells))
