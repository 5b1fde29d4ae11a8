"""The edition for the press: each line of the usual PDF/X checklist, read by pikepdf, qpdf and poppler.

The checklist: ISO 15930, as common practice sums it up.
"""

from __future__ import annotations

import re
import shutil
import subprocess
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from io import BytesIO
from pathlib import Path
from xml.etree import ElementTree

import pikepdf
import pytest
from PIL import ImageCms

from bookmaker.display.items import Document, Page
from bookmaker.ink.pdf import pdf_bytes
from tests.ink.specimen import document


@pytest.fixture(scope="module")
def made() -> bytes:
    return pdf_bytes(document(), press=True)


@pytest.fixture(scope="module")
def pdf(made: bytes) -> Iterator[pikepdf.Pdf]:
    with pikepdf.open(BytesIO(made)) as opened:
        yield opened


def every(pdf: pikepdf.Pdf) -> Iterator[pikepdf.Object]:
    """All dictionaries and streams of a file, those inside others too."""
    waiting = list(pdf.objects)
    while waiting:
        thing = waiting.pop()
        if isinstance(thing, pikepdf.Dictionary | pikepdf.Stream):
            yield thing
            inner = [thing[key] for key in thing.keys()]  # noqa: SIM118 -- no Python dictionary
        else:
            inner = list(thing) if isinstance(thing, pikepdf.Array) else []
        waiting += [value for value in inner if isinstance(value, pikepdf.Object) and not value.is_indirect]


def test_the_syntax_is_sound(pdf: pikepdf.Pdf) -> None:
    assert pdf.check_pdf_syntax() == []
    assert pdf.pdf_version == "1.4"


@pytest.mark.skipif(shutil.which("qpdf") is None, reason="qpdf is not installed")
def test_qpdf_is_content(made: bytes, tmp_path: Path) -> None:
    (tmp_path / "press.pdf").write_bytes(made)
    run = subprocess.run(["qpdf", "--check", tmp_path / "press.pdf"], capture_output=True, text=True, check=False)
    assert run.returncode == 0 and "No syntax or stream encoding errors" in run.stdout


@pytest.mark.skipif(shutil.which("pdfinfo") is None, reason="poppler is not installed")
def test_poppler_knows_the_standard(made: bytes, tmp_path: Path) -> None:
    (tmp_path / "press.pdf").write_bytes(made)
    run = subprocess.run(["pdfinfo", tmp_path / "press.pdf"], capture_output=True, text=True, check=True)
    assert re.search(r"PDF subtype: +PDF/X-1a:2003", run.stdout)
    assert re.search(r"Standard: +ISO 15930-4", run.stdout)


def test_output_intent(pdf: pikepdf.Pdf) -> None:
    """One for PDF/X, and one that says the same to PDF/A, with the same profile (ISO 19005-1, 6.2.2)."""
    intent, archived = pdf.Root.OutputIntents
    assert (intent.Type, intent.S, archived.S) == ("/OutputIntent", "/GTS_PDFX", "/GTS_PDFA1")
    assert intent.DestOutputProfile.objgen == archived.DestOutputProfile.objgen
    assert str(intent.OutputConditionIdentifier) == "Custom" and str(intent.Info) and str(intent.OutputCondition)
    assert intent.DestOutputProfile.N == 1
    profile = ImageCms.ImageCmsProfile(BytesIO(intent.DestOutputProfile.read_bytes())).profile
    assert (profile.device_class, profile.xcolor_space.strip()) == ("prtr", "GRAY")


def test_version_trapped_title_and_dates(pdf: pikepdf.Pdf) -> None:
    said = pdf.docinfo
    assert str(said["/GTS_PDFXVersion"]) == "PDF/X-1a:2003"
    assert said["/Trapped"] == "/False"
    assert str(said["/Title"]) == "Title – té"
    assert str(said["/CreationDate"]) == str(said["/ModDate"]) == "D:20260309000000Z"


def test_xmp_says_the_same(pdf: pikepdf.Pdf) -> None:
    assert "/Filter" not in pdf.Root.Metadata  # readers that know no PDF find the packet
    with pdf.open_metadata() as xmp:
        assert xmp["dc:title"] == "Title – té"
        assert xmp["dc:creator"] == ["An Author"] and xmp["dc:description"] == "A subject"
        assert xmp["pdf:Trapped"] == "False" and xmp["pdf:Producer"] == str(pdf.docinfo["/Producer"])
        assert xmp["xmp:CreateDate"] == xmp["xmp:ModifyDate"] == "2026-03-09T00:00:00Z"
        assert xmp["pdfx:GTS_PDFXVersion"] == "PDF/X-1a:2003"
        assert re.fullmatch(r"uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", xmp["xmpMM:DocumentID"])


