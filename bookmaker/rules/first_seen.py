"""First-seen digits: the digits of a clue stand among the first few cells from that side.

Manifest: by side, a row of clues with dots for none; a clue is one or more digits written together. How many cells are
looked at is said by `cells`; if it is not, it is as many as the nearest box has there, or three without boxes.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

from bookmaker.display.items import Rect, Stroke
from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import OnlyIn
from bookmaker.rules.common.clue import Clue, Placed, Side, lines_seen
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.nearest import NearRule
from bookmaker.rules.common.outside import digit_clue
from bookmaker.rules.common.words.wording import counted
from bookmaker.solve.problem import Allowed, Constraint
from bookmaker.source.diagnostics import Collector, Place, quoted


@dataclass(frozen=True)
class FirstSeen(NearRule):
    """Each clue holds one digit; several may stand at one end of a line and are drawn together."""

    kind = "first-seen"
    title = "First-seen digits"
    noun = "first-seen clue"
    relabels = "any"
    from_zero = True
    lettered = True
    example = """\
first-seen:
  left: 5 . 28 . . . 149 . .
  bottom: . . 3 . . 67 . . .
"""
    figures = "digits"
    room = (0.96, 0.7)

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        digits = [digit_clue(typed, place, grid, collector) for typed in text]
        known = [digit for digit in digits if digit is not None]
        if len(known) < len(digits):
            return ()
        if len(set(known)) < len(known):
            collector.error(place, "digit-twice", f"the clue {quoted(text)} names a digit twice")
        return known

    def check(self, placed: Placed, grid: Grid, collector: Collector) -> None:
        """Report clues of more digits than cells are looked at, and those that cannot be true together."""
        for end in self._ends():
            if len(end) > self.seen(end[0]):
                text = "".join(grid.symbol(clue.value) for clue in end)
                cells = counted(self.seen(end[0]), "cell is", "cells are")
                said = f"the clue {quoted(text)} names {counted(len(end), 'digit')}, but only {cells} looked at"
                collector.error(placed[end[0]], "too-many-digits", said)
        self._twice_in_a_house(placed, grid, collector)

    @classmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        return line

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """The digit is not in the other cells of its line, which says the same and takes candidates away at once.

        As many digits at one end as cells are looked at leave nothing else to these.
        """
        for end in self._ends():
            cells, digits, seen = end[0].cells(grid), mask_of(clue.value for clue in end), self.seen(end[0])
            if len(cells) > seen:
                yield Allowed(cells[seen:], grid.all_digits & ~digits)
            if len(end) == seen:
                yield Allowed(cells[:seen], digits)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            first = self.in_row if clue.side in ("left", "right") else self.in_column
            if clue.value not in [digits[cell] for cell in clue.cells(grid)][:first]:
                return False
        return True

    def sentence(self, words: Catalogue) -> str:
        seen = {*map(self.seen, self.clues)}
        few = min(seen) if len(seen) == 1 else 0
        line = lines_seen(self.clues)
        return words.say("first-seen-sentence", n=len(self.clues), seen=few, number=words.number(few), line=line)

    def clue_said(self, words: Catalogue, value: int, grid: Grid) -> str:
        return grid.symbol(value)

    def side_said(self, words: Catalogue, clue: Clue) -> str:
        seen = self.seen(clue)
        return words.say("first-seen-side", side=super().side_said(words, clue), n=seen, number=words.number(seen))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(max(0.6, frame.cell * 0.025), INK)
        for end in self._ends():
            clue = end[0]
            text = "".join(frame.grid.symbol(clue.value) for clue in end)
            of = (f"the {self.noun} {text} {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            aside, count = 0.22 * frame.cell, self.seen(clue)
            step = min(0.16, (self.room[0] if clue.along_row else self.room[1]) / (count + 0.4)) * frame.cell
            side = 13 / 16 * step
            at = (x, y - aside / 2) if clue.along_row else (x - aside / 2, y)
            yield Mark(Layer.BORDER, clue_figures(frame, at, text, 0.72 if clue.along_row else 0.62, 0.3), of)
            for place in (index - (count - 1) / 2 for index in range(count)):
                if clue.along_row:
                    left, top = x + place * step - side / 2, y + aside - side / 2
                else:
                    half = len(text) * 0.12 * frame.cell
                    left, top = at[0] + half + 0.06 * frame.cell, y + place * step - side / 2
                yield Mark(Layer.BORDER, Rect(left, top, side, side, pen), of)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, 5),)), CLASSIC, 1, 3)

    def key(self) -> Sample:
        seen = max(map(self.seen, self.clues))
        return replace(self.sample(), rule=FirstSeen((Clue("left", 0, 5),), seen, seen))

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A digit that is seen first stands nowhere else in its line; three of them fill the three cells."""
        grid = position.grid
        for end in self._ends():
            cells, digits, seen = end[0].cells(grid), [clue.value for clue in end], self.seen(end[0])
            kept = dict.fromkeys(cells[seen:], grid.all_digits & ~mask_of(digits))
            if len(end) == seen:
                kept |= dict.fromkeys(cells[:seen], mask_of(digits))
            removed = removed_by(position, kept)
            if removed:
                claim = OnlyIn(tuple(digits), cells[:seen])
                yield Deduction(Rung.SIMPLE, 1, cells, removed, self._refer(end, grid), claim)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(self._refer(end, grid) for end in self._ends())

    def _refer(self, end: Sequence[Clue], grid: Grid) -> MarkRef:
        """What is printed at one end of a line."""
        return end[0].refer(self.kind, grid, "".join(grid.symbol(clue.value) for clue in end))

    def _ends(self) -> list[list[Clue]]:
        """The clues that stand together at one end of a line."""
        ends: dict[tuple[Side, int], list[Clue]] = {}
        for clue in self.clues:
            ends.setdefault((clue.side, clue.line), []).append(clue)
        return list(ends.values())

    def _twice_in_a_house(self, placed: Placed, grid: Grid, collector: Collector) -> None:
        """A diagnostic where two clues would put a digit twice into a line or a region."""
        for other, clue in combinations(placed, 2):
            if clue.value != other.value:
                continue
            here, there = ({*one.cells(grid)[: self.seen(one)]} for one in (clue, other))
            house = next((house for house in grid.houses if here | there <= set(house.cells)), None)
            if house is not None and not here & there:
                said = f"{grid.symbol(clue.value)} {clue.where} and {other.where} would stand twice in {house.name}"
                collector.error(
                    placed[clue], "clues-contradict", said, "one of the two is likely a slip", also=(placed[other],)
                )
