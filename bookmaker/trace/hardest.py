"""The hardest step of a puzzle: one that a telling of its path does not leave out.

In: a puzzle, its solution and path. Out: a reason. A path goes on at its lowest rung, so some step on its highest is
always needed; where steps of several techniques stand there, the trace decides.
"""

from __future__ import annotations

from bookmaker.grade.automorphism import automorphisms
from bookmaker.grade.solve_path import SolvePath
from bookmaker.logic.state import ground_of
from bookmaker.reasons import Reason
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.trace.tracing import trace


def hardest(puzzle: RuledPuzzle, solution: Solution, path: SolvePath) -> Reason | None:
    """The reason of the first told step on the highest rung; None for a path without steps."""
    if not path.steps:
        return None
    top = max(step.rung for step in path.steps)
    reasons = [step.reason for step in path.steps if step.rung == top]
    if len({(reason.technique, reason.kind) for reason in reasons}) > 1:
        told = trace(ground_of(puzzle), path, next(iter(automorphisms(puzzle, solution)), None))
        return max(told, key=lambda step: step.rung).reason
    return reasons[0]
