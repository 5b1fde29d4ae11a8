"""A presenter's crib: the path in words, and beside them the board at its key moments.

In: a puzzle as a book has it, its story and scenes, a layout. Out: a `Document` of a few pages. On top the title, the
setter, the rules and the solve profile with a letter at each moment that has a picture; then text at the left, the
numbers of the steps in its margin, and pictures at the right, each as near as can be to the sentence that it belongs
to. Where cells are too many to leave room for text beside them, pictures stand in the text.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
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

PICTURES = 0.45
"""Share of the width that pictures take, more where candidates would be too small."""

EMS = 20
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
    """Cells as large as their candidates need; beyond that as wide as the column allows, and small enough for a page to
    hold three pictures."""
    claim, grid = numbered(puzzle.puzzle), puzzle.puzzle.grid
    across, down = claim.left + grid.width + claim.right, claim.top + grid.height + claim.bottom
    least, over = cell_for(puzzle.puzzle.grid, scenes), (CAPTION + 1) * layout.line
    usual = min(PICTURES * layout.measure / across, (layout.depth / 3 - over) / down, mm(11))
    room = layout.measure - GUTTER - (EMS + MARGIN) * layout.type.text.size
    beside = least * across <= room
    cell = (
        max(usual, least) if beside else min(max(least, mm(8)), layout.measure / across, (layout.depth - over) / down)
    )
    text = layout.measure - GUTTER - cell * across if beside else layout.measure
    return _Measures(cell, cell * across, over + cell * down, text, beside)


def _in_one_column(
    puzzle: BookPuzzle, head: tuple[Row, ...], pieces: Sequence[Piece], layout: Layout, measures: _Measures
) -> Iterator[UnnumberedPage]:
    """Pages of text with each picture under its own."""
    rows = [*head]
    for piece in pieces:
        rows += piece.rows
        if piece.scene:
            picture = Group((*_captioned(puzzle, piece.scene, layout, measures),), layout.measure - measures.wide)
            rows.append(Row(measures.high, (picture,)))
    for number, page in enumerate(columns(rows, layout.depth)):
        yield _leaf(puzzle, (), page, [], [], layout, measures, first=number == 0)


def _leaves(
    puzzle: BookPuzzle,
    head: tuple[Row, ...],
    pieces: Sequence[Piece],
    end: Scene,
    layout: Layout,
    measures: _Measures,
) -> Iterator[UnnumberedPage]:
    """Pages: text down the left, and beside it its pictures; text waits for the next page where its picture has to."""
    high = measures.high
    waiting = [*pieces]
    spare: list[Row] = []
    top = height(head)
    while waiting or spare:
        depth = layout.depth - top
        rows, wished = spare, list[Placed]()
        while waiting and height(rows) < depth:
            piece = waiting[0]
            if piece.scene and (len(wished) + 1) * high > depth + layout.line and (wished or rows):
                break
            if piece.scene:
                wished.append((piece.scene, height(rows)))
            rows = [*rows, *waiting.pop(0).rows]
        column, *later = columns(rows, depth) or [()]
        spare = [row for more in later for row in more]
        while not waiting and 0 < _lines(spare) < ENDING < _lines(column):
            column, *later = columns(rows, height(column) - layout.line)
            spare = [row for more in later for row in more]
        last = not waiting and not spare
        foot = depth + layout.line  # the white under the last picture may hang over
        beside = _spread(wished, high, foot)
        under: list[Placed] = []
        if last and (len(beside) + 1) * high <= depth + layout.line:
            beside = _spread([*beside, (end, height(column))], high, foot)
        elif last and height(column) + high <= depth + layout.line:
            under = [(end, height(column) + layout.line)]
        yield _leaf(puzzle, head if top else (), column, beside, under, layout, measures, first=bool(top))
        if last and not under and (not beside or beside[-1][0] is not end):
            yield _leaf(puzzle, (), (), [(end, 0.0)], [], layout, measures, first=False)
        top = 0.0


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
    column: Sequence[Row],
    beside: Sequence[Placed],
    under: Sequence[Placed],
    layout: Layout,
    measures: _Measures,
    first: bool,
) -> UnnumberedPage:
    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        items = [*stacked(head, sheet.x, sheet.y, labels)]
        top = sheet.y + height(head)
        items += stacked(column, sheet.x, top, labels)
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
