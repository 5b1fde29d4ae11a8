"""Gate 4: nothing that a technique strikes is in the proven solution, on positions met while solving."""

from __future__ import annotations

import random

import pytest

from bookmaker.grade.path import walk
from bookmaker.grade.state import ground_of, start
from bookmaker.grade.technique import ladder
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from tests.makers.grow import empty_grid, needed_givens, random_solution, rising_chains

SEEDS = range(15)


@pytest.mark.parametrize("seed", SEEDS)
def test_every_technique_at_every_stuck_position(seed: int) -> None:
    rng = random.Random(seed)
    empty = empty_grid(CLASSIC)
    solution = random_solution(empty, rng)
    rules: tuple[Rule, ...] = ()
    if seed % 3 == 2:
        rules = (kinds()["thermometer"](tuple(rising_chains(CLASSIC, solution, rng, 4))),)  # type: ignore[call-arg]
    puzzle = Puzzle(CLASSIC, needed_givens(empty, solution, rng), rules)
    state = start(ground_of(puzzle))
    for step in walk(puzzle, solution).steps:
        if not step.placed:
            for techniques in ladder():
                for technique in techniques:
                    for finding in technique.find(state):
                        wrong = [(cell, digit) for cell, digit in finding.removed if solution[cell] == digit]
                        assert not wrong, f"{technique.name}: {finding.words()}"
                        assert state.present(finding.removed) == finding.removed
        for cell, digit in step.placed:
            assert solution[cell] == digit
            state.place(cell, digit)
        state.remove(step.removed)
    assert not state.empty
