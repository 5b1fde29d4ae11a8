"""Every rule kind: turned puzzles have one solution again, the turned one, and are found to be the same puzzle."""

from __future__ import annotations

from dataclasses import fields, replace
from random import Random
from typing import Any

import pytest

from bookmaker.puzzle.grid import Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from bookmaker.symmetry import keys_of, mapping, relabelling_of
from bookmaker.symmetry.moves import EIGHT, Move, reversed_digits, turned_cells, unmoved_digits
from bookmaker.symmetry.outline import outline_of
from tests.rules.harness import instances
from tests.symmetry.moving import moved

NINE = boxed_grid(9, 3, 3)
EIGHT_WIDE = boxed_grid(8, 2, 4)


def puzzle_on(grid: Grid, solution: Solution, rule: Rule, rng: Random) -> RuledPuzzle:
    """A puzzle with this solution and no other: givens are taken from it until they are enough."""
    givens = [0] * len(solution)
    for cell in rng.sample(grid.cells, len(grid.cells)):
        givens[cell] = solution[cell]
        shown = sum(map(bool, givens))
        if shown > len(givens) // 3 and shown % 3 == 0:
            puzzle: RuledPuzzle = Puzzle(grid, tuple(givens), (rule,))
            if isinstance(prove(problem_of(puzzle)), Unique):
                return puzzle
    return Puzzle(grid, solution, (rule,))


def renamings(rule: Rule, grid: Grid, rng: Random) -> list[tuple[int, ...]]:
    """Ways to rename the digits that the rule says it allows."""
    match rule.relabelling(grid):
        case "any":
            return [(0, *rng.sample(grid.digits, grid.size)), reversed_digits(grid.size)]
        case "reversed":
            return [unmoved_digits(grid.size), reversed_digits(grid.size)]
        case "none":
            return [unmoved_digits(grid.size)]


def without_ovals(rule: Rule) -> Rule | None:
    """Arrows whose circle is one cell: a number in an oval is read from left to right, so it cannot be turned."""
    arrows = getattr(rule, "arrows", None)
    if arrows is None:
        return rule
    kept = tuple(arrow for arrow in arrows if len(arrow.circle) == 1)
    return replace(rule, arrows=kept) if kept else None  # type: ignore[call-arg]  # a kind that has them


def lays(kind: str, grid: Grid, rng: Random, wanted: int) -> list[tuple[Solution, Rule]]:
    plain = ((solution, without_ovals(rule)) for solution, rule in instances(kind, grid, rng, wanted))
    return [(solution, rule) for solution, rule in plain if rule is not None]


@pytest.mark.parametrize("kind", kinds())
def test_turned_puzzles_are_the_same_puzzle(kind: str) -> None:
    rng = Random(f"turned {kind}")
    found = lays(kind, NINE, rng, 2)
    assert found
    for solution, rule in found:
        puzzle = puzzle_on(NINE, solution, rule, rng)
        keys = keys_of(puzzle, solution)
        for turn in EIGHT.values():
            for digits in renamings(rule, NINE, rng):
                move = Move(turned_cells(turn, 9), digits)
                there = Puzzle(NINE, move.apply(puzzle.givens), (moved(rule, NINE, move, rng),))
                verdict = prove(problem_of(there))
                assert isinstance(verdict, Unique)
                assert verdict.solution == move.apply(solution)
                again = keys_of(there, verdict.solution)
                assert (again.puzzle, again.solution) == (keys.puzzle, keys.solution)
                assert outline_of(there) == outline_of(puzzle)
                if digits in (unmoved_digits(9), reversed_digits(9)):
                    assert again.marks == keys.marks
                assert mapping(puzzle, solution, there, verdict.solution) is not None


@pytest.mark.parametrize("kind", kinds())
def test_on_an_even_grid_as_well(kind: str) -> None:
    """Where boxes are not square, a quarter turn makes tall ones of wide ones; it is the same puzzle all the same."""
    rng = Random(f"even {kind}")
    for solution, rule in lays(kind, EIGHT_WIDE, rng, 1):
        puzzle = puzzle_on(EIGHT_WIDE, solution, rule, rng)
        for name in ("top-bottom", "half"):
            for digits in renamings(rule, EIGHT_WIDE, rng):
                move = Move(turned_cells(EIGHT[name], 8), digits)
                there = Puzzle(EIGHT_WIDE, move.apply(puzzle.givens), (moved(rule, EIGHT_WIDE, move, rng),))
                verdict = prove(problem_of(there))
                assert isinstance(verdict, Unique)
                assert keys_of(there, verdict.solution).puzzle == keys_of(puzzle, solution).puzzle
                assert outline_of(there) == outline_of(puzzle)


@pytest.mark.parametrize("kind", kinds())
def test_what_is_not_the_same_is_told_apart(kind: str) -> None:
    """One given more, or one mark less, makes another puzzle; so does a renaming that the kind does not allow."""
    rng = Random(f"apart {kind}")
    for solution, rule in lays(kind, NINE, rng, 1):
        puzzle = puzzle_on(NINE, solution, rule, rng)
        keys = keys_of(puzzle, solution)
        free = next(cell for cell in NINE.cells if not puzzle.givens[cell])
        givens = tuple(solution[cell] if cell == free else digit for cell, digit in enumerate(puzzle.givens))
        more = keys_of(Puzzle(NINE, givens, (rule,)), solution)
        assert more.puzzle != keys.puzzle
        assert (more.solution, more.marks) == (keys.solution, keys.marks)
        plain: RuledPuzzle = Puzzle(NINE, solution)
        assert keys_of(plain, solution).puzzle != keys_of(Puzzle(NINE, solution, (rule,)), solution).puzzle
        for field in fields(rule):
            marks = getattr(rule, field.name)
            if isinstance(marks, tuple) and len(marks) > 1 and field.name != "letters":
                cut: dict[str, Any] = {field.name: marks[1:]}
                fewer = Puzzle(NINE, puzzle.givens, (replace(rule, **cut),))
                assert keys_of(fewer, solution).puzzle != keys.puzzle


@pytest.mark.parametrize("kind", kinds())
def test_each_kind_says_how_digits_may_be_renamed(kind: str) -> None:
    bases = kinds()[kind].__mro__
    assert any("relabels" in base.__dict__ or "relabelling" in base.__dict__ for base in bases if base is not Rule)


def test_rules_together_allow_what_all_of_them_allow() -> None:
    rng = Random(4)
    rules = {kind: next(instances(kind, NINE, rng, 1))[1] for kind in ("palindrome", "thermometer", "sandwich")}

    def allowed(*names: str) -> str:
        return relabelling_of(Puzzle(NINE, (0,) * 81, tuple(rules[name] for name in names)))

    assert allowed() == allowed("palindrome") == "any"
    assert allowed("palindrome", "thermometer") == "reversed"
    assert allowed("palindrome", "thermometer", "sandwich") == "none"
