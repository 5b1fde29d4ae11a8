"""Dots between neighbours: white where the digits are consecutive, black where one is twice the other.

Manifest: `white` and `black` are lists of pairs; with `all-marked: yes` every such pair has its dot, so that absence
counts; with no dot anywhere it is the whole rule. The digits 1 and 2 are both, and may carry either. 0 is its
own double, and has no black dot anywhere.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Self

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import circle
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.border import knock_out, read_marks
from bookmaker.rules.common.contract import Deduction, Relabelling, Sample
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import OnBorder, PlaceClaim
from bookmaker.rules.common.neighbours import BorderMarks, MarkKind, Pair
from bookmaker.rules.common.parts import Form, Part
from bookmaker.rules.common.sorts import SortedRule
from bookmaker.rules.common.words.speech import borders_said
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.solve.problem import Constraint
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node

RADIUS = 0.105
"""Radius of a dot in cells."""

_WHITE = MarkKind("the white dot", lambda a, b: abs(a - b) == 1, "white")
_BLACK = MarkKind("the black dot", lambda a, b: a == 2 * b or b == 2 * a, "black")


@dataclass(frozen=True)
class Dots(SortedRule):
    """`white` and `black` are pairs of cells that share a side, in the grid's order."""

    kind = "dots"
    title = "Dots"
    noun = "dot"
    typed = ("white: lines, black: lines, all-marked: switch",)
    example = """\
dots:
  white: [r1c1-r1c2, r4c4-r5c4]
  black: [r2c7-r2c8]
  all-marked: no
"""
    form = Form.BORDER
    sorts = (("white", "white"), ("black", "black"))
    options = ("all-marked",)
    from_zero = True

    white: tuple[Pair, ...] = ()
    black: tuple[Pair, ...] = ()
    all_marked: bool = False

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        marks = read_marks(body, "dots", {"white": _WHITE, "black": _BLACK}, grid, collector)
        if marks is None:
            return None
        pairs, all_marked = marks
        return cls(pairs["white"], pairs["black"], all_marked)

    def asked_by(self, part: Part, grid: Grid) -> Iterator[Constraint]:
        return replace(self.with_parts((part,), grid), all_marked=False).constraints(grid)

    def asked_besides(self, grid: Grid) -> Iterator[Constraint]:
        return self._marked().asked_where_missing(grid)

    def true_sorts(self, cells: tuple[int, ...], grid: Grid, digits: Sequence[int]) -> Iterator[str]:
        one, other = (grid.worth(digits[cell]) for cell in cells)
        return (name for name, kind in (("white", _WHITE), ("black", _BLACK)) if kind.keeps(one, other))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return self._marked().asked(grid)

    def relabelling(self, grid: Grid) -> Relabelling:
        return "none" if self.black or self.all_marked else "reversed"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cell in grid.cells:
            for other in (other for other in grid.orthogonal(cell) if other > cell):
                low, high = sorted((grid.worth(digits[cell]), grid.worth(digits[other])))
                is_consecutive, is_double = high == low + 1, high == low + low
                if (cell, other) in self.white:
                    kept = is_consecutive
                elif (cell, other) in self.black:
                    kept = is_double
                else:
                    kept = not self.all_marked or not (is_consecutive or is_double)
                if not kept:
                    return False
        return True

    def sentence(self, words: Catalogue) -> str:
        sorts = "both" if self.white and self.black else "white" if self.white else "black" if self.black else "none"
        every = "yes" if self.all_marked else "no"
        return words.say(f"dots-sentence-{sorts}", white=len(self.white), black=len(self.black), all=every)

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        yield from borders_said(words, grid, "dots-spoken-white", self.white)
        yield from borders_said(words, grid, "dots-spoken-black", self.black)

    def marks(self, frame: Frame) -> Iterator[Mark]:
        rim = Stroke(frame.thin() + 0.2)
        for pairs, fill, called in ((self.white, 1.0, "white"), (self.black, 0.0, "black")):
            for pair in pairs:
                of = (f"the {called} dot between {cells_listed(frame.grid, pair)}",)
                at, scale = frame.seat(*pair)
                radius = RADIUS * scale * frame.cell
                yield Mark(Layer.WHITE, knock_out(at, radius * 1.35), of)
                yield Mark(Layer.BORDER, circle(at, radius, rim, fill), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (OnBorder(pair, 2.4 * RADIUS, 2.4 * RADIUS) for pair in self.white + self.black)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(white=((0, 1),), black=((1, 2),)), CLASSIC, 1, 3)

    def key(self) -> Sample | None:
        if bool(self.white) == bool(self.black):
            return self.sample() if self.white else None
        pair = ((0, 1),)
        return Sample(Dots(white=pair) if self.white else Dots(black=pair), CLASSIC, 1, 2)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return self._marked().references(grid)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Digits without a partner at a dot, or at a missing one; and strings of dots worked through."""
        return self._marked().deductions(position)

    def _marked(self) -> BorderMarks:
        return BorderMarks(self.kind, ((_WHITE, self.white), (_BLACK, self.black)), self.all_marked)
