"""A step as it is told, and what is seen at it."""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.claims import spoken


@dataclass(frozen=True, slots=True)
class View:
    """Why a cell's digit is forced, as it is seen.

    A hidden single: the cells whose digits look into its house, and whether what leaves it alone there besides are
    eliminations (`struck`) or marks (`marked`). A naked single: the houses with the digits they hold (no house: other
    cells that it sees), then the digits that were eliminated, by what did it (nothing: its own mark forbids them).
    """

    lookers: tuple[int, ...] = ()
    struck: bool = False
    marked: bool = False
    holders: tuple[tuple[HouseRef | None, tuple[int, ...]], ...] = ()
    strikers: tuple[tuple[Reason | None, tuple[int, ...]], ...] = ()


@dataclass(frozen=True, slots=True)
class Traced:
    """A told step: `number` counts from 1, `index` is its number in the path, from 0.

    `before` is the board as it stands before it, of which `filled` cells are written. An elimination has the number of
    the placement that it `opens`, and `candidates` of the path's step that it does without are not in `removed`. A
    placement has its `kind` (None for a digit that marks or the proof give) and, unless it is a naked single, its
    house; `since` is the number of the step that made it a single, 0 if the givens do; `choice` counts the singles that
    there were before anything was eliminated for it, `naked` whether these were naked ones. `closes` are houses that it
    fills, `of_digit` counts its digit on the board afterwards. `mirrors` is the number of the step whose mirror image
    it is, 0 if it was told of its own.
    """

    number: int
    index: int
    reason: Reason
    rung: Rung
    before: Position
    cells: tuple[int, ...]
    placed: tuple[Candidate, ...] = ()
    removed: tuple[Candidate, ...] = ()
    opens: int = 0
    kind: Rung | None = None
    house: HouseRef | None = None
    since: int = 0
    choice: int = 0
    naked: bool = False
    closes: tuple[HouseRef, ...] = ()
    of_digit: int = 0
    view: View = View()
    mirrors: int = 0

    @property
    def filled(self) -> int:
        """How many cells are written before it."""
        return self.before.placed.bit_count()

    @property
    def cell(self) -> int:
        """The cell that is filled."""
        return self.placed[0][0]

    @property
    def digit(self) -> int:
        """The digit that is written."""
        return self.placed[0][1]


def names_region(told: Traced) -> bool:
    """Does the sentence of a step speak of an irregular region, by its letter?"""
    houses = (*spoken(told.reason.claim).houses, *(house for house, _ in told.view.holders if house))
    return any(house.kind == "region" for house in houses)
