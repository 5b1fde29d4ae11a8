"""Open cages: digits in a cage differ, and of its total is only told that it is even or odd, or which others have it.

Manifest: as cages are typed, with a `total` that is “even”, “odd” or a capital letter. Cages with the same letter have
the same total, which is to be found.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations, pairwise
from math import comb
from random import Random
from string import ascii_uppercase

from bookmaker.display.items import Rect, Stroke
from bookmaker.display.shapes import circle
from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import CommonSum, OnlyDigits
from bookmaker.reasons.marks import Lettered
from bookmaker.rules.common.caged import CagedRule, Cells
from bookmaker.rules.common.cagereading import Typed
from bookmaker.rules.common.contract import Deduction, Relabelling, Sample
from bookmaker.rules.common.deducing.automata import Machine, machine
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.deducing.sums import different_limits, sum_limits, worth_from
from bookmaker.rules.common.drawing.fence import DASHES, INSET, corner_claim, corner_figures, fence
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Outlined, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN
from bookmaker.rules.common.parts import Part
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.solve.problem import Combination, Constraint, Different, Sum
from bookmaker.source.diagnostics import Collector, quoted
from bookmaker.source.placed import Node, read_text

PARITIES = ("even", "odd")

LISTABLE = 200
"""So many sets of digits are told to the engine one by one; more by their parity alone."""

FEWEST, FEW = 4, 7
"""So many cells of a cage by parity are tried out, and so many of two cages with one letter together."""


@dataclass(frozen=True)
class OpenCage(CagedRule[str]):
    """`cages` are cells in the grid's order, each with “even”, “odd” or its letter."""

    kind = "open-cage"
    title = "Open cages"
    noun = "open cage"
    typed = ("[cells: text, total: text]", "picture: picture, totals: names")
    example = """\
open-cage:
  - {cells: r1c1-r1c3, total: even}
  - {cells: r5c5 r5c6, total: odd}
  - {cells: r7c2 r8c2, total: A}      # the same total as
  - {cells: r8c7-r8c9, total: A}      # this one
"""
    figures = "number"
    texture = DASHES
    bare = ""

    from_zero = True

    @classmethod
    def read_value(cls, node: Node, what: str, grid: Grid, collector: Collector) -> str | None:
        text = read_text(node, what, collector)
        if text is None:
            return None
        if text.lower() in PARITIES:
            return text.lower()
        if len(text) == 1 and text in ascii_uppercase:
            return text
        said = f"{what} should be “even”, “odd” or a capital letter, not {quoted(text)}"
        hint = "cages with a number for a total stand under “cage:”" if text.isdigit() else ""
        collector.error(node.place, "not-an-open-total", said, hint)
        return None

    def check(self, typed: Sequence[Typed[str]], grid: Grid, collector: Collector) -> None:
        first: dict[str, Typed[str]] = {}
        alone = {one.value: one for one in typed if one.value not in PARITIES}
        for one in typed:
            if one.value in (None, *PARITIES):
                if len(one.area.cells) == grid.size and sum(map(grid.worth, grid.digits)) % 2 != (one.value == "odd"):
                    text = f"{one.called(self.noun, grid)} holds every digit, which does not make an {one.value} total"
                    collector.error(one.place, "cage-parity", text)
                continue
            letter = str(one.value)
            other = first.setdefault(letter, one)
            if other is not one:
                alone.pop(letter, None)
                limits = [different_limits(len(each.area.cells), grid) for each in (one, other)]
                if max(low for low, _ in limits) > min(high for _, high in limits):
                    text = f"{one.called(self.noun, grid)} can't have the total of {other.called(self.noun, grid)}"
                    collector.error(one.place, "totals-apart", text, f"both are called {letter}")
        for one in alone.values():
            text = f"{one.value} stands in one cage only, and says nothing there"
            collector.error(one.place, "letter-alone", text, "give another cage the same letter")

    @classmethod
    def told(cls, value: str) -> tuple[str, tuple[int, ...]]:
        return value, ()

    @classmethod
    def of_part(cls, part: Part) -> str:
        return part.name if part.name in (*PARITIES, *ascii_uppercase) else ""

    @classmethod
    def typed_as(cls, value: str, grid: Grid) -> str:
        return value

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """Even or odd, for a letter says nothing of one cage."""
        inside = [grid.worth(digits[cell]) for cell in cells]
        if len(set(inside)) == len(inside):
            yield Part(tuple(sorted(cells)), PARITIES[sum(inside) % 2])

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for cells, value in self.cages:
            if value in PARITIES and comb(grid.size, len(cells)) <= LISTABLE:
                yield Combination(cells, _sets(grid.size, len(cells), _parity(value, cells, grid)))
                continue
            if len(cells) > 1:
                yield Different(cells)
            if value in PARITIES:
                yield _machine(_parity(value, cells, grid), grid.size).over(cells)
        yield from self.asked_besides(grid)

    def asked_besides(self, grid: Grid) -> Iterator[Constraint]:
        """That cages with one letter have one total."""
        for _, group in self._lettered():
            yield from (_equal(one, other, grid) for one, other in pairwise(group))

    def meaning(self, grid: Grid) -> Iterator[Constraint]:
        """The totals of any two cages with one letter are equal, in whatever order they were typed."""
        yield from self.constraints(grid)
        for _, group in self._lettered():
            yield from (_equal(one, other, grid) for one, other in combinations(group, 2))

    def _lettered(self) -> Iterator[tuple[str, list[Cells]]]:
        groups: dict[str, list[Cells]] = {}
        for cells, value in self.cages:
            if value and value not in PARITIES:
                groups.setdefault(value, []).append(cells)
        return iter(groups.items())

    def relabelling(self, grid: Grid) -> Relabelling:
        return "reversed" if all(len(set(map(len, group))) == 1 for _, group in self._lettered()) else "none"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        totals: dict[str, int] = {}
        for cells, value in self.cages:
            inside = [grid.worth(digits[cell]) for cell in cells]
            if len(set(inside)) < len(inside):
                return False
            if value == "even" and sum(inside) % 2 == 1:
                return False
            if value == "odd" and sum(inside) % 2 == 0:
                return False
            if value not in ("", "even", "odd") and totals.setdefault(value, sum(inside)) != sum(inside):
                return False
        return True

    def sentence(self, words: Catalogue) -> str:
        values = [value for _, value in self.cages]
        there = [parity for parity in PARITIES if parity in values]
        return words.say(
            "open-cage-sentence",
            n=len(values),
            parities="both" if len(there) == 2 else there[0] if there else "none",
            alone="yes" if len(set(values)) == 1 else "no",
            letters="yes" if any(value not in PARITIES for value in values) else "no",
        )

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for cells, value in self.cages:
            yield words.say("open-cage-spoken", value=value, cells=cells_said(words, grid, cells))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        rim = Stroke(frame.thin() + 0.1, THIN)
        for cells, value in self.cages:
            of = (f"the {self.noun} at {frame.grid.name(cells[0])}",)
            yield from fence(frame, cells, self.texture, of)
            if value not in PARITIES:
                for item in corner_figures(frame, cells[0], value) if value else ():
                    yield Mark(Layer.FIGURE, item, of)
                continue
            (x, y), box = frame.corner(cells[0]), frame.box(corner_claim(cells[0], _AS_WIDE))
            wide, high = (box.right - box.left) * frame.cell, (box.bottom - box.top) * frame.cell
            left, top, half = x + box.left * frame.cell, y + box.top * frame.cell, 0.4 * min(wide, high)
            yield Mark(Layer.FIGURE, Rect(left, top, wide, high, fill=1.0), of)
            mx, my = left + wide / 2, top + high / 2
            sign = Rect(mx - half, my - half, 2 * half, 2 * half, rim) if value == "even" else None
            yield Mark(Layer.FIGURE, sign or circle((mx, my), 1.1 * half, rim), of, "sign")

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for cells, value in self.cages:
            yield Outlined(cells, INSET, self.firm)
            if value:
                yield corner_claim(cells[0], _AS_WIDE if value in PARITIES else value)

    @classmethod
    def sample(cls) -> Sample:
        cages = (((0, 1), "even"), ((9, 10), "odd"), ((18, 19), "A"), ((27, 28), "A"))
        return Sample(cls(cages), CLASSIC, 4, 2)

    def key(self) -> Sample:
        """With the sorts that the puzzle has, one below the other."""
        sorts = dict.fromkeys(value if value in PARITIES else "A" for _, value in sorted(self.cages, key=_by_sort))
        rows = (CLASSIC.size * row for row in range(len(sorts)))
        shown = tuple(((row, row + 1), value) for row, value in zip(rows, sorts, strict=True))
        return Sample(OpenCage(shown), CLASSIC, len(shown), 2)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        groups = (self._refer_all(letter, group) for letter, group in self._lettered())
        return (*(self.refer(cells, value, grid) for cells, value in self.cages), *groups)

    def refer(self, cells: Cells, value: str, grid: Grid) -> MarkRef:
        return MarkRef.at(self.kind, cells, variety=value if value in PARITIES else "")

    def _refer_all(self, letter: str, group: Sequence[Cells]) -> MarkRef:
        return MarkRef(self.kind, tuple(cell for cells in group for cell in cells), Lettered(letter), letter)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """The parity of the last open cell, fillings of a cage; and limits of totals that are the same."""
        for cells, value in self.cages:
            if value in PARITIES and any(position.masks[cell].bit_count() > 1 for cell in cells):
                yield from self._by_parity(position, cells, value)
        for letter, group in self._lettered():
            yield from self._same(position, group, self._refer_all(letter, group))

    def _by_parity(self, position: Position, cells: Cells, value: str) -> Iterator[Deduction]:
        masks, grid = position.masks, position.grid
        parity = _parity(value, cells, grid)
        odd, even = mask_of(grid.digits[0::2]), mask_of(grid.digits[1::2])
        mixed = [cell for cell in cells if masks[cell] & odd and masks[cell] & even]
        mark, found = self.refer(cells, value, grid), False
        if len(mixed) == 1:
            rest = sum(1 for cell in cells if cell not in mixed and masks[cell] & odd)
            kept = even if rest % 2 == parity else odd
            removed = removed_by(position, {mixed[0]: kept})
            if removed:
                claim = OnlyDigits((mixed[0],), digits_in(kept))
                yield Deduction(Rung.SIMPLE, len(cells), cells, removed, mark, claim)
                found = True
        if not found and len(cells) <= FEWEST:
            yield from tried_out(position, cells, _parity_fits(len(cells), parity), mark)

    def _same(self, position: Position, group: Sequence[Cells], mark: MarkRef) -> Iterator[Deduction]:
        grid = position.grid
        limits = [_limits(position, cells) for cells in group]
        least, most = max(low for low, _ in limits), min(high for _, high in limits)
        if least > most:
            return
        kept: dict[int, int] = {}
        for cells in group:
            for cell in cells:
                others = tuple(other for other in cells if other != cell)
                low, high = _limits(position, others) if others else (0, 0)
                kept[cell] = worth_from(grid, least - high, most - low)
        removed = removed_by(position, kept)
        if removed and all(kept.values()):
            claim = CommonSum(tuple(range(least, most + 1)))
            yield Deduction(Rung.PAIR, len(group), mark.cells, removed, mark, claim)
            return
        for one, other in combinations(group, 2):
            if len(one) + len(other) <= FEW:
                fits = _same_total(len(one), len(other), _apart(one, other, grid))
                yield from tried_out(position, one + other, fits, mark)


