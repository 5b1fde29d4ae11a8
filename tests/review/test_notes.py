"""What an editor is told: forced shapes, needless parts, automorphisms, unused rules, repair of a broken puzzle."""

from __future__ import annotations

import random

import pytest

from bookmaker.grade import grade
from bookmaker.grade.automorphism import automorphisms
from bookmaker.grade.bottlenecks import bottlenecks_of
from bookmaker.grade.solve_path import SolvePath, Step
from bookmaker.puzzle.grid import CLASSIC, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.singles import FromProof
from bookmaker.review.notes import notes_of, repair_sentences, sentences
from bookmaker.review.repair import repair
from bookmaker.review.shapes import needless_givens, shapes_of
from bookmaker.rules import problem_of
from bookmaker.rules.bounded_line import BoundedLine
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.difference_line import DifferenceLine
from bookmaker.rules.hinge_line import HingeLine
from bookmaker.rules.parity import Parity
from bookmaker.rules.thermometer import Thermometer
from bookmaker.solve import prove
from bookmaker.solve.verdict import Several, Solution, Unique
from tests.digits import classic, digits_from
from tests.makers.grow import needed_givens, random_solution, rising_chains
from tests.published import SEVENTEEN, WORKED


def proven(puzzle: RuledPuzzle) -> Solution:
    verdict = prove(problem_of(puzzle))
    assert isinstance(verdict, Unique)
    return verdict.solution


@pytest.fixture(scope="module")
def forced_row() -> RuledPuzzle:
    """A thermometer of nine cells: no freedom (C(9, 9) = 1 filling, common practice)."""
    rule = Thermometer((tuple(range(9)),))
    bare: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81, (rule,))
    rng = random.Random(5)
    problem = problem_of(bare)
    solution = random_solution(problem, rng)
    return Puzzle(CLASSIC, needed_givens(problem, solution, rng), (rule,))


def test_nine_cells_leave_no_freedom(forced_row: RuledPuzzle) -> None:
    solution = proven(forced_row)
    notes = notes_of(forced_row, solution, grade(forced_row, solution).path)
    assert [shape.cells for shape in notes.fixed] == [tuple(range(9))]
    assert notes.classic_once_filled
    assert not notes.unused
    assert not notes.needless_givens
    assert not notes.needless_shapes
    assert list(sentences(notes, CLASSIC))[:2] == [
        "Marks that leave no freedom: thermometer r1c1–r1c9.",
        "Becomes a classic once its forced marks are filled.",
    ]


def test_marks_of_single_cells_are_named_one_by_one() -> None:
    worked = classic(WORKED)
    rule = Parity(even=(2, 3, 5))  # 4, 6 and 8 in its solution
    puzzle: RuledPuzzle = Puzzle(CLASSIC, worked.givens, (rule,))
    solution = proven(puzzle)
    said = list(sentences(notes_of(puzzle, solution, grade(puzzle, solution).path), CLASSIC))
    assert "Redundant marks (any one may go): even or odd cell r1c3, r1c4 and r1c6." in said


def test_a_line_is_named_by_its_ends_and_taken_as_one() -> None:
    for rule in (DifferenceLine((tuple(range(9, 14)),)), BoundedLine(((0, 1, 2, 11),)), HingeLine(((2, 1, 9, 18),))):
        (shape,) = shapes_of(rule, Puzzle(CLASSIC, (0,) * 81, (rule,)))
        assert shape.cells == rule.chains[0]


def test_a_short_thermometer_is_free_and_needed_to_the_end() -> None:
    rng = random.Random(6)
    empty: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81)
    solution = random_solution(problem_of(empty), rng)
    rule = Thermometer(tuple(rising_chains(CLASSIC, solution, rng, 4)))
    bare: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81, (rule,))
    puzzle: RuledPuzzle = Puzzle(CLASSIC, needed_givens(problem_of(bare), solution, rng), (rule,))
    notes = notes_of(puzzle, solution, grade(puzzle, solution).path)
    assert not notes.fixed
    assert not notes.classic_once_filled
    assert not notes.needless_rules
    assert not notes.unused
    assert len(shapes_of(rule, puzzle)) == 4


def test_a_rule_that_adds_nothing_is_said_to_be_needless() -> None:
    givens = list(digits_from(SEVENTEEN))
    solution = proven(Puzzle(CLASSIC, tuple(givens)))
    chain = next((c, c + 1) for c in range(80) if c % 9 < 8 and solution[c] < solution[c + 1])
    puzzle: RuledPuzzle = Puzzle(CLASSIC, tuple(givens), (Thermometer((chain,)),))
    notes = notes_of(puzzle, solution, grade(puzzle, solution).path)
    assert notes.needless_rules == ("Thermometers",)
    assert [shape.cells for shape in notes.needless_shapes] == [chain]
    assert notes.classic_once_filled


def test_no_given_of_a_17_clue_puzzle_can_go() -> None:
    """There is no 16-clue sudoku: McGuire, Tugemann, Civario, Exp. Math. 23 (2014) 190–217."""
    puzzle = classic(SEVENTEEN)
    assert not needless_givens(puzzle)


