"""Fold ticks on a cover for the press, read back from the PDF by pdfplumber.

That a fold is marked outside the trim, by a broken line where a cut has a whole one: common practice of the trade, no
source.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from io import BytesIO

import pdfplumber
import pytest

from bookmaker.book.contents import Book
from bookmaker.display.items import Document
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import Layout, compose, compose_cover, layout_names, load_layout, press_sheets
from bookmaker.layout.lengths import mm
from bookmaker.layout.sheets.cover import spine_width
from bookmaker.layout.spec import Press
from bookmaker.preflight import inspect
from tests.layout.sample_book import full_book, sample_book

A5 = load_layout("a5-book")
BOOKS = [name for name in layout_names() if load_layout(name).use == "book"]


def pressed(document: Document, layout: Layout) -> bytes:
    return pdf_bytes(press_sheets(replace(document, created=date(2026, 3, 14)), layout), press=True)


def on_paper(layout: Layout, book: Book | None = None, pages: int = 64) -> pdfplumber.page.Page:
    cover = compose_cover(book or full_book(), layout, pages)
    return pdfplumber.open(BytesIO(pressed(cover, layout))).pages[0]


def broken(page: pdfplumber.page.Page) -> list[dict]:
    """Dashed lines that lie beyond the trim, in the PDF's measure: up from the foot of the sheet."""
    _, low, _, high = page.trimbox
    return [line for line in page.lines if line["dash"] and line["dash"][0] and not low < line["y0"] < high]


@pytest.mark.parametrize("name", BOOKS)
@pytest.mark.parametrize("pages", [16, 201])
def test_both_folds_are_ticked_at_head_and_foot_clear_of_the_bleed(name: str, pages: int) -> None:
    layout = load_layout(name)
    page = on_paper(layout, pages=pages)
    left, low, _, high = page.trimbox
    ticks = broken(page)
    folds = (left + layout.width, left + layout.width + spine_width(pages, 0.1))
    assert sorted((round(tick["x0"], 1), tick["y0"] > high) for tick in ticks) == sorted(
        (round(fold, 1), above) for fold in folds for above in (False, True)
    )
    beyond = max(layout.press.bleed, mm(3)) - 0.01
    for tick in ticks:
        assert tick["x0"] == pytest.approx(tick["x1"])
        assert tick["y1"] <= low - beyond or tick["y0"] >= high + beyond
        assert tick["y0"] >= 0 and tick["y1"] <= page.height


def test_no_crop_mark_is_broken_and_the_word_stands_beside_every_tick() -> None:
    page = on_paper(A5)
    beyond = [line for line in page.lines if not page.trimbox[1] - 1 < line["y0"] < page.trimbox[3] + 1]
    assert len(broken(page)) == 4 and len([line for line in beyond if line not in broken(page)]) == 4
    words = [word for word in page.extract_words() if word["text"] == "fold"]
    assert len(words) == 4
    for word in words:
        apart = min(min(abs(word["x0"] - tick["x0"]), abs(word["x1"] - tick["x0"])) for tick in broken(page))
        assert 1.0 < apart < mm(2)


def test_the_slug_line_keeps_clear_of_the_folds_however_long_the_title() -> None:
    page = on_paper(A5, replace(full_book(), title="Long " * 40))
    foot = [word for word in page.extract_words() if word["top"] > page.height - page.trimbox[1]]
    *slug, before, after = foot
    assert [word["text"] for word in slug[:4]] == ["Sheet", "1", "of", "1"]
    assert len([word for word in slug if word["text"] == "Long"]) > 10
    assert before["text"] == after["text"] == "fold"
    assert before["x0"] - slug[-1]["x1"] > mm(2)


def test_there_is_none_without_marks_nor_on_a_screen_nor_inside_the_book() -> None:
    bare = replace(A5, press=Press(mm(3), marks=False, slug=True))
    assert not broken(on_paper(bare)) and "fold" not in on_paper(bare).extract_text().split()
    (cover,) = compose_cover(full_book(), A5, 64).pages
    screen = pdfplumber.open(BytesIO(pdf_bytes(compose_cover(full_book(), A5, 64)))).pages[0]
    assert screen.width == pytest.approx(cover.width, abs=0.01)
    assert not broken(screen)
    inside = pdfplumber.open(BytesIO(pressed(compose(sample_book(), A5), A5)))
    assert not broken(inside.pages[0])


def test_preflight_takes_them_for_what_they_are() -> None:
    assert inspect(pressed(compose_cover(full_book(), A5, 64), A5), "cover-press.pdf").diagnostics == ()
