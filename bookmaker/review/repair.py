"""What would make a puzzle unique that is not: where its solutions differ, and the fewest givens that settle it.

In: a puzzle with several solutions. Out: a `Repair`.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations, islice

from bookmaker.puzzle.position import Candidate
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import solutions
from bookmaker.solve.verdict import Solution

LIMIT = 1000
"""Solutions looked at; with more, nothing is proposed."""


@dataclass(frozen=True, slots=True)
class Repair:
    """`differing` are the cells that are not the same in all solutions seen, `solutions` how many were seen.

    `settling` lists every smallest set of givens (cell, digit) - one, else two - of which each set leaves a single
    solution; empty where there are too many solutions to see them all, or two givens do not suffice.
    """

    differing: tuple[int, ...]
    solutions: int
    complete: bool
    settling: tuple[tuple[Candidate, ...], ...]


def repair(puzzle: RuledPuzzle, limit: int = LIMIT) -> Repair:
    """Look at the puzzle's solutions, `limit` at most."""
    found = list(islice(solutions(problem_of(puzzle)), limit + 1))
    differing = tuple(cell for cell, digits in enumerate(zip(*found, strict=True)) if len(set(digits)) > 1)
    if len(found) > limit:
        return Repair(differing, limit, False, ())
    return Repair(differing, len(found), True, _settling(found, differing))


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
