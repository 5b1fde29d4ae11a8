"""How likely it is that a puzzle was meant so, and that this slip made the other of it.

In: a cure. Out: a logarithm, to rank cures by. How often slips happen, and what setters like, is common practice
without a source, put into figures here; `tests/benchmarks/mend_truth.py` shows what they achieve.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from math import log

from bookmaker.changes.arrangement import Arrangement, arrangements_of
from bookmaker.grade.solve_path import Grade
from bookmaker.puzzle.bits import board_of
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form

OFTEN: Mapping[str, float] = {
    "digit": 0.24,
    "swapped": 0.06,
    "beside": 0.08,
    "shifted": 0.08,
    "lines": 0.04,
    "extra given": 0.04,
    "left-out given": 0.10,
    "figure": 0.10,
    "turned": 0.05,
    "reversed": 0.05,
    "moved": 0.08,
    "step": 0.06,
    "cell": 0.05,
    "sort": 0.04,
    "kind": 0.02,
    "extra mark": 0.02,
    "left-out mark": 0.06,
}
"""How often each sort of slip happens, of all slips."""

CLOSE = 6.0
"""So much likelier is a slip that is easily made than another of its sort."""

BROKEN, ASTRAY = 3.5, 1.5
"""What the first given or mark costs that has no image where all others have one, and each further one: whoever
arranges a puzzle arranges all of it."""

UNARRANGED = 4
"""From so many on, a puzzle counts as one without arrangement."""

IDLE, MOST_IDLE = 1.2, 2
"""What a mark costs that could be left out of the puzzle without loss, up to so many: marks are drawn to be needed."""

SPARED = 0.7
"""The same of a given that comes with the change. Of others nothing is said: many are there for the arrangement."""

UNREACHED, HARDEST = 2.5, 0.7
"""What it costs if logic does not reach the end; if the puzzle lies in the hardest band."""


def slip_likelihood(sort: str, close: bool, ways: int, close_ways: int) -> float:
    """Of a slip of a sort that has so many ways to happen, of which some are easy."""
    weight = CLOSE if close else 1.0
    return log(OFTEN[sort] * weight / (CLOSE * close_ways + (ways - close_ways) or 1))


def puzzle_likelihood(puzzle: RuledPuzzle, grade: Grade | None = None) -> float:
    """That a setter means a puzzle to be like this; less, if anything, once its grade is known."""
    given = board_of(cell for cell, digit in enumerate(puzzle.givens) if digit)
    told = -min((unlikely(puzzle, given, made) for made in arrangements_of(puzzle.grid)[1:]), default=0.0)
    if grade is not None:
        told -= UNREACHED * (not grade.path.reached) + HARDEST * (grade.band == 5)
    return told


def idle_cost(marks: int, givens: int) -> float:
    """What it costs if so many marks of a puzzle could be spared, and so many of the givens that a change brings."""
    return IDLE * min(marks, MOST_IDLE) + SPARED * bool(givens)


def unlikely(puzzle: RuledPuzzle, given: int, arranged: Arrangement) -> float:
    """What the givens and marks cost that lack an image. A slip leaves most of them as they are, so that each sort is
    looked at by itself, once."""
    missing = sum(_lone_marks(rule, puzzle.grid, arranged) for rule in puzzle.rules)
    return _cost(_lone_givens(given, arranged)) + _cost(missing)


def _cost(astray: float) -> float:
    return BROKEN * min(astray, 1) + ASTRAY * (min(astray, UNARRANGED) - min(astray, 1))


@lru_cache(maxsize=4096)
def _lone_givens(given: int, arranged: Arrangement) -> int:
    """Cells of a board without an image, or the images that lack, where these are fewer; up to `UNARRANGED`."""
    astray = 0
    for orbit in _orbits(arranged):
        inside = (given & orbit).bit_count()
        astray += min(inside, orbit.bit_count() - inside)
        if astray >= UNARRANGED:
            break
    return astray


@lru_cache(maxsize=64)
def _orbits(arranged: Arrangement) -> tuple[int, ...]:
    return tuple(map(board_of, arranged.orbits))


@lru_cache(maxsize=4096)
def _lone_marks(rule: Rule, grid: Grid, arranged: Arrangement) -> float:
    """Marks of a rule that lack an image, or the images that lack, where these are fewer."""
    if rule.form is Form.WHOLE or rule.marks_all:
        return 0
    laid = rule.laid_on(grid)
    parts, own = rule.parts(laid), {*laid.cells}  # an image in another of several grids is none of this rule's
    there = {frozenset(part.cells) for part in parts}  # from whichever end they are told
    astray = 0.0
    for part in parts:
        images = {image for image in map(frozenset, arranged.images(part.cells)) if own.issuperset(image)}
        inside = len(images & there)
        astray += min(inside, len(images) - inside) / inside
    return astray
