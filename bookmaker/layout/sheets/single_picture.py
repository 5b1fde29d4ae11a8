"""One grid as a picture of its own, for a notice, a screen or a text about the puzzle.

In: a puzzle, and what to show in its cells. Out: a page just large enough for the grid, and the clues and coordinates
around it.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.display.items import Group, Page
from bookmaker.layout.art.coordinates import coordinates, numbered
from bookmaker.layout.art.gridart import draw_grid, outside
from bookmaker.layout.art.scenepicture import draw_scene
from bookmaker.layout.lengths import mm
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.drawing.frame import Margins
from bookmaker.tell.scenes import Scene

CELL = mm(12)
"""Width of a cell: pencil marks are then as large as the small print of a book."""

MARGIN = 6.0
"""White space around the grid and its clues, in points."""


def grid_picture(
    puzzle: RuledPuzzle,
    name: str,
    digits: Sequence[int] | None = None,
    position: Position | None = None,
    shaded: Sequence[int] = (),
    with_coordinates: bool = False,
    language: str = "en",
) -> Page:
    """The grid with its marks, as a group of that name. `digits` fill the cells that have one; `position` pencils its
    candidates into the others; `shaded` cells have a light ground."""
    grid = draw_grid(puzzle, CELL, name, digits, position=position, shaded=shaded, language=language)
    if with_coordinates:
        return _page(puzzle, numbered(puzzle), grid, coordinates(puzzle, CELL))
    return _page(puzzle, outside(puzzle), grid)


def scene_picture(puzzle: RuledPuzzle, scene: Scene, name: str) -> Page:
    """A key moment of a path, with its coordinates, as large as a single grid."""
    return _page(puzzle, numbered(puzzle), draw_scene(puzzle, scene, CELL, name))


def _page(puzzle: RuledPuzzle, beyond: Margins, *drawn: Group) -> Page:
    placed = Group(drawn, MARGIN + beyond.left * CELL, MARGIN + beyond.top * CELL)
    width = (beyond.left + puzzle.grid.width + beyond.right) * CELL
    height = (beyond.top + puzzle.grid.height + beyond.bottom) * CELL
    return Page(width + 2 * MARGIN, height + 2 * MARGIN, (placed,), "")
