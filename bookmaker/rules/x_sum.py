"""X-sums: the sum of the first X digits from that side, X being the first of them.

Manifest: by side, a row of clues with dots for none. Where digits begin with 0, X may be 0: no digits add up to 0.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from functools import cache, partial, reduce
from operator import and_, or_

from bookmaker.display.items import Line, Stroke
from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import Rung
from bookmaker.reasons.bymark import FirstDigits
from bookmaker.rules.common.clue import Clue, Placed
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.automata import Machine, machine, met, remembers
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.sums import different_limits, too_many
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.outside import (
    OutsideRule,
    clashing_first_digits,
    number_clue,
    sets_that_fill,
    subset_sums,
    whole_line,
)
from bookmaker.solve.problem import Constraint
from bookmaker.source.diagnostics import Collector, Place


class XSum(OutsideRule):
    """Each clue's value is the sum."""

    kind = "x-sum"
    title = "X-sums"
    noun = "X-sum"
    relabels = "none"
    from_zero = True
    example = """\
x-sum:
  left: . 23 . . 1 . 10 . .
  bottom: 36 . . . 5 . . . 45
"""
    room = (0.98, 0.62)

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        least, most = grid.worth(1), sum(map(grid.worth, grid.digits))
        value = number_clue(text, place, "an X-sum", collector, least, most)
        if value is not None and not _firsts(grid, value):
            said = f"no first digit X leads to {value}: no X different digits, X among them, have that sum"
            collector.error(place, "sum-cannot-be", said)
            return ()
        return () if value is None else (value,)

    @classmethod
    def compare(cls, placed: Placed, grid: Grid, collector: Collector) -> None:
        def only_first(total: int) -> int | None:
            firsts = _firsts(grid, total)
            return firsts[0] if len(firsts) == 1 else None

        clashing_first_digits(placed, grid, collector, cls.noun, only_first)

    @classmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        worth = [*map(grid.worth, line)]
        return (sum(worth[: worth[0]]),)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """An automaton that remembers which digits were met, how many are still to be added and what they must make."""
        for clue in self.clues:
            lean = partial(_machine, grid, clue.value, lean=True) if remembers(grid.size) else None
            yield _machine(grid, clue.value).over(clue.cells(grid), lean)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            line = [grid.worth(digits[cell]) for cell in clue.cells(grid)]
            if sum(line[: line[0]]) != clue.value:
                return False
        return True

    def of_zero(self, words: Catalogue) -> str:
        return words.say("x-sum-zero")

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.cell * 0.045, INK)
        arm, gap = 0.09 * frame.cell, 0.05 * frame.cell
        for clue in self.clues:
            of = (f"the {self.noun} {clue.value} {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            text = str(clue.value)
            half = min(0.6, len(text) * 0.25) / 2 * frame.cell
            cross = x - half - gap / 2
            yield Mark(Layer.BORDER, clue_figures(frame, (x + arm + gap / 2, y), text, 0.6), of)
            for lean in (-arm, arm):
                yield Mark(Layer.BORDER, Line((cross - arm, y - lean), (cross + arm, y + lean), pen), of)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, 12),)), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Which first digits can reach the sum, and with what; then every way to fill the line."""
        for clue in self.clues:
            yield from _openings(clue, position)
            yield from whole_line(clue, position, self.kind, partial(_goes_on, position.grid, clue.value))


@cache
def _firsts(grid: Grid, total: int) -> tuple[int, ...]:
    """The first digits with which so many different digits as they are worth can add up to `total`."""
    return tuple(
        first
        for first in grid.digits
        if (x := grid.worth(first)) == total == 0
        or (x - 1, total - x) in subset_sums(tuple(grid.worth(digit) for digit in grid.digits if digit != first))
    )


@cache
def _machine(grid: Grid, total: int, lean: bool = False) -> Machine:
    """States: how many digits are still to be added (−1 at the start), what they must add up to, which were met."""

    def step(state: tuple[int, int, int], digit: int) -> tuple[int, int, int] | None:
        count, rest, seen = state
        after, worth = met(seen, digit, grid.size, lean), grid.worth(digit)
        if after is None or count == 0:
            return None if after is None else state
        left, rest = max(0, (worth if count < 0 else count) - 1), rest - worth
        least, most = different_limits(left, grid)
        return (left, rest, after) if least <= rest <= most else None

    start: tuple[int, int, int] = (-1, total, 0)
    return machine(grid.digits, start, step, lambda state: state[0] == 0)


def _openings(clue: Clue, position: Position) -> Iterator[Deduction]:
    """For each digit that the nearest cell can hold, the sets of digits that complete the sum."""
    grid, masks = position.grid, position.masks
    cells = clue.cells(grid)
    kept = dict.fromkeys(cells, 0)
    firsts = []
    for first in digits_in(masks[cells[0]]):
        others, x = grid.all_digits & ~mask_of([first]), grid.worth(first)
        added = cells[1 : max(x, 1)]
        if too_many(others, len(added)):
            return
        sets = list(sets_that_fill(masks, added, others, grid.raised(clue.value - x, len(added))))
        if not sets:
            continue
        firsts.append(first)
        some, every = reduce(or_, sets), reduce(and_, sets)
        kept[cells[0]] |= mask_of([first])
        for cell in cells[1:]:
            kept[cell] |= some if cell in added else others & ~every
    removed = removed_by(position, kept)
    if removed:
        rung, claim = Rung.SIMPLE if len(firsts) == 1 else Rung.PAIR, FirstDigits(cells[0], tuple(firsts))
        yield Deduction(rung, len(cells), cells, removed, clue.refer(XSum.kind, grid), claim)


def _goes_on(grid: Grid, total: int, line: Sequence[int]) -> bool:
    """Can a row that begins with these digits still have the sum?"""
    x = grid.worth(line[0])
    added = line[:x]
    so_far = sum(added) - grid.raised(0, len(added))
    return so_far == total if len(line) >= x else so_far <= total