def test_xmp_keeps_marks_of_xml_apart() -> None:
    odd = replace(document(), title="Salt & <Sand>", author="“A” & 'B'", subject="")
    with pikepdf.open(BytesIO(pdf_bytes(odd, press=True))) as pdf, pdf.open_metadata() as xmp:
        assert (xmp["dc:title"], xmp["dc:creator"]) == ("Salt & <Sand>", ["“A” & 'B'"])
        assert "dc:description" not in xmp
        ElementTree.fromstring(pdf.Root.Metadata.read_bytes())


def test_identifier(pdf: pikepdf.Pdf, made: bytes) -> None:
    first, second = pdf.trailer.ID
    assert len(bytes(first)) == len(bytes(second)) == 16
    with pikepdf.open(BytesIO(pdf_bytes(document()))) as screen:
        assert bytes(screen.trailer.ID[0]) != bytes(first)


def test_boxes(pdf: pikepdf.Pdf) -> None:
    """MediaBox ⊇ BleedBox ⊇ TrimBox (ISO 32000-1, 14.11.2), each page with a TrimBox and without an ArtBox."""
    for page, drawn in zip(pdf.pages, document().pages, strict=True):
        assert "/TrimBox" in page and "/ArtBox" not in page
        media, bleed, trim = (list(map(float, box)) for box in (page.MediaBox, page.BleedBox, page.TrimBox))
        edge = max(drawn.sheet, drawn.bleed)
        assert trim == pytest.approx([edge, edge, edge + drawn.width, edge + drawn.height], abs=0.01)
        beyond = drawn.bleed
        wide = [trim[0] - beyond, trim[1] - beyond, trim[2] + beyond, trim[3] + beyond]
        assert bleed == pytest.approx(wide, abs=0.01)
        assert media == pytest.approx([0, 0, drawn.width + 2 * edge, drawn.height + 2 * edge], abs=0.01)


def test_nothing_that_is_not_paper(pdf: pikepdf.Pdf, made: bytes) -> None:
    """No links, actions, scripts, protection, transitions; no bookmarks, for there is nothing to click on."""
    assert not pdf.is_encrypted
    forbidden = {
        "/A",
        "/AA",
        "/OpenAction",
        "/Annots",
        "/JavaScript",
        "/JS",
        "/Trans",
        "/Rotate",
        "/Dests",
        "/Outlines",
    }
    for thing in every(pdf):
        assert not forbidden & set(thing.keys())
    assert not pdf.open_outline().root


def test_nothing_see_through(pdf: pikepdf.Pdf) -> None:
    for thing in every(pdf):
        assert thing.get("/S") != "/Transparency" and "/SMask" not in thing
        assert thing.get("/CA", 1) == thing.get("/ca", 1) == 1 and "/BM" not in thing


def test_black_only(pdf: pikepdf.Pdf) -> None:
    spaces = {str(thing.ColorSpace) for thing in every(pdf) if thing.get("/Subtype") == "/Image"}
    assert spaces == {"/DeviceGray"}
    streams = [pikepdf.parse_content_stream(page) for page in pdf.pages]
    streams += [pikepdf.parse_content_stream(thing) for thing in every(pdf) if thing.get("/Subtype") == "/Form"]
    used = {str(instruction.operator) for stream in streams for instruction in stream}
    assert {"g", "G"} <= used
    assert not used & {"rg", "RG", "k", "K", "cs", "CS", "sc", "SC", "scn", "SCN", "sh", "ri", "gs"}


def test_every_font_is_embedded_and_a_subset(pdf: pikepdf.Pdf) -> None:
    fonts = [thing for thing in every(pdf) if thing.get("/Type") == "/Font"]
    assert len(fonts) >= 4
    for font in fonts:
        assert re.fullmatch(r"/[A-Z]{6}\+.+", str(font.BaseFont))
        assert font.FontDescriptor.FontFile2.read_bytes()[:4] == b"\0\1\0\0"


def test_page_labels_stay(pdf: pikepdf.Pdf) -> None:
    assert [page.label for page in pdf.pages] == ["i", "1", "2"]


def test_the_same_document_gives_the_same_bytes(made: bytes) -> None:
    assert pdf_bytes(document(), press=True) == made


def test_a_date_is_needed() -> None:
    with pytest.raises(ValueError, match="date"):
        pdf_bytes(Document("t", "", "", (Page(9, 9, (), ""),)), press=True)
    assert pdf_bytes(Document("t", "", "", (Page(9, 9, (), ""),), created=date(2026, 3, 14)), press=True)
