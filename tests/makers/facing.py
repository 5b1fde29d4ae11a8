"""Marks that face each other across the centre, as setters by hand like to place them.

In: a kind, a grid, a solution and a number. Out: a rule with so many pairs of marks, each true on the solution: they
are picked from what the kind's own cases lay at random.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable
from dataclasses import dataclass
from random import Random
from typing import Any, TypeAlias

from bookmaker.puzzle.grid import Grid
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from tests.rules.harness import cases_of

Place: TypeAlias = Hashable

LAYS = 80
"""Random lays that are looked through for marks."""

_OPPOSITE = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}
_BACK = {"down-right": "up-left", "up-left": "down-right", "down-left": "up-right", "up-right": "down-left"}


@dataclass(frozen=True)
class _Marks:
    """The rule's field that holds its marks, the place of a mark, and the place that faces it."""

    field: str
    place: Callable[[Any], Place]
    facing: Callable[[Grid, Any], Place]


def _turned(grid: Grid, cell: int) -> int:
    return len(grid.cells) - 1 - cell


_OUTSIDE = _Marks(
    "clues", lambda clue: (clue.side, clue.line), lambda grid, at: (_OPPOSITE[at[0]], grid.size - 1 - at[1])
)
_MARKS = {
    "quadruple": _Marks(
        "rings", lambda ring: ring.cells, lambda grid, at: tuple(sorted(_turned(grid, cell) for cell in at))
    ),
    "limits": _Marks("limits", lambda limit: limit.cell, _turned),
    "diagonal-sum": _Marks(
        "diagonals", lambda sum_: (sum_.start, sum_.way), lambda grid, at: (_turned(grid, at[0]), _BACK[at[1]])
    ),
    **dict.fromkeys(("first-seen", "numbered-room", "sandwich", "skyscraper", "x-sum"), _OUTSIDE),
}


def facing_marks(kind: str, grid: Grid, solution: tuple[int, ...], rng: Random, pairs: int) -> Rule:
    """A rule with marks at up to so many pairs of places; no two of them stand at the two ends of one line."""
    marks = _MARKS[kind]
    seen: dict[Place, list[Any]] = {}
    for _ in range(LAYS):
        here: dict[Place, list[Any]] = {}
        for mark in getattr(cases_of(kind).lay(grid, solution, rng), marks.field, ()):
            here.setdefault(marks.place(mark), []).append(mark)
        seen |= here
    chosen: list[Place] = []
    for place in rng.sample(sorted(seen, key=str), len(seen)):
        pair = {place, marks.facing(grid, place)}
        taken = {end for at in (*chosen, place) for end in _other_ends(grid, at)} | set(chosen)
        if len(chosen) < 2 * pairs and pair <= seen.keys() and not pair & taken:
            chosen += sorted(pair, key=str)
    laid = {marks.field: tuple(mark for place in chosen for mark in seen[place])}
    return kinds()[kind](**laid)


def _other_ends(grid: Grid, place: Any) -> tuple[Place, ...]:
    """Places that would say more of a line that has its mark: the far end of a row, a column or a diagonal."""
    if isinstance(place, tuple) and place[0] in _OPPOSITE:
        return ((_OPPOSITE[place[0]], place[1]),)
    if isinstance(place, tuple) and place[1] in _BACK:
        start, way = place
        step = {"down-right": (1, 1), "down-left": (1, -1), "up-right": (-1, 1), "up-left": (-1, -1)}[way]
        row, column = grid.row(start), grid.column(start)
        while grid.inside(row + step[0], column + step[1]):
            row, column = row + step[0], column + step[1]
        return ((grid.cell(row, column), _BACK[way]),)
    return ()
