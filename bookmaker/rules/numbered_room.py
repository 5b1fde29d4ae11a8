"""Numbered rooms: the digit stands at the place that the first digit from that side counts to.

Manifest: by side, a row of digits with dots for none. No place is counted 0, so where digits begin with 0 the first
digit is another.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from functools import cache

from bookmaker.display.items import Close, Curve, Move, Path, Straight, Stroke
from bookmaker.display.shapes import ARC
from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import CountsTo
from bookmaker.rules.common.clue import Clue
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.outside import OutsideRule, digit_clue
from bookmaker.solve.problem import Allowed, Constraint, Relation
from bookmaker.source.diagnostics import Collector, Place


class NumberedRoom(OutsideRule):
    """Each clue's value is the digit in the room."""

    kind = "numbered-room"
    title = "Numbered rooms"
    noun = "numbered room"
    relabels = "none"
    from_zero = True
    example = """\
numbered-room:
  left: . 5 . . 8 . . . 3
  top: . . 7 . . . 1 . .
"""
    figures = "digits"
    room = (0.76, 0.9)

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        digit = digit_clue(text, place, grid, collector)
        return () if digit is None else (digit,)

    @classmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        place = grid.worth(line[0])
        return (line[place - 1],) if place else ()

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """Relations between the first cell and each other: “it counts to here” exactly if “the digit stands here”.

        As the digit stands somewhere in the line, these say everything; an automaton that counts down takes longer.
        """
        pairs: dict[tuple[int, int], list[tuple[int, int]]] = {}
        one = grid.raised(1, 1)
        counting = mask_of(range(one, grid.size + 1))
        for clue in self.clues:
            first, *others = clue.cells(grid)
            if clue.value != one:
                yield Allowed((first,), counting & ~mask_of([one, clue.value]))
            elif counting != grid.all_digits:
                yield Allowed((first,), counting)
            for place, cell in enumerate(others, start=2):
                pairs.setdefault((place, clue.value), []).append((first, cell))
        for (place, digit), between in pairs.items():
            yield Relation(tuple(between), _counts_to(grid.size, grid.raised(place, 1), digit))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            line = [digits[cell] for cell in clue.cells(grid)]
            place = grid.worth(line[0])
            if place == 0 or line[place - 1] != clue.value:
                return False
        return True

    def clue_said(self, words: Catalogue, value: int, grid: Grid) -> str:
        return grid.symbol(value)

    def of_zero(self, words: Catalogue) -> str:
        return words.say("numbered-room-zero")

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.cell * 0.035, INK, join="round")
        half, base, spring = (share * frame.cell for share in (0.23, 0.34, -0.1))
        for clue in self.clues:
            sign = frame.grid.symbol(clue.value)
            of = (f"the {self.noun} {sign} {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            crown, handle = spring - half, half * ARC
            door = (
                Move((x - half, y + base)),
                Straight((x - half, y + spring)),
                Curve((x - half, y + spring - handle), (x - handle, y + crown), (x, y + crown)),
                Curve((x + handle, y + crown), (x + half, y + spring - handle), (x + half, y + spring)),
                Straight((x + half, y + base)),
                Close(),
            )
            yield Mark(Layer.BORDER, Path(door, pen), of)
            yield Mark(Layer.BORDER, clue_figures(frame, (x, y + 0.04 * frame.cell), sign, 0.4, 0.32), of)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, 5),)), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """The first cell counts only to cells open to the digit; the digit stands only where it can count to."""
        grid, masks = position.grid, position.masks
        for clue in self.clues:
            cells = clue.cells(grid)
            goal = mask_of([clue.value])
            rooms = [
                place
                for digit in digits_in(masks[cells[0]])
                if (place := grid.worth(digit))
                and masks[cells[place - 1]] & goal
                and (place == 1) == (digit == clue.value)
            ]
            counted = mask_of(grid.raised(place, 1) for place in rooms)
            kept = dict.fromkeys(cells[1:], grid.all_digits & ~goal) | {cells[0]: counted}
            kept |= {cells[place - 1]: grid.all_digits for place in rooms if place > 1}
            removed = removed_by(position, kept)
            if removed:
                claim = CountsTo(cells[0], tuple(rooms))
                mark = clue.refer(self.kind, grid, grid.symbol(clue.value))
                yield Deduction(Rung.SIMPLE, 2, cells, removed, mark, claim)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(clue.refer(self.kind, grid, grid.symbol(clue.value)) for clue in self.clues)


@cache
def _counts_to(size: int, counting: int, digit: int) -> tuple[int, ...]:
    """What may stand at a place beside each first digit: the digit if that is the one `counting` there, else all
    others."""
    goal = mask_of([digit])
    others = mask_of(range(1, size + 1)) & ~goal
    return (0, *(goal if first == counting else others for first in range(1, size + 1)))
