"""Published and independently confirmed counts of filled grids under the rules of the whole grid."""

from __future__ import annotations

import pytest

from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import keeps_all, problem_of
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.king import King
from bookmaker.rules.knight import Knight
from bookmaker.rules.non_consecutive import NonConsecutive
from bookmaker.solve import solutions, tally

SMALL = boxed_grid(4, 2, 2)
MOVES = (King(), Knight(), NonConsecutive())


def _count(grid: Grid, rules: tuple[Rule, ...], givens: tuple[int, ...] = ()) -> int:
    puzzle = Puzzle(grid, givens or (0,) * len(grid.cells), rules)
    counted = tally(problem_of(puzzle), 1000)
    assert counted.complete
    return counted.solutions


def test_king_knight_and_no_consecutive_neighbours_leave_72_grids() -> None:
    """72 grids in all, 8 with any one digit given: a known count of the trade, confirmed with a constraint solver."""
    empty = Puzzle[Rule](CLASSIC, (0,) * 81, MOVES)
    found = set(solutions(problem_of(empty)))
    assert len(found) == 72
    assert all(keeps_all(empty, digits) for digits in found)
    # Every cell holds every digit in exactly 8 of them; the engine agrees where one is given.
    assert all(sum(digits[cell] == digit for digits in found) == 8 for cell in CLASSIC.cells for digit in range(1, 10))
    for cell, digit in ((0, 1), (40, 5)):
        assert _count(CLASSIC, MOVES, tuple(digit if at == cell else 0 for at in CLASSIC.cells)) == 8


@pytest.mark.parametrize(
    ("rules", "grids"), [((), 288), ((Knight(),), 24), ((King(),), 0), ((NonConsecutive(),), 0)], ids=str
)
def test_4x4_counts(rules: tuple[Rule, ...], grids: int) -> None:
    """288 grids of 4×4 (OEIS A107739); 24, 0 and 0 of them keep the rule (own count, and brute force here)."""
    assert _count(SMALL, rules) == grids
    filled = solutions(problem_of(Puzzle[Rule](SMALL, (0,) * 16)))
    assert sum(all(rule.holds(SMALL, digits) for rule in rules) for digits in filled) == grids
