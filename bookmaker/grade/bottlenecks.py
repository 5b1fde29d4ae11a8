"""Where solvers get stuck: the points of a path at which finding the next step takes far longer than usual.

In: a `SolvePath`. Out: its narrowest `Bottleneck`s in the order of the path. A stretch of strikes with no digit placed
in between is one point: a solver does not move on before it is through.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import NamedTuple

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
    points = [*_points(path.steps)]
    if not points:
        return ()
    usual = path.effort / len(points)
    standing_out = [point for point in points if point.effort > STANDS_OUT * usual]
    narrowest = sorted(standing_out, key=lambda point: -point.effort)[:most]
    return tuple(_looked_at(path, point, cells) for point in sorted(narrowest))


class _Point(NamedTuple):
    first: int
    after: int
    effort: float


def _points(steps: Sequence[Step]) -> Iterator[_Point]:
    """All points: a placement, or strikes up to the next one."""
    first, effort = 0, 0.0
    for index, step in enumerate(steps):
        effort += step.effort
        if step.placed or index + 1 == len(steps) or steps[index + 1].placed:
            yield _Point(first, index + 1, effort)
            first, effort = index + 1, 0.0


def _looked_at(path: SolvePath, point: _Point, cells: int) -> Bottleneck:
    """A point with what there is to be told of it."""
    here = path.steps[point.first : point.after]
    start, last = here[0], here[-1]
    filled = cells - start.empty
    hardest = max(here, key=lambda step: step.rung)
    lone = last.rung == Rung.NAKED and last.openings == 1 and filled >= CROWDED * cells
    return Bottleneck(*point, start.openings, hardest.reason, filled, lone)
