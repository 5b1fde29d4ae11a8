"""What to add to a puzzle with several solutions so that one is left: the fewest givens, or a mark.

In: a puzzle with several solutions. Out: `Settling`: the smallest sets of givens, with whether they are proven to be
the smallest, sets that keep the arrangement, and marks of the puzzle's own kinds.

A set of givens leaves one solution if it shuts out all others: it must hit, for every pair of solutions, the cells in
which they differ. The pairs are not known beforehand, but each set that fails shows two more solutions (an implicit
hitting set: E. Moreno-Centeno and R. Karp, Operations Research 61, 2013).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations
from random import Random

from bookmaker.changes.arrangement import Arrangement, arranged_as, nearly_arranged_as
from bookmaker.changes.elements import Element, Given, MarkOf
from bookmaker.mend.case import Case
from bookmaker.mend.hitting import hitting_sets
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Candidate
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.parts import Form, Part
from bookmaker.solve.verdict import Solution

SEEN, STARTS = 40, 12
"""Solutions met from each of so many starts."""

MOST = 12
"""So many sets of each sort are told."""

PAIRS = 2
"""Up to so many givens, all choices are tried; beyond, those that lead to the solutions met."""

FIRST, GIVENS, ARRANGED = 0.25, 0.6, 0.8
"""By these shares of the limit, solutions have been met, givens found, and those found that keep the arrangement."""

Givens = tuple[Candidate, ...]


@dataclass(frozen=True)
class Settled:
    """Givens, or a mark, with the one solution that they leave; `instead` of a mark that is there."""

    added: tuple[Element, ...]
    solution: Solution
    instead: Element | None = None


@dataclass(frozen=True)
class Settling:
    """`fewest` are sets of the smallest size found, which no smaller set can do if `proven`; `arranged` keep the
    arrangement of the givens; `marks` are single marks that do it."""

    fewest: tuple[Settled, ...]
    proven: bool
    arranged: tuple[Settled, ...]
    arrangement: str
    marks: tuple[Settled, ...]


def settling(case: Case) -> Settling:
    """What settles a puzzle that has several solutions, as far as its limit allows."""
    rng = Random(0)
    for _ in range(STARTS):
        if not case.limit.over(FIRST):
            case.solutions_of(case.elements, SEEN, rng)
    fewest, proven = _fewest(case)
    cells = [cell for cell, digit in enumerate(case.puzzle.givens) if digit]
    kept = _arrangement(case.puzzle.grid, cells)
    arranged = _arranged(case, kept) if kept is not None else ()
    return Settling(fewest, proven, arranged, kept.name if kept else "", _marks(case))


def _arrangement(grid: Grid, cells: Sequence[int]) -> Arrangement | None:
    """The arrangement that the givens keep, or keep but for one."""
    kept = arranged_as(cells, grid)
    if kept.name != "none":
        return kept
    return next(iter(nearly_arranged_as(cells, grid)), None)


def _settled(case: Case, added: Sequence[Element], instead: Element | None = None) -> Settled | None:
    solution = case.solution_with(frozenset() if instead is None else frozenset({instead}), frozenset(added))
    return None if solution is None else Settled(tuple(added), solution, instead)


def _fewest(case: Case) -> tuple[tuple[Settled, ...], bool]:
    """All smallest sets of one or two givens, by trying; larger ones by way of the solutions that were met."""
    for size in range(1, PAIRS + 1):
        found: list[Settled] = []
        undecided = case.undecided
        for added in _choices(case, size):
            if case.limit.over(GIVENS):
                return tuple(found), False
            done = _settled(case, [Given(*candidate) for candidate in added])
            if done is not None:
                found.append(done)
            if len(found) == MOST:
                break
        if found or case.undecided > undecided:
            return tuple(found), case.undecided == undecided
    return _by_targets(case)


def _choices(case: Case, size: int) -> Iterator[Givens]:
    """Sets of candidates that no two solutions met so far share. New solutions count at once."""
    grid = case.puzzle.grid
    empty = [cell for cell in grid.cells if not case.puzzle.givens[cell]]
    candidates = [(cell, digit) for cell in empty for digit in grid.digits]
    boards: dict[Candidate, int] = dict.fromkeys(candidates, 0)
    known = 0

    def look() -> None:
        nonlocal known
        solutions = list(case.met)
        for number in range(known, len(solutions)):
            for cell in empty:
                boards[cell, solutions[number][cell]] |= 1 << number
        known = len(solutions)

    look()
    for chosen in combinations(candidates, size):
        if len({cell for cell, _ in chosen}) < size:
            continue
        look()
        shared = (1 << known) - 1
        for candidate in chosen:
            shared &= boards[candidate]
        if shared.bit_count() < 2 and (shared or size == 1 or all(boards[candidate] for candidate in chosen)):
            yield chosen


def _by_targets(case: Case) -> tuple[tuple[Settled, ...], bool]:
    """The smallest sets that lead to one of the solutions met: proven to be the smallest only if they have three."""
    best: list[Settled] = []
    for target in list(case.met)[:MOST]:
        size = PAIRS + 1
        while not case.limit.over(GIVENS) and (not best or size <= len(best[0].added)):
            done = _to_target(case, target, size)
            if done is not None:
                best = [*(b for b in best if len(b.added) <= len(done.added)), done]
                best = [b for b in best if len(b.added) == len(done.added)]
                break
            size += 1
    return tuple(best), bool(best) and len(best[0].added) == PAIRS + 1


def _to_target(case: Case, target: Solution, size: int) -> Settled | None:
    """A set of so many of a solution's digits that shuts out all others."""
    while not case.limit.over(GIVENS):
        differing = [
            sum(1 << cell for cell, digit in enumerate(other) if digit != target[cell])
            for other in case.met
            if other != target
        ]
        cells = next(hitting_sets(differing, size, lambda: case.limit.over(GIVENS)), None)
        if cells is None:
            return None
        added = [Given(cell, target[cell]) for cell in case.puzzle.grid.cells if cells >> cell & 1]
        met = len(case.met)
        done = _settled(case, added)
        if done is not None or len(case.met) == met:
            return done
    return None


