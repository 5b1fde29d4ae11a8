"""A layout as values: paper, margins, type and grid sizes. All lengths in points.

`specfile` reads one from `layouts/<name>.yaml`; the composers only ask it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from bookmaker.trouble import Place


@dataclass(frozen=True, slots=True)
class Type:
    """A font at a size, with the distance from baseline to baseline, in points."""

    font: str
    size: float
    leading: float


@dataclass(frozen=True, slots=True)
class TypeScale:
    """The roles that type plays. The leading of `text` is the baseline grid of every page."""

    text: Type
    """Rules and prose."""
    note: Type
    """Setters and notes."""
    small: Type
    """Contents, credits."""
    label: Type
    """Running heads, page numbers, band names, under keys."""
    number: Type
    """Puzzle numbers."""
    title: Type
    """Puzzle titles."""
    heading: Type
    """Headings of parts."""
    display: Type
    """The title page."""


@dataclass(frozen=True, slots=True)
class PageMargins:
    """In points; `inner` is at the spine."""

    inner: float
    outer: float
    top: float
    bottom: float


@dataclass(frozen=True, slots=True)
class PuzzleSlots:
    """How puzzles stand on a page: `rows` × `columns` of them, `gap` apart, the text above or beside each grid.

    `hang` is the width of the column at the left in which numbers and samples of marks hang, on a page of one column
    with the text above its grid. Cells are `least` to `most` points wide.
    """

    rows: int
    columns: int
    text: Literal["above", "beside"]
    hang: float
    gap: float
    least: float
    most: float


@dataclass(frozen=True, slots=True)
class KeySlots:
    """How solution keys stand on a page: `columns` across, cells at most `cell` points wide."""

    columns: int
    cell: float


@dataclass(frozen=True, slots=True)
class Press:
    """What an edition for the press adds around the trim: points of bleed, crop marks, a slug line."""

    bleed: float
    marks: bool
    slug: bool


@dataclass(frozen=True, slots=True)
class Layout:
    """Everything `compose` needs to know about the paper. Lengths in points."""

    name: str
    about: str
    use: Literal["book", "handout"]
    width: float
    height: float
    margins: PageMargins
    type: TypeScale
    puzzles: PuzzleSlots
    keys: KeySlots
    press: Press
    place: Place

    @property
    def line(self) -> float:
        """The step of the baseline grid."""
        return self.type.text.leading

    @property
    def measure(self) -> float:
        """Width of the type area."""
        return self.width - self.margins.inner - self.margins.outer

    @property
    def depth(self) -> float:
        """Height of the type area."""
        return self.height - self.margins.top - self.margins.bottom
