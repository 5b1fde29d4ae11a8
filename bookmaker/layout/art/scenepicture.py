"""A board at a key moment of its path, with what to point out on it.

In: a puzzle, a scene, the size of a cell in points. Out: a named group from the top left corner of the first cell, with
coordinates. Told apart without colour: cells to look at have heavy corners, the cell that is filled next a heavy frame,
eliminated candidates a stroke through them, houses to look along a light ground; what is tried a question mark, what
follows from it the number of its round.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from math import ceil, sqrt

from bookmaker.display.items import Group, Item, Line, Move, Path, Point, Rect, Segment, Straight, Stroke, Text, tagged
from bookmaker.display.tags import OUR_LANGUAGE, Role, Tag
from bookmaker.language import Catalogue, catalogue
from bookmaker.layout.art.coordinates import coordinates, region_letters
from bookmaker.layout.art.gridart import SHADE, draw_grid, frame_for
from bookmaker.layout.art.gridtold import candidates_said
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.drawing.frame import Frame
from bookmaker.rules.common.words.speech import cell_said, cells_said
from bookmaker.tell.scenes import Scene

INSET = 0.055
"""How far the middle of corners and frames stands inside their cell, as a share of it."""

ARM = 0.24
"""Length of a corner's two arms, as a share of the cell."""

HEAVY = 0.075
"""Weight of corners and frames, as a share of the cell: heavier than any mark of a rule."""

FIELD = 0.86
"""Share of a cell's side that its candidates take together."""

FEW = 0.26
"""Height of candidates that have room, as a share of the cell."""

READABLE = 7.5
"""Size in points under which no candidate is printed: the small print of a book."""

FOLLOWING = 0.36
"""Height of a digit that is tried or follows, as a share of the cell; lighter than those that are certain."""

LIGHT = 0.3
"""Grey of digits that are tried or follow: read on any paper, and lighter than what is certain."""

ROUND, LOWER = 0.25, 0.14
"""Height of the number of a round, as a share of the cell; and how far digits under one are moved down."""


def cell_for(grid: Grid, scenes: Iterable[Scene]) -> float:
    """Cells as large as these scenes need for candidates that can be read."""
    heights = [_set(digits, at, scene)[1] for scene in scenes for at, digits in _pencilled(grid, scene)]
    return READABLE * frame_for(grid, 1.0).figure / min([ROUND, *heights])


def _set(digits: Sequence[int], at: int, scene: Scene) -> tuple[int, float]:
    """How many candidates of a cell stand beside each other, and how high they are, as a share of the cell."""
    across = 3 if at in scene.rounds and 2 < len(digits) <= 6 else ceil(sqrt(len(digits)))
    return across, min(FEW, 0.86 * FIELD / max(across, 2))


def draw_scene(puzzle: RuledPuzzle, scene: Scene, cell: float, name: str, language: str = "en") -> Group:
    """The board with its marks, digits, candidates, and what is pointed out."""
    frame = frame_for(puzzle.grid, cell)
    said = _candidates_told(catalogue(language), puzzle.grid, scene)
    board = draw_grid(puzzle, cell, name, scene.digits, shaded=scene.shaded, said=said, language=language)
    items: list[Item] = [corners(*frame.corner(at), cell) for at in scene.look if at != scene.goes]
    if scene.goes is not None:
        items.append(heavy_frame(*frame.corner(scene.goes), cell))
    items += _candidates(frame, scene)
    items += _what_follows(frame, scene)
    words = ". ".join(_pointed_out(catalogue(language), puzzle.grid, scene))
    if words:
        wide, high = puzzle.grid.width * cell, puzzle.grid.height * cell
        items = [tagged((Tag(Role.FIGURE, f"{words}.", language=OUR_LANGUAGE, box=(0.0, 0.0, wide, high)),), *items)]
    if scene.regions:
        plain = {at for at in puzzle.grid.cells if scene.digits[at]} - {*scene.look, scene.goes, *scene.rounds}
        items += region_letters(puzzle.grid, cell, plain)
    return Group((board, coordinates(puzzle, cell), *items))


