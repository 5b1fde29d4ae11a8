"""A presenter's crib: the path in words, and beside them the board at its key moments.

In: a puzzle as a book has it, its story and scenes, a layout. Out: a `Document` of a few pages. On top the title, the
setter, the rules and the solve profile with a letter at each moment that has a picture; then text at the left, pictures
at the right, each as near as can be to the passage that it belongs to.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

from bookmaker.book import wording
from bookmaker.book.model import BookPuzzle
from bookmaker.display.items import Bookmark, Document, Group, Item, Rect, Stroke, Text, tagged
from bookmaker.display.tags import ENGLISH, HEADING, OURS, PARAGRAPH, Role, Tag
from bookmaker.layout.art.gridart import outside
from bookmaker.layout.art.profile import profile, profile_said
from bookmaker.layout.art.ridge import ridge
from bookmaker.layout.art.scenepicture import SHADE, corners, draw_scene, heavy_frame, stroke_through
from bookmaker.layout.compose import draw_pages
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.words import ridge_width, rules_above
from bookmaker.layout.setting.flow import columns, height, stacked
from bookmaker.layout.setting.text import DROP, FONTS, Labels, Row, broken, paragraph, width
from bookmaker.layout.sheet import Leaf, Sheet, capitals
from bookmaker.layout.spec import Layout
from bookmaker.tell.model import Passage, Story
from bookmaker.tell.scenes import Scene

GUTTER = mm(9)
"""White space between text and pictures."""

PICTURES = 0.45
"""Share of the width that pictures take."""

CAPTION = 1.3
"""Height of the line over a picture, in lines of text."""

PROFILE = 3.0
"""Height of the solve profile, in lines of text."""

ENDING = 5
"""Lines that go over to the last page at least, where the text is broken off; a short passage may go over whole."""

CRIB = "Presenter’s crib"


@dataclass(frozen=True, slots=True)
class _Piece:
    """Rows of text, and the picture that stands beside them, if any."""

    rows: tuple[Row, ...]
    scene: Scene | None = None


Placed: TypeAlias = tuple[Scene, float]
"""A picture, and how far below the top of its column it begins."""


def compose_crib(
    puzzle: BookPuzzle, story: Story, scenes: Mapping[int, Scene], start: Scene, end: Scene, layout: Layout
) -> Document:
    """The crib of one puzzle; `scenes` stand beside the sentences that tell those steps."""
    head = (*_head(puzzle, scenes, layout),)
    leaves = [*_leaves(puzzle, head, [*_pieces(story, start, scenes, layout)], end, layout)]
    numbered = list(zip(leaves, map(str, range(1, len(leaves) + 1)), strict=True))
    pages = draw_pages(numbered, layout, puzzle.title, draft=False)
    return Document(f"{puzzle.title}: {CRIB}", puzzle.setter, "", pages, (Bookmark(puzzle.title, "crib"),))


def _text_width(layout: Layout) -> float:
    return (1 - PICTURES) * layout.measure - GUTTER


def _head(puzzle: BookPuzzle, scenes: Mapping[int, Scene], layout: Layout) -> Iterator[Row]:
    """Title, setter, rules, solve profile, and what the pictures' signs mean."""
    line, type, measure = layout.line, layout.type, layout.measure
    head = capitals(0.0, (1 - DROP) * line, CRIB, layout, measure)
    yield Row(line, (head,), tags=(replace(OURS, said=CRIB),))
    wide = ridge_width(layout)
    title = broken(puzzle.title, type.heading.font, type.heading.size, measure - wide - line)
    base = type.heading.leading - DROP * line
    for at, words in enumerate(title):
        text = Text(0.0, base, words, type.heading.font, type.heading.size)
        items: list[Item] = [tagged((HEADING.further if at else HEADING,), text)]
        if at == 0 and puzzle.rating:
            items.append(Group((ridge(puzzle.rating.band, wide),), measure - wide, base))
        yield Row(type.heading.leading, tuple(items))
    said = [puzzle.setter] if puzzle.setter else []
    said += [f"first shown {puzzle.shown}"] if puzzle.shown else []
    text = Text(0.0, (1 - DROP) * line, ", ".join(said), type.note.font, type.note.size)
    items = [tagged((PARAGRAPH,), text)] if said else []
    if puzzle.rating:
        words = f"{puzzle.rating.band_name}  ·  effort {puzzle.rating.effort:.0f}"
        band = Text(measure, (1 - DROP) * line, words, type.label.font, type.label.size, anchor="end")
        items.append(tagged((PARAGRAPH,), band))
    yield Row(line / 4)
    yield Row(line, tuple(items))
    yield Row(line / 2)
    yield from rules_above(puzzle, layout, measure, 0.0)
    if puzzle.rating and puzzle.rating.profile:
        yield Row(line / 2)
        yield from _walk(puzzle, [*scenes.values()], layout)
    if scenes:
        yield from _legend(layout)
    yield from paragraph(wording.CELL_NAMES, type.small, measure, line, tags=(OURS,))
    yield Row(0.5 * line)


