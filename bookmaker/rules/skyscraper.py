"""Skyscrapers: how many digits of a row or column are seen from that side, taller hiding shorter.

Manifest: by side, a row of clues with dots for none.
Facts of the trade (common practice, no source): with the clue c on a grid of size n, the digit in the k-th cell from
that side is at most n − c + k; a row's two clues are together at most n + 1, and not both 1.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from functools import cache, partial
from itertools import accumulate

from bookmaker.display.items import Stroke
from bookmaker.display.shapes import polyline
from bookmaker.puzzle.bits import highest, lowest, span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import Rung
from bookmaker.reasons.bymark import Bounds
from bookmaker.rules.common.clue import Clue, Placed
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.automata import Machine, machine, met, remembers
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.outside import OutsideRule, clashing_first_digits, number_clue, whole_line
from bookmaker.solve.problem import Constraint
from bookmaker.source.diagnostics import Collector, Place


class Skyscraper(OutsideRule):
    """Each clue's value is the count."""

    kind = "skyscraper"
    title = "Skyscrapers"
    noun = "skyscraper count"
    relabels = "none"
    from_zero = True
    example = """\
skyscraper:
  top: 3 . . 2 . . 4 . .
  right: . 5 . . 1 . . . 3
"""
    room = (0.86, 0.92)

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        value = number_clue(text, place, "a skyscraper count", collector, 1, grid.size)
        return () if value is None else (value,)

    @classmethod
    def compare(cls, placed: Placed, grid: Grid, collector: Collector) -> None:
        _facing(placed, grid, collector)
        only = {1: grid.size, grid.size: 1}
        clashing_first_digits(placed, grid, collector, cls.noun, only.get)

    @classmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        return (sum(digit == max(line[: at + 1]) for at, digit in enumerate(line)),)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """An automaton that remembers the tallest digit so far, how many were seen, and which were met."""
        for clue in self.clues:
            lean = partial(_machine, grid.size, clue.value, lean=True) if remembers(grid.size) else None
            yield _machine(grid.size, clue.value).over(clue.cells(grid), lean)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            line = [digits[cell] for cell in clue.cells(grid)]
            seen = [at for at in range(len(line)) if all(line[at] > nearer for nearer in line[:at])]
            if len(seen) != clue.value:
                return False
        return True

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.cell * 0.035, INK, join="miter")
        for clue in self.clues:
            of = (f"the {self.noun} {clue.value} {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            base, eaves, ridge = (y + share * frame.cell for share in (0.33, -0.12, -0.36))
            wall, roof = 0.24 * frame.cell, 0.34 * frame.cell
            house = [(x - wall, eaves), (x - wall, base), (x + wall, base), (x + wall, eaves)]
            yield Mark(Layer.BORDER, polyline(house, pen), of)
            yield Mark(Layer.BORDER, polyline([(x - roof, eaves), (x, ridge), (x + roof, eaves)], pen, closed=True), of)
            figures = clue_figures(frame, (x, y + 0.11 * frame.cell), str(clue.value), 0.4, 0.3)
            yield Mark(Layer.BORDER, figures, of)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, 4),)), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """How tall each cell can be if enough digits are to be seen; then every way to fill the line."""
        size = position.grid.size
        for clue in self.clues:
            cells = clue.cells(position.grid)
            room = {cell: _room(clue.value, at, size) for at, cell in enumerate(cells)}
            removed = removed_by(position, room)
            if removed:
                bounds = Bounds(tuple((cell, lowest(mask), highest(mask)) for cell, mask in room.items()))
                mark = clue.refer(self.kind, position.grid)
                yield Deduction(Rung.SIMPLE, 1, cells, removed, mark, bounds)
            yield from whole_line(clue, position, self.kind, partial(_goes_on, size, clue.value))


def _facing(placed: Placed, grid: Grid, collector: Collector) -> None:
    """A diagnostic where the two counts of a row or column cannot both be."""
    first: dict[str, Clue] = {}
    for clue, place in placed.items():
        other = first.setdefault(clue.house, clue)
        if other is clue:
            continue
        total = clue.value + other.value
        if 2 < total <= grid.size + 1:
            continue
        said = f"{clue.house} can't show {other.value} from one end and {clue.value} from the other"
        one = f"only {grid.symbols[-1]} is seen from both ends, so one of the two is at least 2"
        hint = (
            one
            if total == 2
            else f"the two are together at most {grid.size + 1}, since only {grid.symbols[-1]} counts twice"
        )
        collector.error(place, "clues-contradict", said, hint, also=(placed[other],))


@cache
def _machine(size: int, count: int, lean: bool = False) -> Machine:
    """States: the tallest digit so far, how many were seen, which digits were met."""

    def step(state: tuple[int, int, int], digit: int) -> tuple[int, int, int] | None:
        tallest, seen, before = state
        after = met(before, digit, size, lean)
        if after is None or digit == tallest:
            return None
        if digit < tallest:
            return tallest, seen, after
        return (digit, seen + 1, after) if seen < count <= seen + 1 + size - digit else None

    return machine(range(1, size + 1), (0, 0, 0), step, lambda state: state[:2] == (size, count))


def _room(count: int, at: int, size: int) -> int:
    """The digits that the cell `at` (from 0) can hold if `count` digits are to be seen along it."""
    if count == 1 and at == 0:
        return span_mask(size, size)
    return span_mask(at + 1 if count == size else 1, min(size, size - count + at + 1))


def _goes_on(size: int, count: int, line: Sequence[int]) -> bool:
    """Can a row that begins with these digits still show the count?"""
    seen = len(set(accumulate(line, max)))
    return seen == count if max(line) == size else seen <= count <= seen + size - max(line)
