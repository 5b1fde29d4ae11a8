"""Cures on every shape of grid; which come first, and which are looked at closely."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from bookmaker.mend.case import Case
from bookmaker.mend.cures import search
from bookmaker.mend.likelihood import idle_cost, puzzle_likelihood
from bookmaker.mend.limit import Effort
from bookmaker.mend.telling import change_said, cured_said, search_lines
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.holed import holed_grid
from bookmaker.puzzle.overlapping import overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.parts import Part
from bookmaker.rules.consecutive_bars import ConsecutiveBars
from bookmaker.rules.dots import Dots
from bookmaker.solve import prove, solutions
from bookmaker.solve.verdict import NoSolution, Unique
from tests.digits import digits_from

PLENTY = 30_000_000
SHAPES = {
    "two": overlapping_grids(6, (2, 3), [(0, 0), (4, 3)]),
    "holed": holed_grid(4, 6, [(row, (row + across) % 6) for row in range(6) for across in (1, 4)]),
}
SOLUTION = digits_from("534678912672195348198342567859761423426853791713924856961537284287419635345286179")


def minimal(grid: Grid, rng: Random) -> RuledPuzzle:
    """A classic on any grid from which no given can go."""
    solution = next(solutions(problem_of(Puzzle(grid, (0,) * len(grid.cells))), rng))
    givens = list(solution)
    for cell in rng.sample(grid.cells, len(grid.cells)):
        trial = Puzzle(grid, (*givens[:cell], 0, *givens[cell + 1 :]))
        if isinstance(prove(problem_of(trial)), Unique):
            givens[cell] = 0
    return Puzzle(grid, tuple(givens))


@pytest.mark.parametrize("grid", SHAPES.values(), ids=SHAPES)
def test_neighbours_that_changed_places_are_put_back_on_every_shape(grid: Grid) -> None:
    tried = 0
    for seed in range(4):
        meant = minimal(grid, Random(seed))
        ways = [(a, b) for a in grid.cells for b in grid.orthogonal(a) if a < b]
        for one, other in Random(seed).sample(ways, len(ways)):
            if meant.givens[one] == meant.givens[other]:
                continue
            givens = list(meant.givens)
            givens[one], givens[other] = givens[other], givens[one]
            broken = replace(meant, givens=tuple(givens))
            if not isinstance(prove(problem_of(broken)), Unique):
                found = search(Case(broken, Effort(PLENTY)))
                assert meant in [cure.puzzle for cure in found.cures]
                assert found.tried
                tried += 1
                break
    assert tried == 4


@pytest.mark.parametrize("letter", "AB")
def test_a_row_of_one_of_two_grids_is_put_back(letter: str) -> None:
    grid = SHAPES["two"]
    for seed in range(40):
        meant = minimal(grid, Random(seed))
        for house in grid.square(letter).rows:
            line = [meant.givens[cell] for cell in house.cells]
            moved = dict(zip(house.cells, (*line[1:], 0), strict=True))
            broken = replace(meant, givens=tuple(moved.get(cell, d) for cell, d in enumerate(meant.givens)))
            if line[0] == 0 and sum(map(bool, line)) > 1 and isinstance(prove(problem_of(broken)), NoSolution):
                found = search(Case(broken, Effort(PLENTY)))
                assert ("shifted", meant) in [(cure.slip.sort, cure.puzzle) for cure in found.cures]
                return
    pytest.fail("no row could be shifted")


def test_a_mark_left_out_is_found_where_all_are_marked() -> None:
    """A bar that is not there says that two digits are not consecutive; it was not looked for."""
    grid = boxed_grid(6, 2, 3)
    solution = next(solutions(problem_of(Puzzle(grid, (0,) * 36)), Random(5)))
    rule = ConsecutiveBars.blank(grid)
    parts = [Part(pair) for pair in rule.places(grid) if abs(solution[pair[0]] - solution[pair[1]]) == 1]
    rule = rule.with_parts(parts, grid)
    givens = tuple(digit if cell % 7 == 0 else 0 for cell, digit in enumerate(solution))
    meant = Puzzle(grid, givens, (rule,))
    assert isinstance(prove(problem_of(meant)), Unique)
    broken = Puzzle(grid, givens, (rule.with_parts(parts[1:], grid),))
    assert isinstance(prove(problem_of(broken)), NoSolution)
    found = search(Case(broken, Effort(PLENTY)))
    cures = {cure.slip.sort: cure for cure in found.cures}
    assert set(cures["left-out mark"].puzzle.rules[0].parts(grid)) == set(parts)
    assert "the rest" not in change_said(broken, cures["left-out mark"].puzzle)


def open_classic() -> RuledPuzzle:
    """Two solutions: 1 and 3 can be exchanged in the corners of a rectangle. Eight givens would settle it."""
    hidden = (32, 35, 41, 44)
    return Puzzle(CLASSIC, tuple(0 if cell in hidden else digit for cell, digit in enumerate(SOLUTION)))


def test_only_what_may_come_first_is_graded_and_the_order_is_the_same() -> None:
    """Up to forty were, whatever that took: one page of reviews waited ten seconds for it."""
    few, all_ = (search(Case(open_classic(), Effort(PLENTY)), first=first).cures for first in (2, 1_000))
    assert len(few) == len(all_) == 8
    assert all(cure.grade for cure in all_)
    assert few[:2] == all_[:2]
    assert sum(cure.grade is not None for cure in few) < len(few)


class AllButGrades(Effort):
    """A limit whose last part is used up by somebody else."""

    def over(self, share: float = 1.0) -> bool:
        return share == 1.0


def test_a_cure_for_whose_grade_nothing_was_left_says_so() -> None:
    found = search(Case(open_classic(), AllButGrades(PLENTY)))
    assert not found.untried
    assert [cure.grade for cure in found.cures] == [None] * 8
    assert "no time was left to grade it" in cured_said(found.cures[0].grade)


def test_what_was_not_tried_is_told_and_a_limit_is_kept() -> None:
    found = search(Case(one_digit_wrong(), limit := Effort(200_000)))
    assert found.untried
    assert "No time was left for" in "\n".join(search_lines(found))
    assert limit.spent < 400_000


def one_digit_wrong() -> RuledPuzzle:
    meant = minimal(CLASSIC, Random(3))
    cell = next(cell for cell, digit in enumerate(meant.givens) if digit)
    return replace(meant, givens=(*meant.givens[:cell], meant.givens[cell] % 9 + 1, *meant.givens[cell + 1 :]))


def test_a_cure_that_leaves_a_mark_idle_is_less_likely() -> None:
    """A dot between two givens says again what they say."""
    puzzle = open_classic()
    one, other = next(
        pair
        for pair in Dots.blank(CLASSIC).places(CLASSIC)
        if 2 * SOLUTION[pair[0]] == SOLUTION[pair[1]] and all(puzzle.givens[cell] for cell in pair)
    )
    dotted = replace(puzzle, rules=(Dots(black=((one, other),)),))
    plain, same = (
        {cure.puzzle.givens: cure for cure in search(Case(each, Effort(PLENTY)), first=99).cures}
        for each in (puzzle, dotted)
    )
    (givens, cure) = next(iter(plain.items()))
    expected = puzzle_likelihood(same[givens].puzzle, same[givens].grade) - puzzle_likelihood(cure.puzzle, cure.grade)
    assert same[givens].likelihood - cure.likelihood == pytest.approx(expected - idle_cost(1, 0))
    assert idle_cost(1, 0) > 0
