"""Gate 1: the effort is the same however the grid is turned and its digits are called, as far as the rules allow it."""

from __future__ import annotations

import random

import pytest

from bookmaker.grade import grade
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.cage import Cage
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.thermometer import Thermometer
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from bookmaker.symmetry.canonical_labels import canonical_labels
from bookmaker.symmetry.moves import TURNS
from tests.digits import classic
from tests.grade.turns import draw, turn
from tests.makers.corpus import corpus
from tests.published import SEVENTEEN

PUZZLES = {
    "singles": SEVENTEEN,
    # Drawn by this project; its solution grid maps to itself in many ways, so many cells share a label.
    "even grid": "....5..8.4.6.......8.1.3.5....5.......7.9.2.4..1..4.6........1......23.....3456.8",
    # Drawn by this project: needs locked candidates, subsets and what-ifs.
    "hard": "....9..5....674.3....5....95.....3.82......6.7.3.46...45...1.9.....6....3......27",
}


def solution_of(puzzle: RuledPuzzle) -> tuple[int, ...] | None:
    verdict = prove(problem_of(puzzle))
    return verdict.solution if isinstance(verdict, Unique) else None


@pytest.mark.slow
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


@pytest.mark.slow
@pytest.mark.parametrize("family", ["relations", "sums"])
def test_turned_marks_have_the_same_effort(family: str) -> None:
    """Under what keeps the rules: turns and reflections, and for thermometers digits counted from the other end."""
    flip = [0, *range(9, 0, -1)]
    for puzzle, solution in corpus(family, 3, seed=7):
        before = grade(puzzle, solution)
        for turn_cells in TURNS.values():
            to = [CLASSIC.cell(*turn_cells(CLASSIC.row(cell), CLASSIC.column(cell), 9)) for cell in CLASSIC.cells]
            back = sorted(CLASSIC.cells, key=to.__getitem__)
            for names in ([*range(10)], flip) if family == "relations" else ([*range(10)],):
                rules = tuple(moved(rule, to, turned=names is flip) for rule in puzzle.rules)
                there = Puzzle(CLASSIC, turn(puzzle.givens, names, back), rules)
                assert grade(there, turn(solution, names, back)).effort == pytest.approx(before.effort, rel=1e-12)


def moved(rule: Rule, to: list[int], turned: bool) -> Rule:
    """Thermometers or cages on the images of their cells, written in another order; thermometers turned round."""
    match rule:
        case Thermometer(chains):
            images = [tuple(to[cell] for cell in chain) for chain in chains]
            return Thermometer(tuple(chain[::-1] if turned else chain for chain in reversed(images)))
        case Cage(cages):
            return Cage(tuple((tuple(to[cell] for cell in reversed(cells)), total) for cells, total in reversed(cages)))
    raise AssertionError(rule)


def test_labels_follow_their_cells() -> None:
    solution = solution_of(classic(PUZZLES["singles"]))
    assert solution is not None
    known = canonical_labels(CLASSIC, solution)
    assert len(set(known)) == 81
    for seed in range(20):
        names, cells = draw(random.Random(seed))
        assert canonical_labels(CLASSIC, turn(solution, names, cells)) == [known[cell] for cell in cells]
