"""What the catalogue knows of a puzzle and of its history."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from bookmaker.grade.bands import figure
from bookmaker.manifest.dates import When, when_from
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import Grid
from bookmaker.source.diagnostics import Diagnostic, Place
from bookmaker.symmetry import Keys

NOTHING_RECORDED = "none"
"""The word for a puzzle whose permission nobody has recorded, where the others say asked, granted, refused or own."""

CLASSIC, LATIN, OVERLAPPING = "classic", "latin-square", "overlapping"
"""The words for puzzles by their grid, where kinds are named: without rules of their own, with neither boxes nor
regions, on several grids that overlap."""

BY_GRID = (CLASSIC, LATIN, OVERLAPPING)

NO_KEYS = Keys("", "", "")
"""Of a puzzle without exactly one solution."""


@dataclass(frozen=True, slots=True)
class Card:
    """One puzzle in the catalogue: all that an editor chooses by, without the puzzle itself.

    `file` is as the user would name it, `line` and `column` are where the puzzle's id stands in it. `state` is the
    record of permission, `NOTHING_RECORDED` where there is none. `difficulty` and `effort` are 0 unless the verdict
    is “unique”; then `keys` are those of look-alikes, else empty. `fingerprint` is the entry's.
    """

    id: str
    file: str
    line: int
    column: int
    title: str = ""
    setter: str = ""
    shown: str = ""
    tags: tuple[str, ...] = ()
    source: str = ""
    state: str = NOTHING_RECORDED
    printed: str = ""
    kinds: tuple[str, ...] = ()
    family: str = "classic"
    grid: str = "classic"
    size: int = 9
    givens: int = 0
    verdict: str = "unique"
    difficulty: float = 0.0
    effort: float = 0.0
    hardest: str = ""
    reached: bool = True
    disputed: bool = False
    """Is the proven solution another than the setter's own?"""
    keys: Keys = NO_KEYS
    fingerprint: str = ""

    @property
    def place(self) -> Place:
        return Place(self.file, self.line, self.column)

    @property
    def when(self) -> When | None:
        """When it was first shown."""
        return when_from(self.shown) if self.shown else None

    @property
    def sorts(self) -> tuple[str, ...]:
        """What the puzzle is, as one asks for it: “latin-square” or “overlapping” by its grid, its kinds of rules; else
        “classic”."""
        latin = (LATIN,) if self.grid == Grid(self.size, ()).called else ()
        own = (OVERLAPPING,) if self.grid == OVERLAPPING else latin
        return (*own, *self.kinds) or (CLASSIC,)

    @property
    def band(self) -> int:
        """From 1 to 5; 0 without a grade."""
        return int(self.difficulty)

    @property
    def difficulty_text(self) -> str:
        """The difficulty as it is printed; "" for none."""
        return figure(self.difficulty) if self.band else ""

    def to_data(self) -> list[Any]:
        """Plain data for JSON, without the file."""
        keys = [self.keys.puzzle, self.keys.solution, self.keys.marks]
        return [getattr(self, name) for name in _KEPT] + [keys]

    @classmethod
    def from_data(cls, data: list[Any], file: str) -> Card:
        """The card that `to_data` gave. Raises ValueError where the data are none."""
        try:
            values = dict(zip(_KEPT, data[:-1], strict=True))
            values |= {"tags": tuple(values["tags"]), "kinds": tuple(values["kinds"])}
            return cls(file=file, keys=Keys(*data[-1]), **values)
        except (TypeError, ValueError, IndexError, KeyError) as error:
            raise ValueError("not a record of a puzzle") from error


_KEPT = tuple(name for name in Card.__slots__ if name not in ("file", "keys"))


@dataclass(frozen=True)
class Catalogue:
    """Cards in the order of files and lines; the books that have printed a puzzle or a look-alike, by its key; what was
    wrong in the files."""

    cards: tuple[Card, ...]
    roots: tuple[Path, ...] = ()
    history: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    diagnostics: tuple[Diagnostic, ...] = ()
    band_names: tuple[str, ...] = BAND_NAMES

    def printed_in(self, card: Card) -> tuple[str, ...]:
        """The titles of the books that hold the puzzle or a look-alike of it."""
        return self.history.get(card.keys.puzzle, ()) if card.keys.puzzle else ()

    def band_name(self, card: Card) -> str:
        return self.band_names[card.band - 1] if card.band else ""
