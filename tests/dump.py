"""A document as text, a line an item: what golden tests compare and what a person reads to see what changed.

In: a `Document` or a `Page`. Out: lines of text; lengths in points to 0.01, greys to 0.001; groups indent their items.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from hashlib import sha256
from typing import assert_never

from bookmaker.display.colour import Colour, Ink
from bookmaker.display.items import (
    Close,
    Curve,
    Document,
    Field,
    Group,
    Image,
    Item,
    Line,
    Link,
    Move,
    Page,
    Path,
    Point,
    Rect,
    Segment,
    Straight,
    Stroke,
    Tagged,
    Text,
)


def dump(document: Document) -> str:
    """The whole document, ending with a line break."""
    lines = [f"document “{document.title}” by “{document.author}”, about “{document.subject}”, {document.language}"]
    if document.created:
        lines.append(f"created {document.created.isoformat()}")
    if document.folded:
        lines.append("to be printed on both sides and folded")
    lines += [f"{'  ' * mark.level}bookmark “{mark.title}” to {mark.target}" for mark in document.bookmarks]
    for page in document.pages:
        lines += ["", *_page(page)]
    return "\n".join(lines) + "\n"


def dump_page(page: Page) -> str:
    """One page, ending with a line break."""
    return "\n".join(_page(page)) + "\n"


def _page(page: Page) -> Iterator[str]:
    beyond = f" bleed {_n(page.bleed)} sheet {_n(page.sheet)}" if page.bleed or page.sheet else ""
    yield f"page “{page.label}” {_n(page.width)} × {_n(page.height)}{beyond}"
    for anchor in page.anchors:
        yield f"  anchor {anchor.name} at {_at((anchor.x, anchor.y))}"
    yield from _items(page.items, "  ")


def _items(items: Iterable[Item], indent: str) -> Iterator[str]:
    for item in items:
        match item:
            case Line(start, end, stroke):
                yield f"{indent}line {_at(start)} to {_at(end)}{_ink(stroke, None)}"
            case Rect():
                round_off = f" radius {_n(item.radius)}" if item.radius else ""
                yield f"{indent}rect {_area(item)}{round_off}{_ink(item.stroke, item.fill)}"
            case Path():
                yield f"{indent}path {_way(item.segments)}{_ink(item.stroke, item.fill)}"
            case Text():
                yield f"{indent}text {_text(item)}"
            case Image():
                yield f"{indent}image {_area(item)} sha256 {sha256(item.source).hexdigest()[:16]}"
            case Tagged():
                yield from _items(item.items, indent)
            case Group():
                yield f"{indent}group{_placing(item)}"
                if item.clip is not None:
                    clip = "rect " + _area(item.clip) if isinstance(item.clip, Rect) else _way(item.clip.segments)
                    yield f"{indent}  inside {clip}"
                yield from _items(item.items, indent + "  ")
            case Link():
                yield f"{indent}link {_area(item)} to {item.target}"
            case Field():
                yield f"{indent}field {item.group} {item.name} {_area(item)}"
            case _ as never:
                assert_never(never)


def _n(value: float, digits: int = 2) -> str:
    return f"{round(value, digits) + 0.0:.{digits}f}".rstrip("0").rstrip(".")


def _at(point: Point) -> str:
    return f"{_n(point[0])},{_n(point[1])}"


def _area(item: Rect | Image | Link | Field) -> str:
    return f"{_at((item.x, item.y))} {_n(item.width)} × {_n(item.height)}"


def _way(segments: Iterable[Segment]) -> str:
    """Segments with the letters that path data commonly has: M, L, C, Z."""
    parts = []
    for segment in segments:
        match segment:
            case Move(to):
                parts.append(f"M {_at(to)}")
            case Straight(to):
                parts.append(f"L {_at(to)}")
            case Curve(first, second, to):
                parts.append(f"C {_at(first)} {_at(second)} {_at(to)}")
            case Close():
                parts.append("Z")
            case _ as never:
                assert_never(never)
    return " ".join(parts)


def _ink(stroke: Stroke | None, fill: Colour | None) -> str:
    said = ""
    if fill is not None:
        said += f" fill {_colour(fill)}"
    if stroke is not None:
        said += f" stroke {_n(stroke.width)} grey {_colour(stroke.colour)}"
        if stroke.dash:
            said += f" dash {' '.join(map(_n, stroke.dash))}"
        said += f" {stroke.cap}" if stroke.cap != "butt" else ""
        said += f" {stroke.join}" if stroke.join != "miter" else ""
    return said


def _colour(colour: Colour) -> str:
    if isinstance(colour, Ink):
        return f"inks {' '.join(_n(100 * part, 1) for part in colour)}"
    return _n(colour, 3)


def _text(text: Text) -> str:
    said = f"{_at((text.x, text.y))} {text.anchor} {text.font} {_n(text.size)} “{text.text}”"
    said += f" grey {_colour(text.colour)}" if text.colour else ""
    said += f" letter space {_n(text.letter_space)}" if text.letter_space else ""
    return said + (f" word space {_n(text.word_space)}" if text.word_space else "")


def _placing(group: Group) -> str:
    said = f" “{group.name}”" if group.name else ""
    said += f" at {_at((group.dx, group.dy))}" if group.dx or group.dy else ""
    said += f" scale {_n(group.scale, 4)}" if group.scale != 1.0 else ""
    return said + (f" turn {_n(group.turn)}" if group.turn else "")