def _pointed_out(words: Catalogue, grid: Grid, scene: Scene) -> Iterator[str]:
    """What is pointed out, in words."""
    look = [at for at in scene.look if at != scene.goes]
    if look:
        yield words.say("look-at", cells=cells_said(words, grid, look))
    if scene.shaded:
        yield words.say("look-along", cells=cells_said(words, grid, scene.shaded))
    if scene.goes is not None:
        yield words.say("filled-next", cell=cell_said(words, grid, scene.goes))
    struck: dict[int, list[int]] = {}
    for at, digit in sorted(scene.struck):
        struck.setdefault(digit, []).append(at)
    for digit, cells in sorted(struck.items()):
        yield words.say("eliminated", digit=grid.symbol(digit), cells=cells_said(words, grid, cells))
    rounds = sorted((number, at) for at, numbers in scene.rounds.items() for number in numbers if at in scene.follows)
    for number, at in rounds:
        digits = words.listed((grid.symbol(digit) for digit in scene.follows[at]), "or")
        name = "in-round" if number else "supposed"
        yield words.say(name, round=str(number), digits=digits, cell=cell_said(words, grid, at))


def _candidates_told(words: Catalogue, grid: Grid, scene: Scene) -> dict[int, str]:
    """What the cells without a digit say of their candidates; where none are drawn, nothing."""
    return {
        at: said for at, said in candidates_said(words, grid, scene.pencil).items() if said != words.say("cell-empty")
    }


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
    cell = frame.cell
    for at, digits in _pencilled(frame.grid, scene):
        across, high = _set(digits, at, scene)
        down, step = ceil(len(digits) / across), FIELD / max(across, 2)
        right, below = step * cell, 1.06 * step * cell
        x, y = frame.centre(at)
        y += LOWER * cell if at in scene.rounds else 0.0
        left, top = x - (across - 1) / 2 * right, y - (down - 1) / 2 * below
        edge, rim = 0.5 * high * cell, 0.66 * high * cell
        ground = SHADE if at in scene.shaded else 1.0
        wide, deep = (across - 1) * right + 2 * edge, (down - 1) * below + 2 * rim
        yield Rect(left - edge, top - rim, wide, deep, fill=ground, radius=edge)
        for number, digit in enumerate(digits):
            row, column = divmod(number, across)
            centre = left + column * right, top + row * below
            yield frame.figures(centre, frame.grid.symbol(digit), high)
            if (at, digit) in scene.struck:
                yield stroke_through(centre, high * cell)


def _pencilled(grid: Grid, scene: Scene) -> Iterator[tuple[int, Sequence[int]]]:
    """The cells that show candidates, and those."""
    for at in grid.cells:
        digits = [digit for digit in grid.digits if scene.pencil.may(at, digit) and not scene.pencil.placed >> at & 1]
        if digits:
            yield at, digits


def _what_follows(frame: Frame, scene: Scene) -> Iterator[Item]:
    """The digits of a what-if, and the numbers of its rounds."""
    cell = frame.cell
    for at, digits in scene.follows.items():
        x, y = frame.centre(at)
        shrunk, left = (FOLLOWING, 0.08) if len(digits) == 1 else (FEW, 0.0)
        for number, digit in enumerate(digits):
            aside = (number - (len(digits) - 1) / 2) * 0.3 - left
            centre = x + aside * cell, y + LOWER * cell
            wide, high = 0.75 * shrunk * cell, 1.2 * shrunk * cell
            ground = SHADE if at in scene.shaded else 1.0
            yield Rect(centre[0] - wide / 2, centre[1] - high / 2, wide, high, fill=ground, radius=wide / 2)
            yield replace(frame.figures(centre, frame.grid.symbol(digit), shrunk), colour=LIGHT)
    for at, rounds in scene.rounds.items():
        x, y = frame.corner(at)
        yield from round_sign((x + cell, y), cell, ",".join(str(number) if number else "?" for number in rounds))


def round_sign(corner: Point, cell: float, words: str) -> Iterator[Item]:
    """The number of a round in a rounded box at the top right corner of a cell."""
    high, wide = 1.35 * ROUND * cell, (0.14 + 0.17 * len(words)) * cell
    left, top = corner[0] - wide - 0.02 * cell, corner[1] + 0.02 * cell
    yield Rect(left, top, wide, high, Stroke(0.5), fill=1.0, radius=high / 3)
    size = ROUND * cell / FontBook().figure_height("sans-bold")
    yield Text(left + wide / 2, top + high / 2 + ROUND * cell / 2, words, "sans-bold", size, anchor="middle")