def _by_sort(cage: tuple[Cells, str]) -> int:
    """Even before odd before letters."""
    return PARITIES.index(cage[1]) if cage[1] in PARITIES else len(PARITIES)


def _parity(value: str, cells: Cells, grid: Grid) -> int:
    """0 or 1: what the sum of the digits' own numbers leaves over, divided by 2."""
    return grid.raised(PARITIES.index(value), len(cells)) % 2


def _equal(one: Cells, other: Cells, grid: Grid) -> Sum:
    apart = _apart(one, other, grid)
    return Sum((*((cell, 1) for cell in one), *((cell, -1) for cell in other)), apart, apart)


def _apart(one: Cells, other: Cells, grid: Grid) -> int:
    """How far apart the sums of two cages are by the digits' own numbers, if their totals are the same."""
    return grid.raised(0, len(one)) - grid.raised(0, len(other))


_AS_WIDE = "00"
"""A square or a circle has the room of such a text."""


def _limits(position: Position, cells: Cells) -> tuple[int, int]:
    """Least and greatest sum of cells whose digits differ."""
    least, most = sum_limits(position, cells)
    low, high = different_limits(len(cells), position.grid)
    return max(least, low), min(most, high)


@lru_cache(maxsize=64)
def _sets(size: int, count: int, parity: int) -> frozenset[int]:
    ways = combinations(range(1, size + 1), count)
    return frozenset(mask_of(way) for way in ways if sum(way) % 2 == parity)


@lru_cache(maxsize=16)
def _machine(parity: int, size: int) -> Machine:
    return machine(range(1, size + 1), 0, lambda state, digit: (state + digit) % 2, lambda state: state == parity)


@lru_cache(maxsize=64)
def _parity_fits(count: int, parity: int) -> Callable[[Sequence[int]], bool]:
    def fits(digits: Sequence[int]) -> bool:
        return digits[-1] not in digits[:-1] and (len(digits) < count or sum(digits) % 2 == parity)

    return fits


@lru_cache(maxsize=64)
def _same_total(one: int, other: int, apart: int) -> Callable[[Sequence[int]], bool]:
    """Of the digits of one cage and then of another: do they differ in each, and may the totals be the same? The sums
    of their own numbers are then so far `apart`."""

    def fits(digits: Sequence[int]) -> bool:
        if len(digits) <= one:
            return digits[-1] not in digits[:-1]
        rest = digits[one:]
        left = sum(digits[:one]) - sum(rest) - apart
        return digits[-1] not in rest[:-1] and (left == 0 if len(rest) == other else left > 0)

    return fits
