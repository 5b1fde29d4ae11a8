"""Booklets: which page lies where on which sheet, and what a reader finds who folds them.

The published orders are those of Debian's `psbook`. Creep by one thickness of the paper a sheet: common practice of the
trade, no source.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from io import BytesIO

import pdfplumber
import pytest
from pypdf import PdfReader

from bookmaker.display.items import Document, Group, Link, Page, Text
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import compose, impose, load_layout
from bookmaker.layout.lengths import mm
from bookmaker.layout.sheets.imposition import sheets_of, sides, signatures
from bookmaker.layout.specfile import read_layout
from bookmaker.preflight import inspect
from bookmaker.resources import shipped
from bookmaker.source.diagnostics import BookErrors
from tests.layout.sample_book import sample_book, sample_proofs

A5 = load_layout("a5-booklet")
LETTER = load_layout("half-letter-booklet")


def order(pages: int, most: int) -> list[int]:
    return [page for side in sides(pages, most) for page in (side.left, side.right)]


@pytest.mark.parametrize(
    ("pages", "most", "published"),
    [
        (8, 8, "8 1 2 7 6 3 4 5"),
        (16, 16, "16 1 2 15 14 3 4 13 12 5 6 11 10 7 8 9"),
        (16, 8, "8 1 2 7 6 3 4 5 16 9 10 15 14 11 12 13"),
    ],
)
def test_published_orders(pages: int, most: int, published: str) -> None:
    assert order(pages, most) == [int(page) for page in published.split()]


@pytest.mark.parametrize("most", [4, 8, 16, 64])
@pytest.mark.parametrize("pages", [0, 4, 20, 36, 72, 128])
def test_every_page_stands_once_and_no_signature_is_too_thick(pages: int, most: int) -> None:
    assert sorted(order(pages, most)) == list(range(1, pages + 1))
    sheets = signatures(pages, most)
    assert all(4 * count <= most for count in sheets)
    assert sum(sheets) == pages // 4
    assert max(sheets, default=0) - min(sheets, default=0) <= 1


def plain(count: int) -> Document:
    """Pages with their number in the middle."""
    made = [
        Page(A5.width, A5.height, (Text(A5.width / 2, 300.0, f"{number}", "sans", 12.0, anchor="middle"),), str(number))
        for number in range(1, count + 1)
    ]
    return Document("Numbers", "", "", tuple(made))


def folded(file: bytes, sheets: list[int]) -> list[tuple[str, float, float]]:
    """What a reader finds, leaf by leaf, who prints on both sides, turns on the short edge and folds.

    Of each page: its text, the distance of its ink from the fold, and from the outer edge of the sheet.
    """
    read: list[tuple[str, float, float]] = []
    with pdfplumber.open(BytesIO(file)) as pdf:
        assert len(pdf.pages) == 2 * sum(sheets)
        halves = [_halves(page) for page in pdf.pages]
    at = 0
    for count in sheets:
        bundle = [(halves[at + 2 * n], halves[at + 2 * n + 1]) for n in range(count)]
        at += 2 * count
        for front, back in bundle:  # the right half of a front has the left half of the back behind it
            read += [front[1], back[0]]
        for front, back in reversed(bundle):
            read += [back[1], front[0]]
    return read


def _halves(page: pdfplumber.page.Page) -> list[tuple[str, float, float]]:
    fold = page.width / 2
    made = []
    for left in (True, False):
        half = page.within_bbox((0, 0, fold, page.height) if left else (fold, 0, page.width, page.height))
        begin, end = min((c["x0"] for c in half.chars), default=fold), max((c["x1"] for c in half.chars), default=fold)
        near, far = (fold - end, begin) if left else (begin - fold, page.width - end)
        made.append((half.extract_text(), near, far))
    return made


@pytest.mark.parametrize(("count", "most"), [(16, 16), (16, 8), (24, 8), (20, 16)])
def test_folded_sheets_read_from_the_first_page_to_the_last(count: int, most: int) -> None:
    layout = replace(A5, booklet=replace(sheets_of(A5), signature=most))
    read = folded(pdf_bytes(impose(plain(count), layout)), signatures(count, most))
    assert [text for text, _, _ in read] == [str(number) for number in range(1, count + 1)]


def test_inner_sheets_creep_towards_the_fold() -> None:
    layout = replace(A5, booklet=replace(sheets_of(A5), signature=16, thickness=mm(0.5)))
    read = folded(pdf_bytes(impose(plain(16), layout)), [4])
    # numbers of one digit, all of one width: pages 1 to 8 lie on sheets 0 0 1 1 2 2 3 3 from the outside
    near = [near for _, near, _ in read[:8]]
    assert [near[0] - one for one in near] == pytest.approx([mm(0.5) * n for n in (0, 0, 1, 1, 2, 2, 3, 3)], abs=0.01)


@pytest.mark.parametrize(("count", "blank"), [(13, 3), (14, 2), (15, 1), (16, 0), (1, 3)])
def test_pages_for_notes_fill_the_sheet_and_the_back_stays_blank(count: int, blank: int) -> None:
    document = impose(plain(count), A5)
    read = folded(pdf_bytes(document), signatures(count, 64))
    notes = ["Notes", "", ""][:blank] if blank > 1 else [""] * blank
    assert [text for text, _, _ in read] == [str(number) for number in range(1, count + 1)] + notes
    outside = document.pages[0].items[0]  # left on the front of the outermost sheet
    assert isinstance(outside, Group) and (not outside.items or not blank)


@cache
def book() -> Document:
    return compose(sample_book(), A5)


@cache
def booklet() -> bytes:
    return pdf_bytes(impose(book(), A5))


def test_the_folios_of_a_folded_book_stand_at_the_outer_edge_in_order() -> None:
    labels = [page.label for page in book().pages]
    with pdfplumber.open(BytesIO(booklet())) as pdf:
        sheets = signatures(len(labels), 64)
        assert (pdf.pages[0].width, pdf.pages[0].height) == pytest.approx((841.890, 595.276), abs=0.01)  # ISO 216
        folios = [_folios(page) for page in pdf.pages]
    read = []
    for n in range(sum(sheets)):
        read += [folios[2 * n][1], folios[2 * n + 1][0]]
    for n in reversed(range(sum(sheets))):
        read += [folios[2 * n + 1][1], folios[2 * n][0]]
    numbered = {number: folio for number, folio in enumerate(read) if folio}
    assert len(numbered) > len(labels) - 4  # the title and blank pages have none
    for number, folio in numbered.items():
        assert folio == labels[number]


def _folios(page: pdfplumber.page.Page) -> tuple[str, str]:
    """The words at the foot of a side that stand nearest to its left and right edge."""
    foot = page.within_bbox((0, page.height - A5.margins.bottom, page.width, page.height)).extract_words()
    edge = A5.margins.outer + mm(3)
    left = next((word["text"] for word in foot if word["x0"] < edge), "")
    return left, next((word["text"] for word in foot if word["x1"] > page.width - edge), "")


def test_preflight_reads_the_grids_of_imposed_sheets() -> None:
    report = inspect(booklet(), "booklet.pdf", sample_proofs(), folded=False)
    assert report.diagnostics == ()
    ids = {puzzle.id for puzzle in sample_book().puzzles}
    assert {grid.id for grid in report.printed if grid.kind == "grid"} == ids
    assert {grid.id for grid in report.printed if grid.kind == "key"} == ids


def test_links_and_bookmarks_stay_behind() -> None:
    assert any(_has_link(page.items) for page in book().pages)
    document = impose(book(), A5)
    assert not any(_has_link(page.items) for page in document.pages)
    assert document.bookmarks == ()


def _has_link(items: tuple[object, ...]) -> bool:
    return any(isinstance(item, Link) or (isinstance(item, Group) and _has_link(item.items)) for item in items)


def test_print_dialogues_begin_with_both_sides_and_the_true_size() -> None:
    """ISO 32000-1, table 150: Duplex and PrintScaling in the viewer preferences; a book read flat leaves them open."""
    asked = PdfReader(BytesIO(booklet())).trailer["/Root"]["/ViewerPreferences"]
    assert (asked["/Duplex"], asked["/PrintScaling"]) == ("/DuplexFlipShortEdge", "/None")
    flat = PdfReader(BytesIO(pdf_bytes(plain(4)))).trailer["/Root"]["/ViewerPreferences"]
    assert "/Duplex" not in flat and "/PrintScaling" not in flat


def test_sheets_of_letter_lie_on_their_long_side() -> None:
    # ANSI/ASME Y14.1: Letter is 612 by 792 points
    (side, *_) = impose(Document("", "", "", (Page(LETTER.width, LETTER.height, (), "1"),)), LETTER).pages
    assert (side.width, side.height) == (792.0, 612.0)


def test_a_layout_without_a_sheet_gets_two_pages_side_by_side() -> None:
    a4 = load_layout("a4-book")
    assert sheets_of(a4).width == 2 * a4.width and sheets_of(a4).height == a4.height


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("signature: 18", "no-fold"),
        ("signature: 3", "out-of-range"),
        ("sheet: 210 x 280 mm", "no-room"),
        ("sheet: Foolscap", "unknown-paper"),
        ("thickness: 0.1", "not-a-length"),
    ],
)
def test_mistakes_in_the_layout_are_found(line: str, code: str) -> None:
    text = (shipped("layouts") / "a5-booklet.yaml").read_text(encoding="utf-8")
    key = line.split(":")[0]
    broken = "\n".join(f"  {line}" if old.strip().startswith(f"{key}:") else old for old in text.splitlines())
    with pytest.raises(BookErrors) as caught:
        read_layout("x", broken, "x.yaml")
    assert [diagnostic.code for diagnostic in caught.value.diagnostics] == [code]
