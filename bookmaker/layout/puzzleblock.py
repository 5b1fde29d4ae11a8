"""A puzzle on its place: title, rules, grid and note, all in sight of each other.

In: a puzzle and the width and depth of the place. Out: a `Block`, measured, whose `draw` makes the items once the page
numbers are known; or the reason why it does not fit.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from bookmaker.book.model import BookPuzzle
from bookmaker.display.items import Group, Item
from bookmaker.layout.flow import height, stacked
from bookmaker.layout.gridart import draw_grid, outside
from bookmaker.layout.lengths import mm
from bookmaker.layout.puzzletext import head_above, head_beside, note_rows, rules_rows
from bookmaker.layout.spec import Layout
from bookmaker.layout.text import DROP, Labels, PageNumber, Row, width
from bookmaker.rules.common.frame import Margins

GRID_LINE = 9
"""Grids of one book begin on the same line of the page, this many lines down, unless their rules are longer."""

POINTER = "Key on page "

BESIDE = mm(44)
"""The narrowest column of text beside a grid."""


@dataclass(frozen=True, slots=True)
class Block:
    """A puzzle measured for a place `width` by `depth` points: cells of `cell` points, text rows made."""

    puzzle: BookPuzzle
    layout: Layout
    text: Literal["above", "beside"]
    width: float
    depth: float
    cell: float
    claim: Margins
    head: tuple[Row, ...]

    @property
    def fits(self) -> bool:
        """Are the cells large enough? A hundredth of a point is forgiven."""
        return self.cell >= self.layout.puzzles.least - 0.01

    @property
    def grid_width(self) -> float:
        return (self.puzzle.puzzle.grid.size + self.claim.left + self.claim.right) * self.cell

    @property
    def grid_height(self) -> float:
        return (self.puzzle.puzzle.grid.size + self.claim.top + self.claim.bottom) * self.cell

    def draw(self, right: bool, labels: Labels) -> Iterator[Item]:
        """The block's items from its top left corner, for a right or a left page."""
        if self.text == "above":
            yield from self._above(labels)
        else:
            yield from self._beside(right, labels)

    def _above(self, labels: Labels) -> Iterator[Item]:
        layout = self.layout
        yield from stacked(self.head, 0.0, 0.0, labels)
        hang = layout.puzzles.hang
        x = max(0.0, min(hang - self.claim.left * self.cell, self.width - self.grid_width))
        grid_left = x + self.claim.left * self.cell
        foot = (*note_rows(self.puzzle, layout, self.width - grid_left - _pointer_room(layout), grid_left),)
        foot_height = max(height(foot), layout.line)
        lowest = self.depth - foot_height - layout.line - self.grid_height
        y = max(height(self.head) + layout.line, min(lowest, GRID_LINE * layout.line))
        yield self._grid(x, y)
        below = y + self.grid_height + layout.line * 0.5
        yield from stacked(foot, 0.0, below, labels)
        yield from self._pointer(self.width, below + (1 - DROP) * layout.line).items(labels)

    def _beside(self, right: bool, labels: Labels) -> Iterator[Item]:
        layout, gutter = self.layout, self.width - self.grid_width
        text_x = 0.0 if right else self.width - text_width(self)
        yield self._grid(gutter if right else 0.0, 0.0)
        yield from stacked(self.head, text_x, 0.0, labels)
        low = self.grid_height
        yield from self._pointer(text_x, low, "start").items(labels)
        note = note_rows(self.puzzle, layout, text_width(self), 0.0)
        yield from stacked(note, text_x, low - 1.5 * layout.line - height(note) + DROP * layout.line, labels)

    def _grid(self, x: float, y: float) -> Group:
        drawn = draw_grid(self.puzzle.puzzle, self.cell, f"grid {self.puzzle.id}")
        return Group((drawn,), x + self.claim.left * self.cell, y + self.claim.top * self.cell)

    def _pointer(self, x: float, y: float, anchor: Literal["start", "end"] = "end") -> PageNumber:
        """Where to find the key."""
        return PageNumber(x, y, POINTER, f"key {self.puzzle.id}", self.layout.type.label, 0.25, anchor)


def text_width(block: Block) -> float:
    """Width of the text beside a grid."""
    return block.width - block.grid_width - mm(8)


def fit_above(puzzle: BookPuzzle, layout: Layout, wide: float, depth: float) -> Block:
    """The puzzle with its text above the grid. It `fits` unless its cells come out smaller than the layout's least.

    The grid begins at the edge of the hanging column, as wide as the text; one of many cells may take the whole width.
    """
    head = (*head_above(puzzle, layout, wide), Row(layout.line / 2), *rules_rows(puzzle, layout, wide))
    note = note_rows(puzzle, layout, wide - layout.puzzles.hang - _pointer_room(layout), 0.0)
    claim, size, slots = outside(puzzle.puzzle), puzzle.puzzle.grid.size, layout.puzzles
    room = depth - height(head) - max(height(note), layout.line) - 2 * layout.line
    hanging = max(slots.hang, claim.left * slots.most)
    wish = (wide - hanging) / (size + claim.right) if hanging < wide / 2 else 0.0
    widest = wide / (size + claim.left + claim.right)
    tallest = room / (size + claim.top + claim.bottom)
    cell = min(slots.most, tallest, max(wish, min(widest, slots.least)))
    return Block(puzzle, layout, "above", wide, depth, cell, claim, head)


def fit_beside(puzzle: BookPuzzle, layout: Layout, wide: float, depth: float) -> Block | None:
    """The puzzle with its text beside the grid; None where the cells would be too small or the text too long."""
    claim, size, slots = outside(puzzle.puzzle), puzzle.puzzle.grid.size, layout.puzzles
    across, down = size + claim.left + claim.right, size + claim.top + claim.bottom
    cell = min(slots.most, depth / down, (wide - BESIDE - mm(8)) / across)
    if cell < slots.least - 0.01:
        return None
    measure = wide - across * cell - mm(8)
    head = (*head_beside(puzzle, layout, measure), Row(layout.line), *rules_rows(puzzle, layout, measure))
    note = note_rows(puzzle, layout, measure, 0.0)
    if height(head) + height(note) + 3 * layout.line > depth:
        return None
    return Block(puzzle, layout, "beside", wide, depth, cell, claim, head)


def _pointer_room(layout: Layout) -> float:
    return width(f"{POINTER}000", layout.type.label) + layout.line
