"""Cures: single changes that make a puzzle uniquely solvable, each proven, the likeliest first.

In: a puzzle that has no solution, several, or another than its setter gives. Out: `Search`: the cures found, and what
there was no time to try. Where no single change is a cure, pairs of digits are tried.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import combinations
from random import Random

from bookmaker.changes.arrangement import arrangements_of, nearly_arranged_as
from bookmaker.changes.elements import Element, Given, elements_of
from bookmaker.changes.neighbouring import misread
from bookmaker.changes.slips import Slip, as_typed, left_out_by, slips_in_givens, slips_in_marks
from bookmaker.grade import grade
from bookmaker.grade.solve_path import Grade
from bookmaker.mend.case import Case, Elements
from bookmaker.mend.likelihood import puzzle_likelihood, slip_likelihood
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import keeps_all, problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.parts import Form
from bookmaker.solve import prove
from bookmaker.solve.verdict import NoSolution, Solution, Verdict

CORES = 4
"""Clashes that are looked for before changes are tried."""

SEEN = 60
"""Solutions of the puzzle, or of it without a statement, that are looked at."""

AGREES = 25.0
"""What it is worth if a cure has the setter's solution."""

GRADED = 40
"""Cures that are graded: the likeliest."""

Watch = Callable[[int, int], None]


@dataclass(frozen=True)
class Cure:
    """A change after which the puzzle has one solution."""

    slip: Slip
    solution: Solution
    grade: Grade
    likelihood: float

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


def search(case: Case, solution: Solution | None = None, watch: Watch = lambda done, of: None) -> Search:
    """Look for cures of a puzzle within the limit of its case; `solution` is its setter's, if he gave one. `watch` is
    told how many changes are tried, of how many."""
    puzzle = case.puzzle
    verdict = prove(problem_of(puzzle))
    found = Search(verdict)
    if isinstance(verdict, NoSolution):
        _find_cores(case)
    else:
        case.solutions_of(case.elements, SEEN)
    slips = _likeliest(puzzle, case, verdict)
    cures: list[tuple[Slip, Solution, float]] = []
    for number, (slip, likely) in enumerate(slips):
        if case.limit.over():
            found.untried.update(slip.sort for slip, _ in slips[number:])
            break
        found.tried += 1
        watch(number + 1, len(slips))
        gone, new = _difference(case, slip.meant)
        solved = _solved(case, slip, gone, new, solution)
        if solved is not None:
            cures.append((solved[0], solved[1], likely))
    if not cures and not found.untried:
        found.pairs = True
        cures = list(_pairs(case, found))
    found.undecided = case.undecided
    found.cures = _ranked(cures, solution)
    return found


def _difference(case: Case, meant: RuledPuzzle) -> tuple[Elements, Elements]:
    """The statements that a puzzle lacks, and those that it has besides."""
    elements = frozenset(elements_of(meant))
    return case.elements - elements, elements - case.elements


def _solved(
    case: Case, slip: Slip, gone: Elements, new: Elements, wanted: Solution | None
) -> tuple[Slip, Solution] | None:
    """The slip with its proven solution; None if it is no cure."""
    if wanted is not None and not keeps_all(slip.meant, wanted):
        return None
    if not case.may_be_unique(gone, new):
        return None
    typed = as_typed(slip)
    solution = case.solution_with(gone, new) if typed is not None else None
    return (typed, solution) if typed is not None and solution is not None else None


def _find_cores(case: Case) -> None:
    """Clashes, until those statements are known without which the rest can hold; and grids that keep the rest."""
    rng = Random(0)
    for _ in range(CORES):
        if not case.limit.over():
            case.core_of(rng.sample(sorted(case.elements, key=repr), len(case.elements)))
    for element in sorted(frozenset.intersection(*case.cores), key=repr) if case.cores else ():
        if case.limit.over() or any(element not in core for core in case.cores):
            continue
        rest = case.elements - {element}
        if not case.solutions_of(rest, SEEN) and case.clash(rest):
            case.core_of(rng.sample(sorted(rest, key=repr), len(rest)))


