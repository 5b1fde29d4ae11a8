"""Placements as a presenter tells them: runs of one digit, houses that fill up, cells that follow from each other.

In: told placements in order, none of which needs an elimination. Out: what is said of them, each named once, in that
order.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from bookmaker.puzzle.grid import Grid, HouseRef
from bookmaker.reasons import Rung
from bookmaker.reasons.singles import HiddenSingle, LastCell, NakedSingle
from bookmaker.reasons.telling import (
    Fills,
    Leaves,
    Places,
    Run,
    RunWithImages,
    Seen,
    SeenInCell,
    SeenInHouse,
    StartsHere,
    WithImage,
)
from bookmaker.tell.passages import Said
from bookmaker.trace import Traced

LINKED = 2
"""No more placements than this hang on another with “that leaves …”."""


@dataclass(frozen=True, slots=True)
class Unit:
    """Placements that are told in one breath: a run of one digit, a `house` that fills up, a single cell, or `paired`
    steps, each before its mirror image."""

    steps: tuple[Traced, ...]
    house: HouseRef | None = None
    paired: bool = False

    @property
    def first(self) -> Traced:
        """The step that begins it."""
        return self.steps[0]

    @property
    def last(self) -> Traced:
        """The step that ends it."""
        return self.steps[-1]


def units(grid: Grid, steps: Sequence[Traced]) -> Iterator[Unit]:
    """Cut placements into units, in order."""
    at = 0
    while at < len(steps):
        unit = _unit(grid, steps[at:])
        yield unit
        at += len(unit.steps)


def flow(grid: Grid, steps: Sequence[Traced], begins: bool) -> Iterator[Said]:
    """What is said of placements that follow each other; `begins` where a passage does with them."""
    before: Unit | None = None
    linked = 0
    for unit in units(grid, steps):
        first = unit.first
        follows = before is not None and len(unit.steps) == 1 and _follows(before.last, first)
        linked = linked + 1 if follows and linked < LINKED else 0
        if linked:
            yield Said(Leaves(single_of(first)), (first.number,))
        elif first.number == 1 and len(unit.steps) == 1:
            yield from _start(first)
        else:
            yield Said(_told(grid, unit, begins and before is None), tuple(step.number for step in unit.steps))
        before = unit


def single_of(told: Traced) -> Seen:
    """The claim of a placement that is a single."""
    assert isinstance(told.reason.claim, LastCell | HiddenSingle | NakedSingle)
    return told.reason.claim


def in_full(told: Traced, starts: bool = False) -> SeenInHouse | SeenInCell:
    """Why a placement is forced, in full: which digits look into its house, or what the houses of its cell hold."""
    single, view = single_of(told), told.view
    if isinstance(single, NakedSingle):
        return SeenInCell(single, view.holders, view.strikers)
    return SeenInHouse(single, view.lookers, view.struck, view.marked, starts)


def _start(told: Traced) -> Iterator[Said]:
    """The very first placement."""
    seen = in_full(told, starts=True)
    if isinstance(seen, SeenInCell) or told.kind is Rung.LAST or seen.struck or seen.marked or not seen.lookers:
        yield Said(StartsHere())
    yield Said(seen, (told.number,))


def _unit(grid: Grid, steps: Sequence[Traced]) -> Unit:
    """The first unit of some placements."""
    pairs = 0
    while _paired(steps, 2 * pairs) and _digits(steps, 2 * pairs) == _digits(steps, 0):
        pairs += 1
    if pairs:
        return Unit(tuple(steps[: 2 * pairs]), paired=True)
    end = 1
    while end < len(steps) and steps[end].digit == steps[0].digit and not _paired(steps, end):
        end += 1
    house = None
    if end == 1:
        house, end = _filling(grid, steps)
    if end == 2 and not house and _follows(steps[0], steps[1]):
        end = 1  # “that leaves …” says more than that the digits are the same
    return Unit(tuple(steps[:end]), house)


def _paired(steps: Sequence[Traced], at: int) -> bool:
    """Is the step after the one at `at` its mirror image?"""
    return at + 1 < len(steps) and steps[at + 1].mirrors == steps[at].number


def _digits(steps: Sequence[Traced], at: int) -> tuple[int, int]:
    return steps[at].digit, steps[at + 1].digit


def _follows(before: Traced, step: Traced) -> bool:
    return step.since == before.number


def _filling(grid: Grid, steps: Sequence[Traced]) -> tuple[HouseRef | None, int]:
    """The house that the first placements fill up between them, and how many these are."""
    for end in range(len(steps), 1, -1):
        if len({step.digit for step in steps[:end]}) == end:
            for house in grid.houses:
                if house.ref in steps[end - 1].closes and all(step.cell in house.cells for step in steps[:end]):
                    return house.ref, end
    return None, 1


def _told(grid: Grid, unit: Unit, begins: bool) -> Places | Fills | Run | WithImage | RunWithImages:
    first = unit.first
    if unit.paired:
        ones, others = unit.steps[::2], unit.steps[1::2]
        if len(ones) == 1:
            return WithImage(single_of(first), others[0].placed[0])
        cells, images = (tuple(step.cell for step in steps) for steps in (ones, others))
        return RunWithImages(first.digit, cells, others[0].digit, images)
    if unit.house:
        return Fills(unit.house, tuple(step.placed[0] for step in unit.steps))
    if len(unit.steps) == 1:
        return Places(single_of(first), first.of_digit == grid.size, begins)
    cells = tuple(step.cell for step in unit.steps)
    chained = len(cells) > 2 and all(_follows(one, other) for one, other in pairwise(unit.steps))
    return Run(
        first.digit, cells, unit.last.of_digit == grid.size, chained, _band(grid, cells), starts=first.number == 1
    )


def _band(grid: Grid, cells: Sequence[int]) -> str:
    """“top” to “bottom”, “left” to “right”: the row or column of boxes in which all cells lie, where there are three of
    each."""
    if grid.box is None or grid.overlaps or grid.size // grid.box[0] != 3 or grid.size // grid.box[1] != 3:
        return ""
    bands = {grid.row(cell) // grid.box[0] for cell in cells}
    stacks = {grid.column(cell) // grid.box[1] for cell in cells}
    if len(bands) == 1:
        return ("top", "middle", "bottom")[bands.pop()]
    return ("left", "centre", "right")[stacks.pop()] if len(stacks) == 1 else ""
