"""What the rules' own marks rule out: bounds along a line, combinations of a cage, limits of a sum.

Each rule kind says these itself (`Rule.deductions`); here they take their rung on the ladder.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from bookmaker.logic.state import State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.reason import MARK


class RuleDeduction(Technique):
    """Deductions of the rules at `rung`."""

    step_names = (MARK,)

    def find(self, state: State) -> Iterator[Finding]:
        for deduction in state.deductions():
            if deduction.rung != self.rung:
                continue
            removed = state.present(deduction.removed)
            if removed:
                reason = partial(Reason, MARK, deduction.mark, deduction.claim)
                yield Finding(self.rung, deduction.cells, removed, reason, by_mark=True)


class Bounds(RuleDeduction):
    """One line's bounds, one cage's combinations."""

    name = "bounds"
    rung = Rung.SIMPLE


class Limits(RuleDeduction):
    """One sum line's limits."""

    name = "limits"
    rung = Rung.PAIR


class WholeShape(RuleDeduction):
    """A whole shape enumerated."""

    name = "whole-shape"
    rung = Rung.WHOLE
