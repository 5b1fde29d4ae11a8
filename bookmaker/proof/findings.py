"""A puzzle with everything known about it: the verdict, the count if asked for, and the grade if it is unique."""

from __future__ import annotations

from dataclasses import dataclass, replace

from bookmaker.grade.solve_path import Grade
from bookmaker.manifest.entries import Entry
from bookmaker.reasons import Reason
from bookmaker.solve.verdict import Solution, Tally, Unique, Verdict


@dataclass(frozen=True, slots=True)
class Proof:
    """`grade` is None unless the verdict is `Unique`; `hardest` is then the reason of the hardest step that a telling
    of the path does not leave out, if it was asked for. `seconds` is wall time, for the report only."""

    entry: Entry
    verdict: Verdict
    grade: Grade | None
    tally: Tally | None = None
    hardest: Reason | None = None
    seconds: float = 0.0

    @property
    def bare(self) -> Proof:
        """The proof without its grade and its hardest step, which take most of the memory: enough to tell whether a key
        is right."""
        return replace(self, grade=None, hardest=None)

    @property
    def solution(self) -> Solution | None:
        """The one solution, or None."""
        return self.verdict.solution if isinstance(self.verdict, Unique) else None
