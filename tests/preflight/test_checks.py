"""Each fault that preflight knows, made on purpose in a file that is otherwise sound."""

from __future__ import annotations

import os
from io import BytesIO
from pathlib import Path
from typing import Any

import pikepdf
import pytest
from PIL import Image as Raster
from pypdf import PdfReader, PdfWriter
from pypdf.generic import RectangleObject
from reportlab.lib.utils import ImageReader
from reportlab.pdfgen.canvas import Canvas

from bookmaker.display.items import Document, Image, Item, Line, Page, Rect, Stroke, Text
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.preflight import inspect
from bookmaker.proof.executors import processes

SOUND = (Text(50, 60, "Sound", "serif", 12), Rect(40, 80, 60, 60, Stroke(0.5), 0.9))


def book(*items: Item, pages: int = 4, width: float = 200) -> bytes:
    first = Page(width, 200, (*SOUND, *items), "1")
    rest = tuple(Page(200, 200, SOUND, str(number)) for number in range(2, pages + 1))
    return pdf_bytes(Document("A title", "", "", (first, *rest)))


def found(file: bytes) -> list[tuple[str, str]]:
    return [(diagnostic.code, diagnostic.text) for diagnostic in inspect(file, "book.pdf").diagnostics]


def by_hand(draw) -> bytes:  # type: ignore[no-untyped-def]
    """A page of another program: reportlab's canvas as it comes."""
    file = BytesIO()
    canvas = Canvas(file, (200, 200), lang="en")
    canvas.setTitle("By hand")
    canvas.setTrimBox((0, 0, 200, 200))
    draw(canvas)
    canvas.save()
    return file.getvalue()


def raster(width: int, height: int) -> bytes:
    file = BytesIO()
    Raster.new("L", (width, height), 128).save(file, "PNG")
    return file.getvalue()


def test_a_sound_book_has_no_troubles() -> None:
    assert found(book()) == []


def test_a_font_that_is_not_embedded() -> None:
    file = by_hand(lambda canvas: canvas.drawString(50, 100, "Hello"))
    assert ("font-missing", "page 1: the font Helvetica is not embedded") in found(file)


def test_a_character_that_the_font_does_not_have() -> None:
    assert found(book(Text(50, 100, "a☃b", "serif", 12))) == [
        ("missing-glyph", "page 1: an empty box is printed for a character")
    ]


@pytest.mark.parametrize(
    ("colour", "said"),
    [
        (lambda canvas: canvas.setFillColorRGB(1, 0, 0), "page 1: a colour is set in DeviceRGB"),
        (lambda canvas: canvas.setStrokeColorCMYK(0, 0, 0, 1), "page 1: a colour is set in DeviceCMYK"),
        (lambda canvas: canvas.addLiteral("/Pattern cs"), "page 1: a colour is set in the colour space Pattern"),
        (lambda canvas: canvas.linearGradient(0, 0, 9, 9, ["red", "blue"]), "page 1: a shading is used"),
    ],
)
def test_colours(colour, said: str) -> None:  # type: ignore[no-untyped-def]
    assert ("colour", said) in found(by_hand(colour))
    assert found(by_hand(lambda canvas: canvas.setFillGray(0.5))) == []


@pytest.mark.parametrize(
    # 150 and 300 pixels an inch: common practice, no source
    ("pixels", "code", "warning"),
    [(99, "resolution", False), (150, "resolution", True), (300, None, False)],
)
def test_resolution_at_the_printed_size(pixels: int, code: str | None, warning: bool) -> None:
    file = book(Image(60, 60, 72, 36, raster(pixels, 300)))
    diagnostics = inspect(file, "book.pdf").diagnostics
    assert [(diagnostic.code, diagnostic.warning) for diagnostic in diagnostics] == ([(code, warning)] if code else [])
    if code:
        assert f"{pixels} pixels per inch" in diagnostics[0].text


