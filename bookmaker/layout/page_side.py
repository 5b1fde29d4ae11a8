"""The sheet under every page: type area, running head, folio, draft stamp; left and right pages mirror each other.

In: a layout and which side a page is. Out: where the type area lies, and the furniture around it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from functools import partial
from typing import Literal

from bookmaker.display.items import Group, Item, Line, Rect, Stroke, Text, tagged
from bookmaker.display.tags import PART, Tag
from bookmaker.layout.lengths import mm
from bookmaker.layout.setting.text import Labels, cut
from bookmaker.layout.spec import HOLE, HOLE_IN, Layout, TearOut

SPACING = 0.12
"""Letter space of small labels in capitals, per em."""


@dataclass(frozen=True, slots=True)
class PageSide:
    """One side of a leaf. A right page (recto) has the spine at its left."""

    layout: Layout
    right: bool

    @property
    def x(self) -> float:
        """Left side of the type area."""
        return self.layout.margins.inner if self.right else self.layout.margins.outer

    @property
    def y(self) -> float:
        """Top of the type area."""
        return self.layout.margins.top

    @property
    def outer(self) -> tuple[float, Literal["start", "end"]]:
        """The outer edge of the type area, and how text is anchored there."""
        return (self.x + self.layout.measure, "end") if self.right else (self.x, "start")


@dataclass(frozen=True, slots=True)
class UnnumberedPage:
    """A page before it has a number: what leads to it, and how to draw it once all numbers are known.

    `anchors` are names with the height in points they lead to. `head` is the running head; a page that opens a part
    has none, and a `bare` page has no folio either. A page that must not be seen beside the one before it has a page
    `between`, which is put there where the two would face each other.
    """

    draw: Callable[[PageSide, Labels], tuple[Item, ...]]
    anchors: tuple[tuple[str, float], ...] = ()
    head: str = ""
    bare: bool = False
    between: UnnumberedPage | None = None
    torn: bool = False
    """Has its edge marks to tear it off by?"""
    front: bool = False
    """Must it be the front of its leaf of paper?"""
    guide: str = ""
    """What the page has, where that is said on left and right pages alike and in place of a running head."""
    thumb: float | None = None
    """Where the mark lies at its outer edge by which it is found, as a share of the way from top to foot."""


BLANK = UnnumberedPage(lambda sheet, labels: (), bare=True)


def as_part(leaves: Iterable[UnnumberedPage]) -> Iterator[UnnumberedPage]:
    """Leaves that together are one part to a reader."""
    tag = PART
    for leaf in leaves:
        between = leaf.between and _within(tag, leaf.between)
        tag = tag.further if between else tag
        yield _within(tag, replace(leaf, between=between) if between else leaf)
        tag = tag.further


def _within(tag: Tag, leaf: UnnumberedPage) -> UnnumberedPage:
    return replace(leaf, draw=partial(_drawn, tag, leaf.draw))


def _drawn(
    tag: Tag, draw: Callable[[PageSide, Labels], tuple[Item, ...]], sheet: PageSide, labels: Labels
) -> tuple[Item, ...]:
    return (tagged((tag,), *draw(sheet, labels)),)


def furniture(sheet: PageSide, leaf: UnnumberedPage, head: str, label: str, draft: bool) -> Iterator[Item]:
    """Running head, folio and draft stamp of a page."""
    layout = sheet.layout
    if not leaf.bare:
        edge, anchor = sheet.outer
        foot = layout.height - layout.margins.bottom + 2 * layout.line
        type = layout.type.label
        items = [Text(edge, foot, label, "sans-bold", type.size * 1.15, anchor=anchor)]
        if head:
            inset = 3.2 * type.size
            x = edge - inset if sheet.right else edge + inset
            items.append(capitals(x, foot, head, layout, layout.measure - inset, anchor))
        yield Group(tuple(items), name="folio")
    if leaf.thumb is not None:
        yield Group((_thumb(sheet, leaf.thumb),), name="thumb mark")
    if leaf.torn and layout.tear_out:
        yield Group(tuple(_edge(sheet, layout.tear_out)), name="tear-off edge")
    if draft:
        yield from draft_stamp(sheet.x, layout)


THUMB, THUMB_HIGH, THUMB_IN = mm(3.5), mm(14), mm(3)
"""Width and height of a thumb mark, and how far it stays inside the trim, which no knife cuts exactly."""


def _thumb(sheet: PageSide, share: float) -> Rect:
    """A black bar in the outer margin."""
    layout = sheet.layout
    x = layout.width - THUMB_IN - THUMB if sheet.right else THUMB_IN
    y = layout.margins.top + share * (layout.depth - THUMB_HIGH)
    return Rect(x, y, THUMB, THUMB_HIGH, fill=0.0)


APART = {2: mm(80), 3: 4.25 * 72, 4: mm(80)}
"""Between the middles of two, three or four holes (ISO 838 for two; common practice for the others, no source)."""

PERFORATION, PUNCH = Stroke(0.5, 0.35, (3.0, 3.0)), Stroke(0.4, 0.35)


def _edge(sheet: PageSide, tear: TearOut) -> Iterator[Item]:
    """The dashed line along which a leaf is torn off, and rings where holes are punched, at the side of the spine."""
    layout = sheet.layout
    spine, inwards = (0.0, 1.0) if sheet.right else (layout.width, -1.0)
    torn = spine + inwards * tear.edge
    if tear.perforation:
        end = PERFORATION.width / 2
        yield Line((torn, end), (torn, layout.height - end), PERFORATION)
    middle = (torn if tear.perforation else spine) + inwards * HOLE_IN
    for at in range(tear.holes):
        y = layout.height / 2 + (at - (tear.holes - 1) / 2) * APART[tear.holes]
        yield Rect(middle - HOLE / 2, y - HOLE / 2, HOLE, HOLE, PUNCH, radius=HOLE / 2)


def capitals(
    x: float, y: float, text: str, layout: Layout, room: float, anchor: Literal["start", "middle", "end"] = "start"
) -> Text:
    """A small label in letterspaced capitals, cut where it is wider than `room`."""
    size = layout.type.label.size * 0.88
    type, spacing = replace(layout.type.label, size=size), SPACING * size
    return Text(x, y, cut(text.upper(), type, room, spacing), type.font, size, 0.25, anchor, letter_space=spacing)


STAMP = 0.45
"""Size of the draft stamp at most, as a share of the margin it stands in."""


def draft_stamp(left: float, layout: Layout) -> Iterator[Item]:
    """A line of its own at the head of a page whose type area begins at `left`: plain to see, clear of every grid."""
    text, size = layout.say("draft"), min(layout.type.label.size * 1.3, STAMP * layout.margins.top)
    middle = left + layout.measure / 2
    y = max(layout.margins.top * 0.5, mm(5) + 0.75 * size)
    half = size * 3.2
    rule = Stroke(0.75)
    yield Text(middle, y, text, "sans-bold", size, anchor="middle", letter_space=0.3 * size)
    yield Line((left, y - size * 0.35), (middle - half, y - size * 0.35), rule)
    yield Line((middle + half, y - size * 0.35), (left + layout.measure, y - size * 0.35), rule)
