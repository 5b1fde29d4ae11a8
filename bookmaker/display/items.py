"""The whole drawing vocabulary: the few things a page can hold.

All lengths are in points (1/72 inch). The origin is the top left corner of the page's trim, x to the right, y
down. Colours are greys, from 0 (black) to 1 (white), or inks. Values are frozen; a page is a tuple of items drawn in
order. `layout` and `rules` make them, `ink` draws them and decides nothing.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal, TypeAlias

from bookmaker.display.colour import Colour
from bookmaker.display.tags import PARAGRAPH, Tag, Tags

Point: TypeAlias = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Stroke:
    """A pen: width in points (never under 0.25), colour, dash lengths in points, line ends and corners."""

    width: float
    colour: Colour = 0.0
    dash: tuple[float, ...] = ()
    cap: Literal["butt", "round", "square"] = "butt"
    join: Literal["miter", "round", "bevel"] = "miter"


@dataclass(frozen=True, slots=True)
class Line:
    """A straight stroke."""

    start: Point
    end: Point
    stroke: Stroke


@dataclass(frozen=True, slots=True)
class Rect:
    """A rectangle from its top left corner, with round corners of `radius`."""

    x: float
    y: float
    width: float
    height: float
    stroke: Stroke | None = None
    fill: Colour | None = None
    radius: float = 0.0


@dataclass(frozen=True, slots=True)
class Move:
    """Begin a new stretch of a path here."""

    to: Point


@dataclass(frozen=True, slots=True)
class Straight:
    """Go straight to here."""

    to: Point


@dataclass(frozen=True, slots=True)
class Curve:
    """Go to here along a cubic Bézier curve with two control points."""

    first: Point
    second: Point
    to: Point


@dataclass(frozen=True, slots=True)
class Close:
    """Close the stretch with a straight line back to its start."""


Segment: TypeAlias = Move | Straight | Curve | Close


@dataclass(frozen=True, slots=True)
class Path:
    """A free shape. Filled by the even-odd rule."""

    segments: tuple[Segment, ...]
    stroke: Stroke | None = None
    fill: Colour | None = None


@dataclass(frozen=True, slots=True)
class Text:
    """One run of text on one baseline; (x, y) is the anchor's point on it. `font` is a name from `fonts/`.

    `letter_space` points stand between any two characters (not after the last), `word_space` points are added to
    each space, plain or no-break. Letters are kerned as the font says.
    """

    x: float
    y: float
    text: str
    font: str
    size: float
    colour: Colour = 0.0
    anchor: Literal["start", "middle", "end"] = "start"
    letter_space: float = 0.0
    word_space: float = 0.0


@dataclass(frozen=True, slots=True)
class Image:
    """A raster image; `source` holds the bytes of a PNG or JPEG file. It is printed in greys unless `coloured`."""

    x: float
    y: float
    width: float
    height: float
    source: bytes
    coloured: bool = False


@dataclass(frozen=True, slots=True)
class Group:
    """Items moved by (dx, dy), scaled, turned by `turn` degrees clockwise, and shown only inside `clip`.

    A point p of the items stands on the page at (dx, dy) + turned(scale × p). `clip` is in the items' own
    measure. `name` says what the group is (“grid 12”), for dumps and for reading pages back.
    """

    items: tuple[Item, ...]
    dx: float = 0.0
    dy: float = 0.0
    scale: float = 1.0
    turn: float = 0.0
    clip: Path | Rect | None = None
    name: str = ""


@dataclass(frozen=True, slots=True)
class Tagged(Group):
    """Items that are one element to a reader: a group that stays where it is and draws nothing of its own."""

    tag: Tag = PARAGRAPH


def tagged(tags: Tags, *items: Item) -> Tagged:
    """Items as an element inside others, the outermost first."""
    *outer, inner = tags
    made = Tagged(items, tag=inner)
    for tag in reversed(outer):
        made = Tagged((made,), tag=tag)
    return made


@dataclass(frozen=True, slots=True)
class Link:
    """A clickable area that leads to an `Anchor` by name or, `outward`, to an address; and where to in words. Draws
    nothing."""

    x: float
    y: float
    width: float
    height: float
    target: str
    said: str = ""
    outward: bool = False


@dataclass(frozen=True, slots=True)
class Field:
    """A place to write in on a screen, one of a `group` of fields, with its name in it; `said` tells what it is for,
    `most` how many characters it takes. Draws nothing."""

    x: float
    y: float
    width: float
    height: float
    group: str
    name: str
    said: str
    most: int


Item: TypeAlias = Line | Rect | Path | Text | Image | Group | Link | Field


def untagged(items: Iterable[Item]) -> Iterator[Item]:
    """The items as they are painted, elements opened."""
    for item in items:
        if isinstance(item, Tagged):
            yield from untagged(item.items)
        else:
            yield item


def holds_elements(items: Iterable[Item]) -> bool:
    """Is any of the items an element, or a group that holds one?"""
    return any(isinstance(item, Tagged) or (isinstance(item, Group) and holds_elements(item.items)) for item in items)


@dataclass(frozen=True, slots=True)
class Anchor:
    """A named place on a page that links and bookmarks lead to."""

    name: str
    x: float
    y: float


@dataclass(frozen=True, slots=True)
class Page:
    """One page: trim width and height, what is on it, its printed label (“iv”, “12”) and its anchors.

    Ink may reach `bleed` points beyond the trim; the sheet reaches `sheet` points beyond it (never less than the
    bleed), which is room for crop marks and a slug line. What lies there has coordinates outside 0…width, 0…height.
    """

    width: float
    height: float
    items: tuple[Item, ...]
    label: str
    anchors: tuple[Anchor, ...] = ()
    bleed: float = 0.0
    sheet: float = 0.0


@dataclass(frozen=True, slots=True)
class Bookmark:
    """An entry of the outline; `level` 0 is the outermost."""

    title: str
    target: str
    level: int = 0


@dataclass(frozen=True, slots=True)
class Document:
    """A whole publication, ready for ink. `created` is the date the file shall carry; None leaves it out.

    `pages` may be drawn as they are asked for (`Pages`): go through them once. A `folded` document is printed as large
    as it is, on both sides, and turned on the short edge, or its sheets do not fold.
    """

    title: str
    author: str
    subject: str
    pages: Sequence[Page]
    bookmarks: tuple[Bookmark, ...] = ()
    language: str = "en"
    created: date | None = None
    folded: bool = False
