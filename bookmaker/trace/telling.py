"""A telling under way: the board as it stands in it, and the steps that are told.

In: a puzzle's ground and a path. Out: `Traced` steps, numbered from 1, each with what is seen at it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bookmaker.grade.solve_path import SolvePath
from bookmaker.logic.singles import Opening, openings_kept, single
from bookmaker.logic.state import Ground, start
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.trace.dependencies import opening_of, rivals_of
from bookmaker.trace.traced import Traced
from bookmaker.trace.views import view_of


class Telling:
    """The board, on which only what was told is eliminated."""

    def __init__(self, ground: Ground, path: SolvePath) -> None:
        self.ground, self.path = ground, path
        self.state = start(ground)
        self.told: list[Traced] = []
        self.gone: dict[Candidate, int] = {}
        """For each candidate that is gone since the start, the number of the step that took it."""
        self.written: dict[int, int] = {}
        """For each cell that was filled the number of the step that did it."""

    @property
    def next(self) -> int:
        """The number of the step that is told next."""
        return len(self.told) + 1

    def tell(self, told: Traced) -> None:
        """Add a step, and do on the board what it says."""
        before = self.state.boards[:]
        for cell, digit in told.placed:
            self.state.place(cell, digit)
            self.written[cell] = told.number
        self.state.remove(told.removed)
        for digit in self.ground.grid.digits:
            for cell in cells_on(before[digit] & ~self.state.boards[digit]):
                self.gone[cell, digit] = told.number
        self.told.append(told)

    def write(self, index: int, first: int, found: Sequence[Opening], mirrors: int = 0) -> None:
        """Tell a placement of the path. The steps told from `first` on (counted from 0) were for it; before those, so
        many singles were found."""
        step, number = self.path.steps[index], self.next
        self.told[first:] = [replace(told, opens=number) for told in self.told[first:]]
        told = Traced(number, index, step.reason, step.rung, self.state.position(), step.cells, step.placed)
        if opening := opening_of(self.state, step):
            told = self._single(told, opening)
            told = replace(told, choice=len(found), naked=all(other.kind is Rung.NAKED for other in found))
        self.tell(replace(told, mirrors=mirrors))

    def _single(self, told: Traced, opening: Opening) -> Traced:
        """A placement with what is seen at it."""
        ground, bit = self.ground, 1 << opening.cell
        since = max((self.gone.get(rival, 0) for rival in rivals_of(ground, opening)), default=0)
        if opening.kind is Rung.LAST and opening.area:
            since = max(self.written.get(cell, 0) for cell in opening.area.cells if cell != opening.cell)
        return replace(
            told,
            reason=single(opening),
            rung=opening.kind,
            kind=opening.kind,
            house=opening.area.ref if opening.area else None,
            since=since,
            closes=tuple(area.ref for area in ground.areas if area.board & self.state.empty == bit),
            of_digit=self.state.stood[opening.digit].bit_count() + 1,
            view=view_of(opening, self.state, self._by_elimination),
        )

    def _by_elimination(self, pair: Candidate) -> Reason | None:
        """The reason of the told elimination that took a candidate."""
        number = self.gone.get(pair, 0)
        return self.told[number - 1].reason if number and not self.told[number - 1].placed else None


def as_found(ground: Ground, path: SolvePath) -> tuple[Traced, ...]:
    """Every step of a path as the path found it, needed or not, and what-ifs without their links: what is told where
    it would take too long to find out more."""
    telling = Telling(ground, path)
    first, found = 0, openings_kept(telling.state)
    for index, step in enumerate(path.steps):
        if step.placed:
            telling.write(index, first, found)
            first, found = len(telling.told), openings_kept(telling.state)
        elif removed := telling.state.present(step.removed):
            board = telling.state.position()
            telling.tell(Traced(telling.next, index, step.reason, step.rung, board, step.cells, removed=removed))
    return tuple(telling.told)
