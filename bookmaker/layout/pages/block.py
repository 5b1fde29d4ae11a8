"""A puzzle on its place: title, rules, grid and note, all in sight of each other.

In: a puzzle with the width and depth of its place, and how large its cells are there (`sizing`). Out: a `Block`, whose
`draw` makes the items once the page numbers are known.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import chain, repeat
from typing import Literal

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, Text, untagged
from bookmaker.layout.art.checkletters import check_letters
from bookmaker.layout.art.coordinates import coordinates
from bookmaker.layout.art.gridart import art_of, digits_of, legible, lines_in
from bookmaker.layout.art.gridtold import check_told, grid_told
from bookmaker.layout.art.insight import out_of_sight
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.pointers import pointers, pointers_width, points_to_hints
from bookmaker.layout.pages.words import (
    GRID,
)
from bookmaker.layout.pages.workings import workings
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import DROP, Labels, Row, width
from bookmaker.layout.spec import Layout, Type
from bookmaker.rules.common.drawing.frame import Margins
from bookmaker.source.diagnostics import BookErrors

UNDER, CLOSER = 1.4, 1.0
"""White space between the rules and the grid, in lines of text; and where puzzles share a page."""

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
        return height(self.head) + white_under(self.layout) * self.layout.line + self.over

    @property
    def lowest(self) -> float:
        """Where the frame lies at the lowest, the note at the foot of the place."""
        return self.depth - self.under - self.layout.line - self.grid_height + self.over

    @property
    def under(self) -> float:
        """Height of what stands under the grid: the rest of the key, the note, or the pointers alone."""
        return height(self.below) + max(height(self.note), self.layout.line)

    @property
    def text_depth(self) -> float:
        """How deep the text beside the grid is at least, with its note, its pointers and the white space before."""
        lines = 2 if points_to_hints(self.puzzle, self.layout, self.width) else 1
        return height(self.head) + height(self.note) + (1 + lines) * self.layout.line

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
        for pointer, back in pointers(self.puzzle, self.layout, self.width):
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
        lines = [*pointers(self.puzzle, self.layout, self.width)]
        foot = max(self.grid_height, min(self.text_depth + line, self.depth))
        above = foot - (0.5 + len(lines)) * line + DROP * line
        yield from stacked(self.note, text_x, above - height(self.note), labels)
        for at, (pointer, _) in enumerate(lines):
            yield from replace(pointer, x=text_x, y=foot - at * line, anchor="start").items(labels)

    def _grid(self, x: float, y: float) -> Group:
        """The grid. Raises BookErrors for marks on it that another would hide."""
        puzzle = self.puzzle
        art = [*art_of(puzzle.puzzle, self.cell, weight=self.layout.puzzles.weight)]
        digits = digits_of(puzzle.puzzle, self.cell, halo=lines_in(art))
        letters = check_letters(puzzle, self.cell) if puzzle.check else None
        places = chain(puzzle.rule_places, repeat(puzzle.place))
        rules = [*zip(puzzle.puzzle.rules, places, strict=False)]
        diagnostics = out_of_sight(
            [*art, *((item, None) for drawn in digits.values() for item in drawn)],
            puzzle.title,
            puzzle.place,
            rules,
            letters,
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


def white_under(layout: Layout) -> float:
    return UNDER if layout.puzzles.rows * layout.puzzles.columns == 1 else CLOSER


def _reach(row: Row) -> float:
    """How far the words of a row reach."""
    texts = (item for item in untagged(row.drawn({})) if isinstance(item, Text))
    return max((width(item.text, Type(item.font, item.size, 0.0)) + item.x for item in texts), default=0.0)
