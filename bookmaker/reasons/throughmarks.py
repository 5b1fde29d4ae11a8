"""Claims of techniques that look at candidates and at what one mark at a time says of them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar, TypeAlias

from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons.marks import MarkRef
from bookmaker.reasons.roles import Cells, Digit, Digits

Marks: TypeAlias = tuple[MarkRef, ...]


@dataclass(frozen=True, slots=True)
class EitherWay:
    """One of these candidates is true: they are all of a digit's places in the house, or all that a cell can hold.
    Each rules out what goes, by one of the marks, or in plain sight where `seen`."""

    varies: ClassVar[tuple[str, ...]] = ("by", "seen")
    options: tuple[Candidate, ...]
    house: HouseRef | None
    by: Marks
    seen: bool

    @property
    def one_digit(self) -> bool:
        """Are they places of one digit?"""
        return self.house is not None

    @property
    def concepts(self) -> tuple[str, ...]:
        """What the marks do is a mark's doing, the rest is sight."""
        return ("mark",) * bool(self.by) + ("sight",) * self.seen


@dataclass(frozen=True, slots=True)
class ExtendedLink:
    """If the first digit is in none of its cells, the second is in one of its own. In the house these are all places of
    the one digit; without one, the cells `among` which both stand then hold all of `digits`, having one digit more than
    they are. What rules the first out is what was true in the link before: by one of the marks, or in plain sight where
    `seen`."""

    false: Cells
    false_digit: Digit
    true: Cells
    true_digit: Digit
    house: HouseRef | None
    among: Cells
    digits: Digits
    by: Marks
    seen: bool


@dataclass(frozen=True, slots=True)
class ExtendedChain:
    """If what comes first is false, what comes last is true, link by link. Either of them rules out what goes, by one
    of the marks, or in plain sight where `seen`."""

    varies: ClassVar[tuple[str, ...]] = ("by", "seen")
    one_digit: ClassVar[bool] = False
    links: tuple[ExtendedLink, ...]
    by: Marks
    seen: bool

    @property
    def concepts(self) -> tuple[str, ...]:
        """That an extended chain is an alternating one; and what rules something out along it."""
        marked = bool(self.by) or any(link.by for link in self.links)
        seen = self.seen or any(link.seen for link in self.links)
        return ("alternating-chain", *("mark",) * marked, *("sight",) * seen)

    @property
    def ends(self) -> tuple[tuple[Cells, Digit], tuple[Cells, Digit]]:
        """The groups of which one is true."""
        first, last = self.links[0], self.links[-1]
        return (first.false, first.false_digit), (last.true, last.true_digit)
