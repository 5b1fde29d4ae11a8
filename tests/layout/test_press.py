"""Sheets for the press: boxes, bleed, crop marks and slug line, read back from the PDF by pdfplumber.

Bleed 3 mm or 0.125 in, marks clear of it: common practice of the trade, no source. Boxes: ISO 32000-1, 14.11.2.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from io import BytesIO

import pdfplumber
import pytest

from bookmaker.display.items import Document, Page, Rect
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import Layout, load_layout, press_sheets
from bookmaker.layout.lengths import mm
from bookmaker.layout.sheets.press import CLEAR, EDGE, MARK
from bookmaker.layout.spec import Press
from bookmaker.layout.specfile import read_layout
from bookmaker.preflight import inspect
from bookmaker.resources import shipped
from bookmaker.source.diagnostics import BookErrors

LAYOUT = load_layout("a4-book")
WIDTH, HEIGHT = 595.276, 841.890
"""A4 in points (ISO 216)."""


def with_press(bleed: float, marks: bool = True, slug: bool = True) -> Layout:
    return replace(LAYOUT, press=Press(bleed, marks, slug))


def plain(title: str = "A book", pages: int = 2) -> Document:
    """Pages that are black from edge to edge, bleed included."""
    items = (Rect(-20, -20, WIDTH + 40, HEIGHT + 40, fill=0.0),)
    made = tuple(Page(LAYOUT.width, LAYOUT.height, items, str(number)) for number in range(1, pages + 1))
    return Document(title, "", "", made, created=date(2026, 3, 14))


def on_paper(layout: Layout, document: Document | None = None) -> pdfplumber.page.Page:
    return pdfplumber.open(BytesIO(pdf_bytes(press_sheets(document or plain(), layout), press=True))).pages[0]


@pytest.mark.parametrize("bleed", [0.0, mm(3), 9.0, mm(10)])
def test_boxes(bleed: float) -> None:
    page = on_paper(with_press(bleed))
    edge = max(bleed, CLEAR) + MARK + EDGE
    trim, bled, media = (page.trimbox, page.bleedbox, page.mediabox)
    assert trim == pytest.approx((edge, edge, edge + WIDTH, edge + HEIGHT), abs=0.01)
    assert bled == pytest.approx((trim[0] - bleed, trim[1] - bleed, trim[2] + bleed, trim[3] + bleed), abs=0.01)
    assert media == pytest.approx((0, 0, WIDTH + 2 * edge, HEIGHT + 2 * edge), abs=0.01)


def test_without_marks_the_sheet_ends_with_the_bleed() -> None:
    page = on_paper(with_press(mm(3), marks=False, slug=False))
    assert page.bleedbox == pytest.approx(page.mediabox, abs=0.001)
    assert page.trimbox[0] == pytest.approx(mm(3), abs=0.01)
    assert not page.lines and not page.chars


def test_crop_marks_point_at_the_corners_and_keep_clear() -> None:
    page = on_paper(with_press(mm(5)))
    x0, y0, x1, y1 = page.trimbox
    assert len(page.lines) == 8
    clear = mm(5)
    for line in page.lines:
        upright = line["x0"] == pytest.approx(line["x1"], abs=1e-3)
        at, begin, end = (line["x0"], line["y0"], line["y1"]) if upright else (line["y0"], line["x0"], line["x1"])
        sides, low, high = ((x0, x1), y0, y1) if upright else ((y0, y1), x0, x1)
        assert min(abs(at - side) for side in sides) < 0.01
        assert end <= low - clear + 0.01 or begin >= high + clear - 0.01
        assert end - begin == pytest.approx(MARK, abs=0.01)
        assert line["linewidth"] == 0.25


def test_the_slug_line_names_the_sheet_beyond_the_bleed() -> None:
    page = on_paper(with_press(mm(3)))
    said = page.extract_text()
    assert said == "Sheet 1 of 2 · page 1 · 2026-03-14 · A book"
    height = page.height
    assert all(height - char["top"] < page.bleedbox[1] for char in page.chars)
    assert all(char["bottom"] < height for char in page.chars)


def test_a_long_title_ends_with_the_sheet() -> None:
    page = on_paper(with_press(mm(3)), plain("Long " * 80))
    assert page.extract_text().startswith("Sheet 1 of 2 · page 1 · 2026-03-14 · Long Long")
    assert max(char["x1"] for char in page.chars) <= page.trimbox[2]


def test_preflight_takes_the_slug_line_for_what_it_is() -> None:
    document = plain(pages=4)
    empty = replace(document, pages=tuple(replace(page, items=()) for page in document.pages))
    assert inspect(pdf_bytes(press_sheets(empty, LAYOUT), press=True), "book.pdf").diagnostics == ()


TEXT = (shipped("layouts") / "a4-handout.yaml").read_text(encoding="utf-8")


def test_a_layout_says_what_the_press_wants() -> None:
    said = read_layout("x", TEXT + "\npress:\n  bleed: 0.125 in\n  marks: no\n  slug: yes\n", "x.yaml")
    assert said.press == Press(9.0, marks=False, slug=True)
    assert read_layout("x", TEXT, "x.yaml").press == Press(mm(3), marks=True, slug=True)


def test_mistakes_in_it_are_found() -> None:
    with pytest.raises(BookErrors) as caught:
        read_layout("x", TEXT + "\npress:\n  bleed: 3 cm\n  marks: maybe\n", "x.yaml")
    assert sorted(diagnostic.code for diagnostic in caught.value.diagnostics) == [
        "missing-key",
        "out-of-range",
        "unknown-word",
    ]
