"""Gate 1: a classic's effort is the same, to the last digit, however the grid is turned and its digits are called."""

from __future__ import annotations

import random

import pytest

from bookmaker.grade import grade
from bookmaker.grade.labels import labels
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle, classic
from bookmaker.rules import problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from tests.grade.turns import draw, turn

PUZZLES = {
    # 17 givens: McGuire, Tugemann, Civario, Exp. Math. 23 (2014) 190–217.
    "singles": "000801000000000043500000000000070800000000100020030000600000075003400000000200600",
    # Drawn by this project; its solution grid maps to itself in many ways, so many cells share a label.
    "even grid": "....5..8.4.6.......8.1.3.5....5.......7.9.2.4..1..4.6........1......23.....3456.8",
    # Drawn by this project: needs locked candidates, subsets and what-ifs.
    "hard": "....9..5....674.3....5....95.....3.82......6.7.3.46...45...1.9.....6....3......27",
}


def solution_of(puzzle: Puzzle[object]) -> tuple[int, ...] | None:
    verdict = prove(problem_of(puzzle))
    return verdict.solution if isinstance(verdict, Unique) else None


@pytest.mark.parametrize("name", PUZZLES)
def test_turned_puzzle_has_the_same_effort(name: str) -> None:
    puzzle = classic(PUZZLES[name])
    solution = solution_of(puzzle)
    assert solution is not None
    effort = grade(puzzle, solution).effort
    source = random.Random(name)
    for _ in range(8):
        symmetry = draw(source)
        there = grade(Puzzle(CLASSIC, turn(puzzle.givens, *symmetry)), turn(solution, *symmetry))
        assert there.effort == effort


def test_labels_follow_their_cells() -> None:
    solution = solution_of(classic(PUZZLES["singles"]))
    assert solution is not None
    known = labels(CLASSIC, solution)
    assert len(set(known)) == 81
    for seed in range(20):
        names, cells = draw(random.Random(seed))
        assert labels(CLASSIC, turn(solution, names, cells)) == [known[cell] for cell in cells]
