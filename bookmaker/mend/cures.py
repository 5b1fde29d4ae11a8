"""Cures: single changes that make a puzzle uniquely solvable, each proven, the likeliest first.

In: a puzzle that has no solution, several, or another than its setter gives. Out: `Search`: the cures found, and what
there was no time to try. Where no single change is a cure, pairs of digits are tried.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, field, replace
from itertools import combinations
from random import Random

from bookmaker.changes.elements import Element, Given, MarkOf, elements_of
from bookmaker.changes.neighbouring import misread
from bookmaker.changes.slips import Slip, as_typed
from bookmaker.grade import grade
from bookmaker.grade.solve_path import Grade
from bookmaker.logic.state import Look
from bookmaker.mend.candidates import likeliest
from bookmaker.mend.case import QUICK, THOROUGH, Case, Elements
from bookmaker.mend.likelihood import idle_cost, puzzle_likelihood
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import keeps_all, problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import NoSolution, Solution, Verdict

CORES = 4
"""Clashes that are looked for before changes are tried."""

SEEN = 60
"""Solutions of the puzzle, or of it without a statement, that are looked at."""

AGREES = 25.0
"""What it is worth if a cure has the setter's solution."""

FIRST = 5
"""So many cures are graded."""

TRYING = 0.85
"""Changes are tried up to this share of the limit; what is left is for grades."""

CORING = 0.4
"""By this share, clashes have been found."""

Watch = Callable[[int, int], None]

Proven = tuple[Slip, Solution, float]
"""A change with the one solution that it leaves, and its likelihood."""


@dataclass(frozen=True)
class Cure:
    """A change after which the puzzle has one solution."""

    slip: Slip
    solution: Solution
    likelihood: float
    grade: Grade | None = None
    """None where it would not have come among the first, or where no time was left."""

    @property
    def puzzle(self) -> RuledPuzzle:
        """The puzzle as it may have been meant."""
        return self.slip.meant


@dataclass
class Search:
    """`untried` counts changes by sort for which there was no time, `undecided` those whose proof took too long."""

    verdict: Verdict
    cures: list[Cure] = field(default_factory=list)
    tried: int = 0
    untried: Counter[str] = field(default_factory=Counter)
    undecided: int = 0
    pairs: bool = False
    """Were pairs of digits tried, because nothing single helps?"""


def search(
    case: Case, solution: Solution | None = None, watch: Watch = lambda done, of: None, first: int = FIRST
) -> Search:
    """Look for cures of a puzzle within the limit of its case; `solution` is its setter's, if he gave one. `watch` is
    told how many changes are tried, of how many. The `first` cures are graded."""
    verdict = prove(problem_of(case.puzzle))
    found = Search(verdict)
    unsolvable = isinstance(verdict, NoSolution)
    if unsolvable:
        _find_cores(case)
    else:
        case.solutions_of(case.elements, SEEN)
    slips = likeliest(case, too_few=not unsolvable)
    cures = _tried(case, slips, solution, found, watch)
    if not cures and not found.untried:
        found.pairs = True
        cures = list(_pairs(case, found))
    found.cures = _ranked(case, cures, solution, first)
    return found


def _tried(
    case: Case, slips: Sequence[tuple[Slip, float]], wanted: Solution | None, found: Search, watch: Watch
) -> list[Proven]:
    """The slips that are cures; those whose proof takes long are left for when all others are tried."""
    cures: list[Proven] = []
    left, done = slips, 0
    for effort in (QUICK, THOROUGH):
        undecided: list[tuple[Slip, float]] = []
        for at, (slip, likely) in enumerate(left):
            if case.limit.over(TRYING):
                found.undecided = len(undecided)
                found.untried.update(slip.sort for slip, _ in left[at:])
                return cures
            found.tried += effort == QUICK
            before = case.undecided
            solved = _solved(case, slip, wanted, effort)
            if solved is not None:
                cures.append((*solved, likely))
            if case.undecided > before:
                undecided.append((slip, likely))
            else:
                done += 1
                watch(done, len(slips))
        left = undecided
    found.undecided = len(left)
    return cures


def _solved(case: Case, slip: Slip, wanted: Solution | None, effort: int) -> tuple[Slip, Solution] | None:
    """The slip with its proven solution; None if it is no cure, or if that takes more than the effort to prove."""
    elements = frozenset(elements_of(slip.meant))
    gone, new = case.elements - elements, elements - case.elements
    if wanted is not None and not keeps_all(slip.meant, wanted):
        return None
    if not case.may_be_unique(gone, new):
        return None
    typed = as_typed(slip)
    solution = case.solution_with(gone, new, effort) if typed is not None else None
    return (typed, solution) if typed is not None and solution is not None else None


