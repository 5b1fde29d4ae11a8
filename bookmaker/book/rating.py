"""How hard a puzzle is, in the words and figures that are printed.

In: a grade and the names of the bands. Out: a `Rating` with its solve profile and the narrow points on it.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.book.model import Rating
from bookmaker.grade.model import Grade

NARROW = 0.6
"""A narrow point takes at least this share of the effort of the hardest step."""

MOST = 3
"""No more narrow points than this are marked in one profile."""

APART = 0.06
"""Two narrow points lie at least this share of the path apart; the harder of two closer ones is marked."""


def rating_of(grade: Grade, band_names: Sequence[str]) -> Rating:
    """The rating that stands with a puzzle and its key."""
    efforts = tuple(step.effort for step in grade.path.steps)
    return Rating(grade.band, band_names[grade.band - 1], grade.effort, efforts, narrow_points(efforts))


def narrow_points(efforts: Sequence[float]) -> tuple[int, ...]:
    """The steps, in order, that stand out as the highest of their surroundings; a run of equal steps counts once."""
    floor = NARROW * max(efforts, default=0.0)
    peaks = [
        at
        for at, effort in enumerate(efforts)
        if effort >= floor
        and (at == 0 or efforts[at - 1] < effort)
        and next((later < effort for later in efforts[at:] if later != effort), True)
    ]
    marked: list[int] = []
    for at in sorted(peaks, key=lambda at: (-efforts[at], at)):
        if len(marked) < MOST and all(abs(at - other) >= APART * len(efforts) for other in marked):
            marked.append(at)
    return tuple(sorted(marked))
