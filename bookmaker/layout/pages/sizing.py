"""How large a grid can be on a place, with its text above it or beside it, and grids beside or below each other alike.

In: a puzzle, the layout, and the width and depth of the place in points. Out: a `Block`, measured; or None where the
puzzle does not fit so.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import fields, replace
from math import floor

from bookmaker.book.contents import BookPuzzle
from bookmaker.layout.art.coordinates import numbered
from bookmaker.layout.art.gridart import outside
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.block import GUTTER, Block, white_under
from bookmaker.layout.pages.pointers import pointers_width
from bookmaker.layout.pages.words import head_above, head_beside, note_rows, rules_above, rules_beside
from bookmaker.layout.setting.flow import height
from bookmaker.layout.setting.text import Row
from bookmaker.layout.spec import Layout
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules.common.drawing.frame import Margins

SMALLER = 1.3
"""Cells of a grid of fewer than nine rows may be so much larger than the largest of a usual one."""

BESIDE = mm(44)
"""The narrowest column of text beside a grid."""

TIGHT = mm(40)
"""The narrowest beside one with clues outside it, which have white space around them."""

WIDER = 0.5
"""A column is wider by less than this share where its text is long."""

COLUMN_STEP = mm(2)
"""Columns are tried at such steps."""


def fit_above(
    puzzle: BookPuzzle,
    layout: Layout,
    wide: float,
    depth: float,
    hang: float = 0.0,
    most: float = 0.0,
    rules: Sequence[Row] | None = None,
) -> Block:
    """The puzzle with its text above the grid. It `fits` unless its cells come out smaller than the layout's least.
    `most` is the size of the largest cells, unless the layout allows larger ones. `rules` are set as usual, unless they
    are set already.

    The grid stands right under its text and takes the whole width if it can; a narrower one begins where the text does.
    """
    line, slots, claim = layout.line, layout.puzzles, _claim(puzzle, layout)
    head = (
        *head_above(puzzle, layout, wide, hang),
        Row(line / 2),
        *(rules_above(puzzle, layout, wide, hang) if rules is None else rules),
    )
    grid = puzzle.puzzle.grid
    most = max(max(most, slots.most) * (SMALLER if grid.extent < CLASSIC.size else 1.0), slots.grid / grid.width)
    beside_note = pointers_width(puzzle, layout, wide) + line
    note = note_rows(puzzle, layout, wide - max(hang, claim.left * most) - beside_note)
    tallest = (depth - height(head) - max(height(note), line) - (white_under(layout) + 1) * line) / (
        grid.height + claim.top + claim.bottom
    )
    cell = min(most, tallest, _widest(grid.width, claim, wide, slots.beyond))
    return Block(puzzle, layout, "above", wide, depth, hang, cell, claim, head, note)


def _widest(size: int, claim: Margins, wide: float, beyond: float) -> float:
    """The widest cells of a grid on a place that clues may leave by so much at either side."""
    sides = ((), (claim.left,), (claim.right,), (claim.left, claim.right))
    return min((wide + len(those) * beyond) / (size + sum(those)) for those in sides)


def fit_beside(
    puzzle: BookPuzzle, layout: Layout, wide: float, depth: float, usual: float | None = None
) -> Block | None:
    """The puzzle with its text beside the grid; None where its cells would be too small or its text too long.

    The text is as wide as it is beside a grid of nine cells on a place of the `usual` depth, so that the grids of a
    book begin on one line; wider where it is too long for that, narrower where clues outside the grid ask for it.
    """
    columns = _columns(layout, wide, depth if usual is None else usual)
    blocks = (_beside(puzzle, layout, wide, depth, column) for column in columns)
    return next((block for block in blocks if block.fits and block.text_depth <= depth), None)


def depth_beside(puzzle: BookPuzzle, layout: Layout, wide: float, most: float, usual: float) -> float | None:
    """The least depth, up to `most`, on which `fit_beside` has a place for the puzzle; None where there is none."""
    blocks = [_beside(puzzle, layout, wide, most, column) for column in _columns(layout, wide, usual)]
    depths = [
        max(block.text_depth, block.grid_height * min(1.0, block.least / block.cell)) for block in blocks if block.fits
    ]
    return min((depth for depth in depths if depth <= most), default=None)


def _columns(layout: Layout, wide: float, depth: float) -> Iterator[float]:
    """Widths of a column of text beside a grid, the usual one first."""
    usual = max(BESIDE, wide - GUTTER - 9 * min(layout.puzzles.most, depth / 9))
    yield usual
    yield from (usual + at * COLUMN_STEP for at in range(1, floor(WIDER * usual / COLUMN_STEP)))
    yield from (usual - at * COLUMN_STEP for at in range(1, floor((usual - TIGHT) / COLUMN_STEP + 1.01)))


def _beside(puzzle: BookPuzzle, layout: Layout, wide: float, depth: float, column: float) -> Block:
    """The puzzle with its text in a column of this width, whether it fits or not."""
    slots, claim, grid = layout.puzzles, _claim(puzzle, layout), puzzle.puzzle.grid
    across, down = grid.width + claim.left + claim.right, grid.height + claim.top + claim.bottom
    cell = min(slots.most, depth / down, (wide - GUTTER - column) / across)
    head = (*head_beside(puzzle, layout, column), Row(layout.line), *rules_beside(puzzle, layout, column))
    note = note_rows(puzzle, layout, column)
    return Block(puzzle, layout, "beside", wide, depth, column, cell, claim, head, note)


def levelled(blocks: Sequence[Block]) -> tuple[Block, ...]:
    """Blocks beside each other: frames on one line, and those of one size equal, smaller where one has more to say.
    They stay as they are where that would make cells too small."""
    line = blocks[0].layout.line
    frame, under = max(block.highest for block in blocks), max(block.under for block in blocks)
    cells: dict[int, float] = {}
    for block in blocks:
        size = block.puzzle.puzzle.grid.extent
        tallest = (block.depth - frame - under - line) / (size + block.claim.bottom)
        cells[size] = min(cells.get(size, block.cell), block.cell, tallest)
    made = [replace(block, cell=cells[block.puzzle.puzzle.grid.extent]) for block in blocks]
    if not all(block.fits for block in made):
        return tuple(blocks)
    frame = max(block.highest for block in made)
    return tuple(replace(block, frame=frame) for block in made)


def in_line(blocks: Sequence[Block]) -> tuple[Block, ...]:
    """Blocks one below the other, their text beside them: grids of one size with clues outside get the same room for
    these, so that their frames are equal and in one line. They stay as they are where cells would be too small."""
    size = blocks[0].puzzle.puzzle.grid.extent
    if not all(block.puzzle.puzzle.grid.extent == size and block.claim != Margins() for block in blocks):
        return tuple(blocks)
    claim = Margins(*(max(getattr(block.claim, field.name) for block in blocks) for field in fields(Margins)))
    across, down = size + claim.left + claim.right, size + claim.top + claim.bottom
    cell = min(min(block.cell, block.depth / down, (block.width - GUTTER - block.hang) / across) for block in blocks)
    made = tuple(replace(block, claim=claim, cell=cell) for block in blocks)
    return made if all(block.fits for block in made) else tuple(blocks)


def _claim(puzzle: BookPuzzle, layout: Layout) -> Margins:
    """Room at each side of the grid, in cells: for clues, and for coordinates where the layout has them."""
    return numbered(puzzle.puzzle) if layout.puzzles.coordinates else outside(puzzle.puzzle)
