"""A solving path run again, to see the grid as it stands between two steps.

In: a puzzle and its path. Out: the digits written down and the pencil marks that are left.
"""

from __future__ import annotations

from bookmaker.grade.model import SolvePath
from bookmaker.grade.state import ground_of, start
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.contract import RuledPuzzle


def position_after(puzzle: RuledPuzzle, path: SolvePath, count: int) -> tuple[tuple[int, ...], Position]:
    """The grid after the first `count` steps: each cell's digit (0 where it is empty), and the candidates.

    Raises ValueError if the path has no such step.
    """
    if not 0 <= count <= len(path.steps):
        raise ValueError(f"the path has {len(path.steps)} steps, not {count}")
    state = start(ground_of(puzzle))
    written = list(puzzle.givens)
    for step in path.steps[:count]:
        for cell, digit in step.placed:
            state.place(cell, digit)
            written[cell] = digit
        state.remove(step.removed)
    return tuple(written), state.position()
