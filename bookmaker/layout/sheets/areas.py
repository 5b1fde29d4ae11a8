"""A layout explained: two facing pages with their areas drawn to scale, and under them every value.

In: a layout and what its lines say. Out: a `Document` of A4 pages. The drawing has the margins with their measures, the
places of the puzzles, each with a 9 × 9 grid as large as it may be there, and at the left the keys; what a press or a
pad adds around them; and where the page number stands.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace

from bookmaker.display.items import Document, Group, Item, Line, Page, Rect, Stroke, Text, tagged
from bookmaker.display.tags import HEADING, OURS, Role, Tag
from bookmaker.layout.explained import Value
from bookmaker.layout.lengths import PAPERS, mm
from bookmaker.layout.page_side import PageSide, UnnumberedPage, furniture
from bookmaker.layout.pages.block import GUTTER
from bookmaker.layout.pages.keys import CAPTION, FOOT, PROFILE, TALLEST, WHITE
from bookmaker.layout.pages.keys import GUTTER as KEY_GUTTER
from bookmaker.layout.pages.sizing import BESIDE
from bookmaker.layout.setting.flow import columns, height, stacked
from bookmaker.layout.setting.text import DROP, Row, broken, paragraph
from bookmaker.layout.spec import Layout, Type

WIDTH, HEIGHT = PAPERS["A4"]
MARGIN, COLUMN_GAP = mm(15), mm(8)
ROOM = WIDTH - 2 * MARGIN, mm(80)
"""Width and height of the drawing."""

TITLE, TEXT = Type("serif", 22, 28), Type("serif", 8, 10)
NAME, SECTION_NAME = Type("sans-bold", 7, 10), Type("sans-bold", 8, 15)
TYPED, MEANT = mm(18), mm(42)
"""Where what is typed begins, and what it is for."""

MEASURE = 6.0
"""Size of the measures in the drawing."""

EDGE, AREA, PLACE, FINE = Stroke(0.6), Stroke(0.4, 0.45), Stroke(0.5, 0.3, (2.0, 2.0)), Stroke(0.25, 0.4)
PAPER, INK = 1.0, 0.9


def compose_areas(layout: Layout, values: Sequence[Value]) -> Document:
    """The explanation of a layout, `values` being its lines in order."""
    title = f"The layout {layout.name}"
    head = (
        Row(TITLE.leading, (Text(0.0, TITLE.size, title, TITLE.font, TITLE.size),), tags=(HEADING,)),
        *paragraph(layout.about, replace(TEXT, font="serif-italic"), ROOM[0], TEXT.leading, tags=(OURS,)),
        Row(TEXT.leading),
    )
    drawn, high = _drawing(layout)
    top = height(head)
    wide = (ROOM[0] - COLUMN_GAP) / 2
    rows = [row for value in values for row in _line(value, wide)]
    below = MARGIN + top + high + 2 * TEXT.leading
    pages = []
    first = columns(rows, HEIGHT - MARGIN - below)[:2]
    left = rows[sum(map(len, first)) :]
    items = (*stacked(head, MARGIN, MARGIN, {}), Group((drawn,), MARGIN, MARGIN + top))
    pages.append(Page(WIDTH, HEIGHT, (*items, *_columns(first, below, wide)), "1"))
    while left:
        some = columns(left, HEIGHT - 2 * MARGIN)[:2]
        left = left[sum(map(len, some)) :]
        pages.append(Page(WIDTH, HEIGHT, tuple(_columns(some, MARGIN, wide)), str(len(pages) + 1)))
    return Document(title, "", layout.about, tuple(pages))


def _columns(filled: Sequence[Sequence[Row]], y: float, wide: float) -> Iterator[Item]:
    for at, rows in enumerate(filled):
        yield from stacked(rows, MARGIN + at * (wide + COLUMN_GAP), y, {})


def _line(value: Value, wide: float) -> Iterator[Row]:
    """A section's name over its lines; a line's name, what it says, and what that is for."""
    if not value.typed:
        yield Row(
            SECTION_NAME.leading,
            (Text(0.0, SECTION_NAME.size + 4, value.name, SECTION_NAME.font, SECTION_NAME.size),),
            tied=True,
            tags=(HEADING,),
        )
        yield from (replace(row, tied=True) for row in _words(value.meaning, 0.0, wide))
        return
    indent, base = 4.0 if value.section else 0.0, (1 - DROP) * TEXT.leading
    name = Text(indent, base, value.name, NAME.font, NAME.size)
    typed = [
        Text(TYPED, base + at * TEXT.leading, words, "sans", NAME.size)
        for at, words in enumerate(broken(value.typed, "sans", NAME.size, MEANT - TYPED))
    ]
    meaning = [*_words(value.meaning, MEANT, wide - MEANT)]
    said: list[Item] = [name, *typed, *stacked([replace(row, tags=()) for row in meaning], 0.0, 0.0, {})]
    words = Tag(Role.PARAGRAPH, f"{value.name}: {value.typed}. {value.meaning}.", language="en")
    yield Row(max(len(meaning), len(typed)) * TEXT.leading, tuple(said), tags=(words,))


def _words(text: str, x: float, wide: float) -> Iterator[Row]:
    yield from paragraph(text, TEXT, wide, TEXT.leading, x, tags=(OURS,))


def _drawing(layout: Layout) -> tuple[Item, float]:
    """The two pages, and their height on paper."""
    around = layout.press.bleed + mm(1)
    wide, high = 2 * (layout.width + around), layout.height + 2 * around
    scale = min(ROOM[0] / wide, ROOM[1] / high)
    pages = [
        Group(tuple(_page(PageSide(layout, right), scale)), around + right * layout.width, around)
        for right in (False, True)
    ]
    said = f"Two facing pages of {layout.name} with their margins and the places of puzzles and keys"
    figure = Tag(Role.FIGURE, said, language="en", box=(0.0, 0.0, wide * scale, high * scale))
    return tagged((figure,), Group(tuple(pages), (ROOM[0] - wide * scale) / 2, 0.0, scale=scale)), high * scale


def _page(sheet: PageSide, scale: float) -> Iterator[Item]:
    """A page in its own measure; strokes and words come out as large on paper as if it were drawn at full size."""
    layout = sheet.layout

    def pen(stroke: Stroke) -> Stroke:
        return replace(stroke, width=stroke.width / scale, dash=tuple(dash / scale for dash in stroke.dash))

    bleed = layout.press.bleed
    left, right = (0.0 if sheet.right else -bleed), (layout.width + bleed if sheet.right else layout.width)
    if bleed:
        yield Rect(left, -bleed, right - left, layout.height + 2 * bleed, pen(PLACE), INK)
    yield Rect(0.0, 0.0, layout.width, layout.height, pen(EDGE), PAPER)
    yield Rect(sheet.x, sheet.y, layout.measure, layout.depth, pen(AREA))
    for x, y, width, depth in _puzzle_places(layout) if sheet.right else _key_places(layout):
        yield Rect(sheet.x + x, sheet.y + y, width, depth, pen(PLACE))
    for x, y, side in _puzzle_grids(layout) if sheet.right else _key_grids(layout):
        yield from _grid(sheet.x + x, sheet.y + y, side, pen)
    for x, y, words in _named(layout) if sheet.right else ():
        yield Text(sheet.x + x + 2 / scale, sheet.y + y + 8 / scale, words, "sans", MEASURE / scale, 0.25)
    number = "13" if sheet.right else "12"
    yield from furniture(sheet, UnnumberedPage(lambda sheet, labels: (), torn=True), "", number, False)
    yield from _measures(sheet, MEASURE / scale)


def _grid(x: float, y: float, side: float, pen: Callable[[Stroke], Stroke]) -> Iterator[Item]:
    yield Rect(x, y, side, side, pen(EDGE))
    for at in range(1, 9):
        stroke = pen(FINE if at % 3 else AREA)
        yield Line((x + at * side / 9, y), (x + at * side / 9, y + side), stroke)
        yield Line((x, y + at * side / 9), (x + side, y + at * side / 9), stroke)


def _measures(sheet: PageSide, size: float) -> Iterator[Item]:
    """How wide each margin is, in millimetres, in its middle."""
    layout, margins = sheet.layout, sheet.layout.margins
    middle = sheet.x + layout.measure / 2
    drop = 0.35 * size
    yield _measure(middle, margins.top / 2 + drop, "top", margins.top, size)
    yield _measure(middle, layout.height - margins.bottom / 2 + drop, "bottom", margins.bottom, size)
    inner = ("inner", margins.inner, margins.inner / 2)
    outer = ("outer", margins.outer, layout.width - margins.outer / 2)
    for name, width, x in (inner, outer):
        at = x if sheet.right else layout.width - x
        yield Group((_measure(0.0, drop, name, width, size),), at, 0.38 * layout.height, turn=90.0)


def _measure(x: float, y: float, name: str, length: float, size: float) -> Text:
    return Text(x, y, f"{name} {length / mm(1):.3g} mm", "sans", size, 0.25, anchor="middle")


def _puzzle_places(layout: Layout) -> Iterator[tuple[float, float, float, float]]:
    """Left, top, width and depth of each puzzle's share of the page, in the type area."""
    slots = layout.puzzles
    width = (layout.measure - (slots.columns - 1) * slots.gap) / slots.columns
    depth = (layout.depth - (slots.rows - 1) * slots.gap) / slots.rows
    for row in range(slots.rows):
        for column in range(slots.columns):
            yield column * (width + slots.gap), row * (depth + slots.gap), width, depth


