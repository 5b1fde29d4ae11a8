"""Cages: digits in a cage differ and add up to its total, if it has one; with `repeats: yes` they need not differ.

Manifest: a picture of letters with a table of totals, or a list of cells, each with or without a total. A cage hangs
together by sides, has at most as many cells as there are digits, and shares no cell with another.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from random import Random

from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Bounds
from bookmaker.rules.common.caged import CagedRule, Cells
from bookmaker.rules.common.cagereading import Typed
from bookmaker.rules.common.contract import Deduction, Relabelling, Sample
from bookmaker.rules.common.deducing import house_sums
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.deducing.combinations import combination_steps
from bookmaker.rules.common.deducing.enumeration import tried_out
from bookmaker.rules.common.deducing.house_sums import Block
from bookmaker.rules.common.deducing.sums import different_limits, digit_sets, open_limits, sum_limits, too_many
from bookmaker.rules.common.drawing.fence import DASHES
from bookmaker.rules.common.parts import Part
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.rules.common.words.wording import counted
from bookmaker.solve.problem import Combination, Constraint, Different, Sum
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, read_whole


@dataclass(frozen=True)
class Cage(CagedRule[int]):
    """`cages` are cells in the grid's order with a total, 0 where there is none."""

    kind = "cage"
    title = "Cages"
    noun = "cage"
    typed = (
        "lines",
        "[cells: text, total: whole]",
        "picture",
        "picture: picture, totals: numbers, repeats: switch",
        "cages: items, repeats: switch",
    )
    example = """\
cage:
  - {cells: r1c1-r1c3 r2c1, total: 12}
  - {cells: r5c5 r5c6, total: 11}
  - r8c8 r8c9 r9c8
"""
    figures = "number"
    options = ("repeats",)
    texture = DASHES
    firm = True
    bare = 0
    needs_figure = False

    from_zero = True

    repeats: bool = False

    def suits(self, grid: Grid) -> bool:
        """Letters have no total."""
        return super().suits(grid) or (grid.lettered and not any(total for _, total in self.cages))

    @property
    def digits_differ(self) -> bool:
        return not self.repeats

    @classmethod
    def read_value(cls, node: Node, what: str, grid: Grid, collector: Collector) -> int | None:
        return read_whole(node, what, collector, 1, 999)

    def check(self, typed: Sequence[Typed[int]], grid: Grid, collector: Collector) -> None:
        for one in typed:
            count, name = len(one.area.cells), one.called(self.noun, grid)
            if self.repeats and not one.value:
                text = f"{name} has no total, and its digits may repeat: it asks nothing"
                collector.error(one.place, "cage-asks-nothing", text, "give it a total, or leave it out")
            if not one.value:
                continue
            limits = open_limits(grid, one.area.cells) if self.repeats else different_limits(count, grid)
            if not limits[0] <= one.value <= limits[1]:
                here = "this one" if self.repeats else f"a cage of {counted(count, 'cell')}"
                can = f"adds up to {limits[0]} at least and {limits[1]} at most"
                can = can if count > 1 else f"holds {limits[0]} to {limits[1]}"
                text = f"{name} can't add up to {one.value}: {here} {can}"
                collector.error(one.place, "cage-total", text)

    @classmethod
    def told(cls, value: int) -> tuple[str, tuple[int, ...]]:
        return "", (value,) if value else ()

    @classmethod
    def of_part(cls, part: Part) -> int:
        return sum(part.value)

    @classmethod
    def typed_as(cls, value: int, grid: Grid) -> str:
        return str(value) if value else ""

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        inside = [digits[cell] for cell in cells]
        total = () if grid.lettered else (sum(map(grid.worth, inside)),)
        if len(set(inside)) == len(inside) or (self.repeats and total):
            yield Part(tuple(sorted(cells)), "", total)

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for cells, total in self.cages:
            raised = grid.raised(total, len(cells))
            if total and not self.repeats and not too_many(grid.all_digits, len(cells)):
                yield Combination(cells, frozenset(digit_sets(grid.all_digits, len(cells), raised)))
                continue
            if total:
                yield Sum(tuple((cell, 1) for cell in cells), raised, raised)
            if len(cells) > 1 and not self.repeats:
                yield Different(cells)

    def relabelling(self, grid: Grid) -> Relabelling:
        return "reversed" if any(total for _, total in self.cages) else "any"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cells, total in self.cages:
            inside = [digits[cell] for cell in cells]
            if (total and sum(map(grid.worth, inside)) != total) or (
                not self.repeats and len(set(inside)) < len(inside)
            ):
                return False
        return True

    def sentence(self, words: Catalogue) -> str:
        totals = [total for _, total in self.cages]
        among = "totals" if all(totals) else "some" if any(totals) else "none"
        return words.say(f"cage-sentence-{'repeats' if self.repeats else among}", n=len(totals))

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for cells, total in self.cages:
            yield words.say("cage-spoken", total=str(total or "none"), cells=cells_said(words, grid, cells))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((((0, 1), 12),)), CLASSIC, 1, 2)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Combinations that fit, what every combination holds, all fillings of a cage, and sums over houses."""
        for cells, total in self.cages:
            if total and any(position.masks[cell].bit_count() > 1 for cell in cells):
                mark = self.refer(cells, total, position.grid)
                limited = self.repeats or too_many(position.grid.all_digits, len(cells))
                yield from (_limits if limited else _combinations)(position, cells, total, mark)
        blocks = tuple(Block(cells, total) for cells, total in self.cages if total)
        yield from house_sums.steps(position, blocks, self.kind)


def _combinations(position: Position, cells: Cells, total: int, mark: MarkRef) -> Iterator[Deduction]:
    grid = position.grid
    sets = digit_sets(grid.all_digits, len(cells), grid.raised(total, len(cells)))
    yield from combination_steps(position, cells, sets, mark)


def _limits(position: Position, cells: Cells, total: int, mark: MarkRef) -> Iterator[Deduction]:
    """Where digits may repeat: what the other cells leave of the total for each; then all fillings."""
    spans, grid = [], position.grid
    for cell in cells:
        least, most = sum_limits(position, [other for other in cells if other != cell])
        spans.append((cell, max(1, grid.raised(total - most, 1)), min(grid.size, grid.raised(total - least, 1))))
    removed = removed_by(position, {cell: span_mask(low, high) for cell, low, high in spans if low <= high})
    if removed and all(low <= high for _, low, high in spans):
        yield Deduction(Rung.SIMPLE, len(cells), cells, removed, mark, Bounds(tuple(spans)))
    else:
        yield from tried_out(position, cells, _adds_up(len(cells), grid.raised(total, len(cells))), mark)


@lru_cache(maxsize=256)
def _adds_up(count: int, total: int) -> Callable[[Sequence[int]], bool]:
    """May digits so far, of which some may be equal, still come to the total; do all of them?"""

    def fits(digits: Sequence[int]) -> bool:
        left = total - sum(digits)
        return left >= count - len(digits) if len(digits) < count else left == 0

    return fits
