"""Pages of puzzles that would leave room: what stands on them is given all of it.

In: the slots of a page. Out: the slots of the same puzzles, in the same order, on the same page.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bookmaker.layout.pages.block import Block
from bookmaker.layout.pages.fitting import LARGEST, fit_alone, fit_half, good, share
from bookmaker.layout.pages.sizing import fit_beside
from bookmaker.layout.spec import Layout


@dataclass(frozen=True, slots=True)
class Slot:
    """A block at its place in the type area."""

    block: Block
    x: float
    y: float


def shared_out(page: Sequence[Slot], layout: Layout, depth: float, spread: bool) -> list[Slot]:
    """Puzzles below each other on even shares; one that needs more has it, and the others share the rest."""
    wide, usual = share(layout, depth)
    needed = [slot.block.depth for slot in page]
    if any(slot.block.text != "beside" for slot in page):
        return [*page]
    if len(page) == 1 and needed[0] > usual + 0.01:
        alone = fit_alone(page[0].block.puzzle, layout, depth, spread)
        return [Slot(alone, 0.0, 0.0)] if good(alone) else [*page]
    slots, top = [], 0.0
    for slot, deep in zip(page, shares(needed, layout, depth), strict=True):
        block = fit_beside(slot.block.puzzle, layout, wide, deep, usual)
        slots.append(Slot(block or slot.block, 0.0, top))
        top += deep + layout.puzzles.gap
    return slots


def shares(needed: Sequence[float], layout: Layout, depth: float) -> list[float]:
    """The depths of blocks below each other that need so much at least."""
    rows = layout.puzzles.rows
    left, more = depth - (rows - 1) * layout.puzzles.gap, 0
    for deep in sorted(needed, reverse=True):
        if deep <= left / (rows - more):
            break
        left, more = left - deep, more + 1
    even = left / max(1, rows - more)
    return [max(deep, even) for deep in needed]


def filled(page: Sequence[Slot], layout: Layout, depth: float, spread: bool) -> Sequence[Slot]:
    """A page on which a half or more would be left: the last puzzles on half a page each, one alone on all of it."""
    if layout.puzzles.rows * layout.puzzles.columns == 1:
        return page
    if len(page) == 1:
        only = page[0].block
        alone = fit_alone(only.puzzle, layout, depth, spread, LARGEST)
        return [Slot(alone, 0.0, 0.0)] if good(alone) and alone.cell >= only.cell else page
    for at in range(len(page)):
        before = page[:at]
        top = max((slot.y + slot.block.depth + layout.puzzles.gap for slot in before), default=0.0)
        halves = [*_halves(page[at:], top, layout, depth)]
        if len(halves) == len(page) - at:
            return [*before, *halves]
    return page


def _halves(slots: Sequence[Slot], top: float, layout: Layout, depth: float) -> Iterator[Slot]:
    """Those of the puzzles that find room on half a page each, from this height on."""
    for slot in slots:
        block = fit_half(slot.block.puzzle, layout, depth)
        if block and block.cell >= slot.block.cell and top + block.depth <= depth + 0.01:
            yield Slot(block, 0.0, top)
            top += block.depth + layout.puzzles.gap
