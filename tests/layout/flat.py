"""Pages taken apart for tests: every item with its box on the page and the names of the groups around it.

Boxes are (left, top, right, bottom) in points. Groups turned otherwise than upside down are not met in
what `layout` makes and are refused.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from bookmaker.display.items import (
    Close,
    Curve,
    Field,
    Group,
    Image,
    Item,
    Line,
    Link,
    Move,
    Page,
    Path,
    Rect,
    Straight,
    Text,
)
from bookmaker.layout.setting.text import FONTS

Box = tuple[float, float, float, float]


@dataclass(frozen=True)
class Flat:
    """An item, its box, and the names around it from the outermost in."""

    item: Item
    box: Box
    names: tuple[str, ...]

    def inside(self, prefix: str) -> bool:
        return any(name.startswith(prefix) for name in self.names)


def flat(page: Page) -> list[Flat]:
    return list(_walk(page.items, 0.0, 0.0, 1.0, ()))


def _walk(items: tuple[Item, ...], dx: float, dy: float, scale: float, names: tuple[str, ...]) -> Iterator[Flat]:
    for item in items:
        if isinstance(item, Group):
            assert item.turn in (0.0, 180.0)
            inner_scale = scale * item.scale * (-1.0 if item.turn else 1.0)
            inner = (*names, item.name) if item.name else names
            if item.clip is not None:
                yield Flat(
                    item, _moved(box_of(item.clip), item.dx * scale + dx, item.dy * scale + dy, inner_scale), inner
                )
                continue
            yield from _walk(item.items, dx + item.dx * scale, dy + item.dy * scale, inner_scale, inner)
        else:
            yield Flat(item, _moved(box_of(item), dx, dy, scale), names)


def _moved(box: Box, dx: float, dy: float, scale: float) -> Box:
    left, top, right, bottom = box if scale > 0 else (box[2], box[3], box[0], box[1])
    return left * scale + dx, top * scale + dy, right * scale + dx, bottom * scale + dy


def box_of(item: Item) -> Box:
    """The item's own box, strokes included, text from its descenders to its capitals."""
    match item:
        case Line(start, end, stroke):
            pad = stroke.width / 2
            xs, ys = sorted((start[0], end[0])), sorted((start[1], end[1]))
            return xs[0] - pad, ys[0] - pad, xs[1] + pad, ys[1] + pad
        case Rect() | Image():
            pad = item.stroke.width / 2 if isinstance(item, Rect) and item.stroke else 0.0
            return item.x - pad, item.y - pad, item.x + item.width + pad, item.y + item.height + pad
        case Link() | Field():
            return item.x, item.y, item.x + item.width, item.y + item.height
        case Path(segments, stroke, _):
            points = [point for segment in segments for point in _points(segment)]
            pad = stroke.width / 2 if stroke else 0.0
            xs, ys = [x for x, _ in points], [y for _, y in points]
            return min(xs) - pad, min(ys) - pad, max(xs) + pad, max(ys) + pad
        case Text():
            wide = FONTS.width(item.text, item.font, item.size, item.letter_space, item.word_space)
            left = item.x - {"start": 0.0, "middle": 0.5, "end": 1.0}[item.anchor] * wide
            up, down = FONTS.cap_height(item.font) * item.size, FONTS.descent(item.font) * item.size
            return left, item.y - up, left + wide, item.y + down
        case Group():
            raise AssertionError("groups are walked, not measured")


def _points(segment: object) -> Iterator[tuple[float, float]]:
    match segment:
        case Move(to) | Straight(to):
            yield to
        case Curve(first, second, to):
            yield from (first, second, to)
        case Close():
            pass
