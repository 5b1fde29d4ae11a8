"""What makes r5c2 easy to find: row and column numbers along a grid, and the letters of irregular regions in it.

In: a puzzle and the size of its cells. Out: items from the top left corner of the first cell, beyond the clues outside
the grid.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import replace

from bookmaker.book.reading import grid_read
from bookmaker.display.items import Group, Item, Rect, tagged
from bookmaker.display.tags import OUR_LANGUAGE, Role, Tag
from bookmaker.language import capital, catalogue
from bookmaker.layout.art.gridart import SHADE, art_of, frame_for, outside
from bookmaker.layout.setting.text import FONTS
from bookmaker.puzzle.grid import REGION_LETTERS, Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.drawing.frame import Margins
from bookmaker.rules.common.words.speech import cell_said

ROOM = Margins(top=0.45, left=0.45)
"""What the numbers claim beyond the clues, in cells."""

HIGH, LEAST = 0.24, 4.2
"""Height of the numbers, as a share of the cell, and in points where cells are very small."""

AIRY = 1.15
"""Width of the cells of a small grid, as a share of the size of its type."""

GREY = 0.35
FONT = "sans"


def numbered(puzzle: RuledPuzzle) -> Margins:
    """Room at each side of the grid, in cells, for its clues and its coordinates."""
    return outside(puzzle) + ROOM


def coordinates(puzzle: RuledPuzzle, cell: float, high: float = LEAST) -> Group:
    """The numbers of the rows at the left, those of the columns above, no lower than `high` points."""
    frame, claim, aside = frame_for(puzzle.grid, cell), outside(puzzle), lane(cell, high) / 2
    items: list[Item] = []
    grid = puzzle.grid
    for at in range(grid.extent):
        middle = (at + 0.5) * cell
        left = [(-claim.left * cell - aside, middle)] if at < grid.height else []
        above = [(middle, -claim.top * cell - aside)] if at < grid.width else []
        for point in (*left, *above):
            figures = frame.figures(point, str(at + 1), max(HIGH, high / cell), font=FONT)
            items.append(replace(figures, colour=GREY))
    return Group(tuple(items), name="coordinates")


def lane(cell: float, high: float = LEAST) -> float:
    """Width of the lane that the numbers stand in."""
    return max(ROOM.left * cell, 1.7 * high)


def miniature(grid: Grid, size: float, pointed: int | None = None, language: str = "en") -> tuple[Group, float]:
    """An empty grid with its coordinates, no larger than type of this size needs it, from their top left corner: one
    cell shaded, or else each region with its letter. And how high it is."""
    cell, high = AIRY * size, FONTS.figure_height(FONT) * size
    beside = lane(cell, high)
    bare: RuledPuzzle = Puzzle(grid, (0,) * len(grid.cells))
    frame = frame_for(grid, cell)
    items: list[Item] = [] if pointed is None else [Rect(*frame.corner(pointed), cell, cell, fill=SHADE)]
    items += (item for item, _ in art_of(bare, cell))
    items.append(coordinates(bare, cell, high))
    if pointed is None and not grid.box:
        items += (
            frame.figures(frame.centre(_middle(grid, region)), REGION_LETTERS[number], high / cell, font=FONT)
            for number, region in enumerate(grid.regions)
        )
    words = catalogue(language)
    said = f"{'. '.join(grid_read(words, bare))}."
    if pointed is not None:
        said = words.sentence("cell-shaded", cell=cell_said(words, grid, pointed))
    wide, deep = grid.width * cell, grid.height * cell
    told = Tag(Role.FIGURE, capital(said), language=OUR_LANGUAGE, box=(0.0, 0.0, wide, deep))
    return Group((tagged((told,), *items),), beside, beside), beside + deep


def _middle(grid: Grid, region: Sequence[int]) -> int:
    """The cell of a region that lies nearest to the others."""

    def away(cell: int) -> int:
        return sum(abs(grid.row(cell) - grid.row(at)) + abs(grid.column(cell) - grid.column(at)) for at in region)

    return min(region, key=away)


def region_letters(grid: Grid, cell: float, free: Collection[int] | None = None) -> Iterator[Item]:
    """The letter of each region in the corner of one of its cells, of the `free` ones if it can be."""
    frame = frame_for(grid, cell)
    for number, region in enumerate(grid.regions):
        home = next((at for at in region if free is None or at in free), region[0])
        x, y = frame.corner(home)
        side = 0.26 * cell
        left, top = x + 0.06 * cell, y + 0.06 * cell
        yield Rect(left, top, side, side, fill=1.0, radius=0.05 * cell)
        yield frame.figures((left + side / 2, top + side / 2), REGION_LETTERS[number], 0.2, bold=True)
