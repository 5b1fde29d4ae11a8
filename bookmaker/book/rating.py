"""How hard a puzzle is, in the words and figures that are printed.

In: a puzzle and its grade, and the names of the bands. Out: a `Rating` with its solve profile and the narrow points on
it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bookmaker.book.contents import Rating
from bookmaker.grade.bottlenecks import Bottleneck
from bookmaker.grade.solve_path import Grade
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.tell.step_groups import bottlenecks, step_groups

MOST = 3
"""No more narrow points than this are marked in one profile."""

APART = 0.06
"""Two marks lie at least this share of the path apart; the harder of two closer points is marked."""


def rating_of(puzzle: RuledPuzzle, grade: Grade, band_names: Sequence[str]) -> Rating:
    """The rating that stands with a puzzle and its key."""
    first, efforts = step_groups(grade.path)
    narrow = _marked(bottlenecks(grade.path, puzzle.grid), first)
    return Rating(grade.band, band_names[grade.band - 1], grade.difficulty, efforts, narrow, len(grade.path.steps))


def _marked(points: Iterable[Bottleneck], first: Sequence[int]) -> tuple[int, ...]:
    """The groups of steps to mark: the hardest of the narrow points, not too close to each other."""
    marked: list[int] = []
    for point in sorted(points, key=lambda point: -point.effort):
        at = first.index(point.first)
        if len(marked) < MOST and all(abs(at - other) >= APART * len(first) for other in marked):
            marked.append(at)
    return tuple(sorted(marked))
