"""The fewest givens that settle a puzzle, against trying all sets on small grids."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations, islice
from random import Random

import pytest

from bookmaker.changes.elements import Given, MarkOf
from bookmaker.mend.case import Case
from bookmaker.mend.limit import Seconds
from bookmaker.mend.settling import MOST, settling
from bookmaker.puzzle.grid import CLASSIC, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.dots import Dots
from bookmaker.solve import solutions
from tests.digits import digits_from

SMALL = boxed_grid(4, 2, 2)


def open_puzzles(count: int) -> Iterator[RuledPuzzle]:
    rng = Random("open")
    while count:
        solution = next(solutions(problem_of(Puzzle(SMALL, (0,) * 16)), rng))
        shown = set(rng.sample(range(16), rng.randint(0, 4)))
        puzzle = Puzzle(SMALL, tuple(d if c in shown else 0 for c, d in enumerate(solution)))
        if 2 <= len(list(islice(solutions(problem_of(puzzle)), 400))) < 300:
            count -= 1
            yield puzzle


def smallest(puzzle: RuledPuzzle) -> set[frozenset[tuple[int, int]]]:
    """All smallest sets of givens that leave one of the puzzle's solutions."""
    every = list(solutions(problem_of(puzzle)))
    candidates = sorted({pair for solution in every for pair in enumerate(solution) if not puzzle.givens[pair[0]]})
    for size in range(1, 9):
        found = [
            frozenset(some)
            for some in combinations(candidates, size)
            if sum(all(solution[cell] == digit for cell, digit in some) for solution in every) == 1
        ]
        if found:
            return set(found)
    raise AssertionError


@pytest.mark.parametrize("puzzle", list(open_puzzles(10)), ids=lambda puzzle: puzzle.givens_text)
def test_the_fewest_givens(puzzle: RuledPuzzle) -> None:
    wanted = smallest(puzzle)
    found = settling(Case(puzzle, Seconds(60.0)))
    sets = {frozenset((given.cell, given.digit) for given in one.added) for one in found.fewest}
    assert sets
    assert {len(one) for one in sets} == {len(one) for one in wanted}
    assert sets <= wanted
    if len(next(iter(wanted))) <= 2:
        assert found.proven
        assert len(sets) == min(MOST, len(wanted))


def test_givens_that_keep_the_arrangement() -> None:
    # Two of four givens that faced each other in pairs are gone.
    puzzle = Puzzle(SMALL, digits_from("1..." + "..3." + ".2.." + "...4"))
    found = settling(Case(puzzle, Seconds(60.0)))
    assert found.arrangement
    for one in found.arranged:
        assert len(one.added) % 2 == 0
        cells = {given.cell for given in one.added if isinstance(given, Given)}
        assert {15 - cell for cell in cells} == cells or found.arrangement != "half-turn"


def test_marks_of_its_own_kinds() -> None:
    solution = digits_from("534678912672195348198342567859761423426853791713924856961537284287419635345286179")
    hidden = (32, 35, 41, 44)  # 1 and 3 in the corners of a rectangle within two boxes: they can be exchanged
    givens = tuple(0 if cell in hidden else digit for cell, digit in enumerate(solution))
    puzzle = Puzzle(CLASSIC, givens, (Dots(white=((1, 2),)),))
    other = tuple(4 - digit if cell in hidden else digit for cell, digit in enumerate(solution))
    assert sorted(solutions(problem_of(puzzle))) == sorted([solution, other])
    found = settling(Case(puzzle, Seconds(60.0)))
    assert {one.added for one in found.fewest} == {(Given(c, d),) for c in hidden for d in (1, 3)}
    rule = Dots()
    wanted = {
        (part, one)
        for pair in rule.places(CLASSIC)
        for one, two in ((solution, other), (other, solution))
        for part in rule.read_off(pair, CLASSIC, one, Random(0))
        if not rule.keeps(part, CLASSIC, two)
    }
    told = {(one.added[0].part, one.solution) for one in found.marks if isinstance(one.added[0], MarkOf)}
    assert told
    assert told <= wanted
    assert len(found.marks) == min(MOST, len(wanted))
