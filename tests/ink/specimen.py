"""One page with every kind of display item on it, and a small document around it."""

from __future__ import annotations

from datetime import date
from io import BytesIO

from PIL import Image as Raster

from bookmaker.display.items import (
    Anchor,
    Bookmark,
    Close,
    Curve,
    Document,
    Group,
    Image,
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
from bookmaker.display.shapes import circle, polyline


def picture(colour: tuple[int, int, int] = (200, 30, 30)) -> bytes:
    """A PNG file of 40 × 20 pixels: the left half black, the right half in a colour."""
    raster = Raster.new("RGB", (40, 20), (0, 0, 0))
    raster.paste(colour, (20, 0, 40, 20))
    file = BytesIO()
    raster.save(file, "PNG")
    return file.getvalue()


def specimen() -> Page:
    """A page of 300 × 320 points."""
    zigzag = ((0.0, 0.0), (40.0, 30.0), (80.0, 0.0), (120.0, 30.0))
    heart = (
        Move((250, 60)),
        Curve((225, 40), (235, 20), (250, 32)),
        Curve((265, 20), (275, 40), (250, 60)),
        Close(),
        Move((246, 40)),
        Straight((254, 40)),
        Straight((250, 46)),
        Close(),
    )
    return Page(
        300,
        320,
        (
            Rect(20, 20, 60, 40, Stroke(1), 0.8),
            Rect(100, 20, 60, 40, Stroke(2, 0.5), None, 8),
            circle((200, 40), 20, Stroke(1.5), 0.9),
            Path(heart, Stroke(0.75, join="round"), 0.6),
            Line((20, 80), (160, 80), Stroke(3, 0, (6, 4), "round")),
            Line((20, 92), (160, 92), Stroke(1, 0, (3, 2, 1), "butt")),
            Line((170, 80), (280, 92), Stroke(4, 0.2, (), "square")),
            Group((polyline(zigzag, Stroke(8, 0.3)),), 20, 110),
            Group((polyline(zigzag, Stroke(8, 0.3, (), "round", "round")),), 170, 110),
            Group((polyline(zigzag, Stroke(6, 0, (), "butt", "bevel")),), 20, 130, 0.5),
            Text(20, 170, "To AVATAR Wy. “fluffig”", "sans", 14),
            Text(150, 200, "Middle: 0123456789", "serif-bold", 14, 0.3, "middle", word_space=6),
            Text(280, 220, "LETTERSPACED", "sans-bold", 9, 0, "end", 3),
            Image(20, 215, 60, 30, picture()),
            Group(
                (
                    Rect(0, 0, 40, 40, Stroke(1)),
                    Text(20, 27, "7", "sans", 20, anchor="middle"),
                    Rect(-20, -20, 40, 40, None, 0.5),
                    Link(0, 0, 40, 40, "second"),
                ),
                dx=120,
                dy=250,
                turn=30,
                clip=Rect(-10, -10, 40, 60),
                name="grid turned",
            ),
            Group((Text(0, 0, "Upside down", "serif-italic", 12),), 280, 300, 1.2, 180),
            Group((Image(0, 0, 40, 20, picture()),), 40, 265, turn=-20, clip=circle((20, 10), 15)),
            Link(20, 160, 100, 20, "first"),
        ),
        "i",
        (Anchor("first", 20, 150),),
    )


def document() -> Document:
    """Three pages: the specimen, a second one with room around the trim, and an empty one."""
    second = Page(
        200, 100, (Text(10, 20, "Příliš žluťoučký kůň", "serif", 12),), "1", (Anchor("second", 10, 20),), 9, 20
    )
    last = Page(200, 100, (), "2", (Anchor("last", 0, 0),))
    bookmarks = (
        Bookmark("Specimen → first", "first"),
        Bookmark("Below it", "second", 1),
        Bookmark("Also the first", "first"),
        Bookmark("Last", "last"),
    )
    return Document(
        "Title – té", "An Author", "A subject", (specimen(), second, last), bookmarks, "en-GB", date(2026, 3, 9)
    )
