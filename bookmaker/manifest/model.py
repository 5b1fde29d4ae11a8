"""What a manifest says, typed and placed. Made by `manifest.load`; nothing later changes it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Literal, TypeAlias

from bookmaker.manifest.publication import PLAIN, Publication
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.trouble import Place, Trouble

Order: TypeAlias = Literal["difficulty", "listed", "chapters"]

BAND_NAMES = ("Stroll", "Ramble", "Hike", "Climb", "Summit")
"""Our names for the five bands of difficulty, easiest first; a manifest may rename them."""


@dataclass(frozen=True, slots=True)
class Entry:
    """One puzzle as listed, with all that is said of it.

    `chapter` counts from 0; `shown` is when it was first shown; `place` is where its id stands. `marks`
    has the marks of each of the puzzle's rules as typed, a line a mark.
    """

    id: str
    puzzle: RuledPuzzle
    place: Place
    title: str = ""
    setter: str = ""
    shown: date | None = None
    permission: str = ""
    note: str = ""
    chapter: int = 0
    link: str = ""
    marks: tuple[tuple[str, ...], ...] = ()


@dataclass(frozen=True, slots=True)
class Chapter:
    """A part of the book with a heading of its own and a few words under it."""

    title: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Manifest:
    """A whole book as its editor typed it.

    `chapters` is empty unless `order` is “chapters”; `layout` is "" where none is named, else `layout_place` is where.
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
    warnings: tuple[Trouble, ...] = ()
    layout_place: Place | None = None
    publication: Publication = PLAIN
