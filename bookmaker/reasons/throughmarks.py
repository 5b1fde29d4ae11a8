"""Claims of techniques that look at candidates and at what one mark at a time says of them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar, TypeAlias

from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons.marks import MarkRef

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


@dataclass(frozen=True, slots=True)
class MarkLink:
    """If the first candidate is false, the second is true, as in a `ChainLink`. What rules the first out is the true
    one of the link before: by a mark, or without one since they see each other."""

    false: Candidate
    true: Candidate
    house: HouseRef | None
    by: MarkRef | None


@dataclass(frozen=True, slots=True)
class MarkChain:
    """If the first candidate is false, the last one is true, link by link. Either of them rules out what goes, by one
    of the marks, or in plain sight where `seen`."""

    varies: ClassVar[tuple[str, ...]] = ("by", "seen")
    one_digit: ClassVar[bool] = False
    links: tuple[MarkLink, ...]
    by: Marks
    seen: bool

    @property
    def ends(self) -> tuple[Candidate, Candidate]:
        """The candidates of which one is true."""
        return self.links[0].false, self.links[-1].true
