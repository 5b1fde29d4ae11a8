"""Marks read back from paper: is each item of a puzzle painted at its place, and does nothing lie on it?

In: what is painted on a page, and a grid that was found there with the puzzle that it should be. Out: how many marks of
each kind were found, and what is lacking, changed, covered, or there though the book does not have it. What a mark
looks like comes from its rule; where it should stand on the page, from the frame of the printed grid.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from math import dist, floor

from bookmaker.display.items import Group, Item, Text
from bookmaker.display.recurring import Recurring
from bookmaker.layout.art.gridart import painted, region_pen
from bookmaker.preflight.grids import Frame, PrintedGrid
from bookmaker.preflight.painted import (
    Colour,
    Fill,
    Matrix,
    Painted,
    Picture,
    Point,
    Run,
    Stroke,
    moved,
    segments,
    within,
)
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import listed
from bookmaker.sight import Drawn, Hidden, Shape, hidden, shapes
from bookmaker.sight.shapes import DARK, Box, box_of, letter, path_shapes
from bookmaker.typeface import by_postscript

OFF, LETTER_OFF = 0.06, 0.5
"""How far in points a shape may stand from where it should, numbers in a file being rounded; and a figure, whose font
may be the bold one where its size is close to the limit."""

SHADE, BREADTH = 0.02, 0.04
"""How much a grey may differ, and the width of a stroke in points."""

GRID_LETTER = ("the letter of a grid",)
STRANGE = ("something that the book does not have",)
CHECK_ROW = ("a letter of the check row",)
ELSEWHERE = ("something else on the page",)

RECTANGLE = 5
"""Points of a closed rectangle."""

DIGIT = 0.45
"""Letters of so large an em, for the side of a cell, are digits."""

NEAR = ((0, 0), (-1, -1), (-1, 0), (-1, 1), (0, -1), (0, 1), (1, -1), (1, 0), (1, 1))
"""Steps from a square to itself and to those around it."""

_KEPT = 2048
"""Shapes of strokes and of letters that are kept."""

Names = tuple[str, ...]


@dataclass(slots=True)
class MarksRead:
    """What was found: marks, by what one of them is called; and diagnostics as code and text."""

    found: Counter[str] = field(default_factory=Counter)
    diagnostics: list[tuple[str, str]] = field(default_factory=list)


@dataclass(slots=True)
class There:
    """A shape on the page, with the names of the groups that it stands in."""

    shape: Shape
    group: tuple[str, ...]


def shapes_there(items: Iterable[Painted]) -> list[There]:
    """All that is painted on a page from its first grid on, in order. Text outside grids is taken as a box."""
    found: list[There] = []
    for item in items:
        if isinstance(item, Colour) or (not found and not _in_grid(getattr(item, "group", ()))):
            continue
        group = () if isinstance(item, Picture) else item.group
        found += [There(shape, group) for shape in _shapes(item, _in_grid(group))]
    return found


@lru_cache(maxsize=64)  # asked of every item in turn
def _in_grid(group: tuple[str, ...]) -> bool:
    return any(name.startswith(("grid ", "check ")) for name in group)


def _shapes(item: Run | Stroke | Fill | Picture, in_grid: bool) -> Iterable[Shape]:
    match item:
        case Run():
            if in_grid:
                return _letters(item)
            if (box := item.box()) is None:
                return ()
            left, bottom, right, top = box
            return (_rectangle([(left, bottom), (right, bottom), (right, top), (left, top)]),)
        case Stroke():
            stroked = _stroked_again if in_grid else _stroked
            return stroked(item.drawn, item.matrix, item.fill, item.grey, item.width)
        case Fill():
            path, bounds = segments(item.drawn)
            return path_shapes(path, item.matrix, item.grey, bounds=bounds)
        case Picture():
            return (_rectangle([moved(item.matrix, corner) for corner in ((0, 0), (1, 0), (1, 1), (0, 1))]),)


def _stroked(drawn: bytes, matrix: Matrix, fill: float | None, grey: float, width: float) -> tuple[Shape, ...]:
    """What a stroke paints."""
    path, bounds = segments(drawn)
    return tuple(path_shapes(path, matrix, fill, grey, width, bounds))


_stroked_again = lru_cache(maxsize=_KEPT)(_stroked)
"""The same, kept: the lines of grids lie in the same places on many pages."""


@lru_cache(maxsize=_KEPT)
def _letter(character: str, font: str, matrix: Matrix, grey: float) -> tuple[Shape, ...]:
    """The shape of a letter, kept: digits come in the same cells of many pages."""
    return tuple(letter(character, font, matrix, grey))


def _letters(run: Run) -> Iterator[Shape]:
    """The letters of a text; those in a font that is not ours as boxes."""
    font = by_postscript().get(run.font.name)
    for character, start, width in run.setting.letters:
        # A letter's outline is y down from its origin.
        to_page = within(run.matrix, (run.size, 0.0, 0.0, -run.size, start, run.rise))
        if font is not None:
            yield from _letter(character, font, to_page, run.grey)
        elif not character.isspace():
            wide = width / run.size if run.size else 0.0
            yield _rectangle([moved(to_page, corner) for corner in ((0, 0), (wide, 0), (wide, -0.7), (0, -0.7))])


def _rectangle(corners: Sequence[Point]) -> Shape:
    return Shape(lambda: [(*corners, corners[0])], lambda: corners, box_of(corners), 0.0)


@dataclass(slots=True)
class _Wanted:
    """A shape that should be there; `noun` is what one of its marks is called, “” for lines and digits of the grid."""

    shape: Shape
    of: Names
    part: str = ""
    least: float | None = None
    noun: str = ""


def read_marks(there: Sequence[There], printed: PrintedGrid, puzzle: RuledPuzzle) -> MarksRead:
    """The marks of one printed grid whose frame was found on the page."""
    assert printed.frame is not None
    read, what = MarksRead(), f"the grid of “{printed.id}”"
    wanted = [*_wanted(printed.frame, puzzle)]
    room = _around(one.shape.box for one in wanted)
    here = [one for one in there if _meet(one.shape.box, room)]
    name = f"grid {printed.id}"
    seats = _Seats(one for one in here if name in one.group)
    owner = {id(found): one for one in wanted if (found := seats.take(one.shape)) is not None}
    matched = {id(one) for one in owner.values()}
    lacking = [one for one in wanted if id(one) not in matched]
    lost = {one.of for one in lacking if one.noun}
    for of, noun in {one.of: one.noun for one in wanted if one.noun and one.of not in lost}.items():
        read.found[noun] += len(of)
    for of in dict.fromkeys(one.of for one in lacking if one.noun):
        seen = any(one.of == of and one.shape.dark for one in owner.values())
        read.diagnostics.append(("mark-lacking", f"{what} {'shows only a part of' if seen else 'lacks'} {listed(of)}"))
    if any(not one.of for one in lacking):
        read.diagnostics.append(("lines-differ", f"{what} lacks lines between its cells or regions"))

    drawn = []
    for one in here:
        known = owner.get(id(one))
        if known is not None:
            drawn.append(Drawn(one.shape, known.of, known.part, known.least, of_grid=not known.noun))
        elif name in one.group and _white_stroke(one.shape):
            drawn.append(Drawn(one.shape))  # around a digit, or a cover, which takes from what it covers all the same
        else:
            drawn.append(Drawn(one.shape, STRANGE if name in one.group else _beside(one.group)))
    for lost_one in hidden(drawn):
        if lost_one.of not in (STRANGE, CHECK_ROW, ELSEWHERE) and lost_one.of not in lost:
            read.diagnostics.append(("mark-covered", f"{what}: {_said(lost_one)}"))
    strangers = (one.shape for one in here if name in one.group and id(one) not in owner)
    cells = dict.fromkeys(_cell(shape, printed.frame, puzzle.grid) for shape in strangers if _seen(shape, printed))
    if cells:
        read.diagnostics.append(("mark-stranger", f"{what} has {listed(STRANGE)}: {listed(cells)}"))
    return read


def _white_stroke(shape: Shape) -> bool:
    return shape.fill is None and shape.pen is not None and shape.pen > DARK


def _beside(group: tuple[str, ...]) -> Names:
    return CHECK_ROW if any(name.startswith("check ") for name in group) else ELSEWHERE


def _said(lost: Hidden) -> str:
    part = f" (the {lost.part})" if lost.part else ""
    by = f" by {listed(lost.by)}" if lost.by else ""
    return f"{listed(lost.of)}{part} is covered{by}: {lost.left:.0%} of it is left"


def _around(boxes: Iterable[Box]) -> Box:
    lefts, tops, rights, bottoms = zip(*boxes, strict=True)
    return min(lefts), min(tops), max(rights), max(bottoms)


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def _cell(shape: Shape, frame: Frame, grid: Grid) -> str:
    """Where on the grid something stands."""
    left, top, right, bottom = shape.box
    across, down = frame.share(((left + right) / 2, (top + bottom) / 2))
    row, column = floor(down * grid.height), floor(across * grid.width)
    return f"in {grid.name(grid.cell(row, column))}" if grid.inside(row, column) else "outside its frame"


def _seen(shape: Shape, printed: PrintedGrid) -> bool:
    """Is it more than a ground, and no digit? Digits are compared by themselves, grounds are told where they cover."""
    assert printed.frame is not None
    em = dist(*shape.anchors[:2]) if shape.letter else 0.0
    dark = shape.solid or (shape.pen is not None and shape.pen <= DARK)
    return dark and em < DIGIT * printed.frame.side / printed.columns


def _wanted(frame: Frame, puzzle: RuledPuzzle) -> Iterator[_Wanted]:
    """What the grid is drawn with, at the size and the place of the printed one."""
    grid, matrix = puzzle.grid, frame.matrix
    cell, names = frame.side / frame.scale / grid.width, _digit_names(grid)
    weight = frame.pen / frame.scale / region_pen(cell).width
    kept = _shapes_at(matrix)
    for item, owned in painted(puzzle, cell, weight=weight):
        of: Names = ()
        if isinstance(item, Text):
            at = grid.at(int(item.y // cell), int(item.x // cell))
            of = GRID_LETTER if at is None else names[at]
        elif isinstance(item, Group):
            continue  # the white around a digit
        if owned is None:
            for shape in kept(item):
                yield _Wanted(shape, of)
        else:
            rule, mark = owned
            for shape in shapes((item,), matrix):
                yield _Wanted(shape, mark.of, mark.part, mark.least, rule.noun)


@lru_cache(maxsize=16)
def _digit_names(grid: Grid) -> Mapping[int, Names]:
    return {at: (f"the digit in {grid.name(at)}",) for at in grid.cells}


@lru_cache(maxsize=16)
def _shapes_at(matrix: Matrix) -> Recurring[Item, tuple[Shape, ...]]:
    """The shapes of lines and digits in a grid at one place of the page."""
    return Recurring(lambda item: tuple(shapes((item,), matrix)), _KEPT)


class _Seats:
    """Shapes by where they stand, each to be taken once."""

    def __init__(self, found: Iterable[There]) -> None:
        self._at: dict[tuple[int, int], list[There]] = {}
        for one in found:
            self._at.setdefault(one.shape.middle, []).append(one)

    def take(self, wanted: Shape) -> There | None:
        """A shape that is the same as the wanted one, in the order of painting; None if there is none left."""
        x, y = wanted.middle
        for dx, dy in NEAR:
            here = self._at.get((x + dx, y + dy), [])
            for index, one in enumerate(here):
                if _same(wanted, one.shape):
                    return here.pop(index)
        return None


@lru_cache(maxsize=_KEPT)
def _same(one: Shape, other: Shape) -> bool:
    """Are two shapes written with the same points, in the same greys?"""
    if one.letter != other.letter or abs(one.width - other.width) > BREADTH:
        return False
    if not (_alike(one.fill, other.fill) and _alike(one.pen, other.pen)):
        return False
    mine, theirs = one.anchors, other.anchors
    if len(mine) != len(theirs):
        return False
    off = LETTER_OFF if one.letter else OFF
    if all(dist(a, b) <= off for a, b in zip(mine, theirs, strict=True)):
        return True
    if one.letter or len(mine) > RECTANGLE:
        return False
    # A rectangle may be written from any of its corners on.
    near = [[dist(a, b) <= off for b in theirs] for a in mine]
    return all(map(any, near)) and all(map(any, zip(*near, strict=True)))


def _alike(one: float | None, other: float | None) -> bool:
    return one is other or (one is not None and other is not None and abs(one - other) <= SHADE)