def _arranged(case: Case, kept: Arrangement) -> tuple[Settled, ...]:
    """Orbits of empty cells that leave one solution when they are filled from it: one orbit, else two."""
    givens = case.puzzle.givens
    orbits = [[cell for cell in orbit if not givens[cell]] for orbit in kept.orbits]
    orbits = sorted((orbit for orbit in orbits if orbit), key=len)
    found: dict[tuple[Element, ...], Settled] = {}
    for count in (1, 2):
        for target in list(case.met):
            for some in combinations(orbits, count):
                if case.limit.over(ARRANGED) or len(found) == MOST:
                    return tuple(found.values())
                done = _settled(case, [Given(cell, target[cell]) for orbit in some for cell in orbit])
                if done is not None:
                    found.setdefault(done.added, done)
        if found:
            break
    return tuple(found.values())


def _marks(case: Case) -> tuple[Settled, ...]:
    """Marks of the puzzle's own kinds, true on one of the solutions met, that shut out all others."""
    found: dict[Part, Settled] = {}
    rng = Random(0)
    for target in list(case.met):
        for rule in case.puzzle.rules:
            if rule.marks_all:
                continue
            grid = rule.laid_on(case.puzzle.grid)
            bare = rule.with_parts((), grid)
            there = {frozenset(part.cells) for part in rule.parts(grid)}
            for part, longer_than in _further(rule, grid, target, rng):
                if case.limit.over() or len(found) == MOST:
                    return tuple(found.values())
                if frozenset(part.cells) not in there and part not in found:
                    done = _settled(case, [MarkOf(bare, part)], MarkOf(bare, longer_than) if longer_than else None)
                    if done is not None:
                        found[part] = done
    return tuple(found.values())


def _further(rule: Rule, grid: Grid, target: Solution, rng: Random) -> Iterator[tuple[Part, Part | None]]:
    """Small marks of a rule's kind that are true on a solution: at all its places; a pair; a chain longer than one that
    is there, with that one."""
    for cells in rule.places(grid):
        yield from ((part, None) for part in rule.read_off(cells, grid, target, rng))
    covered = {cell for part in rule.parts(grid) for cell in part.cells}
    if rule.form is Form.CHAIN:
        for part in rule.parts(grid):
            for cell in grid.cells:
                if cell not in covered and grid.touching(part.cells[-1], cell):
                    longer = replace(part, cells=(*part.cells, cell))
                    if rule.keeps(longer, grid, target):
                        yield longer, part
    if rule.form is Form.AREA:
        for cell in grid.cells:
            for near in grid.orthogonal(cell):
                if cell < near and not {cell, near} & covered:
                    yield from ((part, None) for part in rule.read_off((cell, near), grid, target, rng))
