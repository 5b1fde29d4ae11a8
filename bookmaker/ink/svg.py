"""A page as a standalone SVG picture.

In: a `Page`. Out: SVG 1.1 text in points, the sheet around the trim included. Letters are drawn as outlines, so that
the picture looks the same everywhere; each run of text says what it is in `aria-label`.
"""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterable
from html import escape
from io import BytesIO
from typing import assert_never

from bookmaker.display.colour import Colour, rgb
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
    Point,
    Rect,
    Segment,
    Straight,
    Stroke,
    Tagged,
    Text,
)
from bookmaker.geometry import IDENTITY, letters, placing
from bookmaker.ink.pictures import grey_picture, screen_picture
from bookmaker.typeface import typeface
from bookmaker.visible import visible

_GLYPH_UNITS = 1000
"""Glyphs are written in thousandths of an em, in whole or half steps."""


def svg_text(page: Page, title: str = "", told: str = "") -> str:
    """The SVG file's text. Links and fields draw nothing and are left out. With `title` and what is `told`, it says for
    those who do not see it what it is and what is on it."""
    edge = max(page.sheet, page.bleed)
    width, height = page.width + 2 * edge, page.height + 2 * edge
    drawing = Drawing()
    body = "\n".join(drawing.draw(page.items))
    view = f"{_n(-edge)} {_n(-edge)} {_n(width)} {_n(height)}"
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" version="1.1" '
        f'width="{_n(width)}pt" height="{_n(height)}pt" viewBox="{view}"{_named(title, told)}\n'
        f"<defs>\n{chr(10).join(drawing.shared)}\n</defs>\n"
        f'<rect x="{_n(-edge)}" y="{_n(-edge)}" width="{_n(width)}" height="{_n(height)}" fill="#ffffff"/>\n'
        f"{body}\n</svg>\n"
    )


class Drawing:
    """Turns items into elements; `shared` holds the glyphs and clips that they refer to. Several pictures of one
    document may share a drawing."""

    def __init__(self) -> None:
        self.shared: list[str] = []
        self._glyphs: dict[tuple[str, str], str] = {}
        self._clips = 0

    def draw(self, items: Iterable[Item]) -> Iterable[str]:
        for item in items:
            match item:
                case Line(start, end, stroke):
                    yield f'<path d="M{_at(start)}L{_at(end)}"{_ink(stroke, None)}/>'
                case Rect():
                    yield f"<rect{_area(item)}{_ink(item.stroke, item.fill)}/>"
                case Path():
                    rule = ' fill-rule="evenodd"' if item.fill is not None else ""
                    yield f'<path d="{_way(item.segments)}"{rule}{_ink(item.stroke, item.fill)}/>'
                case Text():
                    yield from self._text(item)
                case Image():
                    yield _image(item)
                case Tagged():
                    yield from self.draw(item.items)
                case Group():
                    yield from self._group(item)
                case Link() | Field():
                    pass
                case _ as never:
                    assert_never(never)

    def _text(self, text: Text) -> Iterable[str]:
        scale = text.size / _GLYPH_UNITS
        yield f'<g aria-label="{escape(visible(text.text))}" fill="{_colour(text.colour)}">'
        for character, x in letters(text):
            at = f"translate({_n(x)} {_n(text.y)}) scale({scale:.5g} {-scale:.5g})"
            yield f'<use xlink:href="#{self.glyph(text.font, character)}" transform="{at}"/>'
        yield "</g>"

    def glyph(self, font: str, character: str) -> str:
        """The name of a letter's outline, which is among the shared ones from now on. It is drawn in thousandths of an
        em, y down for those who scale it by −1."""
        key = font, character
        if key not in self._glyphs:
            self._glyphs[key] = name = f"{font}-{ord(character):04x}"
            self.shared.append(f'<path id="{name}" d="{_way(typeface(font).outline(character), _GLYPH_UNITS)}"/>')
        return self._glyphs[key]

    def _group(self, group: Group) -> Iterable[str]:
        said = f' aria-label="{escape(visible(group.name))}"' if group.name else ""
        matrix = placing(group)
        if matrix != IDENTITY:
            said += f' transform="matrix({" ".join(f"{value:.6g}" for value in matrix)})"'
        if group.clip is not None:
            self._clips += 1
            name = f"clip-{self._clips}"
            match group.clip:
                case Rect():
                    shape = f"<rect{_area(group.clip)}/>"
                case Path():
                    shape = f'<path clip-rule="evenodd" d="{_way(group.clip.segments)}"/>'
                case _ as never:
                    assert_never(never)
            self.shared.append(f'<clipPath id="{name}">{shape}</clipPath>')
            said += f' clip-path="url(#{name})"'
        yield f"<g{said}>"
        yield from self.draw(group.items)
        yield "</g>"


def _named(title: str, told: str) -> str:
    """The end of the first tag, with the title and the description as its first elements (SVG 1.1, 5.4)."""
    if not title:
        return ">"
    said = f"<title>{escape(title, quote=False)}</title>" + (
        f"<desc>{escape(told, quote=False)}</desc>" if told else ""
    )
    return f' role="img" aria-label="{escape(title)}">\n{said}'


def _n(value: float) -> str:
    return repr(round(value, 3) + 0.0).removesuffix(".0")


def _at(point: Point, scale: float = 1.0) -> str:
    return f"{_n(point[0] * scale)} {_n(point[1] * scale)}"


def _area(item: Rect | Image) -> str:
    said = f' x="{_n(item.x)}" y="{_n(item.y)}" width="{_n(item.width)}" height="{_n(item.height)}"'
    if isinstance(item, Rect) and item.radius > 0:
        said += f' rx="{_n(min(item.radius, item.width / 2, item.height / 2))}"'
    return said


def _way(segments: Iterable[Segment], scale: float = 1.0) -> str:
    parts = []
    for segment in segments:
        match segment:
            case Move(to):
                parts.append(f"M{_at(to, scale)}")
            case Straight(to):
                parts.append(f"L{_at(to, scale)}")
            case Curve(first, second, to):
                parts.append(f"C{_at(first, scale)} {_at(second, scale)} {_at(to, scale)}")
            case Close():
                parts.append("Z")
            case _ as never:
                assert_never(never)
    return "".join(parts)


def _colour(colour: Colour) -> str:
    return "#" + "".join(f"{round(value * 255):02x}" for value in rgb(colour))


def _ink(stroke: Stroke | None, fill: Colour | None) -> str:
    said = f' fill="{"none" if fill is None else _colour(fill)}"'
    if stroke is not None:
        said += f' stroke="{_colour(stroke.colour)}" stroke-width="{_n(stroke.width)}"'
        said += f' stroke-dasharray="{" ".join(map(_n, stroke.dash))}"' if stroke.dash else ""
        said += f' stroke-linecap="{stroke.cap}"' if stroke.cap != "butt" else ""
        # the limit beyond which a sharp corner is cut off: PDF's
        said += f' stroke-linejoin="{stroke.join}"' if stroke.join != "miter" else ' stroke-miterlimit="10"'
    return said


def _image(image: Image) -> str:
    file = BytesIO()
    shown = screen_picture if image.coloured else grey_picture
    shown(image.source).save(file, "PNG")
    data = b64encode(file.getvalue()).decode("ascii")
    return f'<image{_area(image)} preserveAspectRatio="none" xlink:href="data:image/png;base64,{data}"/>'
