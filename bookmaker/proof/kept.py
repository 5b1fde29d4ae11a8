"""Findings of an earlier run or of another process, believed only as far as they can be checked here and now.

In: a puzzle, and the text that was kept or what was answered. Out: the findings, or None where anything in them is not
so. The verdict of what was kept is proven again: that takes milliseconds. The grade, which takes longer to find, is
checked step by step along its path.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import chain
from math import isclose, isfinite

from bookmaker.grade.bands import counted_effort, difficulty_of, family_of
from bookmaker.grade.solve_path import Grade, Step
from bookmaker.proof.record import Findings, from_text
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.checking import fits
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.problem import Problem
from bookmaker.solve.verdict import NoSolution, Several, Solution, Tally, Undecided, Unique, Verdict

MADE_UP = (ValueError, TypeError, AttributeError, LookupError, OverflowError, ArithmeticError, RecursionError)
"""What comes of values that are not what they should be."""


def checked(
    puzzle: RuledPuzzle, text: str, count: int, prove: Callable[[Problem], Verdict], sound: Callable[[Findings], bool]
) -> Findings | None:
    """The findings in a text; None where it is no record, or what it says is not so. `sound` re-checks solutions."""
    try:
        found = from_text(text)
    except MADE_UP:
        return None
    if not _hang_together(puzzle, found, count, sound):
        return None
    if isinstance(found.verdict, Unique | NoSolution) and prove(problem_of(puzzle)) != found.verdict:
        return None
    return found


def believable(puzzle: RuledPuzzle, found: object, count: int, sound: Callable[[Findings], bool]) -> bool:
    """Are these findings that hang together, with solutions that keep the rules and a path that leads to them? All but
    that there is no further solution, which only a proof can say."""
    return _reasoned(found) and _hang_together(puzzle, found, count, sound)


def _reasoned(found: object) -> bool:
    """Are these findings whose reasons are made as their classes say? Those that come from text are."""
    try:
        return (
            isinstance(found, Findings)
            and (found.hardest is None or fits(found.hardest, Reason))
            and (found.grade is None or all(fits(step.reason, Reason) for step in found.grade.path.steps))
        )
    except MADE_UP:
        return False


def _hang_together(puzzle: RuledPuzzle, found: object, count: int, sound: Callable[[Findings], bool]) -> bool:
    """The same, where reasons are known to be reasons."""
    try:
        return (
            isinstance(found, Findings)
            and isinstance(found.verdict, Unique | Several | NoSolution | Undecided)
            and _in_range(puzzle, found.verdict)
            and sound(found)
            and _tally_fits(found, count)
            and _graded(puzzle, found)
        )
    except MADE_UP:
        return False


def _graded(puzzle: RuledPuzzle, found: Findings) -> bool:
    """Has it a grade that holds, if it has one solution, and none if not?"""
    if not isinstance(found.verdict, Unique):
        return found.grade is None and found.hardest is None
    return found.grade is not None and _grade_holds(puzzle, found.verdict.solution, found.grade)


def _in_range(puzzle: RuledPuzzle, verdict: Verdict) -> bool:
    match verdict:
        case Unique(solution):
            shown: tuple[Solution, ...] = (solution,)
        case Several(first, second):
            if first == second:
                return False
            shown = (first, second)
        case Undecided(_, found):
            shown = (found,) if found is not None else ()
        case _:
            shown = ()
    cells, size = len(puzzle.grid.cells), puzzle.grid.size
    return all(len(s) == cells and all(type(digit) is int and 1 <= digit <= size for digit in s) for s in shown)


def _tally_fits(found: Findings, count: int) -> bool:
    """Does the count agree with the verdict and with what was asked for?"""
    tally, verdict = found.tally, found.verdict
    if not count or tally is None:
        return not count and tally is None
    if isinstance(verdict, Unique | NoSolution):
        return tally == Tally(int(isinstance(verdict, Unique)), complete=True)
    least = 2 if isinstance(verdict, Several) and tally.complete else 0
    return least <= tally.solutions <= count


def _grade_holds(puzzle: RuledPuzzle, solution: Solution, grade: Grade) -> bool:
    """Does the path lead from the givens to the solution in sound steps, and do the numbers follow from it?"""
    path, steps = grade.path, grade.path.steps
    numbers = [grade.effort, grade.difficulty, *[step.effort for step in steps]]
    if not {int, float}.issuperset(map(type, numbers)) or not all(map(isfinite, numbers)) or min(numbers) < 0:
        return False
    if type(grade.singles_only) is not bool or type(path.reached) is not bool:
        return False
    rungs = [step.rung for step in steps]
    if not {Rung}.issuperset(map(type, rungs)):
        return False
    highest = max(rungs, default=Rung.NAKED)
    return (
        _on_board(puzzle, steps)
        and _leads_to(puzzle, solution, steps)
        and path.reached == (highest < Rung.BEYOND)
        and grade.singles_only == (highest <= Rung.NAKED)
        and isclose(grade.effort, path.effort)
        and isclose(grade.difficulty, _difficulty(puzzle, grade.effort))
    )


def _difficulty(puzzle: RuledPuzzle, effort: float) -> float:
    return difficulty_of(counted_effort(effort, puzzle.grid), family_of(puzzle))


def _on_board(puzzle: RuledPuzzle, steps: Sequence[Step]) -> bool:
    """Are all cells and digits in the steps on the grid, and no count of openings below 0?"""
    candidates = [*chain.from_iterable([step.placed + step.removed for step in steps])]
    cells, digits = [cell for cell, _ in candidates], [digit for _, digit in candidates]
    cells += chain.from_iterable([step.cells for step in steps])
    openings = [step.openings for step in steps]
    return (
        {int}.issuperset(map(type, chain(cells, digits, openings)))
        and set(range(len(puzzle.grid.cells))).issuperset(cells)
        and set(puzzle.grid.digits).issuperset(digits)
        and min(openings, default=0) >= 0
    )


def _leads_to(puzzle: RuledPuzzle, solution: Solution, steps: Sequence[Step]) -> bool:
    """Does every step place digits of the solution or strike others, until no cell is empty?"""
    empty = {cell for cell, given in enumerate(puzzle.givens) if not given}
    for step in steps:
        if step.empty != len(empty) or not (step.placed or step.removed):
            return False
        for cell, digit in step.removed:
            if solution[cell] == digit:
                return False
        for cell, digit in step.placed:
            if cell not in empty or solution[cell] != digit:
                return False
            empty.remove(cell)
    return not empty
