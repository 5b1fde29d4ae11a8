"""The gates that a grade must pass, on small samples; `tests/benchmarks/grade_gates.py` measures them on large ones."""

from __future__ import annotations

import random

import pytest

from bookmaker.grade import grade
from bookmaker.grade.bands import CUTS, band_of, family_of
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.thermometer import Thermometer
from tests.makers.corpus import corpus
from tests.makers.grow import rising_chains


def test_one_more_given_makes_no_puzzle_much_harder() -> None:
    """Gate 2."""
    rng = random.Random(1)
    for puzzle, solution in corpus("classic", 12):
        before = grade(puzzle, solution).effort
        cell = rng.choice([c for c, digit in enumerate(puzzle.givens) if not digit])
        more = (*puzzle.givens[:cell], solution[cell], *puzzle.givens[cell + 1 :])
        assert grade(Puzzle(CLASSIC, more, puzzle.rules), solution).effort < 1.05 * before


def test_needless_thermometers_change_little_where_singles_suffice() -> None:
    """Gate 5, first part: four needless thermometers leave nine classics in ten within 5 % and make none harder. The
    others become easier: chained cells that touch at a corner see each other, which now and then shows a single."""
    changes = []
    for number, (puzzle, solution) in enumerate(corpus("classic", 24)):
        plain = grade(puzzle, solution)
        if plain.singles_only:
            chains = tuple(chain[:4] for chain in rising_chains(CLASSIC, solution, random.Random(number), 4))
            marked: RuledPuzzle = Puzzle(CLASSIC, puzzle.givens, (Thermometer(chains),))
            changes.append(grade(marked, solution).effort / plain.effort - 1)
    assert len(changes) > 10
    assert max(changes) <= 0.05
    assert sum(abs(change) <= 0.05 for change in changes) >= 0.9 * len(changes)


def test_a_forced_thermometer_grades_as_the_classic_that_is_left() -> None:
    """Gate 5, second part: nine cells in a row hold 1 to 9."""
    for puzzle, solution in corpus("classic", 4):
        names = [0] * 10
        for digit, cell in enumerate(range(9), start=1):
            names[solution[cell]] = digit
        relabelled = tuple(names[digit] for digit in solution)
        givens = tuple(names[digit] for digit in puzzle.givens)
        left: RuledPuzzle = Puzzle(CLASSIC, (*range(1, 10), *givens[9:]))
        marked: RuledPuzzle = Puzzle(CLASSIC, (*(0,) * 9, *givens[9:]), (Thermometer((tuple(range(9)),)),))
        assert grade(marked, relabelled).effort == pytest.approx(grade(left, relabelled).effort + 9)


def test_bands_rise_and_every_family_has_cuts() -> None:
    for family in CUTS:
        assert list(CUTS[family]) == sorted(set(CUTS[family]))
        assert [band_of(effort, family) for effort in (0.0, *CUTS[family])] == [1, 2, 3, 4, 5]
    for family in CUTS:
        puzzle, _ = next(corpus(family, 1))
        assert family_of(puzzle) == family
