"""Where a solver first gets stuck, and what leads on from there.

In: a puzzle and its path. Out: a `FirstBottleneck`, for hints: the one of the path that comes first.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.grade.solve_path import SolvePath
from bookmaker.logic.state import ground_of
from bookmaker.reasons import Rung
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.tell.step_groups import LAST_ROWS, bottlenecks
from bookmaker.trace import TooMuch, Traced, trace_to


@dataclass(frozen=True)
class FirstBottleneck:
    """The `eliminations`, if any, open the `placement`."""

    eliminations: tuple[Traced, ...]
    placement: Traced

    @property
    def filled(self) -> int:
        """How many cells stand when the solver gets stuck."""
        return self.placement.filled


def first_bottleneck(puzzle: RuledPuzzle, path: SolvePath) -> FirstBottleneck | None:
    """The first bottleneck, or the single that takes longest where there is none; None for a path without singles, and
    where it takes too much effort to find out what the single rests on."""
    at = _target(puzzle, path)
    if at is None:
        return None
    try:
        *eliminations, placement = trace_to(ground_of(puzzle), path, at)
    except TooMuch:
        return None
    return FirstBottleneck(tuple(eliminations), placement)


def _target(puzzle: RuledPuzzle, path: SolvePath) -> int | None:
    """The number of the placement that the first bottleneck leads to."""
    grid, steps = puzzle.grid, path.steps
    singles = [index for index, step in enumerate(steps) if step.placed and step.rung <= Rung.NAKED]
    for point in bottlenecks(path, grid):
        target = next((index for index in singles if index >= point.first), None)
        if target is not None:
            return target
    early = [index for index in singles if steps[index].empty > LAST_ROWS * grid.size]
    return max(early or singles, key=lambda index: steps[index].effort, default=None)
