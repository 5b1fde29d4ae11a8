"""A puzzle on its place: title, rules, grid and note, all in sight of each other.

In: a puzzle and the width and depth of the place. Out: a `Block`, measured, whose `draw` makes the items once the page
numbers are known; or the reason why it does not fit.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, fields, replace
from itertools import chain, repeat
from math import floor
from typing import Literal

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, Text, untagged
from bookmaker.layout.art.checkletters import check_letters
from bookmaker.layout.art.coordinates import coordinates, numbered
from bookmaker.layout.art.gridart import art_of, digits_of, legible, lines_in, outside
from bookmaker.layout.art.gridtold import check_told, grid_told
from bookmaker.layout.art.insight import out_of_sight
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.words import (
    GRID,
    POINTER,
    head_above,
    head_beside,
    note_rows,
    rules_above,
    rules_beside,
)
from bookmaker.layout.pages.workings import workings
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import DROP, Labels, PageNumber, Row, width
from bookmaker.layout.spec import Layout, Type
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules.common.drawing.frame import Margins
from bookmaker.source.diagnostics import BookErrors

UNDER, CLOSER = 1.4, 1.0
"""White space between the rules and the grid, in lines of text; and where puzzles share a page."""

SMALLER = 1.3
"""Cells of a grid of fewer than nine rows may be so much larger than the largest of a usual one."""

POINTERS = 0.45
"""The most of a puzzle's width that pointers take on one line."""

BESIDE = mm(44)
"""The narrowest column of text beside a grid."""

TIGHT = mm(40)
"""The narrowest beside one with clues outside it, which have white space around them."""

WIDER = 0.5
"""A column is wider by less than this share where its text is long."""

COLUMN_STEP = mm(2)
"""Columns are tried at such steps."""

GUTTER = mm(8)
"""White space between a grid and the text beside it."""


