"""PDF files, read back by pypdf, pdfplumber and PDFium."""

from __future__ import annotations

import re
from dataclasses import replace
from io import BytesIO

import pdfplumber
import pypdfium2
import pytest
from pypdf import PdfReader
from pypdf.generic import ContentStream

from bookmaker.display.items import (
    Anchor,
    Bookmark,
    Document,
    Group,
    Item,
    Line,
    Link,
    Page,
    Rect,
    Stroke,
    Text,
    tagged,
)
from bookmaker.display.tags import PARAGRAPH, Role, Tag
from bookmaker.ink.operators import number
from bookmaker.ink.pdf import pdf_bytes, write_pdf
from bookmaker.layout.drawing import Pages
from bookmaker.layout.setting.fonts import FontBook
from tests.ink.specimen import document, specimen
from tests.marked import assert_marked


@pytest.fixture(scope="module")
def made() -> bytes:
    return pdf_bytes(document())


@pytest.fixture(scope="module")
def reader(made: bytes) -> PdfReader:
    return PdfReader(BytesIO(made), strict=True)


def one_page(*items: Item, width: float = 200, height: float = 100) -> bytes:
    return pdf_bytes(Document("t", "", "", (Page(width, height, items, "1"),)))


def test_every_font_is_embedded_and_subset(reader: PdfReader) -> None:
    fonts = [font.get_object() for page in reader.pages for font in page["/Resources"]["/Font"].values()]
    assert fonts
    for font in fonts:
        assert re.fullmatch(r"/[A-Z]{6}\+.+", font["/BaseFont"])
        descriptor = font["/FontDescriptor"]
        assert descriptor["/FontFile2"].get_data()
        assert "/ToUnicode" in font


def test_a_subset_holds_only_what_is_used() -> None:
    few, many = one_page(Text(10, 50, "aaa", "sans", 12)), one_page(Text(10, 50, "abcdefghijklmno", "sans", 12))
    assert len(few) + 1000 < len(many)


def test_no_default_font_slips_in(made: bytes, reader: PdfReader) -> None:
    assert b"Helvetica" not in made
    assert b"Helvetica" not in b"".join(page.get_contents().get_data() for page in reader.pages)
    empty = PdfReader(BytesIO(one_page()))
    assert not empty.pages[0]["/Resources"]["/Font"].get_object()


def test_only_device_grey(reader: PdfReader) -> None:
    colours = {b"rg", b"RG", b"k", b"K", b"cs", b"CS", b"sc", b"SC", b"scn", b"SCN", b"sh", b"BI"}
    used: set[bytes] = set()
    for page in reader.pages:
        used |= {operator for _, operator in ContentStream(page.get_contents(), reader).operations}
        for image in page["/Resources"].get("/XObject", {}).values():
            assert image.get_object()["/ColorSpace"] == "/DeviceGray"
    assert {b"g", b"G"} <= used
    assert not used & colours


def test_the_same_document_gives_the_same_bytes(made: bytes) -> None:
    assert pdf_bytes(document()) == made
    pdf_bytes(Document("another", "", "", (specimen(), Page(9, 9, (), "", (Anchor("second", 0, 0),)))))
    assert pdf_bytes(document()) == made


