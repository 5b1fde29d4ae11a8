"""A path cut into rounds: placements until no single is left, or strikes that are found at one and the same moment.

In: a `SolvePath`. Out: `Round`s, in order, that cover it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from bookmaker.grade.solve_path import SolvePath, Step


@dataclass(frozen=True, slots=True)
class Round:
    """Steps `first` up to `after` of a path; all of them place digits, or all strike candidates."""

    first: int
    after: int
    steps: tuple[Step, ...]

    @property
    def places(self) -> bool:
        """Does it place digits?"""
        return bool(self.steps[0].placed)


def rounds(path: SolvePath) -> Iterator[Round]:
    """Cut a path where the board was looked at again: a round of strikes has as many steps as there were findings."""
    first = 0
    while first < len(path.steps):
        start = path.steps[first]
        after = first + 1
        while after < len(path.steps) and _together(start, path.steps[after], after - first):
            after += 1
        yield Round(first, after, path.steps[first:after])
        first = after


def _together(start: Step, step: Step, before: int) -> bool:
    if start.placed:
        return bool(step.placed)
    return not step.placed and step.rung == start.rung and before < start.openings