@dataclass(frozen=True, slots=True)
class Block:
    """A puzzle measured for a place `width` by `depth` points: cells of `cell` points, the rows of its text made.

    With its text above, the text and the grid begin at `hang`; with its text beside, the text is `hang` points wide. On
    a crowded page the key to the marks goes on `beside` the grid, and `below` it; or all of it stands on the page
    `facing` the grid.
    """

    puzzle: BookPuzzle
    layout: Layout
    text: Literal["above", "beside"]
    width: float
    depth: float
    hang: float
    cell: float
    claim: Margins
    head: tuple[Row, ...]
    note: tuple[Row, ...]
    frame: float | None = None
    """Where the frame of the grid lies, if the row on the page says so."""
    beside: tuple[Row, ...] = ()
    below: tuple[Row, ...] = ()
    facing: tuple[Row, ...] = ()

    @property
    def least(self) -> float:
        """The smallest cells that the layout allows this puzzle: as it says, and such that all figures can be read."""
        return max(
            self.layout.puzzles.least_for(self.puzzle.puzzle.grid.extent),
            legible(self.puzzle.puzzle, self.layout.puzzles.figure),
        )

    @property
    def fits(self) -> bool:
        """Are the cells large enough? A hundredth of a point is forgiven."""
        return self.cell >= self.least - 0.01

    @property
    def wide(self) -> float:
        """Width of the grid without the clues outside it."""
        return self.puzzle.puzzle.grid.width * self.cell

    @property
    def grid_height(self) -> float:
        """Height of the grid with the clues outside it."""
        return (self.puzzle.puzzle.grid.height + self.claim.top + self.claim.bottom) * self.cell

    @property
    def over(self) -> float:
        """Height of the clues over the frame of the grid."""
        return self.claim.top * self.cell

    @property
    def highest(self) -> float:
        """Where the frame lies at the highest, right under the text."""
        return height(self.head) + _under(self.layout) * self.layout.line + self.over

    @property
    def lowest(self) -> float:
        """Where the frame lies at the lowest, the note at the foot of the place."""
        return self.depth - self.under - self.layout.line - self.grid_height + self.over

    @property
    def under(self) -> float:
        """Height of what stands under the grid: the rest of the key, the note, or the pointers alone."""
        return height(self.below) + max(height(self.note), self.layout.line)

    def draw(self, right: bool, labels: Labels) -> Iterator[Item]:
        """The block's items from its top left corner, for a right or a left page. Raises BookErrors for marks that
        would not be seen."""
        if self.text == "above":
            yield from self._above(labels)
        else:
            yield from self._beside(right, labels)

    def _above(self, labels: Labels) -> Iterator[Item]:
        line, claim = self.layout.line, self.claim
        yield from stacked(self.head, 0.0, 0.0, labels)
        across = (self.puzzle.puzzle.grid.width + claim.left + claim.right) * self.cell
        out = [min(self.layout.puzzles.beyond, side * self.cell) for side in (claim.left, claim.right)]
        x = max(-out[0], min(self.hang - claim.left * self.cell, self.width + out[1] - across))
        y = (self.highest if self.frame is None else self.frame) - self.over
        yield self._grid(x, y)
        yield from stacked(self.beside, x + across + GUTTER, y, labels)
        below = y + self.grid_height + 0.5 * line
        yield from stacked(self.below, 0.0, below, labels)
        below += height(self.below)
        yield from stacked(self.note, x + claim.left * self.cell, below, labels)
        grid_right = x + across - claim.right * self.cell
        note_right = x + claim.left * self.cell + max(map(_reach, self.note), default=0.0)
        clear = note_right + line + pointers_width(self.puzzle, self.layout, self.width) <= grid_right
        base, right = below + (1 - DROP) * line, grid_right if clear else self.width
        for pointer, back in self._pointers():
            yield from replace(pointer, x=right - back, y=base, anchor="end").items(labels)
        if self.layout.puzzles.workings:
            top = below + max(height(self.note), line) + 0.5 * line
            yield from workings(self.layout, self.width, top, self.depth)

    def _beside(self, right: bool, labels: Labels) -> Iterator[Item]:
        """Grids stand at the outer edge of the page, where the hand lies."""
        line = self.layout.line
        text_x = 0.0 if right else self.width - self.hang
        yield self._grid(self.hang + GUTTER if right else 0.0, 0.0)
        yield from stacked(self.head, text_x, 0.0, labels)
        pointers = [*self._pointers()]
        foot = max(self.grid_height, min(_text_depth(self) + line, self.depth))
        above = foot - (0.5 + len(pointers)) * line + DROP * line
        yield from stacked(self.note, text_x, above - height(self.note), labels)
        for at, (pointer, _) in enumerate(pointers):
            yield from replace(pointer, x=text_x, y=foot - at * line, anchor="start").items(labels)

    def _grid(self, x: float, y: float) -> Group:
        """The grid. Raises BookErrors for marks on it that another would hide."""
        puzzle = self.puzzle
        art = [*art_of(puzzle.puzzle, self.cell, weight=self.layout.puzzles.weight)]
        digits = [*digits_of(puzzle.puzzle, self.cell, halo=lines_in(art))]
        letters = check_letters(puzzle, self.cell) if puzzle.check else None
        places = chain(puzzle.rule_places, repeat(puzzle.place))
        rules = [*zip(puzzle.puzzle.rules, places, strict=False)]
        diagnostics = out_of_sight(
            [*art, *((item, None) for _, item in digits)], puzzle.title, puzzle.place, rules, letters
        )
        if diagnostics:
            raise BookErrors(diagnostics)
        language = self.layout.language
        told = grid_told(puzzle.puzzle, self.cell, (item for item, _ in art), digits, GRID, language=language)
        grid = Group(told, name=f"grid {puzzle.id}")
        corner = x + self.claim.left * self.cell, y + self.claim.top * self.cell
        told_letters = check_told(self.layout.words, puzzle, letters, GRID) if letters else None
        along = coordinates(puzzle.puzzle, self.cell) if self.layout.puzzles.coordinates else None
        return Group(tuple(part for part in (grid, told_letters, along) if part), *corner)

    def _pointers(self) -> Iterator[tuple[PageNumber, float]]:
        """Where to find the key and the hints, each with how far from the right it ends where they share a line."""
        if not self.layout.shows.pointers:
            return
        label = self.layout.type.label
        tags = (POINTER,)
        yield PageNumber(0.0, 0.0, _key_pointer(self.layout), f"key {self.puzzle.id}", label, 0.25, tags=tags), 0.0
        if _points_to_hints(self.puzzle, self.layout, self.width):
            back = width(f"{_key_pointer(self.layout)}000", label) + label.size
            yield (
                PageNumber(0.0, 0.0, _hint_pointer(self.layout), f"hint 1 {self.puzzle.id}", label, 0.25, tags=tags),
                back,
            )


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


