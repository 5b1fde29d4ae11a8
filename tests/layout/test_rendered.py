"""Six pages as pixels, beside pictures kept in `golden/rendered/`: what no list of items shows, such as a mark that is
drawn under another, or a change of the ink.

The PDF is rendered by PDFium at four times the resolution of the kept picture and scaled down, so that little depends
on how it smooths edges. Two things must agree, both measured on these pages before they were chosen:

- blurred by a pixel, at most `SPOTS` pixels differ by more than `SHARP` of 255 levels. The same page moved by a tenth
  of a pixel has up to 6 such pixels, scaled down from a finer picture none; without one crop mark of 0.25 points it has
  18, and with a line of two short words moved by a point it has 33;
- no square of nine by nine pixels differs by more than `BROAD` levels on average: that is for light grounds, whose
  edges are faint. Smoothing makes up to 25; the light ground of a crib, 12 % black, is 31.

A single hairline in mid grey is lost in this noise; the text dumps keep it. After a change that was meant:
`RENEW_GOLDEN=1 python -m pytest tests/layout/test_rendered.py`, and look at the pictures.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest
from PIL import Image as Raster
from PIL import ImageChops, ImageFilter

from bookmaker.display.items import Group, Item, Line, Page, Rect, Text
from bookmaker.display.items import Path as Shape
from tests.ink.drawn import picture
from tests.layout.pinned import PINNED

KEPT = Path(__file__).parent / "golden" / "rendered"
DPI, FINER = 100, 4
SPOTS, SHARP, BROAD = 12, 40, 27

NAMES = ("title", "puzzle-marks", "keys", "contest", "crib", "press-cover")

Found = tuple[Item, tuple[str, ...]]
"""An item and the names of the groups around it."""


@cache
def page_of(name: str) -> Page:
    return PINNED[name]().pages[0]


def rendered(page: Page, finer: int = FINER) -> Raster.Image:
    """The page's PDF as grey pixels."""
    return picture(page, DPI * finer).reduce(finer)


@cache
def drawn(name: str) -> Raster.Image:
    return rendered(page_of(name))


def differences(one: Raster.Image, other: Raster.Image) -> list[str]:
    """What two pictures do not agree in; nothing where the tolerance covers it."""
    if one.size != other.size:
        return [f"{one.size} pixels, not {other.size}"]
    found = []
    levels = ImageChops.difference(*(picture.filter(ImageFilter.GaussianBlur(0.8)) for picture in (one, other)))
    spots = sum(levels.histogram()[SHARP + 1 :])
    if spots > SPOTS:
        found.append(f"{spots} pixels differ by more than {SHARP} levels")
    blurred = ImageChops.difference(*(picture.filter(ImageFilter.BoxBlur(4)) for picture in (one, other)))
    most = max(level for level, count in enumerate(blurred.histogram()) if count)
    if most > BROAD:
        found.append(f"an area differs by {most} levels")
    return found


@pytest.mark.parametrize("name", NAMES)
def test_pages_look_as_they_did(name: str) -> None:
    file = KEPT / f"{name}.png"
    if os.environ.get("RENEW_GOLDEN"):
        KEPT.mkdir(exist_ok=True)
        drawn(name).save(file, "PNG", optimize=True)
    with Raster.open(file) as kept:
        assert differences(drawn(name), kept) == []


def test_no_kept_picture_is_left_over_and_all_are_small() -> None:
    files = [*KEPT.iterdir()]
    assert {file.name for file in files} == {f"{name}.png" for name in NAMES}
    assert sum(file.stat().st_size for file in files) < 300_000


@pytest.mark.parametrize("name", NAMES)
def test_edges_smoothed_otherwise_pass(name: str) -> None:
    """The page a tenth of a pixel to the right and down, and scaled down from a finer picture."""
    page = page_of(name)
    tenth = 0.1 * 72 / DPI
    assert differences(rendered(replace(page, items=(Group(page.items, tenth, tenth),))), drawn(name)) == []
    assert differences(rendered(page, FINER + 2), drawn(name)) == []


def items_of(items: tuple[Item, ...], names: tuple[str, ...] = ()) -> Iterator[Found]:
    """All items but groups, in the order drawn."""
    for item in items:
        if isinstance(item, Group):
            yield from items_of(item.items, (*names, item.name))
        else:
            yield item, names


def changed(items: tuple[Item, ...], old: Item, new: Item | None) -> Iterator[Item]:
    for item in items:
        if item is old:
            if new is not None:
                yield new
        elif isinstance(item, Group):
            yield replace(item, items=tuple(changed(item.items, old, new)))
        else:
            yield item


def refused(name: str, old: Item, new: Item | None) -> bool:
    page = page_of(name)
    return bool(differences(rendered(replace(page, items=tuple(changed(page.items, old, new)))), drawn(name)))


LINES = {
    "title": "Ten puzzles for a wet Sunday",
    "puzzle-marks": "once each",
    "keys": "71 steps",
    "contest": "When a grid is done",
    "crib": "The rest is read",
    "press-cover": "ISBN",
}


@pytest.mark.parametrize("name", NAMES)
def test_a_line_of_text_moved_by_a_point_is_refused(name: str) -> None:
    (line,) = (item for item, _ in items_of(page_of(name).items) if isinstance(item, Text) and LINES[name] in item.text)
    assert refused(name, line, replace(line, y=line.y + 1.0))
    assert refused(name, line, replace(line, x=line.x + 1.0))


def in_group(name: str, kind: type[Item]) -> Callable[[Found], bool]:
    return lambda found: isinstance(found[0], kind) and any(group.startswith(name) for group in found[1])


MARKS: dict[str, tuple[str, Callable[[Found], bool]]] = {
    "a figure in the art": ("title", in_group("ornament", Shape)),
    "a thermometer": (
        "puzzle-marks",
        lambda found: isinstance(found[0], Shape) and found[0].stroke is not None and found[0].stroke.colour == 0.88,
    ),
    "a given": ("puzzle-marks", in_group("grid", Text)),
    "a narrow point": (
        "keys",
        lambda found: "profile" in found[1] and isinstance(found[0], Shape) and found[0].stroke is None,
    ),
    "a check letter": ("contest", in_group("check", Text)),
    "a box for points": ("contest", lambda found: isinstance(found[0], Rect) and not any(found[1])),
    "the stroke through a candidate": ("crib", lambda found: isinstance(found[0], Line)),
    "a light ground": (
        "crib",
        lambda found: isinstance(found[0], Rect) and found[0].fill == 0.88 and found[0].width > 30,
    ),
    "a crop mark": (
        "press-cover",
        lambda found: isinstance(found[0], Line) and found[0].stroke.width == 0.25 and not found[0].stroke.dash,
    ),
    "the word at a fold": ("press-cover", lambda found: isinstance(found[0], Text) and found[0].text == "fold"),
    "a bar of the barcode": ("press-cover", in_group("barcode", Rect)),
}


@pytest.mark.parametrize("what", MARKS)
def test_a_missing_mark_is_refused(what: str) -> None:
    name, wanted = MARKS[what]
    *_, mark = (found for found in items_of(page_of(name).items) if wanted(found))
    assert refused(name, mark[0], None)


def test_another_size_of_page_is_refused() -> None:
    page = page_of("title")
    assert differences(rendered(replace(page, width=page.width + 3.0)), drawn("title"))