def test_the_environment_leaves_no_trace(made: bytes, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1700000000")
    monkeypatch.setenv("TZ", "Pacific/Auckland")
    assert pdf_bytes(document()) == made


def test_different_documents_have_different_identifiers(reader: PdfReader) -> None:
    def identifier(page: Page) -> object:
        return PdfReader(BytesIO(pdf_bytes(Document("t", "", "", (page,))))).trailer["/ID"]

    plain = Page(9, 9, (), "1")
    assert identifier(plain) == identifier(plain)
    assert identifier(plain) != identifier(replace(plain, items=(Rect(0, 0, 1, 1, fill=0.0),)))
    assert len(reader.trailer["/ID"]) == 2


def test_streams_are_compressed(reader: PdfReader) -> None:
    assert all(page["/Contents"]["/Filter"] in ("/FlateDecode", ["/FlateDecode"]) for page in reader.pages)


def test_information(reader: PdfReader) -> None:
    said = reader.metadata
    assert said is not None
    assert (said.title, said.author, said.subject) == ("Title – té", "An Author", "A subject")
    assert said.producer == said.creator == "bookmaker"
    assert said["/CreationDate"] == said["/ModDate"] == "D:20260309000000Z"
    assert reader.root_object["/Lang"] == "en-GB"


def test_without_a_date_none_is_made_up() -> None:
    said = PdfReader(BytesIO(one_page())).metadata
    assert said is not None and "/CreationDate" not in said and "/ModDate" not in said and "/Author" not in said


def test_boxes(reader: PdfReader) -> None:
    first, second, _ = reader.pages
    assert list(first.mediabox) == list(first.trimbox) == [0, 0, 300, 320]
    assert list(second.mediabox) == [0, 0, 240, 140]
    assert list(second.trimbox) == [20, 20, 220, 120]
    assert list(second.bleedbox) == [11, 11, 229, 129]


def test_page_labels(reader: PdfReader) -> None:
    assert reader.page_labels == ["i", "1", "2"]


def test_outline_leads_to_pages(reader: PdfReader) -> None:
    def walk(entries: list, level: int = 0) -> list[tuple[str, int, int | None]]:
        found = []
        for entry in entries:
            if isinstance(entry, list):
                found += walk(entry, level + 1)
            else:
                found.append((entry.title, level, reader.get_destination_page_number(entry)))
        return found

    expected = [("Specimen → first", 0, 0), ("Below it", 1, 1), ("Also the first", 0, 0), ("Last", 0, 2)]
    assert walk(reader.outline) == expected


def test_named_destinations(reader: PdfReader) -> None:
    found = reader.named_destinations
    pages = {name: reader.get_destination_page_number(place) for name, place in found.items()}
    assert pages == {"first": 0, "second": 1, "last": 2}
    # 10 right and 20 down from the trim's corner, which lies 20 inside a sheet of 140
    assert (found["second"].left, found["second"].top) == (30, 100)


def test_links_have_no_border_and_lead_to_pages(reader: PdfReader) -> None:
    links = [note.get_object() for note in reader.pages[0]["/Annots"]]
    places = reader.named_destinations
    assert [reader.get_destination_page_number(places[link["/Dest"]]) for link in links] == [1, 0]
    assert all(list(link["/Border"]) == [0, 0, 0] for link in links)
    assert [float(edge) for edge in links[1]["/Rect"]] == [20, 140, 120, 160]


def test_a_link_that_leads_nowhere_is_refused() -> None:
    page = Page(100, 100, (Link(0, 0, 9, 9, "gone"),), "1", (Anchor("here", 0, 0),))
    with pytest.raises(ValueError, match="nowhere: gone"):
        pdf_bytes(Document("t", "", "", (page,)))
    with pytest.raises(ValueError, match="nowhere: lost"):
        pdf_bytes(Document("t", "", "", (replace(page, items=()),), (Bookmark("x", "lost"),)))
    with pytest.raises(ValueError, match="twice: here"):
        pdf_bytes(Document("t", "", "", (replace(page, items=(), anchors=page.anchors * 2),)))


def test_pages_are_written_as_they_come_and_let_go() -> None:
    alive: set[int] = set()
    most = []

    class Watched(Page):
        def __del__(self) -> None:
            alive.discard(id(self))

    def draw(at: int) -> Page:
        items = (Text(10, 20, f"page {at}", "sans", 9), Rect(10, 30, 20, 20, Stroke(1)))
        page = Watched(100, 100, items, str(at + 1), (Anchor(f"page {at}", 0, 0),))
        alive.add(id(page))
        most.append((len(alive), stream.tell()))
        return page

    stream = BytesIO()
    seen: list[tuple[int, int]] = []
    write_pdf(Document("t", "", "", Pages(40, draw)), stream, watch=lambda done, of: seen.append((done, of)))
    assert max(count for count, _ in most) <= 2
    places = [place for _, place in most]
    assert places == sorted(places) and len(set(places)) == 40  # each page is in the file before the next is drawn
    assert seen == [(number, 40) for number in range(1, 41)]
    kept = pdf_bytes(Document("t", "", "", tuple(Pages(40, draw))))
    assert kept == stream.getvalue()


def test_text_is_found_in_reading_order(made: bytes, reader: PdfReader) -> None:
    expected = ["To AVATAR Wy. “fluffig”", "Middle: 0123456789"]
    lines = reader.pages[0].extract_text().splitlines()
    assert [line.strip() for line in lines][:2] == expected
    second = pypdfium2.PdfDocument(made)[1].get_textpage().get_text_range()
    assert second.strip() == reader.pages[1].extract_text().strip() == "Příliš žluťoučký kůň"


def test_letterspaced_words_stay_words(made: bytes) -> None:
    assert "LETTERSPACED" in pypdfium2.PdfDocument(made)[0].get_textpage().get_text_range()


@pytest.mark.parametrize("anchor", ["start", "middle", "end"])
def test_text_is_as_long_on_paper_as_it_was_measured(anchor: str) -> None:
    said = "To “AVATAR”, fluffig"
    options = {"letter_space": 0.5, "word_space": 3.0}
    text = Text(100, 50, said, "serif", 12, anchor=anchor, **options)
    chars = pdfplumber.open(BytesIO(one_page(text))).pages[0].chars
    length = FontBook().width(said, "serif", 12, **options)
    start = {"start": 100.0, "middle": 100 - length / 2, "end": 100 - length}[anchor]
    assert chars[0]["x0"] == pytest.approx(start, abs=0.02)
    assert max(char["x1"] for char in chars) == pytest.approx(start + length, abs=0.6)  # pdfplumber adds the last space
    assert chars[-1]["x0"] == pytest.approx(start + length - 12 * 0.541, abs=0.4)


def test_more_than_256_characters_of_one_font() -> None:
    every = [chr(code) for code in range(0x21, 0x500) if not FontBook().missing(chr(code), "sans")]
    assert len(every) > 400
    lines = ["".join(every[at : at + 40]) for at in range(0, len(every), 40)]
    file = one_page(
        *(Text(10, 20 + 14 * row, line, "sans", 10) for row, line in enumerate(lines)), width=600, height=400
    )
    found = PdfReader(BytesIO(file)).pages[0].extract_text()
    visible = [character for character in every if character.isprintable()]
    assert not [character for character in visible if character not in found]


def test_named_groups_are_marked_content(reader: PdfReader) -> None:
    operations = ContentStream(reader.pages[0].get_contents(), reader).operations
    names = [operands[1]["/Name"] for operands, operator in operations if operator == b"BDC" and "/Name" in operands[1]]
    assert names == ["grid turned"]
    kinds = [operator for _, operator in operations]
    assert kinds.count(b"BDC") + kinds.count(b"BMC") == kinds.count(b"EMC")
    assert kinds.count(b"q") == kinds.count(b"Q")


def test_what_a_group_leaves_where_it_is_is_drawn_as_without_it() -> None:
    """Nothing is saved and brought back around it; pens and colours after it are right all the same."""
    rule, dark, pale = Line((5, 5), (50, 5), Stroke(2, 0.5)), Rect(0, 0, 9, 9, fill=0.2), Rect(20, 0, 9, 9, fill=0.8)
    moved = Group((pale, rule), 5, 7)
    inside, outside = (
        one_page(rule, dark, *held, rule, dark) for held in ((Group((pale, moved, rule)),), (pale, moved, rule))
    )
    assert operators_of(inside) == operators_of(outside)
    assert operators_of(inside).count("q") == 1
    assert pictured(inside) == pictured(outside) != pictured(one_page(rule, dark, pale, moved, rule))


def test_lines_that_are_moved_are_written_where_they_come_to_stand() -> None:
    """Unless more than that becomes of them: then they are drawn as they are, and what holds them is moved."""
    word, digit, after = Text(1, 20, "word", "sans", 8), Text(30, 20, "7", "sans-bold", 8), Text(1, 60, "on", "sans", 8)
    leads = Link(1, 12, 20, 9, "top", "up")
    there = tagged((PARAGRAPH,), replace(word, x=6, y=27)), replace(digit, x=35, y=27), replace(leads, x=6, y=19)
    group = Group((tagged((PARAGRAPH,), word), digit, leads), 5, 7)
    moved, written = (to_the_top(*items, after) for items in ((group,), there))
    assert operators_of(moved) == operators_of(written) and "q" not in operators_of(moved)
    assert pictured(moved) == pictured(written)
    assert areas_of(moved) == areas_of(written)
    for change in ({"scale": 0.5}, {"turn": 90.0}, {"clip": Rect(0, 0, 9, 30)}, {"name": "a line"}):
        other = replace(group, **change)
        assert operators_of(to_the_top(other, after)).count("q") == 1


NAMED = Group((tagged((Tag(Role.LABEL),), Text(10, 40, "in", "sans", 8)), Rect(20, 40, 9, 9, fill=0.5)), name="a name")


@pytest.mark.parametrize(
    "before", (Text(10, 20, "line", "sans", 8), Group((Text(10, 20, "line", "sans", 8),), 5, 7)), ids=("text", "moved")
)
def test_marks_are_nested_where_a_named_group_holds_an_element(before: Item) -> None:
    assert_marked(one_page(tagged((PARAGRAPH,), before, NAMED)))


def test_a_cell_that_holds_more_than_text_is_marked() -> None:
    held = Text(10, 20, "4", "sans", 8), Group((Rect(20, 40, 9, 9, fill=0.5),), 3, 4)
    table = tagged((Tag(Role.TABLE), Tag(Role.ROW), Tag(Role.CELL)), *held)
    assert_marked(one_page(table, Text(10, 60, "after", "sans", 8)))


def to_the_top(*items: Item) -> bytes:
    return pdf_bytes(Document("t", "", "", (Page(200, 100, items, "1", (Anchor("top", 0, 0),)),)))


def areas_of(file: bytes) -> list[list[float]]:
    return [[float(side) for side in one.get_object()["/Rect"]] for one in PdfReader(BytesIO(file)).pages[0]["/Annots"]]


def operators_of(file: bytes) -> list[str]:
    """All that paints or changes how it is painted; where artifacts begin and end is another matter."""
    page = PdfReader(BytesIO(file)).pages[0]
    written = page.get_contents().get_data().decode("ascii")
    return [line.rpartition(" ")[2] for line in written.splitlines() if line not in ("/Artifact BMC", "EMC")]


def pictured(file: bytes) -> bytes:
    picture: bytes = pypdfium2.PdfDocument(file)[0].render(scale=2).to_pil().tobytes()
    return picture


def test_names_beyond_ascii_survive() -> None:
    file = PdfReader(BytesIO(one_page(Group((Rect(0, 0, 9, 9, fill=0.5),), name="grid “é” 12"))))
    operations = ContentStream(file.pages[0].get_contents(), file).operations
    assert next(operands[1]["/Name"] for operands, operator in operations if operator == b"BDC") == "grid “é” 12"


@pytest.mark.parametrize(
    ("value", "written"),
    [(0.0, "0"), (-0.0001, "0"), (12.0, "12"), (1e-5, "0"), (841.8898, "841.89"), (-0.25, "-0.25")],
)
def test_numbers(value: float, written: str) -> None:
    assert number(value) == written
