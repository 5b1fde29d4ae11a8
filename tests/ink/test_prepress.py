"""What workshops, archives and viewers ask of every file: streams, subsets of fonts, metadata, links, how it opens."""

from __future__ import annotations

import re
import shutil
import subprocess
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pikepdf
import pytest

from bookmaker.display.items import Document, Link, Page, Text
from bookmaker.ink.pdf import pdf_bytes
from tests.ink.specimen import document

DATED = document()
FOLDED = replace(DATED, pages=tuple(replace(page, items=()) for page in DATED.pages), bookmarks=(), folded=True)

KINDS = {
    "screen": lambda: pdf_bytes(DATED),
    "press": lambda: pdf_bytes(DATED, press=True),
    "folded": lambda: pdf_bytes(FOLDED),
}


@pytest.fixture(params=KINDS, scope="module")
def made(request: pytest.FixtureRequest) -> bytes:
    return KINDS[request.param]()


def tags(content: bytes) -> list[str]:
    """The tags of all subsets, as fonts and their descriptors name them."""
    with pikepdf.open(BytesIO(content)) as pdf:
        fonts = [thing for thing in pdf.objects if isinstance(thing, pikepdf.Dictionary) and "/BaseFont" in thing]
        for font in fonts:
            assert font.BaseFont == font.FontDescriptor.FontName
        return [str(font.BaseFont)[1:7] for font in fonts]


def test_streams_end_on_a_line_of_their_own(made: bytes) -> None:
    """ISO 32000-1, 7.3.8.1: there should be an end of line before “endstream”, not counted in the length; ISO 19005-1,
    6.1.7, makes that a must."""
    starts = [*re.finditer(rb"/Length (\d+)\b[^>]*>>\s*stream(\r\n|\n)", made)]
    assert len(starts) == made.count(b"endstream") > 3
    for start in starts:
        assert made[start.end() + int(start[1]) :].startswith(b"\nendstream")


def test_each_subset_has_a_tag_of_its_own() -> None:
    """ISO 32000-1, 9.6.4: six uppercase letters, others for other subsets."""
    every = [tags(make()) for name, make in KINDS.items() if name != "folded"]
    other = tags(pdf_bytes(replace(DATED, title="Another")))
    for found in (*every, other):
        assert len(found) >= 4 and all(re.fullmatch("[A-Z]{6}", tag) for tag in found)
    together = [tag for found in (*every, other) for tag in found]
    assert len(set(together)) == len(together)
    assert tags(pdf_bytes(DATED)) == every[0]


def test_metadata_for_catalogues(made: bytes) -> None:
    with pikepdf.open(BytesIO(made)) as pdf, pdf.open_metadata() as xmp:
        assert xmp["dc:title"] == DATED.title == str(pdf.docinfo["/Title"])
        assert xmp["pdf:Producer"] == "bookmaker"


def test_an_outline_is_shown_where_there_is_one() -> None:
    for content, mode in (
        (pdf_bytes(DATED), "/UseOutlines"),
        (pdf_bytes(replace(DATED, bookmarks=())), "/UseNone"),
        (pdf_bytes(DATED, press=True), "/UseNone"),
    ):
        with pikepdf.open(BytesIO(content)) as pdf:
            assert pdf.Root.PageMode == mode


def test_links_lead_out_of_the_file() -> None:
    address = "https://example.org/tides?a=(b)&c=#d"
    items = (Text(10, 20, "Tides", "serif", 10), Link(10, 10, 40, 12, address, "Tides", outward=True))
    one = Document("One", "", "", (Page(100, 100, items, "1"),))
    with pikepdf.open(BytesIO(pdf_bytes(one))) as pdf:
        (note,) = pdf.pages[0].Annots
        assert (note.A.S, str(note.A.URI), str(note.Contents)) == ("/URI", address, "Tides")
        assert "/Dest" not in note
    with pikepdf.open(BytesIO(pdf_bytes(replace(one, created=DATED.created), press=True))) as pdf:
        assert "/Annots" not in pdf.pages[0]


def test_addresses_are_written_as_the_network_wants_them() -> None:
    """RFC 3986, section 2: nothing but ASCII."""
    items = (Link(10, 10, 40, 12, "https://example.org/gezeiten/ä", "Tides", outward=True),)
    with pikepdf.open(BytesIO(pdf_bytes(Document("One", "", "", (Page(100, 100, items, "1"),))))) as pdf:
        assert str(pdf.pages[0].Annots[0].A.URI) == "https://example.org/gezeiten/%C3%A4"


@pytest.mark.parametrize(
    ("program", "command"), [("qpdf", ("--check",)), ("gs", ("-q", "-dBATCH", "-dNOPAUSE", "-sDEVICE=nullpage"))]
)
def test_other_programs_find_no_fault(made: bytes, program: str, command: tuple[str, ...], tmp_path: Path) -> None:
    if shutil.which(program) is None:
        pytest.skip(f"{program} is not installed")
    (tmp_path / "made.pdf").write_bytes(made)
    run = subprocess.run([program, *command, str(tmp_path / "made.pdf")], capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stdout + run.stderr
    assert "warning" not in (run.stdout + run.stderr).lower()
