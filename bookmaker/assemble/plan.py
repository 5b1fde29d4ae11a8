"""What a brief asks, as the optimiser and the reader of reasons need it.

A collection is a choice of cards, each in one part of it (a chapter; a book without chapters has one part). Everything
a brief demands is a `Demand`: rows, each of which says how much of something there may be in some parts.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Literal, TypeAlias

from bookmaker.archive.cards import LATIN, OVERLAPPING, Card
from bookmaker.assemble.amounts import Amount
from bookmaker.source.diagnostics import Place


@dataclass(frozen=True)
class Row:
    """The cards that count, each as one, must be within `amount`, in one part or, where `part` is None, in all.

    A row with `among` says instead that its cards are no more than half of those chosen among these, rounded up: then
    they can be kept from standing side by side.
    """

    label: str
    amount: Amount
    cards: frozenset[int]
    part: int | None = None
    among: frozenset[int] | None = None


@dataclass(frozen=True)
class Demand:
    """What one line of the brief demands. `quoted` is the line; `where` says of which part, "" for the whole; `filters`
    says that it only rules cards out."""

    quoted: str
    place: Place
    rows: tuple[Row, ...]
    rather: bool = False
    filters: bool = False
    where: str = ""

    @property
    def words(self) -> str:
        """The line, and the part it is said of."""
        return self.quoted + self.where


Wish: TypeAlias = Literal["unshown", "tag", "curve", "setters", "kinds", "newest", "oldest"]


@dataclass(frozen=True, slots=True)
class Preference:
    """What to prefer where there is freedom; `tag` is the tag of a wish for one."""

    wish: Wish
    words: str
    tag: str = ""


@dataclass(frozen=True, slots=True)
class Curve:
    """Difficulties that rise evenly from `start` to `end` (bands with a fraction, 1 to 6)."""

    start: float
    end: float

    def share_below(self, difficulty: float) -> float:
        """Which share of the puzzles should be no harder than this."""
        return min(max((difficulty - self.start) / (self.end - self.start), 0.0), 1.0)


@dataclass(frozen=True, slots=True)
class Part:
    """A chapter to be filled; the one part of a book without chapters has no title."""

    title: str = ""
    note: str = ""
    curve: Curve | None = None


@dataclass(frozen=True)
class Plan:
    """A brief made out for one catalogue. `cards` are the candidates; rows count them by their index."""

    title: str
    cards: tuple[Card, ...]
    parts: tuple[Part, ...]
    demands: tuple[Demand, ...]
    alike: tuple[frozenset[int], ...] = ()
    """Groups of look-alikes, of which no two may be in one collection."""
    preferences: tuple[Preference, ...] = ()
    apart: tuple[Literal["setters", "kinds"], ...] = ()
    pages: Amount | None = None
    pages_place: Place | None = None
    book: Mapping[str, Any] = field(default_factory=dict)
    """What the brief says of the book, as it goes into its manifest."""
    folder: Path = Path()
    """Where the brief lies: from there the files are found that it names."""
    left_out: Mapping[str, int] = field(default_factory=dict)
    """Why puzzles of the archive are no candidates, and how many."""


@dataclass(frozen=True)
class Choice:
    """A collection: the indices of its cards, part by part, in order. `slack` is the most by which a better one could
    beat it in what it prefers first, 0 where it is proven best."""

    parts: tuple[tuple[int, ...], ...]
    slack: float = 0.0

    @property
    def chosen(self) -> tuple[int, ...]:
        return tuple(card for part in self.parts for card in part)

    def count(self, row: Row) -> int:
        """How many of a row's cards are chosen where it counts."""
        return len(self._within(row, row.cards))

    def _within(self, row: Row, cards: frozenset[int]) -> list[int]:
        parts = self.parts if row.part is None else (self.parts[row.part],)
        return [card for part in parts for card in part if card in cards]

    def missed(self, row: Row) -> int:
        """By how much a row is missed."""
        count = self.count(row)
        if row.among is not None:
            return max(count - (len(self._within(row, row.among)) + 1) // 2, 0)
        return row.amount.missed_by(count)

    def keeps(self, demand: Demand) -> bool:
        return not any(self.missed(row) for row in demand.rows)


def called(value: object) -> str:
    """A trait in words."""
    return ", ".join(map(str, value)) if isinstance(value, tuple) else str(value)


def trait(card: Card, sort: str) -> object:
    """What makes two neighbours alike: the setter, or all the rules; None if there is none."""
    if sort == "setters":
        return card.setter or None
    return (card.grid, *card.kinds) if {LATIN, OVERLAPPING} & {*card.sorts} else card.kinds or (card.grid,)