def pointers_width(puzzle: BookPuzzle, layout: Layout, wide: float) -> float:
    """Room for the pointers on one line under a puzzle."""
    label = layout.type.label
    key = width(f"{_key_pointer(layout)}000", label)
    return key + (_hint_width(layout) if _points_to_hints(puzzle, layout, wide) else 0.0)


def _hint_width(layout: Layout) -> float:
    label = layout.type.label
    return width(f"{_hint_pointer(layout)}000", label) + label.size


def _points_to_hints(puzzle: BookPuzzle, layout: Layout, wide: float) -> bool:
    """Is there a pointer to the hints? Not where it would leave a note too little room, as in large print."""
    key = width(f"{_key_pointer(layout)}000", layout.type.label)
    return puzzle.hints is not None and key + _hint_width(layout) <= POINTERS * wide


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
    tallest = (depth - height(head) - max(height(note), line) - (_under(layout) + 1) * line) / (
        grid.height + claim.top + claim.bottom
    )
    cell = min(most, tallest, _widest(grid.width, claim, wide, slots.beyond))
    return Block(puzzle, layout, "above", wide, depth, hang, cell, claim, head, note)


def _widest(size: int, claim: Margins, wide: float, beyond: float) -> float:
    """The widest cells of a grid on a place that clues may leave by so much at either side."""
    sides = ((), (claim.left,), (claim.right,), (claim.left, claim.right))
    return min((wide + len(those) * beyond) / (size + sum(those)) for those in sides)


def _key_pointer(layout: Layout) -> str:
    """What stands before the page of a key."""
    return f"{layout.say('key-on-page')} "


def _hint_pointer(layout: Layout) -> str:
    """What stands before the page of the hints."""
    return f"{layout.say('hints-on-page')} "


def _under(layout: Layout) -> float:
    return UNDER if layout.puzzles.rows * layout.puzzles.columns == 1 else CLOSER


def _reach(row: Row) -> float:
    """How far the words of a row reach."""
    texts = (item for item in untagged(row.drawn({})) if isinstance(item, Text))
    return max((width(item.text, Type(item.font, item.size, 0.0)) + item.x for item in texts), default=0.0)


def fit_beside(
    puzzle: BookPuzzle, layout: Layout, wide: float, depth: float, usual: float | None = None
) -> Block | None:
    """The puzzle with its text beside the grid; None where its cells would be too small or its text too long.

    The text is as wide as it is beside a grid of nine cells on a place of the `usual` depth, so that the grids of a
    book begin on one line; wider where it is too long for that, narrower where clues outside the grid ask for it.
    """
    columns = _columns(layout, wide, depth if usual is None else usual)
    blocks = (_beside(puzzle, layout, wide, depth, column) for column in columns)
    return next((block for block in blocks if block.fits and _text_depth(block) <= depth), None)


def depth_beside(puzzle: BookPuzzle, layout: Layout, wide: float, most: float, usual: float) -> float | None:
    """The least depth, up to `most`, on which `fit_beside` has a place for the puzzle; None where there is none."""
    blocks = [_beside(puzzle, layout, wide, most, column) for column in _columns(layout, wide, usual)]
    depths = [
        max(_text_depth(block), block.grid_height * min(1.0, block.least / block.cell))
        for block in blocks
        if block.fits
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


def _text_depth(block: Block) -> float:
    """How deep the text beside a grid is at least, with its note, its pointers and the white space before them."""
    pointers = 2 if _points_to_hints(block.puzzle, block.layout, block.width) else 1
    return height(block.head) + height(block.note) + (1 + pointers) * block.layout.line
