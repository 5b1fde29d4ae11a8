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

from bookmaker.book import wording
from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Bookmark, Document, Group, Item, Rect, Stroke, Text, tagged
from bookmaker.display.tags import ENGLISH, HEADING, OURS, PARAGRAPH, Role, Tag
from bookmaker.layout.art.coordinates import numbered
from bookmaker.layout.art.gridart import SHADE
from bookmaker.layout.art.profile import profile, profile_said
from bookmaker.layout.art.ridge import ridge
from bookmaker.layout.art.scenepicture import (
    LIGHT,
    cell_for,
    corners,
    draw_scene,
    heavy_frame,
    round_sign,
    stroke_through,
)
from bookmaker.layout.compose import draw_pages
from bookmaker.layout.lengths import mm
from bookmaker.layout.page_side import PageSide, UnnumberedPage, capitals
from bookmaker.layout.pages.words import ridge_width, rules_above
from bookmaker.layout.setting.flow import columns, height, stacked
from bookmaker.layout.setting.text import DROP, FONTS, Labels, Row, broken, paragraph, width
from bookmaker.layout.spec import Layout
from bookmaker.tell.passages import Passage, Sentence, Story
from bookmaker.tell.scenes import Scene

GUTTER = mm(9)
"""White space between text and pictures."""

PICTURES = 0.45
"""Share of the width that pictures take, more where candidates would be too small."""

EMS = 20
"""The narrowest column of text beside pictures, in ems."""

MARGIN = 2.9
"""Width of the margin for letters and steps, in ems."""

CAPTION = 1.3
"""Height of the line over a picture, in lines of text."""

PROFILE = 3.0
"""Height of the solve profile, in lines of text."""

ENDING = 5
"""Lines that go over to the last page at least, where the text is broken off; a short passage may go over whole."""

CRIB = "Presenter’s crib"
SIGNS = ("look here", "look along here", "filled next", "eliminated")
SUPPOSED = ("supposed", "what follows, in this order")
STEPS = "The figures in the margin count the steps of the path."


@dataclass(frozen=True, slots=True)
class _Piece:
    """Rows of text, and the picture that stands beside them, if any."""

    rows: tuple[Row, ...]
    scene: Scene | None = None


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
    head = (*_head(puzzle, [*scenes.values()], layout),)
    pieces = [*_pieces(story, start, scenes, layout, measures)]
    if measures.beside:
        leaves = [*_leaves(puzzle, head, pieces, end, layout, measures)]
    else:
        leaves = [*_in_one_column(puzzle, head, [*pieces, _Piece((), end)], layout, measures)]
    labelled = list(zip(leaves, map(str, range(1, len(leaves) + 1)), strict=True))
    pages = draw_pages(labelled, layout, puzzle.title, draft=False)
    return Document(f"{puzzle.title}: {CRIB}", puzzle.setter, "", pages, (Bookmark(puzzle.title, "crib"),))


def _measures(puzzle: BookPuzzle, scenes: Sequence[Scene], layout: Layout) -> _Measures:
    """Cells as large as their candidates need; beyond that as wide as the column allows, and small enough for a page to
    hold three pictures."""
    claim, size = numbered(puzzle.puzzle), puzzle.puzzle.grid.size
    across, down = claim.left + size + claim.right, claim.top + size + claim.bottom
    least, over = cell_for(puzzle.puzzle.grid, scenes), (CAPTION + 1) * layout.line
    usual = min(PICTURES * layout.measure / across, (layout.depth / 3 - over) / down, mm(11))
    room = layout.measure - GUTTER - (EMS + MARGIN) * layout.type.text.size
    beside = least * across <= room
    cell = (
        max(usual, least) if beside else min(max(least, mm(8)), layout.measure / across, (layout.depth - over) / down)
    )
    text = layout.measure - GUTTER - cell * across if beside else layout.measure
    return _Measures(cell, cell * across, over + cell * down, text, beside)