def _puzzle_grids(layout: Layout) -> Iterator[tuple[float, float, float]]:
    """Left, top and side of a 9 × 9 grid in each place, under the usual title and two lines of rules."""
    slots, type = layout.puzzles, layout.type
    above = type.number.leading + type.note.leading + 2.5 * layout.line
    for x, y, width, depth in _puzzle_places(layout):
        if slots.text == "beside":
            side = min(9 * slots.most, depth, width - BESIDE - GUTTER)
            yield x + width - side, y, side
        else:
            hang = slots.hang if slots.columns == 1 else 0.0
            side = min(9 * slots.most, depth - above - 3 * layout.line, width - hang)
            yield x + hang, y + above + layout.line, side


def _named(layout: Layout) -> Iterator[tuple[float, float, str]]:
    """What stands where in the first place: left, top and name."""
    hang = layout.puzzles.hang if layout.puzzles.text == "above" and layout.puzzles.columns == 1 else 0.0
    if hang:
        yield 0.0, 0.0, "hang"
    yield hang, 0.0, "title and rules"


def _key_places(layout: Layout) -> Iterator[tuple[float, float, float, float]]:
    """The place of each key of a full page, with the line over it and the profile under it."""
    across, line = layout.keys.columns, layout.line
    side = min((layout.measure - (across - 1) * KEY_GUTTER) / across, 9 * layout.keys.cell)
    gutter = (layout.measure - across * side) / (across - 1) if across > 1 else 0.0
    deep = (CAPTION + 0.3 + FOOT) * line + side + min(PROFILE * line, TALLEST)
    for row in range(max(1, int((layout.depth + WHITE * line) / (deep + WHITE * line)))):
        for column in range(across):
            yield column * (side + gutter), row * (deep + WHITE * line), side, deep


def _key_grids(layout: Layout) -> Iterator[tuple[float, float, float]]:
    for x, y, side, _ in _key_places(layout):
        yield x, y + CAPTION * layout.line, side
