"""How much may be done to find out what a path rests on, counted, so that it is the same on every machine."""

from __future__ import annotations

from dataclasses import dataclass, field

from bookmaker.logic.state import Ground

MOST = 1_000_000
"""Cells of boards that are looked through: two to four seconds' work, and twice what the hardest puzzle of the
demo book takes. Puzzles on five grids, or full of marks, with nothing to spare may want more."""

A_MARK = 15
"""Reading a mark once more counts as so many cells, what a rule says cell by cell as one: marks make a look dearer. A
rough fit to the times of nine puzzles."""


class TooMuch(Exception):
    """The budget is spent."""


@dataclass
class Budget:
    """What is left of it."""

    left: int = field(default_factory=lambda: MOST)

    def spend(self, ground: Ground) -> None:
        """A board is looked through. Raises TooMuch where nothing is left."""
        self.left -= len(ground.peers) + A_MARK * len(ground.marks) + len(ground.readers)
        if self.left < 0:
            raise TooMuch
