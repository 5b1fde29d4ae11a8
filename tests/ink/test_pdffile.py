"""The file itself: where its objects lie, in sections that are written while pages pass."""

from __future__ import annotations

import re
import zlib
from io import BytesIO
from random import Random
from time import sleep
from types import SimpleNamespace

import pdfplumber
import pikepdf
import pypdfium2
import pytest
from pypdf import PdfReader

from bookmaker.display.items import Anchor, Bookmark, Document, Item, Link, Page, Text, tagged
from bookmaker.display.tags import LINK, PARAGRAPH
from bookmaker.ink import objectwriter, pdffile
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.preflight.tokens import LARGEST
from tests.marked import assert_marked
from tests.told import told

SECTION, BUNDLE = 60, 20


def page(at: int, count: int) -> Page:
    """A page of words, with a link to the next."""
    words = [tagged((PARAGRAPH,), Text(10, 20 + 9 * line, f"page {at} line {line}", "sans", 8)) for line in range(5)]
    leads = tagged((PARAGRAPH, LINK), Text(10, 9, "on", "sans", 8), Link(10, 0, 20, 9, f"page {at % count + 1}", "on"))
    items: tuple[Item, ...] = (*words, leads)
    return Page(200, 100, items, str(at), (Anchor(f"page {at}", 0, 0),))


def long_file(pages: int) -> bytes:
    drawn = tuple(page(at, pages) for at in range(1, pages + 1))
    return pdf_bytes(Document("Long", "", "", drawn, (Bookmark("The end", f"page {pages}"),)))


@pytest.fixture
def in_short_sections(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(pdffile, "_SECTION", SECTION)
    monkeypatch.setattr(pdffile, "_BUNDLE", BUNDLE)


def sections(file: bytes) -> list[pikepdf.Object]:
    """What the sections of the table say of themselves, the last one first; references are texts."""
    found, at = [], int(file.rsplit(b"startxref\n", 1)[1].split()[0])
    while True:
        head = file[at : file.index(b"stream\n", at)].partition(b"obj\n")[2]
        found.append(pikepdf.Object.parse(re.sub(rb"(\d+ 0 R)", rb"(\1)", head)))
        if "/Prev" not in found[-1]:
            return found
        at = int(found[-1].Prev)


def entries(section: pikepdf.Object) -> int:
    return sum(map(int, list(section.Index)[1::2])) if "/Index" in section else int(section.Size)


@pytest.mark.usefixtures("in_short_sections")
def test_a_file_is_the_same_however_long_its_streams_take_to_pack(monkeypatch: pytest.MonkeyPatch) -> None:
    at_once, waits, pack = long_file(40), Random(3), zlib.compress

    def slowly(content: bytes, level: int) -> bytes:
        sleep(waits.random() / 200)
        return pack(content, level)

    monkeypatch.setattr(objectwriter, "zlib", SimpleNamespace(compress=slowly))
    for large in (0, 1000, 100_000):  # all by the other thread, some, none
        monkeypatch.setattr(objectwriter, "_LARGE", large)
        assert long_file(40) == at_once


@pytest.mark.parametrize("large", (0, 100_000))
def test_what_goes_wrong_with_packing_is_not_lost(large: int, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(objectwriter, "_LARGE", large)

    def full(content: bytes, level: int) -> bytes:
        raise MemoryError("no room")

    monkeypatch.setattr(objectwriter, "zlib", SimpleNamespace(compress=full))
    with pytest.raises(MemoryError, match="no room"):
        long_file(2)


@pytest.mark.usefixtures("in_short_sections")
def test_no_section_grows_with_the_book() -> None:
    """What the file keeps of its objects until it writes them down is one section."""
    few, many = sections(long_file(40)), sections(long_file(160))
    assert 4 * len(few) - 4 <= len(many) <= 4 * len(few) + 4 and len(few) > 3
    last, *earlier = many
    assert max(map(entries, earlier)) < SECTION + 3 * BUNDLE
    assert {"/Root", "/Info", "/ID"} <= set(last.keys())
    assert all(section.Root == last.Root and section.Size <= last.Size for section in earlier)


def test_a_section_is_no_larger_than_what_preflight_unpacks() -> None:
    """In one piece the table of a book of 4,000 puzzles was, and the book could not be read back."""
    line = 1 + 8  # PNG's filter, and what `/W` says
    assert line * (pdffile._SECTION + 3 * pdffile._BUNDLE) < LARGEST / 4


@pytest.mark.usefixtures("in_short_sections")
def test_every_object_is_in_one_section_only() -> None:
    file = long_file(40)
    listed: list[int] = []
    for section in sections(file):
        runs = [int(number) for number in section.Index]
        for first, count in zip(runs[::2], runs[1::2], strict=True):
            listed += range(first, first + count)
    assert sorted(listed) == [*range(len(listed))] and len(listed) == sections(file)[0].Size


def test_readers_find_the_same_in_a_file_of_many_sections(monkeypatch: pytest.MonkeyPatch) -> None:
    whole = long_file(40)
    assert len(sections(whole)) == 1 and "/Index" not in sections(whole)[0]
    monkeypatch.setattr(pdffile, "_SECTION", SECTION)
    monkeypatch.setattr(pdffile, "_BUNDLE", BUNDLE)
    parted = long_file(40)
    assert_marked(parted)
    assert [*told(parted).outline()] == [*told(whole).outline()]
    for read in (with_pypdf, with_pdfplumber, with_pdfium):
        assert read(parted) == read(whole), read.__name__
    with pikepdf.open(BytesIO(parted)) as pdf:
        assert not pdf.check_pdf_syntax() and not pdf.get_warnings()


def with_pypdf(file: bytes) -> tuple[list[str], dict[str, int | None], list[int | None]]:
    reader = PdfReader(BytesIO(file), strict=True)
    texts = [page.extract_text() for page in reader.pages]
    names = {name: reader.get_destination_page_number(place) for name, place in reader.named_destinations.items()}
    return texts, names, [reader.get_destination_page_number(one) for one in reader.outline]


def with_pdfplumber(file: bytes) -> list[str]:
    with pdfplumber.open(BytesIO(file)) as pdf:
        return [page.extract_text() for page in pdf.pages]


def with_pdfium(file: bytes) -> list[str]:
    pdf = pypdfium2.PdfDocument(file)
    return [page.get_textpage().get_text_range() for page in pdf]