def _walk(puzzle: BookPuzzle, scenes: Sequence[Scene], layout: Layout) -> Iterator[Row]:
    """The solve profile, letters over the moments that have pictures."""
    rating, line, label = puzzle.rating, layout.line, layout.type.label
    assert rating is not None
    high = PROFILE * line
    drawn = profile(rating.profile, (), layout.measure, high, max(rating.profile))
    items: list[Item] = [Group((drawn,), 0.0, high + line)]
    step = layout.measure / len(rating.profile)
    by_moment: dict[int, str] = {}
    for scene in scenes:
        by_moment[scene.moment] = by_moment.get(scene.moment, "") + scene.label
    right = -label.size
    for moment, letters in sorted(by_moment.items()):
        text = letters if len(letters) == 1 else f"{letters[0]}–{letters[-1]}"
        half = width(text, label) / 2
        x = max((moment + 0.5) * step, half, right + half + 2.0)
        items.append(Text(x, line * (1 - DROP), text, "sans-bold", label.size, anchor="middle"))
        right = x + half
    told = Tag(Role.FIGURE, profile_said(rating), language=ENGLISH, box=(0.0, 0.0, layout.measure, high + line))
    yield Row(high + 1.6 * line, tuple(items), tags=(told,))


def _legend(layout: Layout) -> Iterator[Row]:
    """Small cells with what the signs on the pictures mean, on as many lines as they need."""
    note, line = layout.type.small, layout.line
    cell, gap = 1.25 * line, 0.5 * note.size
    base = cell / 2 + FONTS.x_height(note.font) * note.size / 2 + 0.5
    items: list[Item] = []
    x = 0.0
    for words in ("look here", "look along here", "filled next", "eliminated"):
        wide = cell + gap + width(words, note)
        if items and x + wide > layout.measure:
            yield Row(1.5 * line, tuple(items))
            items, x = [], 0.0
        sign = Group((*_sign(words, cell),), x)
        items.append(tagged((OURS,), sign, Text(x + cell + gap, base, words, note.font, note.size)))
        x += wide + 1.8 * note.size
    yield Row(1.5 * line, tuple(items))


def _sign(words: str, cell: float) -> Iterator[Item]:
    yield Rect(0.0, 0.0, cell, cell, Stroke(0.3, 0.45), SHADE if words == "look along here" else None)
    match words:
        case "look here":
            yield corners(0.0, 0.0, cell)
        case "filled next":
            yield heavy_frame(0.0, 0.0, cell)
        case "eliminated":
            high = 0.42 * cell
            size = high / FONTS.figure_height("sans")
            yield Text(cell / 2, (cell + high) / 2, "4", "sans", size, anchor="middle")
            yield stroke_through((cell / 2, cell / 2), high)


def _pieces(story: Story, start: Scene, scenes: Mapping[int, Scene], layout: Layout) -> Iterator[_Piece]:
    """The passages, cut so that a sentence with a picture begins a line, its letter in the margin. What leads up to the
    first picture of a passage stays with it."""
    for at, passage in enumerate(story.passages):
        rows: list[Row] = []
        scene = None if at else start
        for sentences, mine in _cut(passage, scenes):
            if mine and scene:
                yield _Piece(tuple(rows), scene)
                rows = []
            scene = mine or scene
            rows += _paragraph(" ".join(sentences), mine.label if mine else "", layout)
        yield _Piece((*rows, Row(layout.line / 2)), scene)


