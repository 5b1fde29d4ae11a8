"""Marks without freedom: a classic in the dress of another kind, its givens told by marks that leave no choice.

In: a classic with its solution, and a kind. Out: `Dress`es: marks that say what some of the givens say and no more, and
the puzzle in which they stand in place of these. Equality is proven both ways: marks and houses force the givens, and
givens and houses force the marks. The tidiest come first: few turns, one shape, an arrangement.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import islice, pairwise
from random import Random

from bookmaker.changes.arrangement import arrangements_of
from bookmaker.changes.elements import Given, MarkOf, asked_by, problem_with
from bookmaker.draft.forced import FINDERS, Forcing
from bookmaker.draft.ground import begin
from bookmaker.draft.laying import is_sound
from bookmaker.draft.patience import Missed, Patience
from bookmaker.puzzle.bits import board_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.problem import Allowed, Combination, Constraint, Problem, Relation, Sum
from bookmaker.solve.verdict import NoSolution, Solution, Unique
from bookmaker.wishes.wish import Wish

MOST_SETS = 2_000
"""Sets of marks that are looked at; chains on a 9×9 grid have far fewer."""

SHOWN = 12
"""So many ways are told at most."""

GROWN = 60
"""Solutions that are looked through for the one with the tidiest marks without freedom."""

Forcings = tuple[Forcing, ...]


@dataclass(frozen=True)
class Dress:
    """The puzzle with marks in place of the givens of `covered` cells, and the classic that it equals."""

    puzzle: RuledPuzzle
    classic: RuledPuzzle
    covered: tuple[int, ...]
    solution: Solution


def dresses(classic: RuledPuzzle, solution: Solution, kind: str) -> list[Dress]:
    """The ways to say some of a classic's givens by marks of a kind, the tidiest first; proven."""
    given = {cell for cell, digit in enumerate(classic.givens) if digit}
    found = [one for one in FINDERS[kind](classic.grid, solution) if one.forced | one.needed <= given]
    made = (_dressed(classic, solution, kind, some) for some in tidiest(found, classic.grid))
    return list(islice((dress for dress in made if dress is not None and proves_equal(dress)), SHOWN))


def grown(wish: Wish, kind: str) -> Dress | None:
    """A classic made so that marks of the kind force some of its givens; None where chance finds none.

    Of the wish the grid, the arrangement and the seed count.
    """
    ways = [way for number in range(GROWN) if (way := _way(wish, kind, number)) is not None]
    for _, number, some in sorted(ways, key=lambda way: way[:2]):
        rng = Random(f"{wish.seed} {kind} {number}")
        sketch = begin(replace(wish, rules=()), rng, Patience()).sketch
        sketch.kept = board_of(cell for one in some for cell in one.forced | one.needed)
        free = [orbit & ~sketch.kept for orbit in sketch.shuffled(sketch.given_orbits, rng)]
        classic = sketch.puzzle(sketch.thinned(sketch.open, free))
        dress = _dressed(classic, sketch.solution, kind, some)
        if dress is not None and proves_equal(dress):
            return dress
    return None


def _way(wish: Wish, kind: str, number: int) -> tuple[float, int, Forcings] | None:
    """The tidiest marks on the solution of that number, with how untidy they are; None if it has none."""
    try:
        sketch = begin(replace(wish, rules=()), Random(f"{wish.seed} {kind} {number}"), Patience()).sketch
    except Missed:
        return None
    sets = tidiest(list(FINDERS[kind](wish.grid, sketch.solution)), wish.grid)
    return (_untidiness(sets[0], wish.grid), number, sets[0]) if sets else None


def tidiest(found: Sequence[Forcing], grid: Grid) -> list[Forcings]:
    """All largest sets of marks that share no cell, the tidiest first."""
    return sorted(islice(disjoint(found), MOST_SETS), key=lambda some: _untidiness(some, grid))


def disjoint(found: Sequence[Forcing]) -> Iterator[Forcings]:
    """Every set of marks no two of which share a cell, and to which none can be added."""
    boards = [board_of({*one.part.cells, *one.forced}) for one in found]
    apart = [sum(1 << b for b, theirs in enumerate(boards) if not mine & theirs) for mine in boards]

    def grow(chosen: Forcings, may: int, barred: int) -> Iterator[Forcings]:
        if not may and not barred and chosen:
            yield chosen
        while may:
            number = (may & -may).bit_length() - 1
            yield from grow((*chosen, found[number]), may & apart[number], barred & apart[number])
            may &= may - 1
            barred |= 1 << number

    return grow((), (1 << len(found)) - 1, 0)


