"""Areas: sets of cells with an outline, as cages, regions and clones are. Reading and drawing.

Reading: a manifest says areas as lists of cells or as a picture of letters; out come cells with the place they were
typed at. Drawing: out come paths in the frame's points.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Set
from dataclasses import dataclass
from itertools import pairwise, product
from string import ascii_letters

from bookmaker.display.colour import Grey
from bookmaker.display.items import Close, Item, Move, Path, Point, Rect, Segment, Straight, Stroke
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.drawing.frame import Frame
from bookmaker.rules.common.drawing.places import InCell
from bookmaker.rules.common.words.wording import counted, number
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Sequence, Word, read_items
from bookmaker.source.textgrid import drawn_rows, read_picture

_LEAVE_OUT = "name one, or leave out the whole entry"
_CELL_NAME = re.compile(r"[rR]\d+[cC]\d+")

LETTERS = ascii_letters
"""What areas are called in a picture that we draw."""

OUT = ".0"
"""The characters of a picture that belong to no area."""


@dataclass(frozen=True, slots=True)
class Area:
    """Different cells in the grid's order, where they were typed, and the letter they were drawn with, if any."""

    cells: tuple[int, ...]
    place: Place
    letter: str = ""


def read_areas(body: Node, what: str, grid: Grid, collector: Collector, least: int = 2) -> tuple[Area, ...] | None:
    """Areas from a picture of letters or a list of cell lists; None after any diagnostic. `what` has its article."""
    if isinstance(body, Word) and is_picture(body, grid):
        found = read_letters(body, what, grid, collector)
        areas: list[Area | None] = list(found) if found else [None]
    else:
        nodes = read_items(body, what, collector)
        if isinstance(body, Sequence) and not nodes:
            collector.error(body.place, "no-areas", f"no {what.removeprefix('the ')} is listed here", _LEAVE_OUT)
        areas = [read_area(node, what, grid, collector) for node in nodes]
    good = [area for area in areas if area is not None]
    short = [area for area in good if len(area.cells) < least]
    for area in short:
        text = (
            f"{what} at {grid.name(area.cells[0])} has {counted(len(area.cells), 'cell')}, not at least {number(least)}"
        )
        collector.error(area.place, "area-small", text)
    return tuple(good) if good and len(good) == len(areas) and not short else None


def read_area(node: Node, what: str, grid: Grid, collector: Collector) -> Area | None:
    """One area from a list of cells; a cell named twice is a diagnostic."""
    if not isinstance(node, Word):
        collector.error(node.place, "not-an-area", f"{what} should be a list of cells such as r1c1-r1c4 r2c2")
        return None
    cells = read_cells(node, grid, collector)
    if cells is None:
        return None
    twice = next((cell for index, cell in enumerate(cells) if cell in cells[:index]), None)
    if twice is not None:
        collector.error(node.place, "cell-twice", f"{what} names {grid.name(twice)} twice")
        return None
    return Area(tuple(sorted(cells)), node.place)


def is_picture(word: Word, grid: Grid) -> bool:
    """Is this a drawing of the grid rather than a list of cells?"""
    lines = [line for line in word.value.splitlines() if line.strip()]
    in_one_line = len("".join(word.value.split())) == grid.height * grid.width
    return not _CELL_NAME.search(word.value) and (len(lines) > 1 or in_one_line)


def read_letters(word: Word, what: str, grid: Grid, collector: Collector) -> tuple[Area, ...] | None:
    """One area for each letter of a picture, in the order in which they appear; dots belong to none."""
    picture = read_picture(word, grid, f"the picture of {what.removeprefix('the ')}s", collector)
    if picture is None:
        return None
    cells: dict[str, list[int]] = {}
    first: dict[str, Place] = {}
    for cell, (letter, line, column) in enumerate(picture):
        if letter not in OUT:
            cells.setdefault(letter, []).append(cell)
            first.setdefault(letter, word.at(line, column))
    if not cells:
        collector.error(
            word.place, "no-areas", f"the picture shows no {what.removeprefix('the ')}", "draw each with a letter"
        )
        return None
    return tuple(Area(tuple(found), first[letter], letter) for letter, found in cells.items())


def picture(areas: Mapping[str, Iterable[int]], grid: Grid) -> str:
    """A drawing of areas that share no cell, each with its letter: what `read_letters` reads."""
    signs = {cell: letter for letter, cells in areas.items() for cell in cells}
    return "\n".join(drawn_rows(grid, lambda cell: signs.get(cell, ".")))


