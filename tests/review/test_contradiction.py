"""What is said of a puzzle without a solution names the slip, and nothing that could be spared."""

from __future__ import annotations

from random import Random

import pytest

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.review.contradiction import contradiction, contradiction_words
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import NoSolution
from tests.rules.grids import random_solution
from tests.rules.harness import sound_entry


def puzzle(givens: dict[int, int], *entries: str) -> RuledPuzzle:
    written = tuple(givens.get(cell, 0) for cell in CLASSIC.cells)
    return Puzzle(CLASSIC, written, tuple(sound_entry(entry) for entry in entries))


@pytest.mark.parametrize(
    ("givens", "entries", "said"),
    [
        (
            {0: 5, 40: 7},
            ["parity: {even: r1c1, odd: r9c9}"],
            "the given 5 at r1c1 and the even or odd cell at r1c1 can't both hold",
        ),
        (
            {0: 9, 80: 1},
            ["thermometer: [r1c1-r1c3, r5c5-r5c7]"],
            "the given 9 at r1c1 and the thermometer at r1c1–r1c3 can't both hold",
        ),
        (
            {40: 5},
            ["x-sum: {left: 45 . . . . . . . ., right: 44 . . . . . . . .}"],
            "the X-sum at r1c1–r1c9 can't hold",
        ),
    ],
)
def test_the_slip_is_named(givens: dict[int, int], entries: list[str], said: str) -> None:
    made = puzzle(givens, *entries)
    assert contradiction_words(contradiction(made), made) == said


def test_a_long_list_is_cut_short() -> None:
    """Six digits fill the row up to its last box, where 9 stands already: seven givens, of which five are named."""
    row = dict(zip(range(6), range(1, 7), strict=True))
    made = puzzle({**row, 16: 9, 60: 3})
    words = contradiction_words(contradiction(made), made)
    assert words.startswith("the given 1 at r1c1, ")
    assert words.endswith(" and two more givens or marks can't all hold")


@pytest.mark.parametrize("seed", range(6))
def test_nothing_named_could_be_spared(seed: int) -> None:
    """One given is changed; what is named contradicts itself without the other givens, not without one of its own."""
    rng = Random(seed)
    solution = random_solution(CLASSIC, rng)
    givens = {cell: solution[cell] for cell in rng.sample(CLASSIC.cells, 40)}
    for _ in range(200):
        wrong = rng.choice(sorted(givens))
        changed = {**givens, wrong: rng.choice([digit for digit in CLASSIC.digits if digit != solution[wrong]])}
        if isinstance(prove(problem_of(puzzle(changed))), NoSolution):
            break
    found = contradiction(puzzle(changed))
    named = dict(found.givens)
    assert set(named.items()) <= set(changed.items())
    assert wrong in named
    assert isinstance(prove(problem_of(puzzle(named))), NoSolution)
    for cell in named:
        fewer = {other: digit for other, digit in named.items() if other != cell}
        assert not isinstance(prove(problem_of(puzzle(fewer))), NoSolution)
