"""Claims about what a mark allows. Which mark, the reason says; a new kind of rule takes from these what fits it.

Most are about all fillings of a mark's cells by the digits that can still stand there, cells of one row, column or
region being different.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from bookmaker.puzzle.grid import HouseRef
from bookmaker.reasons.roles import Cell, Cells, Digit, Digits, Houses, Spans


@dataclass(frozen=True, slots=True)
class Bounds:
    """Each cell can hold no less and no more than this."""

    spans: Spans


@dataclass(frozen=True, slots=True)
class Enclosed:
    """The digits of the inner cells lie between those of the two ends, which therefore leave room for them."""

    ends: Cells
    inner: Cells


@dataclass(frozen=True, slots=True)
class OnlyDigits:
    """The cells can hold these digits only."""

    cells: Cells
    digits: Digits


@dataclass(frozen=True, slots=True)
class OnlyIn:
    """The digits stand in these of the mark's cells, and nowhere else along it."""

    varies: ClassVar[tuple[str, ...]] = ("cells",)
    digits: Digits
    cells: Cells


@dataclass(frozen=True, slots=True)
class NoPartner:
    """These digits of the cell would leave too little for the cells beside it."""

    varies: ClassVar[tuple[str, ...]] = ("digits",)
    cell: Cell
    digits: Digits
    beyond: Cells


@dataclass(frozen=True, slots=True)
class Beside:
    """These digits of the cell do not go with the digit that is written beside it."""

    varies: ClassVar[tuple[str, ...]] = ("digits",)
    cell: Cell
    digits: Digits
    beside: Cell
    known: Digit


@dataclass(frozen=True, slots=True)
class TooNear:
    """These digits of the cell differ too little from all that the cells beside it can hold."""

    varies: ClassVar[tuple[str, ...]] = ("digits", "beside")
    cell: Cell
    digits: Digits
    beside: Cells


@dataclass(frozen=True, slots=True)
class OneCombination:
    """The mark's cells hold these digits, in some order."""

    digits: Digits


@dataclass(frozen=True, slots=True)
class NoCombination:
    """No choice of digits for the mark's cells has one of these."""

    concepts: ClassVar[tuple[str, ...]] = ("combination",)
    varies: ClassVar[tuple[str, ...]] = ("digits",)
    digits: Digits


@dataclass(frozen=True, slots=True)
class NoRun:
    """No digits in sequence that fit the mark's cells have one of these."""

    varies: ClassVar[tuple[str, ...]] = ("digits",)
    digits: Digits


@dataclass(frozen=True, slots=True)
class Needed:
    """Every choice of digits for the mark's cells has this one, which can stand in these of them."""

    varies: ClassVar[tuple[str, ...]] = ("places",)
    digit: Digit
    places: Cells


@dataclass(frozen=True, slots=True)
class NoFilling:
    """No filling of the mark's cells has the candidates that go."""

    cells: Cells


@dataclass(frozen=True, slots=True)
class SameDigit:
    """The cells hold one and the same digit."""

    cells: Cells


@dataclass(frozen=True, slots=True)
class Reached:
    """The digit of this cell reaches what goes."""

    cell: Cell
    digit: Digit


@dataclass(frozen=True, slots=True)
class BesideAll:
    """Wherever the digit stands in the house, it stands beside this cell."""

    varies: ClassVar[tuple[str, ...]] = ("places",)
    cell: Cell
    digit: Digit
    house: HouseRef
    places: Cells


@dataclass(frozen=True, slots=True)
class LimitsMeet:
    """Two sides of a sum that are equal: what adds up comes to `least` at least, and the total is `most` at most; the
    other way round where it comes to `most` at most and the total is `least` at least (`from_above`)."""

    varies: ClassVar[tuple[str, ...]] = ("least", "most")
    least: int
    most: int
    from_above: bool


@dataclass(frozen=True, slots=True)
class CommonSum:
    """The parts of the mark add up to the same, and only these sums are possible."""

    varies: ClassVar[tuple[str, ...]] = ("sums",)
    sums: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class LeftOver:
    """The houses add up to `total` and the marks in them, or over them where `beyond`, to `within`: the difference is
    what the cells add up to."""

    houses: Houses
    total: int
    within: int
    beyond: bool
    cells: Cells


@dataclass(frozen=True, slots=True)
class Steps:
    """Neighbours along the mark can differ by these amounts only."""

    varies: ClassVar[tuple[str, ...]] = ("steps",)
    steps: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class FirstDigits:
    """The first of the mark's cells can hold these digits only, and what follows has to go with them."""

    varies: ClassVar[tuple[str, ...]] = ("digits",)
    cell: Cell
    digits: Digits


@dataclass(frozen=True, slots=True)
class CountsTo:
    """The first cell counts to the digit's place, which can be only one of these."""

    varies: ClassVar[tuple[str, ...]] = ("places",)
    first: Cell
    places: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Apart:
    """Between two digits along the mark stand so many cells, to be filled with one of these sets (none: too many)."""

    varies: ClassVar[tuple[str, ...]] = ("counts", "fillings")
    counts: tuple[int, ...]
    fillings: tuple[Digits, ...]


@dataclass(frozen=True, slots=True)
class HeldByRest:
    """Cells that, with houses around them, hold every digit once too: they hold this one in this cell, `settled` if it
    is known, else since there is no other place."""

    rest: HouseRef
    digit: Digit
    cell: Cell
    settled: bool
