"""What a book is made of: parts in order, numbered puzzles, and every word that is printed. No geometry.

In: nothing but values from the earlier rooms. Out: frozen values that `layout` sets on pages, that the text edition
reads aloud and that tests compare. A new kind of part is a new class here and one composer in `layout`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import TypeAlias

from bookmaker.grade.bands import figure
from bookmaker.language import Catalogue, Manner, catalogue
from bookmaker.manifest.entries import HiddenWord
from bookmaker.manifest.markup import Runs
from bookmaker.manifest.publication import Cover, Imprint
from bookmaker.rules.common.contract import RuledPuzzle, Sample
from bookmaker.solve.verdict import Solution
from bookmaker.source.diagnostics import Place


@dataclass(frozen=True, slots=True)
class MarkLine:
    """An entry of the key to the marks: how a rule's mark looks, and what it asks."""

    sample: Sample
    text: str


@dataclass(frozen=True, slots=True)
class RulesText:
    """The rules of a puzzle, read from top to bottom as one text: the plain sentences, then the key to the marks."""

    plain: str
    marks: tuple[MarkLine, ...] = ()


@dataclass(frozen=True, slots=True)
class Rating:
    """How hard a puzzle is: its band (1 to 5) with the band's name, its difficulty, and its solve profile.

    `profile` is the effort of each moment in order: a digit written, or all that is struck until the next one can be.
    `narrow` are the moments, counted from 0, at which solvers slow down. `steps` counts the steps of the path.
    """

    band: int
    band_name: str
    difficulty: float
    profile: tuple[float, ...]
    narrow: tuple[int, ...]
    steps: int = 0

    @property
    def figure(self) -> str:
        """The difficulty as it is printed: “3.4”."""
        return figure(self.difficulty)


@dataclass(frozen=True, slots=True)
class Hints:
    """Three hints at the point where a solver first gets stuck: where to look, what to look for, how it goes on.

    `lettered` are those of the three (0, 1, 2) that name an irregular region by its letter. `heard` and `short` are the
    three as they are said in those manners, where that is otherwise. `concepts` are what one has to know to follow them
    (`tell/concepts.py`).
    """

    where: str
    what: str
    how: str
    lettered: tuple[int, ...] = ()
    heard: tuple[str, ...] = ()
    short: tuple[str, ...] = ()
    concepts: frozenset[str] = frozenset()

    def said(self, manner: Manner) -> tuple[str, ...]:
        """The three in a manner."""
        return {"heard": self.heard, "short": self.short}.get(manner) or (self.where, self.what, self.how)


@dataclass(frozen=True, slots=True)
class BookPuzzle:
    """A puzzle with its number and all that is printed about it.

    `shown` is the date of its first showing in words. `solution` is None, and `flaw` says why, in a draft only.
    `word` is what the solution spells, to be printed after the keys.
    `rule_places` is where each rule stands in the manifest, `places` where its other fields do, to point at in a later
    diagnostic. `untitled` says that it has no title: what stands there are its kinds. Where several would then be
    called the same it is `numbered`, and there is nothing to print beside the number. In a contest `points` is what the
    puzzle is worth and `check` has the cells of its check row; elsewhere they are empty.
    """

    number: int
    id: str
    puzzle: RuledPuzzle
    place: Place
    title: str
    rules: RulesText
    rating: Rating | None
    solution: Solution | None
    setter: str = ""
    shown: str = ""
    permission: str = ""
    note: str = ""
    flaw: str = ""
    word: HiddenWord | None = None
    link: str = ""
    rule_places: tuple[Place, ...] = ()
    points: int = 0
    check: tuple[int, ...] = ()
    hints: Hints | None = None
    places: Mapping[str, Place] = field(default_factory=dict, compare=False)
    untitled: bool = False
    numbered: bool = False

    @property
    def heading(self) -> str:
        """What stands beside the number: the title, unless that is the number again."""
        return "" if self.numbered else self.title

    def named(self, words: Catalogue) -> str:
        """The number with the title, where it has one: “12: Low Tide”."""
        number = str(self.number)
        return words.say("titled", title=number, what=self.heading) if self.heading else number


@dataclass(frozen=True, slots=True)
class HalfTitle:
    """The title alone, on a leaf before the title page."""


@dataclass(frozen=True, slots=True)
class TitlePage:
    """The front page; `publisher` stands at its foot."""

    publisher: str = ""