def blocks(grid: Grid, side: int) -> Iterator[tuple[int, ...]]:
    """The cells of every square of this side that the grid has, row by row."""
    for top, left in product(range(grid.height - side + 1), range(grid.width - side + 1)):
        places = [(top + row, left + column) for row, column in product(range(side), repeat=2)]
        if all(grid.inside(*place) for place in places):
            yield tuple(grid.cell(*place) for place in places)


def loops(grid: Grid, cells: Iterable[int], inset: float) -> tuple[tuple[Point, ...], ...]:
    """The corners of an area's outline in cells, moved `inset` cells inwards; clockwise, holes the other way round.

    Cells that touch only at a corner get outlines of their own there.
    """
    return loops_around({grid.place(cell)[::-1] for cell in cells}, inset)


def loops_around(inside: Set[tuple[int, int]], inset: float) -> tuple[tuple[Point, ...], ...]:
    """The same around cells by their columns and rows, wherever these lie."""
    edges: dict[tuple[int, int], list[tuple[int, int]]] = {}
    for x, y in sorted(inside):
        # Clockwise round the cell, so that the inside lies to the right of each edge.
        for beside, start, step in (
            ((x, y - 1), (x, y), (1, 0)),
            ((x + 1, y), (x + 1, y), (0, 1)),
            ((x, y + 1), (x + 1, y + 1), (-1, 0)),
            ((x - 1, y), (x, y + 1), (0, -1)),
        ):
            if beside not in inside:
                edges.setdefault(start, []).append(step)
    left = dict.fromkeys((start, step) for start, steps in edges.items() for step in steps)
    found = []
    while left:
        at, step = next(iter(left))
        walk: list[tuple[Point, tuple[int, int]]] = []
        while (at, step) in left:
            del left[at, step]
            walk.append((at, step))
            at = (at[0] + step[0], at[1] + step[1])
            # Where two cells touch at a corner, turning right keeps to the same cell.
            right = (-step[1], step[0])
            step = right if right in edges[at] else edges[at][0]
        corners = []
        for (_, before), (corner, after) in zip([walk[-1], *walk], walk, strict=False):
            if before != after:
                # The inside lies to the right of both edges: right of (x, y) is (−y, x).
                corners.append((corner[0] - inset * (before[1] + after[1]), corner[1] + inset * (before[0] + after[0])))
        found.append(tuple(corners))
    return tuple(found)


def outline(
    frame: Frame, cells: Iterable[int], inset: float, stroke: Stroke | None = None, fill: Grey | None = None
) -> Path:
    """An area drawn as one shape, its edge `inset` cells inside the cells' own."""
    segments: list[Segment] = []
    for corners in loops(frame.grid, cells, inset):
        first, *others = ((x * frame.cell, y * frame.cell) for x, y in corners)
        segments += [Move(first), *(Straight(corner) for corner in others), Close()]
    return Path(tuple(segments), stroke, fill)


def lettered(frame: Frame, claim: InCell, letter: str) -> tuple[Item, Item]:
    """The letter of an area in the box it was given, on white."""
    x, y = frame.corner(claim.cell)
    box = frame.box(claim)
    middle = x + (box.left + box.right) / 2 * frame.cell, y + (box.top + box.bottom) / 2 * frame.cell
    side = (box.right - box.left) * frame.cell
    ground = Rect(middle[0] - side / 2, middle[1] - side / 2, side, side, fill=1.0)
    return ground, frame.figures(middle, letter, 0.8 * side / frame.cell, bold=True)


def hatching(frame: Frame, cells: Iterable[int], inset: float, stroke: Stroke, lines: int = 4) -> Path:
    """Slanting lines that rise to the right inside an area's outline, `lines` to a cell's side."""
    edges = [edge for corners in loops(frame.grid, cells, inset) for edge in pairwise((*corners, corners[0]))]
    segments: list[Segment] = []
    for index in range((frame.grid.height + frame.grid.width) * lines):
        # A line on which x + y is constant crosses each edge at most once, and never meets a corner.
        total = (index + 0.5) / lines
        crossings = sorted(
            total - y1 if y1 == y2 else x1
            for (x1, y1), (x2, y2) in edges
            if min(x1 + y1, x2 + y2) < total < max(x1 + y1, x2 + y2)
        )
        for start, end in zip(crossings[::2], crossings[1::2], strict=True):
            segments += [
                Move((start * frame.cell, (total - start) * frame.cell)),
                Straight((end * frame.cell, (total - end) * frame.cell)),
            ]
    return Path(tuple(segments), stroke)