def proves_equal(dress: Dress) -> bool:
    """Is it proven that both puzzles have this one solution, that the marks force the givens that they cover, and that
    they say no more than these?"""
    if not all(_has_only(puzzle, dress.solution) for puzzle in (dress.puzzle, dress.classic)):
        return False
    grid, (rule,) = dress.puzzle.grid, dress.puzzle.rules
    marks = [MarkOf(rule.with_parts((), grid), part) for part in rule.parts(grid)]
    theirs = {cell for part in rule.parts(grid) for cell in part.cells}
    stay = [Given(cell, digit) for cell, digit in enumerate(dress.puzzle.givens) if digit and cell in theirs]
    covered = [Given(cell, dress.solution[cell]) for cell in dress.covered]
    forcing, saying = problem_with([*marks, *stay], grid), problem_with([*covered, *stay], grid)
    return all(
        _impossible(problem, denied)
        for problem, statements in ((forcing, covered), (saying, marks))
        for statement in statements
        for asked in asked_by(statement, grid)
        for denied in denials(asked, grid)
    )


def denials(asked: Constraint, grid: Grid) -> Iterator[Constraint]:
    """Constraints of which one holds exactly where this one does not, in cells that the houses keep apart.

    Raises ValueError for a constraint that no mark without freedom brings.
    """
    match asked:
        case Allowed(cells, digits):
            yield from (Allowed((cell,), grid.all_digits & ~digits) for cell in cells)
        case Relation(pairs, beside):
            others = (0, *(grid.all_digits & ~allowed for allowed in beside[1:]))
            yield from (Relation((pair,), others) for pair in pairs)
        case Sum(terms, least, most):
            size = grid.size * sum(abs(factor) for _, factor in terms)
            yield Sum(terms, -size, least - 1)
            yield Sum(terms, most + 1, size)
        case Combination(cells, sets):
            (total,) = {sum(digit for digit in grid.digits if one >> (digit - 1) & 1) for one in sets}
            yield from denials(Sum(tuple((cell, 1) for cell in cells), total, total), grid)
        case _:
            raise ValueError(f"nothing denies {asked}")


def _has_only(puzzle: RuledPuzzle, solution: Solution) -> bool:
    verdict = prove(problem_of(puzzle))
    return isinstance(verdict, Unique) and verdict.solution == solution


def _impossible(problem: Problem, more: Constraint) -> bool:
    return isinstance(prove(replace(problem, constraints=(*problem.constraints, more))), NoSolution)


def _dressed(classic: RuledPuzzle, solution: Solution, kind: str, some: Forcings) -> Dress | None:
    """The classic with these marks; None where they are no marks of a manifest."""
    grid = classic.grid
    rule = _blank(kind, grid).with_parts([one.part for one in some], grid)
    covered = sorted({cell for one in some for cell in one.forced})
    givens = tuple(0 if cell in covered else digit for cell, digit in enumerate(classic.givens))
    puzzle: RuledPuzzle = Puzzle(grid, givens, (rule,))
    return Dress(puzzle, classic, tuple(covered), solution) if is_sound(rule, grid) else None


def _blank(kind: str, grid: Grid) -> Rule:
    rule = kinds()[kind].blank(grid)
    return rule.with_options({"step": 1}) if "step" in rule.options else rule


def _untidiness(some: Forcings, grid: Grid) -> float:
    """The more turns and shapes, and the fewer marks, the untidier; an arrangement makes up for much."""
    cells = {cell for one in some for cell in one.part.cells}
    moves = (made for made in arrangements_of(grid) if made.name != "none")
    arranged = any(all(cells >= set(found.orbit(cell)) for cell in cells) for found in moves)
    shapes = {_shape(one, grid) for one in some}
    turns = sum(_turns(one, grid) for one in some)
    return turns / len(some) + 2 * (len(shapes) - 1) - 3 * arranged - 1.5 * len(some)


def _steps(one: Forcing, grid: Grid) -> list[tuple[int, int]]:
    return [(grid.row(b) - grid.row(a), grid.column(b) - grid.column(a)) for a, b in pairwise(one.part.cells)]


def _turns(one: Forcing, grid: Grid) -> int:
    return sum(before != after for before, after in pairwise(_steps(one, grid)))


def _shape(one: Forcing, grid: Grid) -> tuple[tuple[int, int], ...]:
    """The same for shapes that are moved, turned or mirrored."""
    steps = _steps(one, grid)
    seen = []
    for down, across in ((1, 1), (1, -1), (-1, 1), (-1, -1)):
        moved = [(down * row, across * column) for row, column in steps]
        seen += [tuple(moved), tuple((column, row) for row, column in moved)]
    return min(seen)
