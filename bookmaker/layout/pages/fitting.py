"""How a puzzle stands on a page: in its share of it, on half of it, or alone.

In: a puzzle, a layout and the depth of the type area. Out: a measured `Block`; where it fits nowhere, that says so.
"""

from __future__ import annotations

from dataclasses import replace

from bookmaker.book.contents import BookPuzzle
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.block import Block
from bookmaker.layout.pages.crowded import fit_crowded, fit_spread
from bookmaker.layout.pages.sizing import depth_beside, fit_above, fit_beside
from bookmaker.layout.spec import Layout

ALONE = mm(13)
"""A puzzle too large for its share of a page has cells of up to this size on a page of its own."""

LARGEST = mm(18.5)
"""One that is left alone on its page has cells of up to this size."""


def fit(puzzle: BookPuzzle, layout: Layout, depth: float, spread: bool) -> tuple[Block, int]:
    """The puzzle in its share of a page, or on half of it, all of it or two that face each other; and how many like it
    stand beside each other. Where it does not even fit there, its block says so.

    Where shares may differ, its block is as shallow as may be.
    """
    wide, high = share(layout, depth)
    across, hang = layout.puzzles.columns, layout.puzzles.hang
    if uneven(layout):
        needed = depth_beside(puzzle, layout, wide, depth, high)
        found = fit_beside(puzzle, layout, wide, needed, high) if needed is not None else None
    elif layout.puzzles.text == "beside":
        found = fit_beside(puzzle, layout, wide, high)
    else:
        found = fit_above(puzzle, layout, wide, high, hang if across == 1 else 0.0)
    if found and good(found):
        return found, across
    half = None if uneven(layout) else fit_half(puzzle, layout, depth)
    if half:
        return half, 1
    return fit_alone(puzzle, layout, depth, spread), 1


def fit_half(puzzle: BookPuzzle, layout: Layout, depth: float) -> Block | None:
    """A puzzle on half a page, its text beside it, where a share is less than that."""
    slots = layout.puzzles
    if slots.rows * slots.columns <= 2:
        return None
    large = replace(layout, puzzles=replace(slots, most=ALONE))
    return fit_beside(puzzle, large, layout.measure, (depth - slots.gap) / 2)


def fit_alone(puzzle: BookPuzzle, layout: Layout, depth: float, spread: bool, most: float = ALONE) -> Block:
    """A puzzle on a page of its own, its cells of up to `most`; with `spread`, its rules may stand on the facing
    page."""
    alone = fit_above(puzzle, layout, layout.measure, depth, layout.puzzles.hang, most)
    if good(alone):
        return alone
    crowded = None if alone.fits else fit_crowded(puzzle, layout, depth, ALONE)
    one = crowded or alone
    facing = fit_spread(puzzle, layout, depth, ALONE) if spread and not good(one) else None
    return facing if facing and facing.cell > one.cell else one


def good(block: Block) -> bool:
    """Does the puzzle fit, its grid as wide as the layout wants it?"""
    return block.fits and block.wide >= block.layout.puzzles.grid


def uneven(layout: Layout) -> bool:
    """May puzzles have different shares of a page? Those below each other with their text beside them may."""
    slots = layout.puzzles
    return slots.text == "beside" and slots.columns == 1 and slots.rows > 1


def share(layout: Layout, depth: float) -> tuple[float, float]:
    """Width and depth of one puzzle's share of a page."""
    slots = layout.puzzles
    return (
        (layout.measure - (slots.columns - 1) * slots.gap) / slots.columns,
        (depth - (slots.rows - 1) * slots.gap) / slots.rows,
    )
