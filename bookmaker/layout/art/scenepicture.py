"""A board at a key moment of its path, with what to point out on it.

In: a puzzle, a scene, the size of a cell in points. Out: a named group from the top left corner of the first cell. Told
apart without colour: cells to look at have heavy corners, the cell that is filled next a heavy frame, candidates that
go a stroke through them, houses to look along a light ground.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil, sqrt

from bookmaker.display.items import Group, Item, Line, Move, Path, Point, Rect, Segment, Straight, Stroke, tagged
from bookmaker.display.tags import ENGLISH, Role, Tag
from bookmaker.layout.art.gridart import draw_grid, frame_for
from bookmaker.layout.art.gridtold import candidates_said
from bookmaker.puzzle.grid import SYMBOLS, Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.frame import Frame
from bookmaker.rules.common.speech import cell_said, cells_said
from bookmaker.tell.scenes import Scene

INSET = 0.055
"""How far the middle of corners and frames stands inside their cell, as a share of it."""

ARM = 0.24
"""Length of a corner's two arms, as a share of the cell."""

HEAVY = 0.075
"""Weight of corners and frames, as a share of the cell: heavier than any mark of a rule."""

SHADE = 0.88
"""Grey of the cells of houses to look along, as `draw_grid` shades them."""

FIELD = 0.74
"""Share of a cell's side that its candidates take together."""

FEW = 0.26
"""Height of candidates that have room, as a share of the cell."""


def draw_scene(puzzle: RuledPuzzle, scene: Scene, cell: float, name: str) -> Group:
    """The board with its marks, digits, candidates, and what is pointed out."""
    frame = frame_for(puzzle.grid, cell)
    board = draw_grid(puzzle, cell, name, scene.digits, shaded=scene.shaded, said=_pencilled(puzzle.grid, scene))
    items: list[Item] = [corners(*frame.corner(at), cell) for at in scene.look if at != scene.goes]
    if scene.goes is not None:
        items.append(heavy_frame(*frame.corner(scene.goes), cell))
    items += _candidates(frame, scene)
    words = ". ".join(_pointed_out(puzzle.grid, scene))
    if words:
        side = puzzle.grid.size * cell
        items = [tagged((Tag(Role.FIGURE, f"{words}.", language=ENGLISH, box=(0.0, 0.0, side, side)),), *items)]
    return Group((board, *items))


def _pointed_out(grid: Grid, scene: Scene) -> Iterator[str]:
    """What is pointed out, in words."""
    look = [at for at in scene.look if at != scene.goes]
    if look:
        yield f"Look at {cells_said(grid, look)}"
    if scene.shaded:
        yield f"Look along {cells_said(grid, scene.shaded)}"
    if scene.goes is not None:
        yield f"Filled next: {cell_said(grid, scene.goes)}"
    struck: dict[int, list[int]] = {}
    for at, digit in sorted(scene.struck):
        struck.setdefault(digit, []).append(at)
    for digit, cells in sorted(struck.items()):
        yield f"Eliminated: {SYMBOLS[digit - 1]} from {cells_said(grid, cells)}"


def _pencilled(grid: Grid, scene: Scene) -> dict[int, str]:
    """What the cells without a digit say of their candidates; where none are drawn, nothing."""
    return {at: words for at, words in candidates_said(grid, scene.pencil).items() if words != "empty"}


def corners(x: float, y: float, cell: float) -> Path:
    """Heavy corners inside a cell: look here."""
    low, high, arm = INSET * cell, (1 - INSET) * cell, ARM * cell
    segments: list[Segment] = []
    for across, right in ((low, arm), (high, -arm)):
        for down, along in ((low, arm), (high, -arm)):
            segments.append(Move((x + across + right, y + down)))
            segments.append(Straight((x + across, y + down)))
            segments.append(Straight((x + across, y + down + along)))
    return Path(tuple(segments), Stroke(HEAVY * cell))


def heavy_frame(x: float, y: float, cell: float) -> Rect:
    """A heavy frame inside a cell: this is filled next."""
    inset = INSET * cell
    side = cell - 2 * inset
    return Rect(x + inset, y + inset, side, side, Stroke(HEAVY * cell), radius=0.1 * cell)


def stroke_through(at: Point, high: float) -> Line:
    """A stroke through a candidate of this height around a point: it goes."""
    x, y = at
    return Line((x - 0.42 * high, y + 0.68 * high), (x + 0.42 * high, y - 0.68 * high), Stroke(max(0.5, 0.08 * high)))


def _candidates(frame: Frame, scene: Scene) -> Iterator[Item]:
    """The candidates of every cell that has some: one in its middle, a few large, many in rank and file. They have a
    plain ground, so that marks do not run into them."""
    grid, cell = frame.grid, frame.cell
    for at in grid.cells:
        digits = [digit for digit in grid.digits if scene.pencil.may(at, digit) and not scene.pencil.placed >> at & 1]
        if not digits:
            continue
        across = ceil(sqrt(len(digits)))
        down = ceil(len(digits) / across)
        step = FIELD / max(across, 2)
        high = min(FEW, 0.8 * step)
        right, below = step * cell, 1.06 * step * cell
        x, y = frame.centre(at)
        left, top = x - (across - 1) / 2 * right, y - (down - 1) / 2 * below
        edge, rim = 0.5 * high * cell, 0.66 * high * cell
        ground = SHADE if at in scene.shaded else 1.0
        wide, deep = (across - 1) * right + 2 * edge, (down - 1) * below + 2 * rim
        yield Rect(left - edge, top - rim, wide, deep, fill=ground, radius=edge)
        for number, digit in enumerate(digits):
            row, column = divmod(number, across)
            centre = left + column * right, top + row * below
            yield frame.figures(centre, SYMBOLS[digit - 1], high)
            if (at, digit) in scene.struck:
                yield stroke_through(centre, high * cell)