def test_needless_givens_are_found() -> None:
    seventeen = classic(SEVENTEEN)
    solution = proven(Puzzle(CLASSIC, seventeen.givens))
    more = (solution[0], *seventeen.givens[1:])
    assert needless_givens(Puzzle(CLASSIC, more))[0] == 0


def test_half_turn_with_digits_exchanged() -> None:
    grid = boxed_grid(4, 2, 2)
    solution = digits_from("1234341221434321")
    givens = tuple(digit if cell in (0, 5, 10, 15, 1, 14) else 0 for cell, digit in enumerate(solution))
    puzzle: RuledPuzzle = Puzzle(grid, givens)
    found = {mirror.name: mirror for mirror in automorphisms(puzzle, solution)}
    half = found["half"]
    assert half.swapped == ()
    lopsided: RuledPuzzle = Puzzle(grid, (*givens[:15], 0))
    assert "half" not in {mirror.name for mirror in automorphisms(lopsided, solution)}


def test_thermometers_turn_with_digits_counted_from_the_other_end() -> None:
    grid = boxed_grid(4, 2, 2)
    solution = digits_from("1234341221434321"[::1])
    # Half turn: the first row 1 2 3 4 becomes the last row read backwards, 1 2 3 4: no digit changes.
    up = Thermometer(((0, 1, 2, 3), (15, 14, 13, 12)))
    puzzle: RuledPuzzle = Puzzle(grid, (0,) * 16, (up,))
    assert "half" in {mirror.name for mirror in automorphisms(puzzle, solution)}
    # Left to right: the row is turned round and its digits are counted from the other end, so it still rises.
    names = {mirror.name: mirror.swapped for mirror in automorphisms(puzzle, solution)}
    assert names["left-right"] == ((1, 4), (2, 3))
    down = Thermometer(((0, 1, 2, 3),))
    only: RuledPuzzle = Puzzle(grid, (0,) * 16, (down,))
    assert "half" not in {mirror.name for mirror in automorphisms(only, solution)}


def test_repair_of_a_puzzle_that_lost_givens() -> None:
    text = WORKED
    solution = proven(Puzzle(CLASSIC, digits_from(text)))
    found = repair(Puzzle(CLASSIC, digits_from(text)), ())
    assert found.complete and found.solutions == 1 and not found.differing
    fewer = list(digits_from(text))
    rng = random.Random(3)
    filled = [cell for cell, digit in enumerate(fewer) if digit]
    while isinstance(verdict := prove(problem_of(Puzzle(CLASSIC, tuple(fewer)))), Unique):
        fewer[rng.choice(filled)] = 0
    assert isinstance(verdict, Several)
    broken: RuledPuzzle = Puzzle(CLASSIC, tuple(fewer))
    mend = repair(broken, (verdict.first, verdict.second))
    assert mend.complete and mend.solutions > 1
    assert all(solution[c] == fewer[c] for c in range(81) if fewer[c])
    for given in mend.settling[:5]:
        mended = list(fewer)
        for cell, digit in given:
            mended[cell] = digit
        assert isinstance(prove(problem_of(Puzzle(CLASSIC, tuple(mended)))), Unique)
    assert next(repair_sentences(mend, CLASSIC)).startswith(f"There are {mend.solutions} solutions")


def test_repair_ends_when_its_effort_is_spent() -> None:
    empty: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81)
    verdict = prove(problem_of(empty))
    assert isinstance(verdict, Several)
    known = (verdict.first, verdict.second)
    little = repair(empty, known, effort=1)
    assert (little.solutions, little.complete, little.settling) == (2, False, ())
    assert little.differing == tuple(c for c in range(81) if known[0][c] != known[1][c])
    assert next(repair_sentences(little, CLASSIC)).startswith("There are at least 2 solutions; those looked at differ")
    more = repair(empty, known, limit=30)
    assert (more.solutions, more.complete) == (30, False)


def step(rung: Rung, openings: int, empty: int, effort: float) -> Step:
    placed = ((empty, 1),) if rung <= Rung.NAKED else ()
    removed = () if placed else ((empty, 2),)
    reason = Reason("naked-single" if rung == Rung.NAKED else "hidden-single", None, FromProof(empty, 1))
    return Step(reason, rung, (empty,), placed, removed, openings, empty, effort)


def test_a_lone_naked_single_is_named() -> None:
    easy = tuple(step(Rung.BOX, 9, 40 - i, 2.0) for i in range(20))
    path = SolvePath((*easy, step(Rung.NAKED, 1, 20, 60.0), *(step(Rung.BOX, 9, 19 - i, 1.0) for i in range(19))), True)
    (point,) = bottlenecks_of(path, 81)
    assert point.lone_naked_single
    assert (point.first, point.after, point.filled, point.openings) == (20, 21, 61, 1)
    assert point.reason.technique == "naked-single"


def test_strikes_between_two_placements_are_one_point() -> None:
    steps = (
        step(Rung.BOX, 5, 30, 1.0),
        step(Rung.SIMPLE, 2, 29, 30.0),
        step(Rung.WING, 1, 29, 50.0),
        step(Rung.BOX, 1, 29, 4.0),
    )
    path = SolvePath((*steps, *(step(Rung.BOX, 9, 28 - i, 1.0) for i in range(28))), True)
    (point,) = bottlenecks_of(path, 81)
    assert (point.first, point.after, point.effort) == (1, 3, 80.0)