def test_a_coloured_picture() -> None:
    picture = ImageReader(Raster.new("RGB", (300, 300), (200, 0, 0)))
    file = by_hand(lambda canvas: canvas.drawImage(picture, 50, 50, 72, 72))
    assert found(file) == [("colour", "page 1: a picture is in DeviceRGB")]
    inline = "q 0.2 0 0 0.2 50 50 cm BI /W 1 /H 1 /BPC 8 /CS /RGB /F /AHx ID ff0000> EI Q"
    assert found(by_hand(lambda canvas: canvas.addLiteral(inline))) == [("colour", "page 1: a picture is in DeviceRGB")]


def test_hairlines() -> None:
    assert found(book(Line((50, 50), (90, 50), Stroke(0.25)))) == []
    assert found(book(Line((50, 50), (90, 50), Stroke(0.2)))) == [
        ("hairline", "page 1: a line of 0.20 pt is thinner than 0.25 pt")
    ]


def test_text_near_the_trim() -> None:
    # 5 mm are 14.17 pt
    assert found(book(Text(14.2, 60, "x", "sans", 9))) == []
    said = [("safe-area", "page 1: text reaches into the 5 mm along the trim")]
    assert found(book(Text(14.1, 60, "x", "sans", 9))) == said
    assert found(book(Text(186, 60, "wide", "sans", 9, anchor="end"))) == said
    assert found(book(Text(100, 20, "high", "sans", 12))) == said
    assert found(book(Text(100, 190, "low", "sans", 12))) == said
    assert found(book(Text(14.0, 60, " x", "sans", 9))) == []


def test_a_slug_line_beyond_the_trim_is_no_fault() -> None:
    page = Page(200, 200, (*SOUND, Text(50, -8, "slug", "sans", 6)), "1", sheet=20)
    file = pdf_bytes(Document("A title", "", "", (page, page, page, page)))
    assert found(file) == []


def test_page_sizes() -> None:
    assert found(book(width=210)) == [("page-size", "page 1: 210 × 200 pt, but most pages are 200 × 200 pt")]


def test_pages_that_do_not_fold() -> None:
    diagnostics = inspect(book(pages=7), "book.pdf").diagnostics
    assert [(diagnostic.code, diagnostic.warning) for diagnostic in diagnostics] == [("fold", True)]
    assert "page count, 7," in diagnostics[0].text and "1 page stays blank" in diagnostics[0].text
    assert found(book(pages=8)) == found(book(pages=1)) == found(book(pages=2)) == []


def changed(change) -> bytes:  # type: ignore[no-untyped-def]
    writer = PdfWriter(clone_from=PdfReader(BytesIO(book())))
    change(writer)
    file = BytesIO()
    writer.write(file)
    return file.getvalue()


def test_boxes() -> None:
    def wide(writer: PdfWriter) -> None:
        writer.pages[1].trimbox = RectangleObject((0, 0, 200, 200))
        writer.pages[1].bleedbox = RectangleObject((3, 0, 200, 200))

    assert found(changed(wide)) == [("boxes", "page 2: its TrimBox reaches 3.00 pt beyond its BleedBox")]


def test_metadata() -> None:
    def nameless(writer: PdfWriter) -> None:
        writer.metadata = None
        del writer.root_object["/Lang"]
        for page in writer.pages:
            del page["/TrimBox"]

    codes = [code for code, _ in found(changed(nameless))]
    assert codes == ["no-title", "no-language", "no-trim"]


def test_one_trouble_names_all_its_pages() -> None:
    bad, good = (Page(200, 200, (Line((50, 50), (60, 50), Stroke(width)),), "") for width in (0.1, 1))
    file = pdf_bytes(Document("t", "", "", (bad, bad, bad, good, bad, good, good, good)))
    assert [text for _, text in found(file)] == ["pages 1–3, 5: a line of 0.10 pt is thinner than 0.25 pt"]


@pytest.mark.parametrize("content", [b"", b"no PDF", b"%PDF-1.4\n%%EOF", book()[:3000]])
def test_files_that_cannot_be_read(content: bytes) -> None:
    report = inspect(content, "broken.pdf")
    (diagnostic,) = report.diagnostics
    assert diagnostic.code == "unreadable" and diagnostic.place.file == "broken.pdf"
    assert diagnostic.text.startswith("this PDF cannot be read (") and "<" not in diagnostic.text
    assert "trailer" not in diagnostic.text
    assert not report.sound and not report.pages