def _head(puzzle: BookPuzzle, scenes: Sequence[Scene], layout: Layout) -> Iterator[Row]:
    """Title, setter, rules, solve profile, how cells are named, and what the pictures' signs mean."""
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
        words = f"{puzzle.rating.band_name}  ·  difficulty {puzzle.rating.figure}"
        band = Text(measure, (1 - DROP) * line, words, type.label.font, type.label.size, anchor="end")
        items.append(tagged((PARAGRAPH,), band))
    yield Row(line / 4)
    yield Row(line, tuple(items))
    yield Row(line / 2)
    yield from rules_above(puzzle, layout, measure, 0.0)
    if puzzle.rating and puzzle.rating.profile:
        yield Row(line / 2)
        yield from _walk(puzzle, scenes, layout)
    yield from paragraph(f"{wording.CELL_NAMES} {STEPS}", type.small, measure, line, tags=(OURS,))
    if scenes:
        yield Row(line / 4)
        yield from _legend(scenes, layout)
    yield Row(0.5 * line)


def _walk(puzzle: BookPuzzle, scenes: Sequence[Scene], layout: Layout) -> Iterator[Row]:
    """The solve profile, letters over the moments that have pictures."""
    rating, line, label = puzzle.rating, layout.line, layout.type.label
    assert rating is not None
    high = PROFILE * line
    drawn = profile(rating.profile, (), layout.measure, high, max(rating.profile))
    items: list[Item] = [Group((drawn,), 0.0, high + line)]
    step = layout.measure / len(rating.profile)
    by_group: dict[int, list[str]] = {}
    for scene in scenes:
        by_group.setdefault(scene.group, []).append(scene.label)
    right = -label.size
    for group, letters in sorted(by_group.items()):
        text = letters[0] if len(letters) == 1 else f"{letters[0]}–{letters[-1]}"
        half = width(text, label) / 2
        x = max((group + 0.5) * step, half, right + half + 2.0)
        items.append(Text(x, line * (1 - DROP), text, "sans-bold", label.size, anchor="middle"))
        right = x + half
    told = Tag(Role.FIGURE, profile_said(rating), language=ENGLISH, box=(0.0, 0.0, layout.measure, high + line))
    yield Row(high + 1.6 * line, tuple(items), tags=(told,))


def _legend(scenes: Sequence[Scene], layout: Layout) -> Iterator[Row]:
    """Small cells with what the signs on the pictures mean, on as many lines as they need."""
    note, line = layout.type.small, layout.line
    cell, gap = 1.25 * line, 0.5 * note.size
    base = cell / 2 + FONTS.x_height(note.font) * note.size / 2 + 0.5
    items: list[Item] = []
    x = 0.0
    tried = any(scene.follows for scene in scenes)
    for words in (*SIGNS, *(SUPPOSED if tried else ())):
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
    high = 0.42 * cell
    size = high / FONTS.figure_height("sans")
    match words:
        case "look here":
            yield corners(0.0, 0.0, cell)
        case "filled next":
            yield heavy_frame(0.0, 0.0, cell)
        case "eliminated":
            yield Text(cell / 2, (cell + high) / 2, "4", "sans", size, anchor="middle")
            yield stroke_through((cell / 2, cell / 2), high)
        case "supposed" | "what follows, in this order":
            yield Text(0.4 * cell, 0.6 * cell + high / 2, "4", "sans", size, LIGHT, "middle")
            yield from round_sign((cell, 0.0), 1.6 * cell, "?" if words == "supposed" else "1")


def _pieces(
    story: Story, start: Scene, scenes: Mapping[int, Scene], layout: Layout, measures: _Measures
) -> Iterator[_Piece]:
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
            rows += _paragraph(sentences, mine.label if mine else "", layout, measures)
        yield _Piece((*rows, Row(layout.line / 2)), scene)


