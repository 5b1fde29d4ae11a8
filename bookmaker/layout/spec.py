"""A layout as values: paper, margins, type and grid sizes. All lengths in points.

`specfile` reads one from `layouts/<name>.yaml`; the composers only ask it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Literal

from bookmaker.language import Argument, Catalogue, catalogue
from bookmaker.layout.theme import Theme
from bookmaker.source.diagnostics import Place

LEAST_OUTER = 25.5
"""The outer margin gives way to the spine no further than this: 9 mm, room for a thumb's edge (common practice)."""

LEAST_EDGE = 18.0
"""Nothing that matters comes nearer to the edge, in points: a quarter of an inch (common practice)."""

USUAL = 16
"""Rows of a grid up to which the least cell of a layout holds as it is said."""


@dataclass(frozen=True, slots=True)
class Type:
    """A font at a size, with the distance from baseline to baseline, in points.

    Paragraphs part their words as the `language` does, and not at all where none is named.
    """

    font: str
    size: float
    leading: float
    language: str = ""

    @property
    def unparted(self) -> Type:
        """The same for names, dates and titles, whose words are never hyphenated."""
        return replace(self, language="")


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
    """In points; `inner` is at the spine, and wider by `spine` for every hundred pages of the book."""

    inner: float
    outer: float
    top: float
    bottom: float
    spine: float = 0.0


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
    weight: float = 1.0
    """The lines of a grid are this many times as heavy as usual."""
    coordinates: bool = False
    """Are rows and columns numbered?"""
    workings: bool = False
    """Is what is left of the page ruled, for the time and for notes?"""
    figure: float = 6.0
    """No figure on a grid or in a sample is set in smaller type than so many points."""
    grid: float = 0.0
    """A grid that would come out narrower has its rules on the page that faces it, if it is wider then."""
    beyond: float = 0.0
    """So far clues outside a grid may stand in the margins at its left and right."""

    def least_for(self, size: int) -> float:
        """The least side of a cell in a grid of so many rows: those of more than 16 may be as small as their number
        asks, for nobody else could print them."""
        return self.least * min(1.0, USUAL / size)


@dataclass(frozen=True, slots=True)
class Shown:
    """What stands with a puzzle on its page, apart from its title, its rules and its grid."""

    setter: bool = True
    difficulty: bool = True
    """Its ridge, its band and the figure."""
    note: bool = True
    link: bool = True
    """The code of its link."""
    pointers: bool = True
    """Where its key and its hints are."""
    shared_rules: bool = True
    """The rules that all puzzles of its chapter have; else they are said once, where the chapter opens."""


@dataclass(frozen=True, slots=True)
class KeySlots:
    """How solution keys stand on a page: `columns` across, cells at most `cell` points wide; in the order of their
    numbers or, if they are to stand `apart` from the next one, the odd before the even ones."""

    columns: int
    cell: float
    apart: bool = False


@dataclass(frozen=True, slots=True)
class Press:
    """What an edition for the press adds around the trim: points of bleed, crop marks, a slug line."""

    bleed: float
    marks: bool
    slug: bool


@dataclass(frozen=True, slots=True)
class TearOut:
    """Leaves to be torn off a pad: the strip at the spine is `edge` points wide, with a `perforation` along it or with
    marks for so many `holes`, or both."""

    edge: float
    perforation: bool = True
    holes: int = 0

    @property
    def reach(self) -> float:
        """How far from the spine all that reaches: what is printed begins beyond."""
        torn = self.edge if self.perforation else 0.0
        return max(self.edge, torn + HOLE_IN + HOLE / 2 if self.holes else 0.0)


HOLE, HOLE_IN = 6 * 72 / 25.4, 12 * 72 / 25.4
"""Width of a punched hole, and how far its middle is from the edge of the sheet (ISO 838, from memory)."""


@dataclass(frozen=True, slots=True)
class Booklet:
    """Sheets to print on both sides, fold and stitch: their width and height, two pages side by side; the most pages of
    a signature, and the thickness of the paper. By default what a long stapler takes and office paper of 80 g a square
    metre (common practice)."""

    width: float
    height: float
    signature: int = 64
    thickness: float = 0.1 * 72 / 25.4


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
    shows: Shown = Shown()
    booklet: Booklet | None = None
    """The sheets of a layout that is made for folding."""
    theme: Theme | None = None
    """How the book is dressed; `themefile.worn` knows what holds where nothing is said."""
    tear_out: TearOut | None = None
    """How leaves of a pad are torn off."""
    wears: str = ""
    """The theme that its file names, for books that name none."""
    based_on: str = ""
    """The layout that this one says its differences from."""
    language: str = "en"
    """What bookmaker's own words are set in."""
    places: Mapping[str, Place] = field(default_factory=dict, compare=False)
    """Where its own file has which value, by “section.field”."""

    def speaking(self, language: str) -> Layout:
        """The layout with its running text in a language; titles and headings are never hyphenated."""
        scale = self.type
        roles = {name: replace(getattr(scale, name), language=language) for name in ("text", "note", "small")}
        return replace(self, type=replace(scale, **roles), language=language)

    @property
    def words(self) -> Catalogue:
        """The words of the language that it speaks."""
        return catalogue(self.language)

    def say(self, name: str, **arguments: Argument) -> str:
        """A message in that language."""
        return self.words.say(name, **arguments)

    def bound(self, pages: int) -> Layout:
        """The layout of a book of so many pages: a thick book opens less flat, so its type area keeps farther from the
        spine. It moves whole towards the outer edge: no line breaks elsewhere and no grid shrinks as a book grows."""
        margins = self.margins
        room = max(0.0, margins.outer - max(LEAST_OUTER, self.puzzles.beyond + LEAST_EDGE))
        by = min(pages // 100 * margins.spine, room)
        return replace(self, margins=replace(margins, inner=margins.inner + by, outer=margins.outer - by))

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