def _find_cores(case: Case) -> None:
    """Clashes, until those statements are known without which the rest can hold; and grids that keep the rest."""
    rng = Random(0)
    for _ in range(CORES):
        if not case.limit.over(CORING):
            case.core_of(rng.sample(sorted(case.elements, key=repr), len(case.elements)), CORING)
    for element in sorted(frozenset.intersection(*case.cores), key=repr) if case.cores else ():
        if case.limit.over(CORING) or any(element not in core for core in case.cores):
            continue
        rest = case.elements - {element}
        if not case.solutions_of(rest, SEEN) and case.clash(rest):
            case.core_of(rng.sample(sorted(rest, key=repr), len(rest)), CORING)


def _pairs(case: Case, found: Search) -> Iterator[Proven]:
    """Two digits misread, easy slips first."""
    puzzle = case.puzzle
    filled = [cell for cell, digit in enumerate(puzzle.givens) if digit]
    for easy in (True, False):
        for one, other in combinations(filled, 2):
            gone: Elements = frozenset({Given(one, puzzle.givens[one]), Given(other, puzzle.givens[other])})
            if any(core.isdisjoint(gone) for core in case.cores):
                continue
            for first, close in misread(puzzle.givens[one], puzzle.grid.digits):
                for second, also in misread(puzzle.givens[other], puzzle.grid.digits):
                    if (close and also) != easy:
                        continue
                    if case.limit.over(TRYING):
                        found.untried["digit"] += 1
                        return
                    found.tried += 1
                    new: frozenset[Element] = frozenset({Given(one, first), Given(other, second)})
                    solution = case.solution_with(gone, new, QUICK)
                    if solution is not None:
                        changed = {one: first, other: second}
                        givens = tuple(changed.get(cell, digit) for cell, digit in enumerate(puzzle.givens))
                        slip = Slip("digit", Puzzle(puzzle.grid, givens, puzzle.rules), easy)
                        yield slip, solution, -10.0 + easy


def _ranked(case: Case, cures: list[Proven], wanted: Solution | None, first: int) -> list[Cure]:
    """The likeliest cures first; of two that come to the same puzzle the likelier. A closer look makes none likelier,
    so it is needed only for those that may come first."""
    best: dict[RuledPuzzle, Cure] = {}
    for slip, solution, likely in sorted(cures, key=lambda cure: -cure[2]):
        likely += AGREES if solution == wanted else 0.0
        best.setdefault(slip.meant, Cure(slip, solution, likely))
    ranked = sorted(best.values(), key=lambda cure: -cure.likelihood)
    at = 0
    with suppress(_TooLate):
        while at < min(first, len(ranked)):
            if ranked[at].grade is None:
                ranked[at] = _looked_at(case, ranked[at])
                ranked[at:] = sorted(ranked[at:], key=lambda cure: -cure.likelihood)
            else:
                at += 1
    return ranked


class _TooLate(Exception):
    """The limit is used up."""


def _looked_at(case: Case, cure: Cure) -> Cure:
    """The cure with its grade, and what that and idle marks make of its likelihood."""

    def look(effort: int) -> None:
        case.limit.spend(effort)
        if case.limit.over():
            raise _TooLate

    idle = list(_idle(case, cure.puzzle, look))
    graded = grade(cure.puzzle, cure.solution, look=look)
    likely = cure.likelihood + puzzle_likelihood(cure.puzzle, graded) - puzzle_likelihood(cure.puzzle)
    marks = sum(isinstance(element, MarkOf) for element in idle)
    return replace(cure, grade=graded, likelihood=likely - idle_cost(marks, len(idle) - marks))


def _idle(case: Case, puzzle: RuledPuzzle, look: Look) -> Iterator[Element]:
    """The marks of a puzzle that can be spared, each for itself, and the givens that have come with a change."""
    elements = frozenset(elements_of(puzzle))
    for element in sorted(elements, key=repr):
        marked = isinstance(element, MarkOf) and not element.rule.marks_all
        if marked or (isinstance(element, Given) and element not in case.elements):
            look(0)
            left = elements - {element}
            if case.solution_with(case.elements - left, left - case.elements, QUICK) is not None:
                yield element
