"""How far a person's logic goes without some techniques: the ladder run for its end alone, with no effort counted.

In: a state, and the ladder without what is refused. Out: the state when nothing more is found. Givens may be added
there, and the run goes on from where it was; so a drafted puzzle is led to its end with the givens it needs.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

from bookmaker.logic.singles import openings
from bookmaker.logic.state import State, ground_of, start
from bookmaker.logic.technique import Finding, Technique, ladder
from bookmaker.logic.techniques.rule_deduction import RuleDeduction
from bookmaker.puzzle.position import Candidate
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.wishes.techniques import key_of


@dataclass(frozen=True, slots=True)
class Rungs:
    """A ladder, and the keys of steps that are left alone all the same."""

    techniques: Sequence[Sequence[Technique]]
    refused: frozenset[str]


def rungs_without(refused: Collection[str], only_marks: bool = False) -> Rungs:
    """The ladder without the steps of these keys; with `only_marks`, nothing but what the marks say."""
    left = (
        tuple(
            technique
            for technique in rung
            if any(name not in refused for name in technique.names)
            and (isinstance(technique, RuleDeduction) or not only_marks)
        )
        for rung in ladder()
    )
    rungs = tuple(rung for rung in left if rung)
    # What no technique that is left could find is refused already, and findings need not be asked for their reasons.
    patterns = {name for rung in ladder() for technique in rung for name in technique.names}
    found = {name for rung in rungs for technique in rung for name in technique.names}
    return Rungs(rungs, frozenset(key for key in refused if key in found or key not in patterns))


@dataclass(slots=True)
class Run:
    """A puzzle on its way by logic; `state` is where it stands."""

    state: State
    rungs: Rungs

    @classmethod
    def of(cls, puzzle: RuledPuzzle, rungs: Rungs) -> Run:
        """A run from the start."""
        return cls(start(ground_of(puzzle)), rungs)

    def copy(self) -> Run:
        """The same, to try something on."""
        return Run(self.state.copy(), self.rungs)

    def place(self, given: Candidate) -> None:
        """Add a given."""
        if self.state.empty >> given[0] & 1:
            self.state.place(*given)

    def singles(self) -> None:
        """Place all singles until there are none."""
        while found := openings(self.state):
            for opening in found:
                self.state.place(opening.cell, opening.digit)

    def go_on(self) -> bool:
        """Go on until nothing is found; is the grid full?"""
        while True:
            self.singles()
            if not self.state.empty:
                return True
            found = self._lowest()
            if not found:
                return False
            for finding in found:
                self.state.remove(finding.removed)

    def _lowest(self) -> list[Finding]:
        """What the lowest rung that finds anything finds: of its findings those that reach least far."""
        for rung in self.rungs.techniques:
            everything = (finding for technique in rung for finding in technique.find(self.state))
            refused = self.rungs.refused
            found = [finding for finding in everything if not refused or key_of(finding.reason()) not in refused]
            if found:
                least = min(finding.reach for finding in found)
                return [finding for finding in found if finding.reach == least]
        return []
