"""Where a solver first gets stuck, and what leads on from there.

In: a puzzle and its path. Out: a `Sticking`, for hints: the narrow point of the path that comes first.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from bookmaker.grade.model import SolvePath
from bookmaker.grade.singles import Kind
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.tell.moments import LAST_ROWS, narrow_moments
from bookmaker.tell.needs import needs_of
from bookmaker.tell.trail import Told, trail


@dataclass(frozen=True, slots=True)
class Sticking:
    """`filled` cells stand when the solver gets stuck; the `strikes`, if any, open the `placement`."""

    filled: int
    strikes: tuple[Told, ...]
    placement: Told


def sticking_point(puzzle: RuledPuzzle, path: SolvePath) -> Sticking | None:
    """The first narrow point, or the single that takes longest where there is none; None for a path without singles."""
    at = _target(puzzle, path)
    if at is None:
        return None
    so_far = replace(path, steps=path.steps[: at + 1])
    needs = needs_of(puzzle, so_far, at)
    behind = needs.behind(at)
    told = {step.index: step for step in trail(puzzle, so_far, needs, at)}
    filled = len(puzzle.grid.cells) - path.steps[at].empty
    return Sticking(filled, tuple(told[index] for index in sorted(behind)), told[at])


def _target(puzzle: RuledPuzzle, path: SolvePath) -> int | None:
    """The number of the placement that the first narrow point leads to."""
    grid, steps = puzzle.grid, path.steps
    singles = [index for index, step in enumerate(steps) if step.placed and step.rung <= Kind.NAKED]
    for point in narrow_moments(path, grid):
        target = next((index for index in singles if index >= point.first), None)
        if target is not None:
            return target
    early = [index for index in singles if steps[index].empty > LAST_ROWS * grid.size]
    return max(early or singles, key=lambda index: steps[index].effort, default=None)
