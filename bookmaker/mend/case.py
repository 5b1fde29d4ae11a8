"""A puzzle that is being looked into: grids that keep some of what it says, and statements that cannot hold together.

In: a puzzle. Out: answers whether another puzzle, which differs from it in a few statements, has one solution. A grid
that was met is remembered with the statements that it breaks, statements that cannot hold together as a core; most
questions are answered by these. Every other answer is proven.
"""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass, field
from itertools import islice
from math import inf
from random import Random

from bookmaker.changes.elements import Element, elements_of, kept_by, problem_with
from bookmaker.mend.limit import Limit, Seconds
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.proving import proven
from bookmaker.solve.search import OutOfBudget, Search
from bookmaker.solve.verdict import NoSolution, Several, Solution, Undecided, Unique, Verdict

CLASH = 60_000
"""Effort (`Meter.effort`) for the proof that statements clash, about 40 ms."""

QUICK, THOROUGH = 40_000, 800_000
"""Effort for the proof that a change mends a puzzle: when all are gone through, and for those left undecided then."""

FILLING = 400_000
"""Effort to meet grids."""

SETTING_UP = 10_000
"""Effort that each proof is charged before it begins, for its problem has to be compiled."""

Elements = frozenset[Element]


@dataclass(slots=True)
class Case:
    """A puzzle and what is known of it."""

    puzzle: RuledPuzzle
    limit: Limit = field(default_factory=lambda: Seconds(inf))
    """What all that is asked of it may take together."""
    elements: Elements = field(init=False)
    cores: list[Elements] = field(default_factory=list)
    """Statements that cannot hold together."""
    met: dict[Solution, Elements] = field(default_factory=dict)
    """Grids with full houses, each with the statements that it breaks."""
    tight: set[Elements] = field(default_factory=set)
    """Those of which it is proven that none of their statements could be spared."""
    proofs: int = 0
    undecided: int = 0

    def __post_init__(self) -> None:
        self.elements = frozenset(elements_of(self.puzzle))

    def meet(self, solution: Solution) -> None:
        """Remember a grid."""
        if solution not in self.met:
            grid = self.puzzle.grid
            self.met[solution] = frozenset(e for e in self.elements if not kept_by(e, grid, solution))

    def solutions_of(self, left: Iterable[Element], most: int = 1, order: Random | None = None) -> list[Solution]:
        """Up to so many grids that keep some statements, of which each is remembered."""
        search = Search(problem_with(left, self.puzzle.grid), effort=FILLING, order=order)
        found = []
        with suppress(OutOfBudget):
            for solution in islice(search, most):
                found.append(solution)
                self.meet(solution)
        self.limit.spend(SETTING_UP + search.spent)
        return found

    def may_be_unique(self, gone: Elements, new: Elements) -> bool:
        """Is it still open whether the puzzle with some statements for others has one solution?"""
        if any(core.isdisjoint(gone) for core in self.cores):
            return False
        kept = 0
        for solution, broken in self.met.items():
            if broken <= gone and all(kept_by(element, self.puzzle.grid, solution) for element in new):
                kept += 1
                if kept == 2:
                    return False
        return True

    def solution_with(self, gone: Elements, new: Elements, effort: int = THOROUGH) -> Solution | None:
        """The one solution of the puzzle with some statements for others; None where it has none, several, or where
        the proof takes more than the effort, which is counted in `undecided`."""
        if not self.may_be_unique(gone, new):
            return None
        match self._proven((self.elements - gone) | new, effort):
            case Unique(solution):
                return solution
            case Several(first, second):
                self.meet(first)
                self.meet(second)
            case Undecided():
                self.undecided += 1
        return None

    def clash(self, elements: Iterable[Element]) -> bool | None:
        """Is it proven that these cannot hold together? None where that takes too long."""
        verdict = self._proven(elements, CLASH)
        return None if isinstance(verdict, Undecided) else isinstance(verdict, NoSolution)

    def _proven(self, elements: Iterable[Element], effort: int) -> Verdict:
        """What so much effort proves of some statements."""
        self.proofs += 1
        verdict, spent = proven(problem_with(elements, self.puzzle.grid), effort)
        self.limit.spend(SETTING_UP + spent)
        return verdict

    def core_of(self, elements: Iterable[Element], share: float = 1.0) -> Elements:
        """Statements among these, which clash, that clash and of which none could be spared; once this share of the
        limit is used up, more of them. They are remembered."""
        core = list(elements)
        size, tight = len(core) // 2, True
        while size and not self.limit.over(share):
            at = 0
            while at < len(core) and not self.limit.over(share):
                clash = self.clash(core[:at] + core[at + size :])
                if clash:
                    del core[at : at + size]
                else:
                    tight = tight and (size > 1 or clash is False)
                    at += size
            tight = tight and at >= len(core)
            size //= 2
        found = frozenset(core)
        if found not in self.cores:
            self.cores.append(found)
        if tight and not size:
            self.tight.add(found)
        return found
