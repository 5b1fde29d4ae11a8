"""A puzzle with so many kinds of marks that their key, set as usual, leaves too little room for its grid.

In: the puzzle and a page of its own. Out: a `Block` whose key stands in two columns over the grid, or goes on beside
the grid and below it, whichever lets its cells be larger; or one whose rules stand on the page that faces its grid.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group
from bookmaker.layout.art.gridart import outside
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.block import GUTTER, Block
from bookmaker.layout.pages.pointers import pointers_width
from bookmaker.layout.pages.sizing import BESIDE, fit_above
from bookmaker.layout.pages.words import NARROWEST, head_above, key_entries, note_rows, plain_rows, rules_above
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import Row
from bookmaker.layout.spec import Layout

STEP = mm(0.5)
"""Cells are tried from the largest down, by so much."""

Entry = tuple[Row, ...]


def fit_crowded(puzzle: BookPuzzle, layout: Layout, depth: float, most: float) -> Block | None:
    """The puzzle alone on a page, its key flowing around the grid; None where that does not help."""
    wide, hang = layout.measure, layout.puzzles.hang
    column = (wide - GUTTER) / 2
    rules = (
        *plain_rows(puzzle, layout, wide, hang),
        Row(layout.line / 2),
        in_two(key_entries(puzzle, layout, column), column + GUTTER),
    )
    over = fit_above(puzzle, layout, wide, depth, hang, most, rules)
    least = max(over.cell + STEP, over.least)
    around = (fit_around(puzzle, layout, depth, cell) for cell in _sizes(layout, most, least))
    best = next((block for block in around if block is not None), over)
    return best if best.fits else None


def fit_around(puzzle: BookPuzzle, layout: Layout, depth: float, cell: float) -> Block | None:
    """The puzzle with cells of this size, as much of its key beside the grid as goes there, the rest below in two
    columns; None where there is no room for that."""
    line, wide, hang, claim = layout.line, layout.measure, layout.puzzles.hang, outside(puzzle.puzzle)
    grid = puzzle.puzzle.grid
    across, down = (grid.width + claim.left + claim.right) * cell, (grid.height + claim.top + claim.bottom) * cell
    room = wide - across - GUTTER
    if room < max(BESIDE, NARROWEST * layout.type.text.size):
        return None
    head = (*head_above(puzzle, layout, wide, hang), Row(line / 2), *plain_rows(puzzle, layout, wide, hang))
    beside = _filling(key_entries(puzzle, layout, room), down)
    column = (wide - GUTTER) / 2
    rest = key_entries(puzzle, layout, column)[len(beside) :]
    below = (in_two(rest, column + GUTTER), Row(line / 2)) if rest else ()
    note = note_rows(puzzle, layout, wide - pointers_width(puzzle, layout, wide) - line)
    block = Block(
        puzzle, layout, "above", wide, depth, 0.0, cell, claim, head, note,
        beside=tuple(row for entry in beside for row in entry), below=below,
    )  # fmt: skip
    return block if block.highest - block.over <= block.lowest - block.over else None


def fit_spread(puzzle: BookPuzzle, layout: Layout, depth: float, most: float) -> Block | None:
    """The puzzle on two pages that face each other, the rules and the note on the left one, what finds no room there
    under the grid; None where even that is too little."""
    line, wide, hang = layout.line, layout.measure, layout.puzzles.hang
    head = (*head_above(puzzle, layout, wide, hang), Row(line / 2))
    usual = (*head, *rules_above(puzzle, layout, wide, hang))
    if height(usual) <= depth:
        note = note_rows(puzzle, layout, wide - hang)
        if note and height((*usual, *note)) + line <= depth:
            shifted = (replace(row, items=(Group(row.told, hang),), tags=()) for row in note)
            usual, puzzle = (*usual, Row(line), *shifted), replace(puzzle, note="", link="")
        block = fit_above(puzzle, layout, wide, depth, hang, most, ())
        return replace(block, facing=usual)
    head, column = (*head, *plain_rows(puzzle, layout, wide, hang), Row(line / 2)), (wide - GUTTER) / 2
    entries = key_entries(puzzle, layout, column)
    for count in range(len(entries), 0, -1):
        facing = (*head, in_two(entries[:count], column + GUTTER))
        if height(facing) <= depth:
            below = (in_two(entries[count:], column + GUTTER), Row(line / 2)) if count < len(entries) else ()
            block = fit_above(puzzle, layout, wide, depth - height(below), hang, most, ())
            return replace(block, facing=facing, below=below, depth=depth)
    return None


def in_two(entries: Sequence[Entry], step: float) -> Row:
    """Entries in two columns, `step` from the left of one to the left of the other, as even as may be."""
    sides = ((entries[:at], entries[at:]) for at in range(len(entries) + 1))
    left, right = min(sides, key=lambda sides: (max(map(_tall, sides)), len(sides[1])))
    items = (
        item
        for side, x in ((left, 0.0), (right, step))
        for item in stacked((row for entry in side for row in entry), x, 0.0, {})
    )
    return Row(max(_tall(left), _tall(right)), tuple(items))


def _tall(entries: Sequence[Entry]) -> float:
    return sum(map(height, entries))


def _filling(entries: Sequence[Entry], depth: float) -> Sequence[Entry]:
    """The first entries that find room in this depth."""
    count = max(at for at in range(len(entries) + 1) if _tall(entries[:at]) <= depth)
    return entries[:count]


def _sizes(layout: Layout, most: float, least: float) -> Iterator[float]:
    cell = max(most, layout.puzzles.most)
    while cell > least:
        yield cell
        cell -= STEP
    yield least
