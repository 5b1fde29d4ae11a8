"""PDF and SVG draw the same page; each is checked against pictures drawn here pixel by pixel.

A PNG is the PDF as PDFium draws it, and so is what is called from PDF here.
"""

from __future__ import annotations

from collections.abc import Callable
from io import BytesIO
from math import cos, hypot, pi, sin
from pathlib import PurePath
from xml.etree import ElementTree

import pytest
import resvg_py
from PIL import Image as Raster
from PIL import ImageChops

from bookmaker.display.items import Anchor, Group, Image, Item, Line, Link, Page, Path, Rect, Stroke, Text
from bookmaker.display.shapes import circle, polyline
from bookmaker.ink.rendering import picture_bytes
from bookmaker.ink.svg import svg_text
from tests.ink import drawn as ink
from tests.ink.specimen import picture, specimen


def from_pdf(page: Page, scale: int) -> Raster.Image:
    return ink.picture(page, 72 * scale)


def from_svg(page: Page, scale: int) -> Raster.Image:
    # at 72 dots per inch an SVG point is a pixel
    png = resvg_py.svg_to_bytes(svg_string=svg_text(page), dpi=72, zoom=scale, skip_system_fonts=True)
    return Raster.open(BytesIO(bytes(png))).convert("L")


Drawn = Callable[[Page, int], Raster.Image]
ALL = pytest.mark.parametrize("drawn", [from_pdf, from_svg])


def rows(raster: Raster.Image) -> list[str]:
    """The picture as text: `#` black, `+` middle grey, `.` white; anything else shows its level."""
    signs = {0: "#", 127: "+", 128: "+", 255: "."}
    width, height = raster.size
    pixels = raster.tobytes()
    return [
        "".join(signs.get(level, f"<{level}>") for level in pixels[y * width : (y + 1) * width]) for y in range(height)
    ]


@ALL
def test_rectangles_lines_clips_and_order(drawn: Drawn) -> None:
    items: tuple[Item, ...] = (
        Rect(1, 1, 4, 3, fill=0.0),
        Rect(3, 2, 4, 4, fill=0.5),
        Line((8, 1), (8, 7), Stroke(2)),
        Group((Rect(0, 0, 9, 9, fill=0.0),), dx=10, dy=2, clip=Rect(0, 0, 1, 4)),
        Group((Rect(0, 0, 2, 1, fill=0.0),), dx=1, dy=7, scale=2, turn=-90),
        Link(0, 0, 3, 3, "here"),
    )
    assert rows(drawn(Page(12, 8, items, "1", (Anchor("here", 0, 0),)), 1)) == [
        "............",
        ".####..##...",
        ".##++++##.#.",
        ".##++++##.#.",
        ".##++++##.#.",
        ".##++++##.#.",
        ".##....##...",
        "............",
    ]


@ALL
def test_a_circle_covers_what_a_circle_covers(drawn: Drawn) -> None:
    raster = drawn(Page(40, 40, (circle((20, 19), 15, None, 0.0),), "1"), 2)
    for y in range(80):
        for x in range(80):
            away = hypot(x + 0.5 - 40, y + 0.5 - 38)
            if abs(away - 30) > 1:
                assert raster.getpixel((x, y)) == (0 if away < 30 else 255)


def corner(join: str, down: int = 1) -> Path:
    return polyline([(20, 50), (60, 50), (60, 50 + 40 * down)], Stroke(6, join=join))


SQUARE = polyline([(0, 0), (10, 0), (10, 10), (0, 10)], None, closed=True)
HOLE = polyline([(2, 2), (5, 2), (5, 5), (2, 5)], None, closed=True)

# two boxes of 40 × 6 share a square of 3 × 3; the corner fills the square outside
BEND = 2 * 240 - 9


@ALL
@pytest.mark.parametrize(
    ("item", "area"),
    [
        (Line((10, 10), (50, 10), Stroke(6)), 40 * 6),
        (Line((10, 10), (50, 10), Stroke(6, cap="square")), 46 * 6),
        (Line((10, 10), (50, 10), Stroke(6, cap="round")), 40 * 6 + pi * 9),
        (corner("miter"), BEND + 9),
        (corner("bevel", -1), BEND + 4.5),
        (corner("round"), BEND + pi * 9 / 4),
        (Rect(10, 10, 40, 40, Stroke(4)), 44 * 44 - 36 * 36),
        (Rect(0, 20, 100, 10, fill=0.0, radius=50), 90 * 10 + pi * 25),
        (Line((0, 5), (20, 5), Stroke(2, dash=(3, 2))), 4 * 3 * 2),
        # an odd list alternates: 3 on, 2 off, 1 on, 3 off, 2 on, 1 off, 3 on, 2 off, 1 on, 2 of 3 off
        (Line((0, 5), (20, 5), Stroke(2, dash=(3, 2, 1))), (3 + 1 + 2 + 3 + 1) * 2),
        (Path((*SQUARE.segments, *HOLE.segments), None, 0.0), 100 - 9),
        (polyline([(0, 0), (10, 0), (10, 10)], None, 0.0), 50),
    ],
)
def test_so_much_is_covered(drawn: Drawn, item: Item, area: float) -> None:
    raster = drawn(Page(100, 100, (item,), "1"), 10)
    dark = sum(255 - level for level in raster.tobytes())
    assert dark / 255 / 100 == pytest.approx(area, rel=0.01)


