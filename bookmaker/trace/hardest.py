"""The hardest step of a puzzle: one that a telling of its path does not leave out.

In: a puzzle, its solution and path. Out: a reason. Every placement is told; where a path eliminates, the trace decides
which of its steps are.
"""

from __future__ import annotations

from bookmaker.grade.automorphism import automorphisms
from bookmaker.grade.solve_path import SolvePath
from bookmaker.logic.state import ground_of
from bookmaker.reasons import Reason, Rung
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.trace.tracing import trace


def hardest(puzzle: RuledPuzzle, solution: Solution, path: SolvePath) -> Reason | None:
    """The reason of the first told step on the highest rung; None for a path without steps."""
    if not path.steps:
        return None
    top = max(path.steps, key=lambda step: step.rung)
    if top.rung <= Rung.NAKED:
        return top.reason  # every placement is told
    told = trace(ground_of(puzzle), path, next(iter(automorphisms(puzzle, solution)), None))
    return max(told, key=lambda step: step.rung).reason
