"""Where solvers get stuck: the points of a path at which finding the next step takes far longer than usual.

In: a `SolvePath`. Out: its narrowest `Bottleneck`s in the order of the path. A stretch of strikes with no digit placed
in between is one point: a solver does not move on before it is through.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.grade.solve_path import SolvePath, Step
from bookmaker.reasons import Reason, Rung

STANDS_OUT = 3.0
"""A narrow point takes so many times the effort of the path's points on average."""

CROWDED = 0.5
"""From this share of filled cells a board counts as crowded."""


@dataclass(frozen=True, slots=True)
class Bottleneck:
    """Steps `first` up to `after` of the path, the looks they take, how many openings there were and filled cells.

    `reason` is that of its hardest step. A lone naked single on a crowded board is the step that solvers
    overlook longest (common knowledge of the trade, and the lowest visibility in `effort.py`).
    """

    first: int
    after: int
    effort: float
    openings: int
    reason: Reason
    filled: int
    lone_naked_single: bool


def bottlenecks_of(path: SolvePath, cells: int, most: int = 3) -> tuple[Bottleneck, ...]:
    """At most so many points, the narrowest of the path, on a grid of so many cells."""
    points = _points(path.steps, cells)
    if not points:
        return ()
    usual = path.effort / len(points)
    standing_out = [point for point in points if point.effort > STANDS_OUT * usual]
    narrowest = sorted(standing_out, key=lambda point: -point.effort)[:most]
    return tuple(sorted(narrowest, key=lambda point: point.first))


def _points(steps: tuple[Step, ...], cells: int) -> list[Bottleneck]:
    points = []
    first = 0
    for index, step in enumerate(steps):
        ends = bool(step.placed) or index + 1 == len(steps) or bool(steps[index + 1].placed)
        if not ends:
            continue
        here = steps[first : index + 1]
        filled = cells - here[0].empty
        hardest = max(here, key=lambda s: s.rung)
        lone = step.rung == Rung.NAKED and step.openings == 1 and filled >= CROWDED * cells
        effort = sum(s.effort for s in here)
        points.append(Bottleneck(first, index + 1, effort, here[0].openings, hardest.reason, filled, lone))
        first = index + 1
    return points