def _cut(passage: Passage, scenes: Mapping[int, Scene]) -> Iterator[tuple[list[str], Scene | None]]:
    """The sentences of a passage, those with a picture each at the head of a list of its own."""
    words: list[str] = []
    scene: Scene | None = None
    for sentence in passage.sentences:
        mine = next((scenes[index] for index in sentence.told if index in scenes), None)
        if mine and words:
            yield words, scene
            words = []
        scene = mine or (scene if words else None)
        words.append(sentence.text)
    yield words, scene


def _paragraph(words: str, letter: str, layout: Layout) -> Iterator[Row]:
    text, line = layout.type.text, layout.line
    indent = 2.0 * text.size
    first, *rest = paragraph(words, text, _text_width(layout) - indent, line, indent, tags=(OURS,))
    if letter:
        mark = Text(0.0, (1 - DROP) * line, letter, "sans-bold", layout.type.label.size * 1.15)
        first = replace(first, items=(mark, *first.items))
    yield from (first, *rest)


def _cell(puzzle: BookPuzzle, layout: Layout) -> float:
    """As wide as the column allows, and small enough for a page to hold three pictures."""
    claim, size = outside(puzzle.puzzle), puzzle.puzzle.grid.size
    widest = PICTURES * layout.measure / (claim.left + size + claim.right)
    tallest = (layout.depth / 3 - (CAPTION + 1) * layout.line) / (claim.top + size + claim.bottom)
    return min(widest, tallest, mm(11))


def _high(puzzle: BookPuzzle, layout: Layout) -> float:
    """Height of a picture with its caption and the white under it."""
    claim, size = outside(puzzle.puzzle), puzzle.puzzle.grid.size
    return (CAPTION + 1) * layout.line + (claim.top + size + claim.bottom) * _cell(puzzle, layout)


def _leaves(
    puzzle: BookPuzzle, head: tuple[Row, ...], pieces: Sequence[_Piece], end: Scene, layout: Layout
) -> Iterator[Leaf]:
    """Pages: text down the left, and beside it its pictures; text waits for the next page where its picture has to."""
    high = _high(puzzle, layout)
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
        yield _leaf(puzzle, head if top else (), column, beside, under, layout)
        if last and not under and (not beside or beside[-1][0] is not end):
            yield _leaf(puzzle, (), (), [(end, 0.0)], [], layout)
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
) -> Leaf:
    def draw(sheet: Sheet, labels: Labels) -> tuple[Item, ...]:
        items = [*stacked(head, sheet.x, sheet.y, labels)]
        top = sheet.y + height(head)
        items += stacked(column, sheet.x, top, labels)
        claim = outside(puzzle.puzzle)
        wide = (claim.left + puzzle.puzzle.grid.size + claim.right) * _cell(puzzle, layout)
        for pictures, x in ((beside, layout.measure - wide), (under, 2.0 * layout.type.text.size)):
            items += [Group((*_captioned(puzzle, scene, layout),), sheet.x + x, top + y) for scene, y in pictures]
        return tuple(items)

    anchors = (("crib", layout.margins.top),) if head else ()
    return Leaf(draw, anchors, "" if head else CRIB)


def _captioned(puzzle: BookPuzzle, scene: Scene, layout: Layout) -> Iterator[Item]:
    """A letter and how many cells are filled, then the board."""
    label, line, claim, cell = layout.type.label, layout.line, outside(puzzle.puzzle), _cell(puzzle, layout)
    base = (1 - DROP) * line
    x = 0.0
    if len(scene.label) == 1:
        yield tagged((OURS,), Text(x, base, scene.label, "sans-bold", label.size * 1.15))
        x = 1.6 * label.size
    words = f"{scene.filled} cells filled" if x else scene.label
    yield tagged((OURS.further if x else OURS,), Text(x, base, words, label.font, label.size, 0.25))
    drawn = draw_scene(puzzle.puzzle, scene, cell, f"scene {scene.label} of {puzzle.id}")
    yield Group((drawn,), claim.left * cell, CAPTION * line + claim.top * cell)
