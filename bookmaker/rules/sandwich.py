"""Sandwich sums: the sum of the digits between the least and the greatest digit of a row or column.

Manifest: by side, a row of clues with dots for none. The two digits that enclose the sum, its crusts, are the first and
the last of the grid; neither counts.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from functools import cache, partial, reduce
from itertools import combinations
from operator import and_, or_

from bookmaker.display.items import Line, Stroke
from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import Rung
from bookmaker.reasons.bymark import Apart
from bookmaker.rules.common.clue import Clue, Placed
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.automata import Machine, machine, met, remembers
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.sums import limits_by_count, too_many
from bookmaker.rules.common.drawing.clueplaces import INK, clue_figures, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.outside import OutsideRule, number_clue, sets_that_fill, subset_sums, whole_line
from bookmaker.solve.problem import Constraint
from bookmaker.source.diagnostics import Collector, Place


class Sandwich(OutsideRule):
    """Each clue's value is the sum."""

    kind = "sandwich"
    title = "Sandwich sums"
    noun = "sandwich sum"
    relabels = "none"
    from_zero = True
    example = """\
sandwich:
  left: . 12 . . 0 . . 35 .
  top: . . 7 . . . . 20 .
"""
    room = (0.98, 0.84)

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        sums = {total for _, total in subset_sums(tuple(map(grid.worth, grid.digits[1:-1])))}
        value = number_clue(text, place, "a sandwich sum", collector, 0, max(sums))
        if value is not None and value not in sums:
            inner = f"{grid.symbol(2)} to {grid.symbol(grid.size - 1)}"
            collector.error(place, "sum-cannot-be", f"no different digits from {inner} add up to {value}")
            return ()
        return () if value is None else (value,)

    @classmethod
    def compare(cls, placed: Placed, grid: Grid, collector: Collector) -> None:
        by_house: dict[str, Clue] = {}
        for clue, place in placed.items():
            other = by_house.setdefault(clue.house, clue)
            if other.value != clue.value:
                said = f"{clue.house} has the sandwich sum {other.value} at one end and {clue.value} at the other"
                collector.error(
                    place, "clues-contradict", said, "one of the two is likely a slip", also=(placed[other],)
                )

    @classmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        first, last = sorted((line.index(1), line.index(len(line))))
        return (sum(map(grid.worth, line[first + 1 : last])),)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        """An automaton that remembers the first crust and the digits since: it knows how far apart crusts can be."""
        for clue in self.clues:
            asked = grid.size, grid.worth(1), clue.value
            full = _machine(*asked) if remembers(grid.size) else _counting(*asked)
            yield full.over(clue.cells(grid), partial(_counting, *asked, closely=True))

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            line = [grid.worth(digits[cell]) for cell in clue.cells(grid)]
            first, last = sorted((line.index(min(line)), line.index(max(line))))
            if sum(line[first + 1 : last]) != clue.value:
                return False
        return True

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(frame.cell * 0.05, INK)
        for clue in self.clues:
            of = (f"the {self.noun} {clue.value} {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            yield Mark(Layer.BORDER, clue_figures(frame, (x, y), str(clue.value), 0.56), of)
            for way in (-1, 1):
                if clue.along_row:
                    across, half = way * 0.36 * frame.cell, 0.2 * frame.cell
                    yield Mark(Layer.BORDER, Line((x + across, y - half), (x + across, y + half), pen), of)
                else:
                    down, half = way * 0.28 * frame.cell, 0.26 * frame.cell
                    yield Mark(Layer.BORDER, Line((x - half, y + down), (x + half, y + down), pen), of)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, 12),)), CLASSIC, 1, 3)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Where the crusts can stand, by how many digits make the sum; what lies between them; every way to fill."""
        grid = position.grid
        for clue in self.clues:
            yield from _crusts(clue, position)
            yield from whole_line(clue, position, self.kind, partial(_goes_on, grid, clue.value))


@cache
def _machine(size: int, least: int, total: int) -> Machine:
    """States: the crust met last (0 for none, −1 after the second), the sum since, and which digits made it. `least` is
    what the first digit is worth."""

    def step(state: tuple[int, int, int], digit: int) -> tuple[int, int, int] | None:
        crust, so_far, filling = state
        if digit in (1, size):
            if crust == 0:
                return digit, 0, 0
            return (-1, total, filling) if crust not in (digit, -1) and so_far == total else None
        if crust == 0:
            return state
        after = met(filling, digit, size)
        if after is None or crust == -1:
            return None if after is None else state
        so_far += digit - 1 + least
        return (crust, so_far, after) if so_far <= total else None

    start: tuple[int, int, int] = (0, 0, 0)
    return machine(range(1, size + 1), start, step, lambda state: state[0] == -1)


@cache
def _counting(size: int, least: int, total: int, closely: bool = False) -> Machine:
    """It only counts the digits since the first crust, and so knows how many, if different, can make the sum; where it
    looks `closely`, also whether those met can be some of them. States: the crust, the sum and the count."""
    limits = limits_by_count(range(least + 1, least + size - 1))
    counts = [count for count, (low, high) in enumerate(limits) if low <= total <= high]

    def can_be(so_far: int, count: int) -> bool:
        if not closely:
            return so_far <= total and count <= counts[-1]
        low, high = limits[count]
        left = total - so_far
        more = (limits[wanted - count] for wanted in counts if wanted >= count)
        return low <= so_far <= high and any(low <= left <= high for low, high in more)

    def step(state: tuple[int, int, int], digit: int) -> tuple[int, int, int] | None:
        crust, so_far, count = state
        if digit in (1, size):
            if crust == 0:
                return digit, 0, 0
            return (-1, 0, 0) if crust not in (digit, -1) and so_far == total and count in counts else None
        if crust <= 0:
            return state
        so_far, count = so_far + digit - 1 + least, count + 1
        return (crust, so_far, count) if count < len(limits) and can_be(so_far, count) else None

    start: tuple[int, int, int] = (0, 0, 0)
    return machine(range(1, size + 1), start, step, lambda state: state[0] == -1)


def _crusts(clue: Clue, position: Position) -> Iterator[Deduction]:
    """All places of the two crusts between which some set of digits with the right sum fits."""
    size, masks = position.grid.size, position.masks
    cells = clue.cells(position.grid)
    low, high = 1, 1 << (size - 1)
    inner = position.grid.all_digits & ~(low | high)
    kept = dict.fromkeys(cells, 0)
    places: list[tuple[int, int]] = []
    fillings: dict[int, None] = {}
    surely = {cell for cell in cells if not masks[cell] & inner}
    for first, last in combinations(range(size), 2):
        one, other = cells[first], cells[last]
        orders = [(a, b) for a, b in ((low, high), (high, low)) if masks[one] & a and masks[other] & b]
        if not orders or not surely <= {one, other}:
            continue
        between = cells[first + 1 : last]
        if too_many(inner, len(between)):
            return
        sets = list(sets_that_fill(masks, between, inner, position.grid.raised(clue.value, len(between))))
        if not sets:
            continue
        places.append((first, last))
        fillings.update(dict.fromkeys(sets))
        some, every = reduce(or_, sets), reduce(and_, sets)
        kept[one] |= reduce(or_, (a for a, _ in orders))
        kept[other] |= reduce(or_, (b for _, b in orders))
        for at, cell in enumerate(cells):
            if at not in (first, last):
                kept[cell] |= some if first < at < last else inner & ~every
    removed = removed_by(position, kept)
    if removed:
        counts = tuple(sorted({last - first - 1 for first, last in places}))
        told = len(places) == 1 and counts[0] > 0 and len(fillings) <= 3
        claim = Apart(counts, tuple(map(digits_in, fillings)) if told else ())
        rung = Rung.SIMPLE if len(places) == 1 else Rung.PAIR
        yield Deduction(rung, len(cells), cells, removed, clue.refer(Sandwich.kind, position.grid), claim)


def _goes_on(grid: Grid, total: int, line: Sequence[int]) -> bool:
    """Can a row that begins with these digits still have the sum?"""
    crusts = [at for at, digit in enumerate(line) if digit in (1, grid.size)]
    inside = line[crusts[0] + 1 : crusts[1] if len(crusts) == 2 else None] if crusts else []
    so_far = sum(inside) - grid.raised(0, len(inside))
    return so_far == total if len(crusts) == 2 else so_far <= total
