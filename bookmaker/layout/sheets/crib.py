"""A presenter's crib: the path in words, and beside them the board at its key moments.

In: a puzzle as a book has it, its story and scenes, a layout. Out: a `Document` of a few pages. On top the title, the
setter, the rules and the solve profile with a letter at each moment that has a picture; then text at the left, the
numbers of the steps in its margin, and pictures at the right, each as near as can be to the sentence that it belongs
to. Where cells are too many to leave room for text beside them, pictures stand in the text.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Bookmark, Document, Group, Item, Text, tagged
from bookmaker.display.tags import OURS
from bookmaker.language import Catalogue
from bookmaker.layout.art.coordinates import numbered
from bookmaker.layout.art.scenepicture import (
    cell_for,
    draw_scene,
)
from bookmaker.layout.compose import draw_pages
from bookmaker.layout.lengths import mm
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.setting.flow import columns, height, stacked
from bookmaker.layout.setting.text import DROP, Labels, Row
from bookmaker.layout.sheets.cribhead import crib_head
from bookmaker.layout.sheets.cribtext import MARGIN, Piece, pieces_of
from bookmaker.layout.spec import Layout
from bookmaker.tell.passages import Story
from bookmaker.tell.scenes import Scene

GUTTER = mm(9)
"""White space between text and pictures."""

EMS = 18
"""The narrowest column of text beside pictures, in ems."""

CAPTION = 1.3
"""Height of the line over a picture, in lines of text."""

ENDING = 5
"""Lines that go over to the last page at least, where the text is broken off; a short passage may go over whole."""


@dataclass(frozen=True, slots=True)
class _Measures:
    """How wide text and pictures are; `beside` each other or one under the other."""

    cell: float
    wide: float
    """Width of a picture with its clues and coordinates."""
    high: float
    """Height of a picture with its caption and the white under it."""
    text: float
    beside: bool


Placed: TypeAlias = tuple[Scene, float]
"""A picture, and how far below the top of its column it begins."""


def compose_crib(
    puzzle: BookPuzzle, story: Story, scenes: Mapping[int, Scene], start: Scene, end: Scene, layout: Layout
) -> Document:
    """The crib of one puzzle; `scenes` stand beside the sentences that begin with those steps."""
    measures = _measures(puzzle, [*scenes.values()], layout)
    head = (*crib_head(puzzle, [*scenes.values()], layout),)
    pieces = [*pieces_of(story, start, scenes, layout, measures.text)]
    if measures.beside:
        leaves = [*_leaves(puzzle, head, pieces, end, layout, measures)]
    else:
        leaves = [*_in_one_column(puzzle, head, [*pieces, Piece((), end)], layout, measures)]
    labelled = list(zip(leaves, map(str, range(1, len(leaves) + 1)), strict=True))
    pages = draw_pages(labelled, layout, puzzle.title, draft=False)
    title = layout.say("titled", title=puzzle.title, what=layout.say("crib"))
    bookmarks = (Bookmark(puzzle.title, "crib"),)
    return Document(title, puzzle.setter, "", pages, bookmarks, layout.language)


def _measures(puzzle: BookPuzzle, scenes: Sequence[Scene], layout: Layout) -> _Measures:
    """Cells as large as their candidates need; beyond that as wide as half the page allows, and small enough for a page
    to hold three pictures. Text is as wide as that half, so that it can go on under pictures."""
    claim, grid = numbered(puzzle.puzzle), puzzle.puzzle.grid
    across, down = claim.left + grid.width + claim.right, claim.top + grid.height + claim.bottom
    least, over = cell_for(puzzle.puzzle.grid, scenes), (CAPTION + 1) * layout.line
    half = (layout.measure - GUTTER) / 2
    usual = min(half / across, (layout.depth / 3 - over) / down, mm(11))
    room = layout.measure - GUTTER - (EMS + MARGIN) * layout.type.text.size
    beside = least * across <= room
    cell = (
        max(usual, least) if beside else min(max(least, mm(8)), layout.measure / across, (layout.depth - over) / down)
    )
    text = min(half, layout.measure - GUTTER - cell * across) if beside else layout.measure
    return _Measures(cell, cell * across, over + cell * down, text, beside)


def _in_one_column(
    puzzle: BookPuzzle, head: tuple[Row, ...], pieces: Sequence[Piece], layout: Layout, measures: _Measures
) -> Iterator[UnnumberedPage]:
    """Pages of text with each picture under its own."""
    rows = [*head]
    for piece in pieces:
        rows += piece.rows
        if piece.scene:
            if piece is pieces[-1]:  # the solution takes some lines along to its page
                rows[-ENDING:] = [replace(row, tied=True) for row in rows[-ENDING:]]
            picture = Group((*_captioned(puzzle, piece.scene, layout, measures),), layout.measure - measures.wide)
            rows.append(Row(measures.high, (picture,)))
    for number, page in enumerate(columns(rows, layout.depth)):
        yield _leaf(puzzle, (), (page, (), 0.0), [], [], layout, measures, first=number == 0)


def _leaves(
    puzzle: BookPuzzle,
    head: tuple[Row, ...],
    pieces: Sequence[Piece],
    end: Scene,
    layout: Layout,
    measures: _Measures,
) -> Iterator[UnnumberedPage]:
    """Pages: text down the left, and beside it its pictures. Where these are few, text goes on under them;
    where they are many, further ones stand under the text, and the last sentence may have its picture overleaf."""
    line, high = layout.line, measures.high
    waiting, late, spare = [*pieces], list[Scene](), list[Row]()
    top = height(head)
    while waiting or spare or late:
        sides = _Sides(layout.depth - top, high, line)
        rows, wished, late = _gathered(waiting, spare, late, sides)
        left, right, spare = _in_columns(rows, sides, len(wished))
        while not waiting and 0 < _lines(spare) < ENDING < _lines(right or left):
            left, right, spare = _shorter(left, right, spare, line)
        last = not waiting and not spare and not late
        if last and not sides.ends(left, right, len(wished)) and _lines(left) > ENDING and not right:
            left, *later = columns(left, height(left) - ENDING * line)
            last, spare = False, [row for more in later for row in more]
        beside, lower = wished[: sides.held], wished[sides.held :]
        ended = last and sides.ends(left, right, len(wished))
        if ended and len(wished) < sides.held:
            beside = [*beside, (end, height(left))]
        elif ended:
            lower = [*lower, (end, 0.0)]
        below = height(left) + line if last else sides.foot - len(lower) * high
        under = [(scene, below + at * high) for at, (scene, _) in enumerate(lower)]
        beside = (
            [(scene, at * high) for at, (scene, _) in enumerate(beside)] if right else _spread(beside, high, sides.foot)
        )
        text = (left, right, len(beside) * high)
        yield _leaf(puzzle, head if top else (), text, beside, under, layout, measures, first=bool(top))
        if last and not ended:
            yield _leaf(puzzle, (), ((), (), 0.0), [(end, 0.0)], [], layout, measures, first=False)
        top = 0.0


@dataclass(frozen=True, slots=True)
class _Sides:
    """The two columns of a page, `depth` points deep, with pictures `high` points high."""

    depth: float
    high: float
    line: float

    @property
    def foot(self) -> float:
        """How far down pictures reach: the white under the last one may hang over."""
        return self.depth + self.line

    @property
    def held(self) -> int:
        """Pictures that find room at the right."""
        return max(1, int(self.foot / self.high))

    def left(self, pictures: int) -> float:
        """How deep text at the left may be, over the pictures for which there is no room at the right."""
        return self.depth - max(0, pictures - self.held) * self.high

    def right(self, pictures: int) -> float:
        """How deep text may be under the pictures at the right; no less than a few lines."""
        deep = self.depth - pictures * self.high
        return deep if deep >= ENDING * self.line else 0.0

    def room(self, pictures: int) -> float:
        """How deep text may be in both."""
        return self.left(pictures) + self.right(pictures)

    def ends(self, left: Sequence[Row], right: Sequence[Row], pictures: int) -> bool:
        """Is there room for one more picture?"""
        if pictures < self.held:
            return (pictures + 1) * self.high + height(right) <= self.foot
        return height(left) + (pictures + 1 - self.held) * self.high <= self.depth


def _gathered(
    waiting: list[Piece], spare: Sequence[Row], late: Sequence[Scene], sides: _Sides
) -> tuple[list[Row], list[Placed], list[Scene]]:
    """What goes on a page, taken from what is waiting: rows, perhaps more than have room, pictures with the height at
    which their sentence stands, and the picture for which there is no room."""
    rows, wished, few = [*spare], [(scene, 0.0) for scene in late], ENDING * sides.line
    while waiting and height(rows) < sides.room(len(wished)):
        scene, more = waiting[0].scene, waiting[0].rows
        if scene and (wished or rows) and height(rows) + min(few, height(more)) > sides.room(len(wished) + 1):
            if sides.room(len(wished)) - height(rows) < few:
                break
            del waiting[0]
            return [*rows, *more], wished, [scene]
        if scene:
            wished.append((scene, height(rows)))
        rows += more
        del waiting[0]
    return rows, wished, []


def _in_columns(rows: Sequence[Row], sides: _Sides, pictures: int) -> tuple[Sequence[Row], Sequence[Row], list[Row]]:
    """The rows at the left, those at the right, and those for the next page."""
    left, *more = columns(rows, sides.left(pictures)) or [()]
    rest = [row for column in more for row in column]
    deep = sides.right(pictures)
    if not deep:
        return left, (), rest
    right, *more = columns(rest, deep) or [()]
    return left, right, [row for column in more for row in column]


def _shorter(
    left: Sequence[Row], right: Sequence[Row], spare: Sequence[Row], line: float
) -> tuple[Sequence[Row], Sequence[Row], list[Row]]:
    """The columns, the last of them a line shorter for the sake of the next page."""
    kept, *more = columns(right or left, height(right or left) - line)
    spare = [*(row for column in more for row in column), *spare]
    return (left, kept, spare) if right else (kept, (), spare)


def _lines(rows: Sequence[Row]) -> int:
    return sum(bool(row.items) for row in rows)


def _spread(wished: Sequence[Placed], high: float, foot: float) -> list[Placed]:
    """Pictures one below the other, above the foot, each where it is wished for or as near as the others let it."""
    tops: list[float] = []
    for _, wish in wished:
        tops.append(max(wish, tops[-1] + high) if tops else wish)
    below = foot
    for at in reversed(range(len(tops))):
        below = tops[at] = max(0.0, min(tops[at], below - high))
    return [(scene, y) for (scene, _), y in zip(wished, tops, strict=True)]


def _leaf(
    puzzle: BookPuzzle,
    head: tuple[Row, ...],
    text: tuple[Sequence[Row], Sequence[Row], float],
    beside: Sequence[Placed],
    under: Sequence[Placed],
    layout: Layout,
    measures: _Measures,
    first: bool,
) -> UnnumberedPage:
    """A page: its head, its text at the left and, from some height on, at the right, and its pictures."""

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        items = [*stacked(head, sheet.x, sheet.y, labels)]
        top = sheet.y + height(head)
        left, right, below = text
        items += stacked(left, sheet.x, top, labels)
        items += stacked(right, sheet.x + layout.measure - measures.text, top + below, labels)
        for pictures, x in ((beside, layout.measure - measures.wide), (under, 2.0 * layout.type.text.size)):
            items += [
                Group((*_captioned(puzzle, scene, layout, measures),), sheet.x + x, top + y) for scene, y in pictures
            ]
        return tuple(items)

    anchors = (("crib", layout.margins.top),) if first else ()
    return UnnumberedPage(draw, anchors, "" if first else layout.say("crib"))


def _captioned(puzzle: BookPuzzle, scene: Scene, layout: Layout, measures: _Measures) -> Iterator[Item]:
    """A letter, which steps the picture shows and how many cells are filled, then the board."""
    label, line, claim, cell = layout.type.label, layout.line, numbered(puzzle.puzzle), measures.cell
    base = (1 - DROP) * line
    words = scene.label
    x = 0.0
    if scene.steps:
        yield tagged((OURS,), Text(x, base, scene.label, "sans-bold", label.size * 1.15))
        x = (1 + 0.7 * len(scene.label)) * label.size
        filled = layout.say("cells-filled", number=str(scene.filled))
        words = f"{steps_of(layout.words, scene)}  ·  {filled}"
    yield tagged((OURS.further if x else OURS,), Text(x, base, words, label.font, label.size, 0.25))
    drawn = draw_scene(puzzle.puzzle, scene, cell, f"scene {scene.label} of {puzzle.id}", layout.language)
    yield Group((drawn,), claim.left * cell, CAPTION * line + claim.top * cell)


def steps_of(words: Catalogue, scene: Scene) -> str:
    """“step 12”, “steps 12–15”."""
    first, last = scene.steps[0], scene.steps[-1]
    return words.say("crib-step" if first == last else "crib-run", first=str(first), last=str(last))
