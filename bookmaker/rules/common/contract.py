"""What a rule kind answers, and no more. One file in `bookmaker/rules/` per kind holds one `Rule` class.

A `Rule` value is *all* the marks of one kind on one puzzle (all its thermometers), so that its wording can be
singular or plural and an option such as “all are marked” has one home. In the manifest it stands as
`kind: body` under `rules:`.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, fields, replace
from random import Random
from typing import Any, ClassVar, Literal, Self, TypeAlias

from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import Grid, House
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.reasons import Claim, MarkRef, Rung
from bookmaker.rules.common.drawing.frame import Frame, Margins, Mark
from bookmaker.rules.common.drawing.places import PlaceClaim
from bookmaker.rules.common.parts import Figures, Form, Part, Written
from bookmaker.solve.problem import Constraint
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

FORMS = ("yes", "switch", "text", "lines", "picture", "whole", "numbers", "names", "items")
"""How a rule's body or a part of it is typed: “yes” for the whole grid, yes or no, one line of text, such a line or a
list of them, a picture of the grid, a whole number, names with whole numbers or with text, a list of such lines and of
the tables in brackets."""

Relabelling: TypeAlias = Literal["any", "reversed", "none"]
"""How the digits may be renamed, all alike in the whole grid: in any way, or only so that d becomes size + 1 − d."""


@dataclass(frozen=True, slots=True)
class Deduction:
    """A human step from one rule's marks: candidates that can go, and why.

    `rung` is the place on the grade's ladder: `SIMPLE` (one line's bounds, one cage's combinations), `PAIR` (one sum
    line's limits) or `WHOLE` (a whole shape enumerated). `held` counts the constraints a person must hold together.
    `cells` are where to look. What `mark` claims is that the candidates in `removed` can't be.
    """

    rung: Rung
    held: int
    cells: tuple[int, ...]
    removed: tuple[Candidate, ...]
    mark: MarkRef
    claim: Claim


@dataclass(frozen=True)
class Sample:
    """A rule on a few cells, drawn as its entry in the key to the marks: rows and columns from the top left of a grid.

    A rule with clues outside the grid puts them at the top or left, and its margins belong to the picture.
    """

    rule: Rule
    grid: Grid
    rows: int
    columns: int


@dataclass(frozen=True)
class Rule(ABC):
    """All the marks of one kind on one puzzle. Concrete kinds are frozen dataclasses.

    Where grids overlap, a rule stands in all of them (its cells may lie in any) or in one, whose letter is `square`.
    The grid that its methods are told is the one that it stands in: `laid_on`.
    """

    kind: ClassVar[str]
    """The word under `rules:` in the manifest, such as “thermometer”."""
    title: ClassVar[str]
    """Its heading, such as “Thermometers”."""
    noun: ClassVar[str]
    """What a solving step calls one mark, such as “thermometer”."""
    example: ClassVar[str]
    """A paste-ready YAML entry for under `rules:` of a 9×9 puzzle; `bookmaker rules KIND` shows it and tests use it."""
    typed: ClassVar[tuple[str, ...]] = ()
    """The ways its body may be typed, for editors that complete a manifest. Each is a word of `FORMS`, words to choose
    from (“one | other”), or the names of a table with what stands under each (“white: lines, all-marked: switch”), “*”
    for any name; brackets around a table say that it may also be an item of a list. None at all: anything."""
    hugs_grid: ClassVar[bool] = False
    """Must its clues outside the grid stand right at it (an arrow along a diagonal), before those of other kinds?"""
    needs_regions: ClassVar[bool] = False
    """Do its marks say something of the boxes or regions that they pass through?"""
    form: ClassVar[Form] = Form.WHOLE
    """What one of its marks is on the grid."""
    directed: ClassVar[bool] = False
    """Does it matter from which end the cells of a mark are told?"""
    figures: ClassVar[Figures] = ""
    """What a part's value is, if it is written at the mark: one number, or digits."""
    usual_cells: ClassVar[tuple[int, int]] = (1, 1)
    """How many cells a mark has, from and to, where whoever draws it may choose; 0 stands for the size of the grid."""
    options: ClassVar[tuple[str, ...]] = ()
    """Names in the manifest of what holds for all its marks; “all-marked” is the field `all_marked`."""

    relabels: ClassVar[Relabelling] = "none"
    """Which renamings of the digits leave a rule of this kind: “any” where digits are only told apart or named by
    marks, which are renamed too; “reversed” where they are compared or added, with marks turned round. How cells may
    move need not be said: it shows in `meaning`."""

    from_zero: ClassVar[bool] = False
    """Does it hold alike on a grid whose digits begin with 0? So it does where digits are compared or told apart, and
    where it asks the grid what they are worth."""
    lettered: ClassVar[bool] = False
    """Can letters stand in place of digits, because they are only told apart or named?"""

    square: str = field(default="", kw_only=True)
    """The letter of the grid it stands in, where several overlap and it does not stand in all as in one."""

    @classmethod
    def in_one_square(cls) -> bool:
        """Does it speak of the lines, edges or boxes of a grid, so that it can't stand in several as in one?"""
        return cls.form in (Form.EDGE, Form.WHOLE)

    @classmethod
    def stands_on(cls, grid: Grid) -> bool:
        """Does the kind know what to do with the shape of a grid? A kind for lines or edges does not where there are
        holes in them, and one that needs regions where there are none."""
        if cls.needs_regions and not grid.regions:
            return False
        return grid.plain or grid.overlaps or not cls.in_one_square()

    def laid_on(self, grid: Grid) -> Grid:
        """The grid of a puzzle, or the one of several that overlap in it, in which the rule stands."""
        return grid.square(self.square)

    @classmethod
    @abstractmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        """The rule from its manifest body; None after diagnostics of what is wrong, each at its place."""

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

    def suits(self, grid: Grid) -> bool:
        """Does it go with the signs that stand for the digits of a grid?"""
        return grid.first == 1 or (self.lettered if grid.lettered else self.from_zero)

    @abstractmethod
    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        """Does a filled grid keep the rule? Plain, slow, obviously right; shares no code with `constraints`."""

    def sentence(self, words: Catalogue) -> str:
        """The rule in one sentence for the puzzle page, singular or plural as there are marks, values named."""
        return words.say(f"{self.kind}-sentence", **self.arguments(words))

    def sentences(self, words: Catalogue, grid: Grid) -> str:
        """`sentence`, with what it leaves open about a 0 on a grid that has one."""
        more = self.of_zero(words) if grid.first == 0 else ""
        return f"{self.sentence(words)} {more}".rstrip()

    def of_zero(self, words: Catalogue) -> str:
        """What has to be said about a 0 where digits begin with it, as a sentence; mostly nothing."""
        return ""

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        """What the message of the sentence is filled in with: as a rule `n`, how many marks there are."""
        return {}

    @classmethod
    def primer(cls, words: Catalogue, boxes: bool = True) -> str:
        """A paragraph that teaches the kind: how it works and where to start. No heading. With `boxes=False`, the
        wording for books whose grids have no boxes, if the language has one."""
        name = f"{cls.kind}-primer"
        return words.say(name if boxes else words.first(f"{name}--lines", name))

    @abstractmethod
    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        """Its marks in words that need no picture: “Cage of 17: row 1 columns 1 and 2, row 2 column 1”.

        Each stands by itself, with a capital and no full stop; nothing where nothing is drawn. What the marks ask is
        said by the sentence. `rules/common/words/speech.py` says cells, lines and borders.
        """

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

    @abstractmethod
    def written(self, grid: Grid) -> Written:
        """The body that `read` makes this rule of, as a person would type it."""

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        """The rule before it has marks, as a start for `with_parts`. A rule for the whole grid is complete."""
        return cls()

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        """Its marks one by one, in their order; none for a rule that holds in the whole grid."""
        return ()

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        """The rule with these marks and its own options. Whether a manifest could say so is for `read` to judge."""
        return self

    def asked_by(self, part: Part, grid: Grid) -> Iterator[Constraint]:
        """The constraints of one mark alone."""
        return self.with_parts((part,), grid).constraints(grid)

    def keeps(self, part: Part, grid: Grid, digits: Sequence[int]) -> bool:
        """Does a filled grid keep one mark?"""
        return self.with_parts((part,), grid).holds(grid, digits)

    @property
    def digits_differ(self) -> bool:
        """Do the digits of one of its areas differ, so that whoever draws one has to look for such cells?"""
        return True

    def figure(self, part: Part, grid: Grid) -> str:
        """What is written at a mark, as a person types it."""
        return " ".join(map(str, part.value))

    @property
    def marks_all(self) -> bool:
        """Does every place that could have one of its marks have it, so that a missing mark speaks, too?"""
        return False

    def asked_besides(self, grid: Grid) -> Iterator[Constraint]:
        """The constraints that no single mark brings: of places without a mark, or of the whole grid."""
        return iter(()) if self.parts(grid) else self.constraints(grid)

    def places(self, grid: Grid) -> tuple[tuple[int, ...], ...]:
        """The cells of every mark that there could be, where these are few: none for chains and areas."""
        return ()

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """The marks at these cells that are true on a filled grid; where there are many, some by chance."""
        return iter(())

    def said_options(self) -> dict[str, Written]:
        """The options that differ from what holds where nothing is said, as typed."""
        usual = {each.name: each.default for each in fields(self)}
        values = {name: getattr(self, field_of(name)) for name in self.options}
        said = {name: value for name, value in values.items() if value != usual[field_of(name)]}
        return {name: "yes" if value is True else str(value) for name, value in said.items()}

    def with_options(self, values: Mapping[str, bool | int]) -> Self:
        """The rule with options set, by their names in the manifest."""
        named: dict[str, Any] = {field_of(name): value for name, value in values.items()}
        return replace(self, **named)

    def houses(self, grid: Grid) -> tuple[House, ...]:
        """Further houses that the rule makes (the diagonals), with names for solving steps."""
        return ()

    def margins(self, grid: Grid) -> Margins:
        """Room its own clues outside the grid claim; several kinds at one side stand in lanes, one beyond the other."""
        return Margins()

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        """Room its marks ask for where marks of other kinds may be as well; what they were given is in the frame."""
        return iter(())

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        """Every mark as a step refers to it, its cells included; a what-if names by these the mark that it meets."""
        return ()

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Human steps of the rule's own in a position; each is sound: it never removes a digit of any solution."""
        return iter(())


def field_of(option: str) -> str:
    """The field of a rule that holds an option of the manifest."""
    return option.replace("-", "_")


RuledPuzzle: TypeAlias = Puzzle[Rule]
"""The puzzle that every later room handles."""
