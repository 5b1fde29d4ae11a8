"""A path cut into rounds: steps that could be found at one and the same moment.

In: a `SolvePath`. Out: `Round`s, in order, that cover it. Within a round the order of telling is free.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from bookmaker.grade.model import SolvePath, Step


@dataclass(frozen=True, slots=True)
class Round:
    """Steps `first` up to `after` of a path; all of them place digits, or all strike candidates."""

    first: int
    after: int
    steps: tuple[Step, ...]

    @property
    def places(self) -> bool:
        return bool(self.steps[0].placed)

    @property
    def rung(self) -> int:
        return max(step.rung for step in self.steps)


def rounds(path: SolvePath) -> Iterator[Round]:
    """Cut a path where the board was looked at anew.

    Inside a round of placements each step leaves one empty cell and one opening fewer, so their difference stays the
    same; inside a round of strikes nothing is filled and the number of findings stays the same.
    """
    first = 0
    for index in range(1, len(path.steps) + 1):
        if index == len(path.steps) or _moment(path.steps[index]) != _moment(path.steps[first]):
            yield Round(first, index, path.steps[first:index])
            first = index


def _moment(step: Step) -> tuple[bool, int, int]:
    if step.placed:
        return True, step.empty - step.openings, min(step.rung, 4) if step.rung <= 4 else step.rung
    return False, step.empty, step.openings