def locked(user: str = "") -> bytes:
    file = BytesIO()
    with pikepdf.open(BytesIO(book())) as pdf:
        pdf.save(file, encryption=pikepdf.Encryption(R=6, owner="open sesame", user=user))
    return file.getvalue()


def test_a_file_that_opens_only_with_a_password() -> None:
    (diagnostic,) = inspect(locked(user="barley"), "book.pdf").diagnostics
    assert (diagnostic.code, diagnostic.text) == ("protected", "the file is protected, and opens only with a password")
    assert "save it without protection" in diagnostic.hint


def test_a_file_that_may_be_read_but_not_changed_is_read() -> None:
    """Packed with AES of 256 bits (ISO 32000-2, 7.6.2), which everybody may open."""
    assert found(locked()) == [("protected", "the file is protected")]


def test_damage_is_named_where_it_is() -> None:
    file = BytesIO()
    with pikepdf.open(BytesIO(book())) as pdf:
        pdf.pages[1].Contents = pdf.make_stream(b"q 1 0 0 1 0 (never closed")
        pdf.pages[2].Contents = pdf.make_stream(b"BI 1 EI")
        pdf.save(file)
    said = ("damaged", "pages 2–3: not all that is printed on it can be read")
    assert found(file.getvalue()) == [said]
    assert ("damaged", "the file is damaged") in found(book()[:-20])


def test_only_folded_sheets_need_a_multiple_of_four() -> None:
    assert inspect(book(pages=7), "book.pdf", folded=False).diagnostics == ()


def test_pages_shared_among_workers_are_seen_as_by_one(tmp_path: Path) -> None:
    faulty = (Line((50, 50), (60, 50), Stroke(0.1)), Text(2, 60, "x", "sans", 9))
    pages = tuple(Page(200, 200, (*SOUND, *(faulty if at % 50 == 7 else ())), str(at)) for at in range(1, 201))
    file = tmp_path / "book.pdf"
    file.write_bytes(pdf_bytes(Document("A title", "", "", pages)))
    watched: list[tuple[int, int]] = []
    with processes(2) as executor:
        shared = inspect(file, "book.pdf", executor=executor, watch=lambda done, of: watched.append((done, of)))
    alone = inspect(file.read_bytes(), "book.pdf")
    assert shared == alone and len(alone.diagnostics) == 2
    assert "pages 7, 57, 107, 157: " in alone.diagnostics[0].text
    assert watched == [(64, 200), (128, 200), (192, 200), (200, 200)]


def test_whoever_shares_the_pages_out_opens_no_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """qpdf keeps a note of every object of a file: the process that has the whole book in memory is spared them."""
    file, here = tmp_path / "book.pdf", os.getpid()
    file.write_bytes(book())
    opening = pikepdf.open

    def watched(*given: Any, **named: Any) -> pikepdf.Pdf:
        assert os.getpid() != here, "opened by the process in charge"
        return opening(*given, **named)

    monkeypatch.setattr(pikepdf, "open", watched)
    with processes(2) as executor:
        assert inspect(file, "book.pdf", executor=executor).pages == 4
    with pytest.raises(AssertionError, match="in charge"):
        inspect(file, "book.pdf")


@pytest.mark.parametrize("content", [b"", b"%PDF-1.7\n1 0 obj", locked(user="secret"), locked()])
def test_what_cannot_be_opened_is_told_alike_by_workers(content: bytes, tmp_path: Path) -> None:
    file = tmp_path / "book.pdf"
    file.write_bytes(content)
    with processes(2) as executor:
        shared = inspect(file, "book.pdf", executor=executor)
    (one,), (other,) = shared.diagnostics, inspect(file, "book.pdf").diagnostics
    assert (shared.pages, one.code, one.hint) == (inspect(file, "book.pdf").pages, other.code, other.hint)
    assert one.code in ("unreadable", "protected")