def _likeliest(puzzle: RuledPuzzle, case: Case, verdict: Verdict) -> list[tuple[Slip, float]]:
    """All slips, the likeliest first, each with its likelihood."""
    slips = [*slips_in_givens(puzzle), *slips_in_marks(puzzle)]
    if not isinstance(verdict, NoSolution):
        slips += [*_left_out_givens(puzzle, case), *_left_out_marks(puzzle, case)]
    ways = Counter(slip.sort for slip in slips)
    close = Counter(slip.sort for slip in slips if slip.close)
    cells, size = len(puzzle.grid.cells), puzzle.grid.size
    ways["extra given"] = (cells - puzzle.given_count) * size
    ways["left-out given"] = puzzle.given_count + 1
    ways["left-out mark"] = sum(len(rule.parts(rule.laid_on(puzzle.grid))) for rule in puzzle.rules) + 1
    close["left-out given"] = close["left-out mark"] = 0
    told = [(slip, slip_likelihood(slip.sort, slip.close, ways[slip.sort], close[slip.sort])) for slip in slips]
    told = [(slip, likely + puzzle_likelihood(slip.meant)) for slip, likely in told]
    return sorted(told, key=lambda item: -item[1])


def _left_out_givens(puzzle: RuledPuzzle, case: Case) -> Iterator[Slip]:
    """One more given, of all that stand in some grid that was met."""
    seen = {(cell, digit) for solution in case.met for cell, digit in enumerate(solution)}
    for cell, digit in sorted(seen):
        if not puzzle.givens[cell]:
            givens = (*puzzle.givens[:cell], digit, *puzzle.givens[cell + 1 :])
            yield Slip("left-out given", Puzzle(puzzle.grid, givens, puzzle.rules))


def _left_out_marks(puzzle: RuledPuzzle, case: Case) -> Iterator[Slip]:
    """A mark that the arrangement of the others suggests, with figures as the grids that were met would have them."""
    grid, rng = puzzle.grid, Random(0)
    given = [cell for cell, digit in enumerate(puzzle.givens) if digit]
    named = nearly_arranged_as(given, grid, 2) or arrangements_of(grid)[1:2]
    seen = set()
    for arranged in named[:3]:
        for number, part in left_out_by(arranged, puzzle):
            rule = puzzle.rules[number]
            laid = rule.laid_on(grid)
            read = [part]
            if rule.figures or rule.form in (Form.BORDER, Form.CELL):
                read = [made for met in case.met for made in rule.read_off(part.cells, laid, met, rng)]
            for made in read:
                if (number, made) not in seen:
                    seen.add((number, made))
                    rules = list(puzzle.rules)
                    rules[number] = rule.with_parts([*rule.parts(laid), made], laid)
                    yield Slip("left-out mark", Puzzle(grid, puzzle.givens, tuple(rules)), close=True)


def _pairs(case: Case, found: Search) -> Iterator[tuple[Slip, Solution, float]]:
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
                    if case.limit.over():
                        found.untried["digit"] += 1
                        return
                    found.tried += 1
                    new: frozenset[Element] = frozenset({Given(one, first), Given(other, second)})
                    solution = case.solution_with(gone, new)
                    if solution is not None:
                        changed = {one: first, other: second}
                        givens = tuple(changed.get(cell, digit) for cell, digit in enumerate(puzzle.givens))
                        slip = Slip("digit", Puzzle(puzzle.grid, givens, puzzle.rules), easy)
                        yield slip, solution, -10.0 + easy


def _ranked(cures: list[tuple[Slip, Solution, float]], wanted: Solution | None) -> list[Cure]:
    """The likeliest cures, graded; of two that come to the same puzzle the likelier."""
    best: dict[RuledPuzzle, tuple[Slip, Solution, float]] = {}
    for cure in sorted(cures, key=lambda cure: -cure[2]):
        best.setdefault(cure[0].meant, cure)
    ranked = []
    for slip, solution, likely in list(best.values())[:GRADED]:
        graded = grade(slip.meant, solution)
        likely += puzzle_likelihood(slip.meant, graded) - puzzle_likelihood(slip.meant)
        ranked.append(Cure(slip, solution, graded, likely + (AGREES if solution == wanted else 0.0)))
    return sorted(ranked, key=lambda cure: -cure.likelihood)
