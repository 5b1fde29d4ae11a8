"""What a manifest says, typed and placed. Made by `manifest.load`; nothing later changes it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from hashlib import sha256
from typing import Literal, TypeAlias

from bookmaker.manifest.dates import When
from bookmaker.manifest.givens import Givens
from bookmaker.manifest.permission import UNRECORDED, Permission
from bookmaker.manifest.publication import PLAIN, Publication
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import SYMBOLS
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.source.diagnostics import Diagnostic, Place

Order: TypeAlias = Literal["difficulty", "listed", "chapters"]


@dataclass(frozen=True, slots=True)
class HiddenWord:
    """What the solution reads along these cells, in the order of the reader, and where that is said."""

    cells: tuple[int, ...]
    text: str
    place: Place = field(compare=False)


@dataclass(frozen=True, slots=True)
class Entry:
    """One puzzle as listed, with all that is said of it.

    `chapter` counts from 0; `shown` is when it was first shown; `place` is where its id stands, `rule_places` where
    each rule does. `permission` is the line that is printed, `consent` the record behind it; `private` is never
    printed; `solution` is the setter's own, to be compared, and `word` what it spells. `places` are where the
    puzzle's fields stand, by name.
    """

    id: str
    puzzle: RuledPuzzle
    place: Place
    title: str = ""
    setter: str = ""
    shown: When | None = None
    permission: str = ""
    note: str = ""
    chapter: int = 0
    link: str = ""
    tags: tuple[str, ...] = ()
    source: str = ""
    private: str = ""
    consent: Permission = UNRECORDED
    solution: Givens | None = None
    word: HiddenWord | None = None
    places: Mapping[str, Place] = field(default_factory=dict, compare=False)
    rule_places: tuple[Place, ...] = ()

    @property
    def fingerprint(self) -> str:
        """Sixteen hexadecimal digits that tell a puzzle by its grid, givens, rules and marks, whatever it is called."""
        puzzle = self.puzzle
        rules = [
            (rule.kind, rule.written(rule.laid_on(puzzle.grid)), *([rule.square] if rule.square else []))
            for rule in puzzle.rules
        ]
        own = (puzzle.grid.symbols,) if puzzle.grid.symbols != SYMBOLS[: puzzle.grid.size] else ()
        told = repr((*puzzle.grid.shape, puzzle.givens_text, rules, *own))
        return sha256(told.encode()).hexdigest()[:16]


@dataclass(frozen=True, slots=True)
class Chapter:
    """A part of the book with a heading of its own and a few words under it; its puzzles stand by difficulty, or
    as `listed`."""

    title: str
    note: str = ""
    listed: bool = False
    place: Place | None = field(default=None, compare=False)
    """Where its title stands."""


@dataclass(frozen=True, slots=True)
class Manifest:
    """A whole book as its editor typed it.

    `chapters` is empty unless `order` is “chapters”; `layout` is "" where none is named, else `layout_place` is where.
    `places` are where the book's own fields stand, by name.
    """

    place: Place
    title: str
    entries: tuple[Entry, ...]
    subtitle: str = ""
    editor: str = ""
    layout: str = ""
    order: Order = "difficulty"
    band_names: tuple[str, ...] = BAND_NAMES
    chapters: tuple[Chapter, ...] = ()
    warnings: tuple[Diagnostic, ...] = ()
    layout_place: Place | None = None
    publication: Publication = PLAIN
    places: Mapping[str, Place] = field(default_factory=dict, compare=False)
