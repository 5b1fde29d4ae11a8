"""One page's display items as PDF operators (ISO 32000-1, annex A).

In: display items. Out: operators on a reportlab canvas, and the areas of links on the page. The page's origin is the
top left corner of the trim; y is negated on the way, so that text stands upright without a mirrored matrix.
All greys are DeviceGray.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import lru_cache
from typing import Any, TypeAlias, assert_never

from reportlab.lib.utils import ImageReader

from bookmaker.display.items import (
    Close,
    Curve,
    Grey,
    Group,
    Image,
    Item,
    Line,
    Link,
    Move,
    Path,
    Rect,
    Segment,
    Straight,
    Stroke,
    Text,
)
from bookmaker.geometry import IDENTITY, Matrix, moved, outline, placing, text_start, within
from bookmaker.ink.greyscale import grey_picture
from bookmaker.ink.pdffonts import GlyphCodes

MARK = "Bookmaker"
"""The tag of the marked content that holds a named group; its property list has the name under /Name."""

_CAPS = {"butt": 0, "round": 1, "square": 2}
_JOINS = {"miter": 0, "round": 1, "bevel": 2}


@lru_cache(maxsize=65_536)  # the grids of a book share most of theirs
def number(value: float) -> str:
    """A number as PDF writes it, to 0.001: never with an exponent."""
    return repr(round(value, 3) + 0.0).removesuffix(".0")


Area: TypeAlias = tuple[float, float, float, float, str]
"""A link's left, top, right, bottom and target."""


