"""What is said of a puzzle without a solution names the slip, and nothing that could be spared."""

from __future__ import annotations

from random import Random

import pytest

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.review import contradiction as clashes
from bookmaker.review.contradiction import SETTING_UP, contradiction, contradiction_words
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.problem import Problem
from bookmaker.solve.proving import refuted
from bookmaker.solve.verdict import NoSolution
from tests.rules.grids import random_solution
from tests.rules.harness import sound_entry

HARD = (
    "limits: {r3c5: 4 5 9, r4c6: 2 7 9, r4c7: 4 6 9}",
    "thermometer: [r5c1-r5c3, r1c3-r1c2 r2c1-r2c2, r6c5-r6c4 r5c5, r2c7-r1c7 r1c6]",
    "sandwich: {left: . . . . . . 0 11 ., right: 5 18 . . . 4 . . ., top: . 15 3 . . . 11 . 27, "
    "bottom: . . . 6 . . . 9 .}",
    """cage:
  picture: |
    ...aabb..
    ..aabbcc.
    ..dabcc..
    .dd..eee.
    .....f...
    .g.hfff.i
    .ghhjjj.i
    kkkkl.jii
    .mmkl....
  totals: {b: 28, d: 13, f: 15, g: 11, h: 11, i: 21, j: 17, k: 23, l: 14, m: 10}""",
)
"""Marks of four kinds that clash; most proofs that fewer clash too take long."""


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
    assert found.least
    named = dict(found.givens)
    assert set(named.items()) <= set(changed.items())
    assert wrong in named
    assert isinstance(prove(problem_of(puzzle(named))), NoSolution)
    for cell in named:
        fewer = {other: digit for other, digit in named.items() if other != cell}
        assert not isinstance(prove(problem_of(puzzle(fewer))), NoSolution)


def test_where_the_effort_runs_out_it_is_said_that_more_is_named_than_clashes(monkeypatch: pytest.MonkeyPatch) -> None:
    """With effort for three proofs, the three last givens are spared and the slip is among the rest, which is said."""
    made = puzzle({0: 5, 30: 6, 40: 7, 50: 8, 60: 9}, "parity: {even: r1c1, odd: r9c9}")
    whole = contradiction(made)
    monkeypatch.setattr(clashes, "ALL", 4 * SETTING_UP)
    found = contradiction(made)
    assert whole.least
    assert not found.least
    assert set(whole.givens) < set(found.givens) < {(0, 5), (30, 6), (40, 7), (50, 8), (60, 9)}
    assert contradiction_words(found, made).startswith("what clashes is among the given 5 at r1c1")


def test_an_effort_bounds_all_proofs_together() -> None:
    """Proofs that take long are those of sums outside the grid; they share one effort, compiling included."""
    made = puzzle({}, *HARD)
    assert isinstance(prove(problem_of(made)), NoSolution)
    spent: list[int] = []
    most = 1_000_000

    def counted(problem: Problem, effort: int) -> tuple[bool | None, int]:
        answer, used = refuted(problem, effort)
        spent.append(used + SETTING_UP)
        return answer, used

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(clashes, "refuted", counted)
        patch.setattr(clashes, "ALL", most)
        found = contradiction(made)
    assert not found.least
    assert len(spent) > 1
    assert sum(spent[:-1]) < most
