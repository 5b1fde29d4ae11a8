"""Sum marks between neighbours: V where the digits add up to 5, X where they add up to 10.

Manifest: `V` and `X` are lists of pairs; with `all-marked: yes` every such pair has its mark, so that absence counts;
with no mark anywhere it is the whole rule.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Self

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

HEIGHT = 0.22
"""Height of the letters in cells; they are about as wide."""

_FIVE = MarkKind("the V", lambda a, b: a + b == 5, "V")
_TEN = MarkKind("the X", lambda a, b: a + b == 10, "X")


@dataclass(frozen=True)
class SumMarks(SortedRule):
    """`five` (V) and `ten` (X) are pairs of cells that share a side, in the grid's order."""

    kind = "sum-marks"
    title = "Sum marks"
    noun = "sum mark"
    typed = ("V: lines, X: lines, all-marked: switch",)
    example = """\
sum-marks:
  V: [r1c1-r1c2]
  X: [r4c4-r5c4, r2c7-r2c8]
  all-marked: no
"""
    form = Form.BORDER
    sorts = (("V", "five"), ("X", "ten"))
    options = ("all-marked",)
    from_zero = True

    five: tuple[Pair, ...] = ()
    ten: tuple[Pair, ...] = ()
    all_marked: bool = False

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        marks = read_marks(body, "sum-marks", {"V": _FIVE, "X": _TEN}, grid, collector)
        if marks is None:
            return None
        pairs, all_marked = marks
        return cls(pairs["V"], pairs["X"], all_marked)

    def asked_by(self, part: Part, grid: Grid) -> Iterator[Constraint]:
        return replace(self.with_parts((part,), grid), all_marked=False).constraints(grid)

    def asked_besides(self, grid: Grid) -> Iterator[Constraint]:
        return self._marked().asked_where_missing(grid)

    def true_sorts(self, cells: tuple[int, ...], grid: Grid, digits: Sequence[int]) -> Iterator[str]:
        one, other = (grid.worth(digits[cell]) for cell in cells)
        return (name for name, kind in (("V", _FIVE), ("X", _TEN)) if kind.keeps(one, other))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return self._marked().asked(grid)

    def relabelling(self, grid: Grid) -> Relabelling:
        """Counted from the other end, 10 stays 10 where first and last digit make 10; 5 becomes no sum with a mark of
        its own."""
        ends = grid.worth(1) + grid.worth(grid.size)
        return "none" if self.five or self.all_marked or ends != 10 else "reversed"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cell in grid.cells:
            for other in (other for other in grid.orthogonal(cell) if other > cell):
                pair, total = (cell, other), grid.worth(digits[cell]) + grid.worth(digits[other])
                if (pair in self.five and total != 5) or (pair in self.ten and total != 10):
                    return False
                if self.all_marked and pair not in self.five + self.ten and total in (5, 10):
                    return False
        return True

    def sentence(self, words: Catalogue) -> str:
        sorts = "both" if self.five and self.ten else "five" if self.five else "ten" if self.ten else "none"
        every = "yes" if self.all_marked else "no"
        return words.say(f"sum-marks-sentence-{sorts}", five=len(self.five), ten=len(self.ten), all=every)

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        yield from borders_said(words, grid, "sum-marks-spoken-five", self.five)
        yield from borders_said(words, grid, "sum-marks-spoken-ten", self.ten)

    def marks(self, frame: Frame) -> Iterator[Mark]:
        for pairs, letter in ((self.five, "V"), (self.ten, "X")):
            for pair in pairs:
                of = (f"the {letter} between {cells_listed(frame.grid, pair)}",)
                at, scale = frame.seat(*pair)
                yield Mark(Layer.WHITE, knock_out(at, 0.15 * scale * frame.cell), of)
                # With serifs, so that no V is taken for an inequality sign.
                yield Mark(Layer.BORDER, frame.figures(at, letter, HEIGHT * scale, font="serif-bold"), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        return (OnBorder(pair, 1.1 * HEIGHT, 1.1 * HEIGHT) for pair in self.five + self.ten)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(five=((0, 1),), ten=((0, 9),)), CLASSIC, 2, 2)

    def key(self) -> Sample | None:
        if bool(self.five) == bool(self.ten):
            return self.sample() if self.five else None
        pair = ((0, 1),)
        return Sample(SumMarks(five=pair) if self.five else SumMarks(ten=pair), CLASSIC, 1, 2)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return self._marked().references(grid)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Digits without a partner at a mark, or at a missing one; and strings of marks worked through."""
        return self._marked().deductions(position)

    def _marked(self) -> BorderMarks:
        return BorderMarks(self.kind, ((_FIVE, self.five), (_TEN, self.ten)), self.all_marked)
