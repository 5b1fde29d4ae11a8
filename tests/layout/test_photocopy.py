"""The photocopy test: marks drawn at the smallest size a book prints them, then turned to pure black and white.

At 150 dots an inch (common practice, no source) a pixel is 0.48 points wide. A copier lays its pixels where it likes,
so every mark is copied sixteen times, moved by quarters of a pixel. Nothing of a mark may vanish, and no two marks may
come out alike.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from functools import cache
from itertools import combinations, pairwise, product

import pytest
from PIL import Image as Raster
from PIL import ImageChops, ImageFilter

from bookmaker.display.colour import grey_of
from bookmaker.display.items import Group, Item, Line, Page, Path, Rect, Stroke, Text
from bookmaker.layout.art.gridart import frame_for, grid_lines
from bookmaker.layout.lengths import mm
from bookmaker.layout.sheets.chart import compose_chart
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Table
from bookmaker.source.yamlfile import parse_yaml
from tests.ink.drawn import pictures
from tests.layout.flat import flat

DPI = 150
PIXEL = 72 / DPI

LEAST = mm(6.5)
"""The smallest cells of any layout."""

FINER = 4
"""Copies are scaled down from pictures so many times as fine, for a pixel is the thinnest line that PDFium draws."""

HALF = 128
"""Darker than this is black."""

KEPT = 0.7
"""So much of a mark, by its area in black, has to lie within a pixel of black. Half of a pair of strokes is less."""

APART = 0.3
"""Two marks laid on each other as well as they go differ in so much of the area that either covers."""

EDGE = mm(9)

SHIFTS = (0.0, 0.25, 0.5, 0.75)

TWOFOLD = {
    "white dots": "dots: {white: [r1c1-r1c2]}",
    "black dots": "dots: {black: [r1c1-r1c2]}",
    "even": "parity: {even: r1c1}",
    "odd": "parity: {odd: r1c1}",
    "peak": "peaks: {greater: r2c2}",
    "hollow": "peaks: {smaller: r2c2}",
}
"""Kinds with two marks, one at a time; inequalities and sum marks are compared as in their samples."""

SAME_BY_DESIGN = {frozenset({"extra-region", "windows"})}
"""Windows are extra regions at a place of their own."""


def marks_of_kind(kind: str, cell: float = LEAST) -> list[Item]:
    sample = kinds()[kind].sample()
    assert sample is not None
    marks = sample.rule.marks(frame_for(sample.grid, cell))
    return [mark.item for mark in sorted(marks, key=lambda mark: mark.layer)]


DRAWN = [kind for kind, rule in kinds().items() if rule.sample() is not None]


def copies(drawn: Iterable[Iterable[Item]], level: int = HALF) -> Iterator[Raster.Image]:
    """Copies of several drawings, white where the paper is black."""
    side = 9 * LEAST + 2 * EDGE
    pages = [Page(side, side, (Group(tuple(items), EDGE, EDGE),), "") for items in drawn]
    for picture in pictures(pages, DPI * FINER):
        yield picture.reduce(FINER).point(lambda value: 255 if value < level else 0)


def copied(items: Iterable[Item]) -> Raster.Image:
    """A copy of one drawing."""
    (copy,) = copies([items])
    return copy


def shifted(items: Iterable[Item]) -> list[tuple[Item, ...]]:
    """The items moved by parts of a pixel, in all ways."""
    held = tuple(items)
    return [(Group(held, dx * PIXEL, dy * PIXEL),) for dx, dy in product(SHIFTS, SHIFTS)]


def area(picture: Raster.Image) -> int:
    return picture.histogram()[255]


def in_black(items: Iterable[Item]) -> Iterator[Item]:
    """The items as they are meant: what carries the meaning in black, grounds and knock-outs in white."""

    def pen(stroke: Stroke | None) -> Stroke | None:
        return stroke and replace(stroke, colour=0.0 if grey_of(stroke.colour) <= 0.75 else 1.0)

    for item in items:
        match item:
            case Group():
                yield replace(item, items=tuple(in_black(item.items)))
            case Line():
                yield replace(item, stroke=pen(item.stroke) or item.stroke)
            case Rect() | Path():
                fill = None if item.fill is None else 0.0 if grey_of(item.fill) <= 0.75 else 1.0
                yield replace(item, stroke=pen(item.stroke), fill=fill)
            case Text():
                yield replace(item, colour=0.0 if grey_of(item.colour) <= 0.75 else 1.0)
            case _:
                yield item


def kept(items: list[Item]) -> float:
    """The least share, over all shifts, of what was meant that the copy has within a pixel."""
    shares = []
    for meant, copy in zip(copies(shifted(in_black(items)), level=192), copies(shifted(items)), strict=True):
        near = copy.filter(ImageFilter.MaxFilter(3))
        shares.append(area(ImageChops.multiply(meant, near)) / area(meant))
    return min(shares)


@pytest.mark.parametrize("kind", DRAWN)
def test_nothing_of_a_mark_vanishes_in_a_copy(kind: str) -> None:
    assert kept(marks_of_kind(kind)) >= KEPT


def paler(items: list[Item]) -> list[Item]:
    return [
        replace(item, stroke=replace(item.stroke, colour=0.6))
        for item in items
        if isinstance(item, Path) and item.stroke
    ]


def thinner(items: list[Item]) -> list[Item]:
    return [replace(item, stroke=replace(item.stroke, width=0.4)) for item in items if isinstance(item, Line)]


@pytest.mark.parametrize(("kind", "spoilt"), [("palindrome", paler), ("cage", thinner)])
def test_marks_too_pale_or_too_thin_are_found_out(kind: str, spoilt: Callable[[list[Item]], list[Item]]) -> None:
    """The test above can fail: the same marks in a grey of 0.6, or with strokes of 0.4 points in their own grey."""
    items = spoilt([item for item in marks_of_kind(kind) if getattr(item, "stroke", None)])
    assert items and kept(items) < KEPT


def test_lines_between_cells_are_whole_in_a_copy() -> None:
    for copy in copies(shifted(grid_lines(CLASSIC, LEAST)[:1])):
        left, top, right, bottom = copy.getbbox() or (0, 0, 0, 0)
        assert min(right - left, bottom - top) >= 9 * LEAST / PIXEL - 2
        middle = round((EDGE + LEAST / 2) / PIXEL)  # halfway between two lines
        across = [copy.getpixel((x, middle)) for x in range(copy.width)]
        down = [copy.getpixel((middle, y)) for y in range(copy.height)]
        for line in (across, down):
            assert sum(1 for before, after in pairwise(line) if after and not before) == 8


@cache
def specimens() -> dict[str, Raster.Image]:
    """A copy of each mark, cut out: of every kind's sample, and of both marks of kinds that have two."""
    found = {kind: copied(marks_of_kind(kind)) for kind in DRAWN if kind not in ("dots", "parity", "peaks")}
    for name, typed in TWOFOLD.items():
        collector = Collector()
        tree = parse_yaml(typed, "x", collector)
        assert isinstance(tree, Table)
        ((kind, body),) = tree.entries
        rule = kinds()[kind.value].read(body, CLASSIC, collector)
        assert rule is not None, typed
        found[name] = copied(mark.item for mark in rule.marks(frame_for(CLASSIC, LEAST)))
    return {name: picture.crop(picture.getbbox()) for name, picture in found.items()}


