"""Claims of techniques that strike candidates by what is pencilled in, on any grid."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons.roles import Cell, Cells, Digit, Digits, Houses

FISH = {2: "x-wing", 3: "swordfish", 4: "jellyfish"}
"""What fish are called by their size; each is explained by the one before it."""


@dataclass(frozen=True, slots=True)
class Locked:
    """All places of the digit in its home lie in another house, too."""

    varies: ClassVar[tuple[str, ...]] = ("places",)
    one_digit: ClassVar[bool] = True
    digit: Digit
    home: HouseRef
    other: HouseRef
    places: Cells


@dataclass(frozen=True, slots=True)
class NakedSubset:
    """The cells have as many candidates between them as there are cells, in a house; in a mark's area where there is
    none."""

    cells: Cells
    digits: Digits
    house: HouseRef | None


@dataclass(frozen=True, slots=True)
class HiddenSubset:
    """In the house the digits have as many places between them as there are digits."""

    cells: Cells
    digits: Digits
    house: HouseRef


@dataclass(frozen=True, slots=True)
class Fish:
    """In the base houses all places of the digit lie in as many cover houses, or are fins, which see what goes. The
    houses of a rule make fish with rows and columns, too."""

    varies: ClassVar[tuple[str, ...]] = ("places",)
    one_digit: ClassVar[bool] = True
    digit: Digit
    base: Houses
    cover: Houses
    places: Cells
    fins: Cells = ()

    @property
    def concepts(self) -> tuple[str, ...]:
        """Smaller fish, as far as there are names, and fins."""
        return (*(name for size, name in FISH.items() if size <= len(self.base)), *["fins"] * bool(self.fins))


@dataclass(frozen=True, slots=True)
class SeenByAll:
    """The digit has these places in a house, or in a mark that needs it, and each of them sees what goes."""

    varies: ClassVar[tuple[str, ...]] = ("places",)
    one_digit: ClassVar[bool] = True
    concepts: ClassVar[tuple[str, ...]] = ("sight",)
    digit: Digit
    house: HouseRef | None
    places: Cells


@dataclass(frozen=True, slots=True)
class PivotWing:
    """Whatever the pivot holds, it or one of its two wings holds the digit."""

    one_digit: ClassVar[bool] = False
    concepts: ClassVar[tuple[str, ...]] = ("sight",)
    pivot: Cell
    wings: Cells
    digit: Digit


@dataclass(frozen=True, slots=True)
class LinkedWing:
    """A digit (`joined`) has two places in a house, one seen by each cell of a pair that holds it and another."""

    concepts: ClassVar[tuple[str, ...]] = ("sight",)
    pair: Cells
    joined: Digit
    house: HouseRef
    link: Cells
    digit: Digit


@dataclass(frozen=True, slots=True)
class ChainLink:
    """If the first candidate is false, the second is true: another place in the house, or without one the cell's other
    digit."""

    false: Candidate
    true: Candidate
    house: HouseRef | None


@dataclass(frozen=True, slots=True)
class Chain:
    """If the first candidate is false, so that the first link's second is true, and so on, the last one is true: one of
    the two ends holds either way. Each link begins with a candidate that the one before rules out."""

    concepts: ClassVar[tuple[str, ...]] = ("sight",)
    links: tuple[ChainLink, ...]

    @property
    def one_digit(self) -> bool:
        """Does it keep to one digit?"""
        return len({digit for link in self.links for _, digit in (link.false, link.true)}) == 1

    @property
    def ends(self) -> tuple[Candidate, Candidate]:
        """The candidates of which one is true."""
        return self.links[0].false, self.links[-1].true
