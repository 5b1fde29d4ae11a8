"""The groups of a path's steps: a placement, or all eliminations up to the next one; and which of them are hard to
find.

In: a `SolvePath` and its grid. Out: the efforts of its groups; `Bottleneck`s, as `grade` finds them, without those
that nobody at the table would notice.
"""

from __future__ import annotations

from itertools import groupby

from bookmaker.grade.bottlenecks import Bottleneck, bottlenecks_of
from bookmaker.grade.solve_path import SolvePath
from bookmaker.puzzle.grid import Grid
from bookmaker.reasons import Rung

BOARD = 0.5
"""At a bottleneck more than this share of the empty cells is looked at before the step is found."""

FEW = 2
"""Hidden singles make a bottleneck only if there are no more than this: the eye finds them one by one."""

LAST_ROWS = 2
"""Nothing is a bottleneck when no more cells are empty than this many rows hold."""

HARD = 0.25
"""The hard moment takes looks at no less than this share of all cells; else the path has none."""


def step_groups(path: SolvePath) -> tuple[tuple[int, ...], tuple[float, ...]]:
    """The first steps of the groups, and their efforts."""
    first: list[int] = []
    efforts: list[float] = []
    for places, run in groupby(enumerate(path.steps), key=lambda numbered: bool(numbered[1].placed)):
        numbers, steps = zip(*run, strict=True)
        if places:
            first += numbers
            efforts += [step.effort for step in steps]
        else:
            first.append(numbers[0])
            efforts.append(sum(step.effort for step in steps))
    return tuple(first), tuple(efforts)


def bottlenecks(path: SolvePath, grid: Grid) -> tuple[Bottleneck, ...]:
    """The points at which solvers slow down, in order."""
    points = bottlenecks_of(path, len(grid.cells), most=len(path.steps))
    return tuple(point for point in points if _noticed(path, point, grid))


def crux(path: SolvePath, grid: Grid) -> Bottleneck | None:
    """The hard moment: the bottleneck that takes the most effort, if it takes enough to be announced; the first of
    equals."""
    hardest = max(bottlenecks(path, grid), key=lambda point: point.effort, default=None)
    return hardest if hardest and hardest.effort >= HARD * len(grid.cells) else None


def _noticed(path: SolvePath, point: Bottleneck, grid: Grid) -> bool:
    empty = len(grid.cells) - point.filled
    if empty <= LAST_ROWS * grid.size or point.effort <= BOARD * (empty + 1):
        return False
    start = path.steps[point.first]
    if start.placed and point.first and not path.steps[point.first - 1].placed:
        return False  # whoever has just struck something looks at what that opens
    if not start.placed or start.rung >= Rung.NAKED:
        return True
    return start.rung > Rung.LAST and point.openings <= FEW
