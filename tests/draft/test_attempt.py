"""Drafted puzzles of every kind: proved by the second prover, read back from what is written, no mark idle."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.changes.arrangement import arrangement
from bookmaker.crosscheck import auditor, second_opinion
from bookmaker.draft.attempt import Drafted, attempt
from bookmaker.grade import grade
from bookmaker.manifest import load
from bookmaker.manifest.written import puzzle_lines
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import keeps_all, kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form
from bookmaker.solve import prove
from bookmaker.solve.verdict import Several, Solution, Unique
from bookmaker.wishes.judge import amiss
from bookmaker.wishes.rulewishes import by_chance
from bookmaker.wishes.span import Span
from bookmaker.wishes.techniques import SINGLES, key_of
from bookmaker.wishes.wish import Wish

SIX = boxed_grid(6, 2, 3)
LARGER = ("windows", "difference-line", "inequality")
"""Kinds that have no room, or hardly any, on a 6×6 grid."""


def drafted(wish: Wish, most: int = 60) -> Drafted:
    """The first puzzle that meets a wish."""
    made = (attempt(wish, number) for number in range(most))
    found = next((each for each in made if isinstance(each, Drafted) and not each.amiss), None)
    assert found is not None
    return found


def read_back(puzzle: RuledPuzzle, folder: Path) -> RuledPuzzle:
    file = folder / "puzzles.yaml"
    file.write_text("\n".join(puzzle_lines(puzzle, {"id": "drafted"})) + "\n", encoding="utf-8")
    (entry,) = load(file).entries
    return entry.puzzle


def marks(puzzle: RuledPuzzle) -> list[tuple[str, object]]:
    return [(rule.kind, set(rule.parts(puzzle.grid))) for rule in puzzle.rules]


def without_each(puzzle: RuledPuzzle) -> list[RuledPuzzle]:
    """The puzzle without one of its marks, for each that can be told apart."""
    found: list[RuledPuzzle] = []
    for at, rule in enumerate(puzzle.rules):
        parts = () if rule.form is Form.WHOLE or rule.marks_all else rule.parts(puzzle.grid)
        for part in parts:
            rules: list[Rule] = list(puzzle.rules)
            rules[at] = rule.with_parts([each for each in parts if each != part], puzzle.grid)
            found.append(Puzzle(puzzle.grid, puzzle.givens, tuple(rules)))
    return found


@pytest.mark.parametrize("kind", ["", *kinds()])
def test_a_drafted_puzzle_of_each_kind(kind: str, tmp_path: Path) -> None:
    grid: Grid = CLASSIC if kind in LARGER else SIX
    found = drafted(Wish(grid=grid, rules=(by_chance(kinds()[kind], grid),) if kind else (), seed=1))
    puzzle = found.puzzle
    again = read_back(puzzle, tmp_path)
    assert (again.grid, again.givens) == (puzzle.grid, puzzle.givens)
    assert marks(again) == marks(puzzle)
    if auditor():
        opinion = second_opinion(again)
        assert isinstance(opinion, Unique)
        assert opinion.solution == found.solution
    assert keeps_all(puzzle, found.solution)
    facing = arrangement("half-turn", grid)
    given = {cell for cell, digit in enumerate(puzzle.givens) if digit}
    assert all(other in given for cell in given for other in facing.orbit(cell))
    for rule in puzzle.rules:
        parts = () if rule.form is Form.WHOLE or rule.marks_all else rule.parts(grid)
        there = {frozenset(part.cells) for part in parts}
        assert all(frozenset(image.cells) in there for part in parts for image in facing.images_of(part, rule))
    for idle in without_each(puzzle):
        assert isinstance(prove(problem_of(idle)), Several), "a mark could be spared"


def test_the_same_attempt_gives_the_same_puzzle() -> None:
    wish = Wish(grid=SIX, rules=(by_chance(kinds()["cage"], SIX),), seed=7)
    made = [attempt(wish, number) for number in range(2)]
    assert made == [attempt(wish, number) for number in range(2)]
    assert made != [attempt(Wish(grid=SIX, rules=wish.rules, seed=8), number) for number in range(2)]


WISHES = {
    "band": Wish(bands=Span(3, 3)),
    "difficulty": Wish(difficulty=Span(2.0, 2.4)),
    "refused": Wish(bands=Span(2, 4), refused=frozenset({"what-if", "xy-wing"})),
    "singles": Wish(singles_only=True, rules=(by_chance(kinds()["thermometer"], CLASSIC),)),
    "wanted": Wish(want={("x-wing",): Span(1, 2)}),
    "givens": Wish(givens=Span(0, 24)),
    "openings": Wish(openings=Span(3, 6)),
    "bottlenecks": Wish(bottlenecks=Span(1, 2), where="middle"),
    "mirrors": Wish(arrangement="left-right"),
    "pattern": Wish(pattern=tuple(range(0, 81, 2))),
    "fixed": Wish(fixed=(2, 0, 1, 6, *(0,) * 77)),
}


@pytest.mark.parametrize("name", WISHES)
def test_what_is_wished_comes(name: str) -> None:
    """Judged anew, from the puzzle and its solution alone."""
    wish = WISHES[name]
    found = drafted(wish)
    verdict = prove(problem_of(found.puzzle))
    assert isinstance(verdict, Unique)
    solution: Solution = verdict.solution
    assert solution == found.solution
    graded = grade(found.puzzle, solution)
    path = graded.path
    technique = {key_of(step.reason) for step in path.steps}
    given = {cell for cell, digit in enumerate(found.puzzle.givens) if digit}
    checks = {
        "band": graded.band == 3,
        "difficulty": not amiss(wish, found.puzzle, solution, graded),
        "refused": not technique & {"what-if", "xy-wing"} and 2 <= graded.band <= 4,
        "singles": technique <= {*SINGLES, "thermometer"},
        "wanted": sum(step.reason.technique == "x-wing" for step in path.steps) in (1, 2),
        "givens": len(given) <= 24,
        "openings": 3 <= path.steps[0].openings <= 6,
        "bottlenecks": not amiss(wish, found.puzzle, solution, graded),
        "mirrors": all(9 * (cell // 9) + 8 - cell % 9 in given for cell in given),
        "pattern": given <= set(wish.pattern),
        "fixed": [found.puzzle.givens[cell] for cell in (0, 2, 3)] == [2, 1, 6],
    }
    assert checks[name], (technique, graded.band, found.puzzle.givens_text)