@ALL
def test_a_corner_too_sharp_is_cut_off(drawn: Drawn) -> None:
    # PDF's limit of 10 is an angle of 2·asin(1/10) = 11.48 degrees (ISO 32000-1, 8.4.3.5)
    def reach(degrees: float) -> float:
        angle = degrees * pi / 180
        points = [(0.0, 50.0), (100.0, 50.0), (100 - 100 * cos(angle), 50 + 100 * sin(angle))]
        raster = drawn(Page(120, 120, (polyline(points, Stroke(2)),), "1"), 10)
        return ImageChops.invert(raster).getbbox()[2] / 10

    assert reach(12) > 108
    assert reach(11) < 101.2


@ALL
def test_digits_stand_in_the_middle(drawn: Drawn) -> None:
    raster = drawn(Page(40, 40, (Text(20, 27, "0", "sans", 20, anchor="middle"),), "1"), 4)
    left, top, right, bottom = ImageChops.invert(raster).getbbox()
    assert (left + right) / 2 == pytest.approx(80, abs=1.5)
    assert (top + bottom) / 2 == pytest.approx(80, abs=1.5)
    assert bottom - top == pytest.approx(20 * 0.724 * 4, abs=3)


@ALL
def test_pictures_are_grey_and_in_place(drawn: Drawn) -> None:
    raster = drawn(Page(60, 40, (Image(10, 10, 40, 20, picture()),), "1"), 1)
    # ITU-R 601 luma of (200, 30, 30): 0.299·200 + 0.587·30 + 0.114·30 = 80.8
    assert raster.getpixel((15, 20)) == 0
    assert raster.getpixel((45, 20)) == pytest.approx(81, abs=1)
    assert ImageChops.invert(raster).getbbox() == (10, 10, 50, 30)


def test_one_page_looks_the_same_in_every_ink() -> None:
    mine, theirs = from_pdf(specimen(), 2), from_svg(specimen(), 2)
    assert theirs.size == mine.size
    levels = ImageChops.difference(mine, theirs).histogram()
    pixels = sum(levels)
    assert sum(level * count for level, count in enumerate(levels)) / pixels < 1.2
    # what is left are edges that are smoothed differently, never a shape that is missing or moved
    assert sum(levels[64:]) < 0.006 * pixels
    assert sum(levels[128:]) < 0.0005 * pixels


def test_the_sheet_around_the_trim_is_in_the_picture() -> None:
    page = Page(20, 10, (Rect(-3, -3, 26, 16, fill=0.5), Rect(0, 0, 20, 10, fill=0.0)), "1", bleed=3, sheet=5)
    for raster in (from_svg(page, 1), from_pdf(page, 1)):
        assert raster.size == (30, 20)
        assert ImageChops.invert(raster).getbbox() == (2, 2, 28, 18)
        assert raster.point(lambda level: 0 if level else 255).getbbox() == (5, 5, 25, 15)


def test_png_knows_its_resolution() -> None:
    raster = Raster.open(BytesIO(picture_bytes(Page(72, 36, (), "1"), PurePath("a.png"), "", 150)))
    assert raster.size == (150, 75) and raster.mode == "L"
    assert raster.info["dpi"] == pytest.approx((150, 150), abs=0.02)


def test_svg_is_sound_and_says_its_words() -> None:
    root = ElementTree.fromstring(svg_text(specimen()))
    space = "{http://www.w3.org/2000/svg}"
    assert (root.get("width"), root.get("height"), root.get("viewBox")) == ("300pt", "320pt", "0 0 300 320")
    said = [element.get("aria-label") for element in root.iter(f"{space}g") if element.get("aria-label")]
    assert "To AVATAR Wy. “fluffig”" in said and "grid turned" in said
    names = {element.get("id") for element in root.iter() if element.get("id")}
    wanted = {element.get("{http://www.w3.org/1999/xlink}href", "#")[1:] for element in root.iter(f"{space}use")}
    assert wanted <= names
    assert not list(root.iter(f"{space}text"))


@pytest.mark.parametrize(("name", "begins"), [("a.svg", b"<?xml"), ("a.b.PNG", b"\x89PNG"), ("a.pdf", b"%PDF-1.7")])
def test_the_name_says_the_kind_of_picture(name: str, begins: bytes) -> None:
    page = Page(20, 10, (Rect(1, 1, 5, 5, fill=0.0),), "")
    assert picture_bytes(page, PurePath(name), "A title").startswith(begins)


def test_other_kinds_are_refused() -> None:
    with pytest.raises(ValueError, match=r"“\.gif”; known: \.svg, \.png, \.pdf"):
        picture_bytes(Page(9, 9, (), ""), PurePath("a.gif"), "")


def test_a_clip_within_a_clip() -> None:
    inner = Group((Rect(0, 0, 99, 99, fill=0.0),), clip=Rect(5, 5, 20, 20))
    page = Page(40, 40, (Group((inner,), clip=Rect(0, 0, 15, 12)),), "")
    nothing = Page(40, 40, (Group((inner,), clip=Rect(0, 0, 0, 12)),), "")
    for drawn in (from_pdf, from_svg):
        assert ImageChops.invert(drawn(page, 1)).getbbox() == (5, 5, 15, 12)
        assert ImageChops.invert(drawn(nothing, 1)).getbbox() is None
