"""What a rule kind answers, and no more. One file in `bookmaker/rules/` per kind holds one `Rule` class.

A `Rule` value is *all* the marks of one kind on one puzzle (all its thermometers), so that its wording can be
singular or plural and an option such as “all are marked” has one home. In the manifest it stands as
`kind: body` under `rules:`.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, Self, TypeAlias

from bookmaker.placed import Node
from bookmaker.puzzle.grid import Grid, House
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.frame import Frame, Margins, Mark
from bookmaker.rules.common.places import Claim
from bookmaker.solve.problem import Constraint
from bookmaker.trouble import Desk

FORMS = ("yes", "switch", "text", "lines", "picture", "whole", "numbers")
"""How a rule's body or a part of it is typed: “yes” for the whole grid, yes or no, one line of text, such a line or a
list of them, a picture of the grid, a whole number, names with whole numbers."""

Relabelling: TypeAlias = Literal["any", "reversed", "none"]
"""How the digits may be renamed, all alike in the whole grid: in any way, or only so that d becomes size + 1 − d."""


@dataclass(frozen=True, slots=True)
class Deduction:
    """A human step from one rule's marks: candidates that can go, and why.

    `rung` is the place on the grade's ladder (5 one line's bounds or one cage's combinations, 6 one sum line's
    limits, 7 a whole shape enumerated). `held` counts the constraints a person must hold together. `cells` are
    where to look. `words` is a clause that explains, starting with the mark: “the thermometer from r1c1 has five
    cells, so nothing above 5 fits in its bulb”.
    """

    rung: int
    held: int
    cells: tuple[int, ...]
    removed: tuple[Candidate, ...]
    words: str


@dataclass(frozen=True)
class Sample:
    """A rule on a few cells, drawn as its entry in the key to the marks: rows and columns from the top left of a grid.

    A rule with clues outside the grid puts them at the top or left, and its margins belong to the picture.
    """

    rule: Rule
    grid: Grid
    rows: int
    columns: int


class Rule(ABC):
    """All the marks of one kind on one puzzle. Concrete kinds are frozen dataclasses."""

    kind: ClassVar[str]
    """The word under `rules:` in the manifest, such as “thermometer”."""
    title: ClassVar[str]
    """Its heading, such as “Thermometers”."""
    noun: ClassVar[str]
    """What a solving step calls one mark, such as “thermometer”."""
    example: ClassVar[str]
    """A paste-ready YAML entry for under `rules:` of a 9×9 puzzle; `bookmaker rules KIND` shows it and tests use it."""
    form: ClassVar[tuple[str, ...]] = ()
    """The ways its body may be typed, for editors that complete a manifest. Each is a word of `FORMS`, words to choose
    from (“one | other”), or the names of a table with what stands under each (“white: lines, all-marked: switch”), “*”
    for any name; brackets around a table say that it may also be an item of a list. None at all: anything."""
    hugs_grid: ClassVar[bool] = False
    """Must its clues outside the grid stand right at it (an arrow along a diagonal), before those of other kinds?"""

    relabels: ClassVar[Relabelling] = "none"
    """Which renamings of the digits leave a rule of this kind: “any” where digits are only told apart or named by
    marks, which are renamed too; “reversed” where they are compared or added, with marks turned round. How cells may
    move need not be said: it shows in `meaning`."""

    @classmethod
    @abstractmethod
    def read(cls, body: Node, grid: Grid, desk: Desk) -> Self | None:
        """The rule from its manifest body; None after reporting to the desk what is wrong, at its place."""

    @abstractmethod
    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """What the rule asks of the cells, in the primitives of `solve`."""

    def meaning(self, grid: Grid) -> Iterator[Constraint]:
        """What the rule asks, told alike however its marks were typed: by this look-alikes are found.

        That is `constraints`, for a kind whose constraints do not depend on the end from which a line is typed.
        """
        return self.constraints(grid)

    def relabelling(self, grid: Grid) -> Relabelling:
        """`relabels`, but where it depends on the marks that are there."""
        return self.relabels

    @abstractmethod
    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        """Does a filled grid keep the rule? Plain, slow, obviously right; shares no code with `constraints`."""

    @abstractmethod
    def sentence(self) -> str:
        """The rule in one sentence for the puzzle page, singular or plural as there are marks, values named."""

    @classmethod
    @abstractmethod
    def primer(cls) -> str:
        """A paragraph that teaches the kind: how it works and where to start. No heading."""

    @abstractmethod
    def marks(self, frame: Frame) -> Iterator[Mark]:
        """What is drawn, each item on its layer, in the frame's points."""

    @classmethod
    @abstractmethod
    def sample(cls) -> Sample | None:
        """A tiny instance for the key to the marks; None for a kind that draws nothing."""

    def key(self) -> Sample | None:
        """The sample for this puzzle's own key, where a kind with several marks shows only those that are there; None
        where the rule draws nothing on this puzzle."""
        return self.sample()

    def houses(self, grid: Grid) -> tuple[House, ...]:
        """Further houses that the rule makes (the diagonals), with names for solving steps."""
        return ()

    def margins(self, grid: Grid) -> Margins:
        """Room its own clues outside the grid claim; several kinds at one side stand in lanes, one beyond the other."""
        return Margins()

    def claims(self, grid: Grid) -> Iterator[Claim]:
        """Room its marks ask for where marks of other kinds may be as well; what they were given is in the frame."""
        return iter(())

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Human steps of the rule's own in a position; each is sound: it never removes a digit of any solution."""
        return iter(())


RuledPuzzle: TypeAlias = Puzzle[Rule]
"""The puzzle that every later room handles."""
