"""First-seen digits: the digits of a clue stand among the first three cells from that side.

Manifest: by side, a row of clues with dots for none; a clue is one to three digits written together.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from itertools import combinations

from bookmaker.display.items import Rect, Stroke
from bookmaker.puzzle.bits import mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.candidates import removed_by
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.frame import Frame, Layer, Mark
from bookmaker.rules.common.outside import (
    INK,
    Clue,
    OutsideRule,
    Placed,
    Side,
    clue_figures,
    digit_clue,
    lines_named,
    middle_of,
)
from bookmaker.rules.common.wording import cells_listed, counted, digits_listed, one_or_many, symbol
from bookmaker.solve.problem import Allowed, Constraint
from bookmaker.trouble import Desk, Place, quoted

SEEN = 3
"""How many cells are looked at."""


class FirstSeen(OutsideRule):
    """Each clue holds one digit; several may stand at one end of a line and are drawn together."""

    kind = "first-seen"
    title = "First-seen digits"
    noun = "first-seen clue"
    relabels = "any"
    example = """\
first-seen:
  left: 5 . 28 . . . 149 . .
  bottom: . . 3 . . 67 . . .
"""
    figures = "digits"
    room = (0.96, 0.7)

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, desk: Desk) -> Collection[int]:
        digits = [digit_clue(typed, place, grid, desk) for typed in text]
        known = [digit for digit in digits if digit is not None]
        if len(known) < len(digits):
            return ()
        if len(set(known)) < len(known):
            desk.error(place, "digit-twice", f"the clue {quoted(text)} names a digit twice")
        elif len(known) > SEEN:
            said = f"the clue {quoted(text)} names {counted(len(known), 'digit')}, but only three cells are meant"
            desk.error(place, "too-many-digits", said)
        return known

    @classmethod
    def compare(cls, placed: Placed, grid: Grid, desk: Desk) -> None:
        _twice_in_a_house(placed, grid, desk)

    @classmethod
    def values_on(cls, line: Sequence[int]) -> Collection[int]:
        return line[:SEEN]

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """The digit is not in the other cells of its line, which says the same and takes candidates away at once.

        Three digits at one end leave nothing else to the three cells.
        """
        for end in self._ends():
            cells, digits = end[0].cells(grid), mask_of(clue.value for clue in end)
            if len(cells) > SEEN:
                yield Allowed(cells[SEEN:], grid.all_digits & ~digits)
            if len(end) == SEEN:
                yield Allowed(cells[:SEEN], digits)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        return all(clue.value in [digits[cell] for cell in clue.cells(grid)][:3] for clue in self.clues)

    def sentence(self) -> str:
        subject = one_or_many(
            len(self.clues), "The digit beside three small squares", "Each digit beside three small squares"
        )
        return (
            f"{subject} outside the grid appears in the first three cells of its {lines_named(self.clues)} from that "
            "side."
        )

    @classmethod
    def primer(cls) -> str:
        return (
            "A digit outside a row or column appears in the first three cells from that side; where two or three "
            "digits stand together, all of them do, in any order. On a 9×9 grid this puts the digit in three cells of "
            "the nearest box, so strike it from the rest of the row and from the rest of the box."
        )

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(max(0.6, frame.cell * 0.025), INK)
        side, step = 0.13 * frame.cell, 0.16 * frame.cell
        for end in self._ends():
            clue = end[0]
            x, y = middle_of(clue, frame, *self.room)
            aside = 0.22 * frame.cell
            text = "".join(symbol(clue.value) for clue in end)
            at = (x, y - aside / 2) if clue.along_row else (x - aside / 2, y)
            yield Mark(Layer.BORDER, clue_figures(frame, at, text, 0.72 if clue.along_row else 0.62, 0.3))
            for place in (-1, 0, 1):
                if clue.along_row:
                    left, top = x + place * step - side / 2, y + aside - side / 2
                else:
                    half = len(text) * 0.12 * frame.cell
                    left, top = at[0] + half + 0.06 * frame.cell, y + place * step - side / 2
                yield Mark(Layer.BORDER, Rect(left, top, side, side, pen))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, 5),)), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """A digit that is seen first stands nowhere else in its line; three of them fill the three cells."""
        grid = position.grid
        for end in self._ends():
            cells, digits = end[0].cells(grid), [clue.value for clue in end]
            kept = dict.fromkeys(cells[SEEN:], grid.all_digits & ~mask_of(digits))
            if len(end) == SEEN:
                kept |= dict.fromkeys(cells[:SEEN], mask_of(digits))
            removed = removed_by(position, kept)
            if removed:
                said = f"the first-seen clue {end[0].where} keeps {digits_listed(digits)} in"
                words = f"{said} {cells_listed(grid, cells[:SEEN], 'or' if len(end) == 1 else 'and')}"
                yield Deduction(5, 1, cells, removed, words)

    def _ends(self) -> list[list[Clue]]:
        """The clues that stand together at one end of a line."""
        ends: dict[tuple[Side, int], list[Clue]] = {}
        for clue in self.clues:
            ends.setdefault((clue.side, clue.line), []).append(clue)
        return list(ends.values())


def _twice_in_a_house(placed: Placed, grid: Grid, desk: Desk) -> None:
    """A trouble where two clues would put a digit twice into a line or a region."""
    for other, clue in combinations(placed, 2):
        both = {*clue.cells(grid)[:SEEN], *other.cells(grid)[:SEEN]}
        if clue.value == other.value and len(both) == 2 * SEEN:
            house = next((house for house in grid.houses if both <= set(house.cells)), None)
            if house is not None:
                said = f"{symbol(clue.value)} {clue.where} and {other.where} would appear twice in {house.name}"
                desk.error(
                    placed[clue], "clues-contradict", said, "one of the two is likely a slip", also=(placed[other],)
                )
