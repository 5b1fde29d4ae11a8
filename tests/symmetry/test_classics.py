"""Look-alikes among classics: what is known to differ is told apart, what is scrambled is found."""

from __future__ import annotations

from itertools import combinations
from random import Random

import pytest

from bookmaker.puzzle.grid import CLASSIC, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from bookmaker.symmetry import Move, different_givens, keys_of, mapping
from bookmaker.symmetry.moves import EIGHT, reversed_digits, turned_cells, unmoved_digits, words_of
from bookmaker.symmetry.outline import outline_of
from tests.digits import classic
from tests.grade.turns import turned
from tests.published import published_lines, shared_lines

PUZZLES = {
    # 17 givens: McGuire, Tugemann, Civario, Exp. Math. 23 (2014) 190–217.
    "seventeen": "000801000000000043500000000000070800000000100020030000600000075003400000000200600",
    # Drawn by this project; its solution grid maps to itself in many ways.
    "even grid": "....5..8.4.6.......8.1.3.5....5.......7.9.2.4..1..4.6........1......23.....3456.8",
    "hard": "....9..5....674.3....5....95.....3.82......6.7.3.46...45...1.9.....6....3......27",
}


def solution_of(puzzle: RuledPuzzle) -> Solution:
    verdict = prove(problem_of(puzzle))
    assert isinstance(verdict, Unique)
    return verdict.solution


def test_all_of_a_list_published_as_different_are_told_apart() -> None:
    """The list goes by 17 givens and is published as pairwise inequivalent."""
    lines = shared_lines("classic-17.txt") or published_lines("seventeen.txt")
    puzzles = [classic(line.split()[0]) for line in lines if line.strip()]
    keys = [keys_of(puzzle, solution_of(puzzle)) for puzzle in puzzles]
    assert len({key.puzzle for key in keys}) == len(puzzles) >= 5


def test_outlines_tell_nearly_all_of_them_apart() -> None:
    """So that keys need to be found out for few."""
    puzzles = [classic(line.split()[0]) for line in published_lines("seventeen.txt")]
    assert len({outline_of(puzzle) for puzzle in puzzles}) >= 0.9 * len(puzzles)


@pytest.mark.parametrize("name", PUZZLES)
def test_scrambled_copies_are_found_and_the_move_is_told(name: str) -> None:
    rng = Random(name)
    puzzle: RuledPuzzle = classic(PUZZLES[name])
    solution = solution_of(puzzle)
    key = keys_of(puzzle, solution)
    for _ in range(12):
        there: RuledPuzzle = Puzzle(CLASSIC, turned(puzzle.givens, rng))
        grid = solution_of(there)
        assert keys_of(there, grid) == key
        assert outline_of(there) == outline_of(puzzle)
        move = mapping(puzzle, solution, there, grid)
        assert move is not None
        assert move.apply(puzzle.givens) == there.givens
        assert move.apply(solution) == grid


def test_different_puzzles_have_no_move() -> None:
    puzzles: list[RuledPuzzle] = [classic(text) for text in PUZZLES.values()]
    for one, other in combinations(puzzles, 2):
        assert mapping(one, solution_of(one), other, solution_of(other)) is None


def test_one_given_more_is_near() -> None:
    puzzle: RuledPuzzle = classic(PUZZLES["even grid"])
    solution = solution_of(puzzle)
    first = next(cell for cell in CLASSIC.cells if not puzzle.givens[cell])
    more = tuple(solution[c] if c == first else digit for c, digit in enumerate(puzzle.givens))
    there: RuledPuzzle = Puzzle(CLASSIC, turned(more, Random(1)))
    grid = solution_of(there)
    one, other = keys_of(puzzle, solution), keys_of(there, grid)
    assert one.puzzle != other.puzzle
    assert one.solution == other.solution
    assert mapping(puzzle, solution, there, grid) is None
    assert different_givens(puzzle, solution, there, grid) == 1


def test_a_small_grid_without_marks_has_no_near_keys() -> None:
    """There are 49 classes of solutions to the usual 6×6, so one in common says nothing."""
    grid = boxed_grid(6, 2, 3)
    puzzle: RuledPuzzle = Puzzle(grid, (0,) * 36)
    solution = tuple((3 * (r % 2) + r // 2 + c) % 6 + 1 for r in range(6) for c in range(6))
    keys = keys_of(puzzle, solution)
    assert keys.puzzle
    assert (keys.solution, keys.marks) == ("", "")


WORDS = {
    "half": "half turn",
    "left-right": "reflection from left to right",
    "top-bottom": "reflection from top to bottom",
    "falling": "reflection in the diagonal from the top left",
    "rising": "reflection in the diagonal from the top right",
    "quarter-right": "quarter turn to the right",
    "quarter-left": "quarter turn to the left",
}


def test_a_turn_is_told_as_a_turn_where_it_is_one() -> None:
    puzzle: RuledPuzzle = classic(PUZZLES["hard"])
    solution = solution_of(puzzle)
    for name, turn in EIGHT.items():
        move = Move(turned_cells(turn, 9), reversed_digits(9))
        there: RuledPuzzle = Puzzle(CLASSIC, move.apply(puzzle.givens))
        found = mapping(puzzle, solution, there, move.apply(solution))
        assert found == move
        *turned, renamed = words_of(found)
        assert (turned, renamed) == ([f"a {WORDS[name]}"] if name else [], "each digit d becomes 10 − d")


def test_words_of_moves() -> None:
    rows = [3, 4, 5, 0, 1, 2, 6, 8, 7]
    swapped = Move(tuple(9 * rows[c // 9] + c % 9 for c in range(81)), (0, 2, 1, 3, 4, 5, 6, 7, 8, 9))
    assert words_of(swapped) == ("rows 1 to 9 become rows 4 5 6 1 2 3 7 9 8", "digits 1 → 2, 2 → 1")
    crossed = Move(tuple(9 * (c % 9) + rows[c // 9] for c in range(81)), unmoved_digits(9))
    assert words_of(crossed) == (
        "rows 1 to 9 become columns 4 5 6 1 2 3 7 9 8",
        "columns 1 to 9 become rows 1 2 3 4 5 6 7 8 9",
    )
    assert words_of(Move(tuple(range(81)), unmoved_digits(9))) == ("nothing is changed",)
