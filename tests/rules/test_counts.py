"""Published and independently confirmed counts of filled grids under the rules of the whole grid."""

from __future__ import annotations

import pytest

from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import keeps_all, problem_of
from bookmaker.rules.barred_sums import BarredSums
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.king import King
from bookmaker.rules.knight import Knight
from bookmaker.rules.non_consecutive import NonConsecutive
from bookmaker.solve import solutions, tally
from tests.published import APART_GRIDS, APART_WITH_A_GIVEN
from tests.rules.cpsat import cp_solutions

SMALL = boxed_grid(4, 2, 2)
MOVES = (King(), Knight(), NonConsecutive())


def _count(grid: Grid, rules: tuple[Rule, ...], givens: tuple[int, ...] = ()) -> int:
    puzzle = Puzzle(grid, givens or (0,) * len(grid.cells), rules)
    counted = tally(problem_of(puzzle), 1000)
    assert counted.complete
    return counted.solutions


@pytest.mark.slow
def test_king_knight_and_no_consecutive_neighbours_leave_72_grids() -> None:
    """72 grids in all, 8 with any one digit given."""
    empty = Puzzle[Rule](CLASSIC, (0,) * 81, MOVES)
    found = set(solutions(problem_of(empty)))
    assert len(found) == APART_GRIDS
    assert all(keeps_all(empty, digits) for digits in found)
    # Every cell holds every digit equally often; the engine agrees where one is given.
    assert all(
        sum(digits[cell] == digit for digits in found) == APART_WITH_A_GIVEN
        for cell in CLASSIC.cells
        for digit in range(1, 10)
    )
    for cell, digit in ((0, 1), (40, 5)):
        assert _count(CLASSIC, MOVES, tuple(digit if at == cell else 0 for at in CLASSIC.cells)) == APART_WITH_A_GIVEN


@pytest.mark.parametrize(
    ("rules", "grids"), [((), 288), ((Knight(),), 24), ((King(),), 0), ((NonConsecutive(),), 0)], ids=str
)
def test_4x4_counts(rules: tuple[Rule, ...], grids: int) -> None:
    """288 grids of 4×4 (OEIS A107739); 24, 0 and 0 of them keep the rule (own count, and brute force here)."""
    assert _count(SMALL, rules) == grids
    filled = solutions(problem_of(Puzzle[Rule](SMALL, (0,) * 16)))
    assert sum(all(rule.holds(SMALL, digits) for rule in rules) for digits in filled) == grids


@pytest.mark.parametrize(
    ("rule", "size", "grids"),
    [(NonConsecutive(True), 7, 28), (BarredSums(True, frozenset({7})), 6, 96), (NonConsecutive(True), 6, 0)],
    ids=str,
)
def test_latin_squares_whose_cells_touch_at_corners(rule: Rule, size: int, grids: int) -> None:
    """Own counts, alike by both provers; no box of 2×3 or 3×3 leaves any, for its middle cell touches all others."""
    latin = Grid(size, ())
    assert _count(latin, (rule,)) == grids
    found = cp_solutions(Puzzle(latin, (0,) * size * size, (rule,)), 1000)
    assert len(found) == grids
    assert all(rule.holds(latin, digits) for digits in found)
