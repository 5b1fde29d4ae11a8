"""What a grade is made of: steps a person would take, their effort, and the difficulty they add up to."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung


class Step(NamedTuple):
    """One step of a solving path; a named tuple, since a book whose proofs are kept reads tens of thousands.

    `reason` says why it holds, `rung` is its place on the ladder, `cells` where to look, `placed` and `removed` pairs
    of (cell, digit). `openings` is how many steps of this rung there were to find, `empty` how many cells were still
    empty, `effort` the work of finding this step.
    """

    reason: Reason
    rung: Rung
    cells: tuple[int, ...]
    placed: tuple[Candidate, ...]
    removed: tuple[Candidate, ...]
    openings: int
    empty: int
    effort: float


@dataclass(frozen=True, slots=True)
class SolvePath:
    """All steps from the givens to the solution; `reached` is False where the ladder could not finish by logic."""

    steps: tuple[Step, ...]
    reached: bool

    @property
    def effort(self) -> float:
        """The whole path's effort."""
        return sum(step.effort for step in self.steps)


@dataclass(frozen=True, slots=True)
class Grade:
    """A pure function of the steps and the puzzle's family: the effort, and the difficulty that follows from it."""

    path: SolvePath
    effort: float
    difficulty: float
    singles_only: bool

    @property
    def band(self) -> int:
        """From 1 to 5: the digit of the difficulty before the point."""
        return int(self.difficulty)
