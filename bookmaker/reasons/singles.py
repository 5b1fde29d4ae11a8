"""Claims that place a digit."""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.puzzle.grid import HouseRef
from bookmaker.reasons.roles import Cell, Digit


@dataclass(frozen=True, slots=True)
class LastCell:
    """The cell is the last empty one of the house."""

    house: HouseRef
    cell: Cell
    digit: Digit


@dataclass(frozen=True, slots=True)
class HiddenSingle:
    """Of the house only this cell can hold the digit."""

    house: HouseRef
    cell: Cell
    digit: Digit


@dataclass(frozen=True, slots=True)
class NakedSingle:
    """The cell can hold this digit only."""

    cell: Cell
    digit: Digit


@dataclass(frozen=True, slots=True)
class Fixed:
    """The rule and the houses leave the cell this digit, whatever the givens."""

    cell: Cell
    digit: Digit


@dataclass(frozen=True, slots=True)
class FromProof:
    """No technique reaches the digit; it is taken from the proof."""

    cell: Cell
    digit: Digit