def difference(one: Raster.Image, other: Raster.Image) -> float:
    """The share of either's area in which they differ, laid on each other as well as they go within two pixels."""
    wide, high = max(one.width, other.width) + 4, max(one.height, other.height) + 4

    def laid(picture: Raster.Image, dx: int, dy: int) -> Raster.Image:
        ground = Raster.new("L", (wide, high), 0)
        ground.paste(picture, ((wide - picture.width) // 2 + dx, (high - picture.height) // 2 + dy))
        return ground

    still = laid(one, 0, 0)
    best = 1.0
    for dx, dy in product(range(-2, 3), repeat=2):
        moved = laid(other, dx, dy)
        either = area(ImageChops.lighter(still, moved))
        best = min(best, area(ImageChops.difference(still, moved)) / either)
    return best


def test_no_two_marks_come_out_alike() -> None:
    alike = [
        (round(share, 2), one, other)
        for (one, a), (other, b) in combinations(specimens().items(), 2)
        if frozenset({one, other}) not in SAME_BY_DESIGN
        for share in (difference(a, b),)
        if share < APART
    ]
    assert alike == []


def test_marks_that_differ_in_their_ground_alone_are_found_out() -> None:
    """The test above can fail: two rings, one filled in light grey and one empty, are one in a copy."""
    circle = Rect(0.0, 0.0, LEAST, LEAST, Stroke(0.7), 0.88, LEAST / 2)
    grey, white = (copied([item]).crop(copied([item]).getbbox()) for item in (circle, replace(circle, fill=1.0)))
    assert difference(grey, white) < APART


def test_the_chart_printed_and_copied_still_shows_every_mark() -> None:
    """The same at the size of a printed grid, beside words and other marks."""
    chart = compose_chart()
    shown = set()
    for page, picture in zip(chart.pages, pictures(chart.pages, DPI * FINER), strict=True):
        copy = picture.reduce(FINER).point(lambda value: 255 if value < HALF else 0)
        for one in flat(page):
            kind = next((name.removeprefix("sample ") for name in one.names if name.startswith("sample ")), "")
            if kind and isinstance(one.item, Group):
                left, top, right, bottom = (round(value / PIXEL) for value in one.box)
                black = area(copy.crop((left, top, right, bottom)))
                (whole,) = copies([in_black(marks_of_kind(kind, mm(8.5)))], level=192)
                assert black >= 0.5 * area(whole), kind
                shown.add(kind)
    assert shown == set(DRAWN)
