"""The claim of a what-if: a candidate is taken for true, and singles and marks lead to a contradiction."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar, TypeAlias

from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons.marks import MarkRef
from bookmaker.reasons.roles import Cell, Digit


@dataclass(frozen=True, slots=True)
class NoPlace:
    """A house has no place left for a digit."""

    house: HouseRef
    digit: Digit


@dataclass(frozen=True, slots=True)
class NoDigit:
    """A cell has no digit left; `marked` where marks take the last of them, `mark` where one alone does."""

    cell: Cell
    mark: MarkRef | None = None
    marked: bool = False


@dataclass(frozen=True, slots=True)
class NothingFits:
    """No digits fit a mark any more."""

    mark: MarkRef


End: TypeAlias = NoPlace | NoDigit | NothingFits


@dataclass(frozen=True, slots=True)
class ThenPlaced:
    """It follows that a cell holds a digit: the only place in a house, or the only digit left for the cell, what a mark
    takes from it included."""

    cell: Cell
    digit: Digit
    house: HouseRef | None = None
    mark: MarkRef | None = None


@dataclass(frozen=True, slots=True)
class ThenGone:
    """It follows that a mark rules candidates out."""

    mark: MarkRef
    gone: tuple[Candidate, ...]


Link: TypeAlias = ThenPlaced | ThenGone


@dataclass(frozen=True, slots=True)
class Refuted:
    """The candidate leads to the end in so many rounds; `links`, where they are worked out, lead there one by one, each
    by what came before it."""

    one_digit: ClassVar[bool] = False
    concepts: ClassVar[tuple[str, ...]] = ("contradiction",)
    tried: Candidate
    rounds: int
    end: End
    links: tuple[Link, ...] = ()