@dataclass(frozen=True, slots=True)
class ImprintPage:
    """Edition, rights and numbers of the book, on the back of the title page; a paragraph each."""

    paragraphs: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Foreword:
    """The editor's own words, with *slanted* and **bold** runs."""

    heading: str
    paragraphs: tuple[Runs, ...]


@dataclass(frozen=True, slots=True)
class Guide:
    """How to read the book: paragraphs under a heading, and those of a pad, where they differ. `shared` is what the
    second says where the rules that a chapter shares are said at its opening."""

    heading: str
    paragraphs: tuple[str, ...]
    in_a_pad: tuple[str, ...] = ()
    shared: str = ""


@dataclass(frozen=True, slots=True)
class Contents:
    """The table of contents."""

    heading: str


@dataclass(frozen=True, slots=True)
class WorkedFigure:
    """A rule's sample with digits in its cells: the first `rows` and `columns` of a filled grid that keeps the rule;
    no digits where the sample stands in no grid."""

    sample: Sample
    digits: tuple[int, ...]
    rows: int
    columns: int


@dataclass(frozen=True, slots=True)
class Lesson:
    """A kind of rule, taught: its title, a paragraph, and a figure if the kind draws anything."""

    title: str
    text: str
    figure: WorkedFigure | None


@dataclass(frozen=True, slots=True)
class Primer:
    """The kinds of rules of the book, a lesson each."""

    heading: str
    lessons: tuple[Lesson, ...]


@dataclass(frozen=True, slots=True)
class Chapter:
    """Puzzles that stand together; a chapter without a title has no opening page. `number` counts from 1."""

    number: int
    title: str
    note: str
    puzzles: tuple[BookPuzzle, ...]
    place: Place | None = None


@dataclass(frozen=True, slots=True)
class HintPages:
    """The hints of all puzzles, all first ones before all second ones; `levels` are the headings of the three."""

    heading: str
    note: str
    levels: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Term:
    """A word that solvers use, and what it means."""

    name: str
    meaning: str


@dataclass(frozen=True, slots=True)
class Glossary:
    """The words in the hints that may be new to a reader. On paper it stands between the hints."""

    heading: str
    terms: tuple[Term, ...]


@dataclass(frozen=True, slots=True)
class Keys:
    """The solution keys of all puzzles."""

    heading: str


@dataclass(frozen=True, slots=True)
class Credits:
    """Whom the book thanks: `said` are sentences that hold for all of it, `puzzles` those with a first showing or a
    permission of their own."""

    heading: str
    said: tuple[str, ...] = ()
    puzzles: tuple[BookPuzzle, ...] = ()


@dataclass(frozen=True, slots=True)
class IndexEntry:
    """A name with the puzzles that belong to it."""

    name: str
    puzzles: tuple[BookPuzzle, ...]


@dataclass(frozen=True, slots=True)
class IndexGroup:
    """The entries of one order: by setter, by kind of rule."""

    heading: str
    entries: tuple[IndexEntry, ...]


@dataclass(frozen=True, slots=True)
class Index:
    """Where to find the puzzles of a setter and those with a kind of rule; `note` says what the figures mean."""

    heading: str
    note: str
    groups: tuple[IndexGroup, ...]


Part: TypeAlias = (
    HalfTitle
    | TitlePage
    | ImprintPage
    | Contents
    | Foreword
    | Guide
    | Primer
    | Chapter
    | HintPages
    | Glossary
    | Keys
    | Credits
    | Index
)


@dataclass(frozen=True)
class Book:
    """A whole book. Pages of `front` are numbered i, ii, iii; pages of `body` 1, 2, 3.

    The page count is a multiple of `fold`. `imprint` and `cover` are what the manifest says under these names. `places`
    are as in `BookPuzzle`.
    """

    place: Place
    title: str
    subtitle: str
    editor: str
    band_names: tuple[str, ...]
    front: tuple[Part, ...]
    body: tuple[Part, ...]
    draft: bool = False
    language: str = "en"
    fold: int = 1
    link: str = ""
    imprint: Imprint | None = None
    cover: Cover | None = None
    places: Mapping[str, Place] = field(default_factory=dict, compare=False)

    @property
    def words(self) -> Catalogue:
        """The words of the book's language."""
        return catalogue(self.language)

    @cached_property
    def chapters(self) -> tuple[Chapter, ...]:
        """The parts that hold puzzles."""
        return tuple(part for part in self.body if isinstance(part, Chapter))

    @cached_property
    def puzzles(self) -> tuple[BookPuzzle, ...]:
        """All puzzles in the order of their numbers."""
        return tuple(puzzle for chapter in self.chapters for puzzle in chapter.puzzles)
