"""Pages through the methods of reportlab's canvas, item by item: what any program on reportlab would have to do.

In: pages. Out: a PDF file that looks like bookmaker's own. A measure for `book_speed.py`, and no script.
"""

from __future__ import annotations

from collections.abc import Iterable
from io import BytesIO
from math import cos, radians, sin
from typing import Any

from reportlab.pdfbase.pdfmetrics import registerFont
from reportlab.pdfgen.canvas import Canvas

from bookmaker.display.colour import Colour, grey_of
from bookmaker.display.items import (
    Close,
    Curve,
    Group,
    Item,
    Line,
    Link,
    Move,
    Page,
    Path,
    Rect,
    Straight,
    Stroke,
    Text,
)
from bookmaker.ink.pdffonts import embeddable
from bookmaker.typeface import font_files


def replay(pages: Iterable[Page]) -> bytes:
    """The pages through the canvas's own methods, nothing remembered from one call to the next."""
    file = BytesIO()
    for name in font_files():
        registerFont(embeddable(name))
    canvas = Canvas(file, pageCompression=1, invariant=1, initialFontName=embeddable("sans").fontName)
    for page in pages:
        canvas.setPageSize((page.width, page.height))
        canvas.translate(0, page.height)
        _draw(canvas, page.items)
        for anchor in page.anchors:
            canvas.bookmarkPage(anchor.name)
        canvas.showPage()
    canvas.save()
    return file.getvalue()


def _draw(canvas: Any, items: Iterable[Item]) -> None:
    for item in items:
        match item:
            case Line((x0, y0), (x1, y1), stroke):
                _pen(canvas, stroke)
                canvas.line(x0, -y0, x1, -y1)
            case Rect(x, y, width, height, stroke, fill, radius):
                _inks(canvas, stroke, fill)
                shape = canvas.roundRect if radius else canvas.rect
                rest = (radius,) if radius else ()
                shape(x, -y - height, width, height, *rest, stroke=stroke is not None, fill=fill is not None)
            case Path(segments, stroke, fill):
                _inks(canvas, stroke, fill)
                canvas.drawPath(_path(canvas, segments), stroke=stroke is not None, fill=fill is not None, fillMode=0)
            case Text():
                canvas.setFillGray(grey_of(item.colour))
                canvas.setFont(embeddable(item.font).fontName, item.size)
                draw = {"start": canvas.drawString, "middle": canvas.drawCentredString, "end": canvas.drawRightString}
                draw[item.anchor](item.x, -item.y, item.text, charSpace=item.letter_space, wordSpace=item.word_space)
            case Group():
                canvas.saveState()
                a, b = cos(radians(item.turn)) * item.scale, sin(radians(item.turn)) * item.scale
                canvas.transform(a, -b, b, a, item.dx, -item.dy)
                if isinstance(item.clip, Rect):
                    clip = canvas.beginPath()
                    clip.rect(item.clip.x, -item.clip.y - item.clip.height, item.clip.width, item.clip.height)
                    canvas.clipPath(clip, stroke=0)
                elif item.clip is not None:
                    canvas.clipPath(_path(canvas, item.clip.segments), stroke=0)
                _draw(canvas, item.items)
                canvas.restoreState()
            case Link():
                canvas.linkAbsolute("", item.target, (item.x, -item.y, item.x + item.width, -item.y - item.height))


def _path(canvas: Any, segments: Iterable[Any]) -> Any:
    path = canvas.beginPath()
    for segment in segments:
        match segment:
            case Move((x, y)):
                path.moveTo(x, -y)
            case Straight((x, y)):
                path.lineTo(x, -y)
            case Curve((a, b), (c, d), (x, y)):
                path.curveTo(a, -b, c, -d, x, -y)
            case Close():
                path.close()
    return path


def _inks(canvas: Any, stroke: Stroke | None, fill: Colour | None) -> None:
    if stroke is not None:
        _pen(canvas, stroke)
    if fill is not None:
        canvas.setFillGray(grey_of(fill))


def _pen(canvas: Any, stroke: Stroke) -> None:
    canvas.setLineWidth(stroke.width)
    canvas.setStrokeGray(grey_of(stroke.colour))
    canvas.setDash(list(stroke.dash))
    canvas.setLineCap({"butt": 0, "round": 1, "square": 2}[stroke.cap])
    canvas.setLineJoin({"miter": 0, "round": 1, "bevel": 2}[stroke.join])
