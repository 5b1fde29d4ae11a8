"""What would make a puzzle unique that is not: where its solutions differ, and the fewest givens that settle it.

In: a puzzle with several solutions. Out: a `Repair`.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import combinations

from bookmaker.puzzle.position import Candidate
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.search import OutOfBudget, Search
from bookmaker.solve.verdict import Solution

LIMIT = 1000
"""Solutions looked at; with more, nothing is proposed."""

EFFORT = 4_000_000
"""Effort (`Meter.effort`) to find them: about three seconds."""


@dataclass(frozen=True, slots=True)
class Repair:
    """`differing` are the cells that are not the same in all solutions seen, `solutions` how many were seen; `complete`
    says that these are all, within the effort.

    `settling` lists every smallest set of givens (cell, digit) - one, else two - of which each set leaves a single
    solution; empty where there are too many solutions to see them all, or two givens do not suffice.
    """

    differing: tuple[int, ...]
    solutions: int
    complete: bool
    settling: tuple[tuple[Candidate, ...], ...]


def repair(puzzle: RuledPuzzle, known: Iterable[Solution], limit: int = LIMIT, effort: int = EFFORT) -> Repair:
    """Look at the puzzle's solutions, `limit` at most, those known among them."""
    found, complete = dict.fromkeys(known), True
    try:
        for solution in Search(problem_of(puzzle), effort=effort):
            found[solution] = None
            if len(found) > limit:
                complete = False
                break
    except OutOfBudget:
        complete = False
    seen = [*found][:limit]
    differing = tuple(cell for cell, digits in enumerate(zip(*seen, strict=True)) if len(set(digits)) > 1)
    return Repair(differing, len(seen), complete, _settling(seen, differing) if complete else ())


def _settling(found: list[Solution], differing: tuple[int, ...]) -> tuple[tuple[Candidate, ...], ...]:
    boards: dict[Candidate, int] = {}
    for number, solution in enumerate(found):
        for cell in differing:
            key = (cell, solution[cell])
            boards[key] = boards.get(key, 0) | 1 << number
    ones = tuple((given,) for given, board in sorted(boards.items()) if board.bit_count() == 1)
    if ones:
        return ones
    return tuple(
        (one, other)
        for one, other in combinations(sorted(boards), 2)
        if one[0] != other[0] and (boards[one] & boards[other]).bit_count() == 1
    )