def _cut(passage: Passage, scenes: Mapping[int, Scene]) -> Iterator[tuple[list[Sentence], Scene | None]]:
    """The sentences of a passage, those with a picture each at the head of a list of its own."""
    gathered: list[Sentence] = []
    scene: Scene | None = None
    for sentence in passage.sentences:
        mine = scenes.get(sentence.told[0]) if sentence.told else None
        if mine and gathered:
            yield gathered, scene
            gathered = []
        scene = mine or (scene if gathered else None)
        gathered.append(sentence)
    yield gathered, scene


def _paragraph(sentences: Sequence[Sentence], letter: str, layout: Layout, measures: _Measures) -> Iterator[Row]:
    """Sentences as a paragraph; in the margin the letter of their picture, and where steps begin the first of them."""
    text, line, label = layout.type.text, layout.line, layout.type.label
    indent = MARGIN * text.size
    words = " ".join(sentence.text for sentence in sentences)
    rows = paragraph(words, text, measures.text - indent, line, indent, tags=(OURS,))
    begun = _begun(sentences, [_said(row) for row in rows])
    for at, row in enumerate(rows):
        said, margin = [*row.items], list[Item]()
        if letter and at == 0:
            said.insert(0, Text(0.0, (1 - DROP) * line, letter, "sans-bold", label.size * 1.15))
        if at in begun:
            edge = indent - 0.6 * text.size
            margin.append(Text(edge, (1 - DROP) * line, str(begun[at]), label.font, label.size, 0.25, "end"))
        yield replace(row, items=(*margin, *replace(row, items=(*said,)).told), tags=())


def _said(row: Row) -> str:
    return "".join(item.text for item in row.items if isinstance(item, Text))


def _begun(sentences: Sequence[Sentence], lines: Sequence[str]) -> dict[int, int]:
    """By the line, the first step of the sentences that begin there; a line may end in a hyphen of its own."""
    begins: dict[int, int] = {}
    letters = ""
    for sentence in sentences:
        if sentence.told:
            begins[len(letters)] = sentence.told[0]
        letters += sentence.text.replace(" ", "")
    found: dict[int, int] = {}
    start = 0
    for at, line in enumerate(lines):
        said = line.replace(" ", "")
        end = start + len(said) - (letters[start : start + len(said)] != said)
        if steps := [step for place, step in begins.items() if start <= place < end]:
            found[at] = steps[0]
        start = end
    return found


def _in_one_column(
    puzzle: BookPuzzle, head: tuple[Row, ...], pieces: Sequence[_Piece], layout: Layout, measures: _Measures
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
    pieces: Sequence[_Piece],
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
    return UnnumberedPage(draw, anchors, "" if first else CRIB)


def _captioned(puzzle: BookPuzzle, scene: Scene, layout: Layout, measures: _Measures) -> Iterator[Item]:
    """A letter, which steps the picture shows and how many cells are filled, then the board."""
    label, line, claim, cell = layout.type.label, layout.line, numbered(puzzle.puzzle), measures.cell
    base = (1 - DROP) * line
    words = scene.label
    x = 0.0
    if scene.steps:
        yield tagged((OURS,), Text(x, base, scene.label, "sans-bold", label.size * 1.15))
        x = (1 + 0.7 * len(scene.label)) * label.size
        words = f"{steps_of(scene)}  ·  {scene.filled} cells filled"
    yield tagged((OURS.further if x else OURS,), Text(x, base, words, label.font, label.size, 0.25))
    drawn = draw_scene(puzzle.puzzle, scene, cell, f"scene {scene.label} of {puzzle.id}")
    yield Group((drawn,), claim.left * cell, CAPTION * line + claim.top * cell)


def steps_of(scene: Scene) -> str:
    """“step 12”, “steps 12–15”."""
    first, last = scene.steps[0], scene.steps[-1]
    return f"step {first}" if first == last else f"steps {first}–{last}"