class Content:
    """Draws pages, one after the other, on the canvas's current page. The items must live as long as this does."""

    def __init__(self, canvas: Any) -> None:
        self._canvas = canvas
        self._codes = GlyphCodes(canvas)
        self._paths: dict[int, str] = {}
        self._begin()

    def _begin(self) -> None:
        self._put: Callable[[str], None] = self._canvas._code.append
        self._links: list[Area] = []
        self._matrix: Matrix = IDENTITY
        self._stroke = Stroke(1.0)
        self._fill: Grey = 0.0
        self._font = ("", 0.0)

    def page(self, items: Iterable[Item]) -> list[Area]:
        """Draw the items of a page in order; where its links lie."""
        self._begin()
        self._draw(items)
        return self._links

    def _draw(self, items: Iterable[Item]) -> None:
        for item in items:
            match item:
                case Line(start, end, stroke):
                    self._pen(stroke)
                    self._put(f"{_at(start)} m {_at(end)} l S")
                case Rect():
                    self._shape(_rectangle(item), item.stroke, item.fill, "")
                case Path():
                    self._shape(self._path(item.segments), item.stroke, item.fill, "*")
                case Text():
                    self._text(item)
                case Image():
                    picture = ImageReader(grey_picture(item.source))
                    self._canvas.drawImage(picture, item.x, -item.y - item.height, item.width, item.height)
                case Group():
                    self._group(item)
                case Link():
                    self._link(item)
                case _ as never:
                    assert_never(never)

    def _shape(self, path: str, stroke: Stroke | None, fill: Grey | None, rule: str) -> None:
        if fill is not None:
            self._paint(fill)
        if stroke is not None:
            self._pen(stroke)
        match stroke is not None, fill is not None:
            case True, True:
                self._put(f"{path} B{rule}")
            case True, False:
                self._put(f"{path} S")
            case False, True:
                self._put(f"{path} f{rule}")

    def _path(self, segments: tuple[Segment, ...]) -> str:
        """A path's operators, kept because the lines of grids come again and again as the very same value."""
        kept = self._paths.get(id(segments))
        if kept is None:
            kept = self._paths[id(segments)] = _path(segments)
        return kept

    def _text(self, text: Text) -> None:
        if not text.text:
            return
        self._paint(text.grey)
        letter_space = f"{number(text.letter_space)} Tc " if text.letter_space else ""
        word_space = f"{number(text.word_space)} Tw " if text.word_space else ""
        shown = []
        for resource, glyphs in self._codes.shown(text.text, text.font):
            if self._font != (resource, text.size):
                self._font = resource, text.size
                shown.append(f"{resource} {number(text.size)} Tf")
            shown.append(glyphs)
        back = ("0 Tc " if letter_space else "") + ("0 Tw " if word_space else "")
        start = _at((text_start(text), text.y))
        run = f"BT {letter_space}{word_space}{start} Td {' '.join(shown)} {back}ET"
        if text.letter_space:  # a reader shall find the word, not its letters one by one
            run = f"/Span << /ActualText <{_text_string(text.text)}> >> BDC {run} EMC"
        self._put(run)

    def _group(self, group: Group) -> None:
        """Draw inside `q … Q`; a name makes the group marked content."""
        before = self._matrix, self._stroke, self._fill, self._font
        inner = placing(group)
        self._matrix = within(self._matrix, inner)
        if group.name:
            self._put(f"/{MARK} << /Name <{_text_string(group.name)}> >> BDC")
        self._put("q")
        if inner != IDENTITY:
            a, b, c, d, e, f = inner
            self._put(" ".join(f"{value:.6f}" for value in (a, -b, -c, d, e, -f)) + " cm")
        if isinstance(group.clip, Rect):
            self._put(f"{_rectangle(group.clip)} W n")
        elif group.clip is not None:
            self._put(f"{_path(group.clip.segments)} W* n")
        self._draw(group.items)
        self._put("Q")
        if group.name:
            self._put("EMC")
        self._matrix, self._stroke, self._fill, self._font = before

    def _link(self, link: Link) -> None:
        right, bottom = link.x + link.width, link.y + link.height
        corners = [moved(self._matrix, (x, y)) for x in (link.x, right) for y in (link.y, bottom)]
        xs, ys = [x for x, _ in corners], [y for _, y in corners]
        self._links.append((min(xs), min(ys), max(xs), max(ys), link.target))

    def _pen(self, stroke: Stroke) -> None:
        """Say what differs from the pen in use."""
        now, self._stroke = self._stroke, stroke
        if stroke == now:
            return
        changes = []
        if stroke.width != now.width:
            changes.append(f"{number(stroke.width)} w")
        if stroke.grey != now.grey:
            changes.append(f"{number(stroke.grey)} G")
        if stroke.dash != now.dash:
            changes.append(f"[{' '.join(map(number, stroke.dash))}] 0 d")
        if stroke.cap != now.cap:
            changes.append(f"{_CAPS[stroke.cap]} J")
        if stroke.join != now.join:
            changes.append(f"{_JOINS[stroke.join]} j")
        self._put(" ".join(changes))

    def _paint(self, grey: Grey) -> None:
        if grey != self._fill:
            self._fill = grey
            self._put(f"{number(grey)} g")


def _at(point: tuple[float, float]) -> str:
    return f"{number(point[0])} {number(-point[1])}"


def _text_string(text: str) -> str:
    """A text as PDF keeps it outside pages: UTF-16, the greater byte first, after a byte order mark; in hexadecimal."""
    return ("\ufeff" + text).encode("utf-16-be").hex()


def _rectangle(rect: Rect) -> str:
    if rect.radius > 0:
        return _path(outline(rect))
    return f"{_at((rect.x, rect.y + rect.height))} {number(rect.width)} {number(rect.height)} re"


def _path(segments: Iterable[Segment]) -> str:
    operators = []
    for segment in segments:
        match segment:
            case Move(to):
                operators.append(f"{_at(to)} m")
            case Straight(to):
                operators.append(f"{_at(to)} l")
            case Curve(first, second, to):
                operators.append(f"{_at(first)} {_at(second)} {_at(to)} c")
            case Close():
                operators.append("h")
            case _ as never:
                assert_never(never)
    return " ".join(operators)
