"""The e-book, read back: its container, texts, links, pages, pictures and metadata; and the judges from outside."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from datetime import date
from functools import cache
from io import BytesIO
from pathlib import Path
from xml.etree.ElementTree import Element, fromstring
from zipfile import ZIP_STORED, ZipFile

import pytest
from PIL import Image

from bookmaker.book.contents import Book, BookPuzzle
from bookmaker.book.reading import grid_read
from bookmaker.ebook import check_ebook, ebook_bytes
from bookmaker.ebook.texts import TOGETHER, address
from bookmaker.language import catalogue
from bookmaker.layout import compose, load_layout
from bookmaker.manifest.publication import Imprint
from tests.layout.sample_book import chapter_draft, full_book, sample_book, sample_proofs
from tests.validators import axe_violations, epub_faults

DATED = date(2026, 3, 14)
X, OPF, DC, OPS = (
    f"{{{space}}}"
    for space in (
        "http://www.w3.org/1999/xhtml",
        "http://www.idpf.org/2007/opf",
        "http://purl.org/dc/elements/1.1/",
        "http://www.idpf.org/2007/ops",
    )
)


@cache
def made(book: Callable[[], Book]) -> bytes:
    layout = load_layout("a5-book")
    return ebook_bytes(book(), layout, compose(book(), layout).pages, DATED)


def opened(file: bytes) -> dict[str, bytes]:
    with ZipFile(BytesIO(file)) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def texts(file: bytes) -> dict[str, Element]:
    return {
        name.removeprefix("EPUB/"): fromstring(data) for name, data in opened(file).items() if name.endswith("xhtml")
    }


def package(file: bytes) -> Element:
    return fromstring(opened(file)["EPUB/package.opf"])


def metas(file: bytes, name: str) -> list[str]:
    found = package(file).iterfind(f".//{OPF}meta[@property='{name}']")
    return [str(one.text) for one in found]


def test_the_container_begins_with_its_media_type_and_has_no_date() -> None:
    with ZipFile(BytesIO(made(full_book))) as archive:
        first, *others = archive.infolist()
        assert (first.filename, first.compress_type, first.extra) == ("mimetype", ZIP_STORED, b"")
        assert archive.read(first) == b"application/epub+zip"
        assert {entry.date_time for entry in (first, *others)} == {(1980, 1, 1, 0, 0, 0)}
    # the first 58 bytes of an EPUB tell what it is (OCF 3.3, 4.3)
    assert made(full_book)[30:58] == b"mimetypeapplication/epub+zip"


def test_the_same_book_gives_the_same_bytes() -> None:
    layout = load_layout("a5-book")
    again = ebook_bytes(full_book(), layout, compose(full_book(), layout).pages, DATED)
    assert again == made(full_book)


def test_every_file_is_listed_and_every_listed_file_is_there() -> None:
    listed = {f"EPUB/{item.get('href')}" for item in package(made(full_book)).iterfind(f".//{OPF}item")}
    there = set(opened(made(full_book))) - {"mimetype", "META-INF/container.xml", "EPUB/package.opf"}
    assert listed == there
    sources = {f"EPUB/{i.get('src')}" for root in texts(made(full_book)).values() for i in root.iter(f"{X}img")}
    assert sources <= there
    assert {name for name in there if name.startswith("EPUB/images/")} == sources


@pytest.mark.parametrize("book", [sample_book, full_book, chapter_draft])
def test_digits_and_links_are_right(book: Callable[[], Book]) -> None:
    proofs = {proof.entry.id: proof for proof in sample_proofs()}
    if book is chapter_draft:
        proofs = {p.id: replace(proofs[p.id], verdict=proofs[p.id].verdict) for p in book().puzzles if p.solution}
    puzzles = tuple(puzzle for puzzle in book().puzzles if puzzle.id in proofs)
    assert check_ebook(made(book), "book.epub", puzzles, proofs) == []


@pytest.mark.parametrize(
    ("good", "bad", "said"),
    [
        (b'<td class="right">7</td>', b'<td class="right">8</td>', "digits"),
        (b'id="key-4"', b'id="key-four"', "key-4"),
        (b"keys-1.xhtml#key-3", b"keys-1.xhtml#key-33", "leads to keys-1.xhtml#key-33"),
    ],
)
def test_a_fault_is_found(good: bytes, bad: bytes, said: str) -> None:
    stream = BytesIO()
    with ZipFile(stream, "w") as archive:
        for name, data in opened(made(full_book)).items():
            archive.writestr(name, data.replace(good, bad))
    proofs = {proof.entry.id: proof for proof in sample_proofs()}
    found = check_ebook(stream.getvalue(), "book.epub", full_book().puzzles, proofs)
    assert any(said in diagnostic.text for diagnostic in found)


def test_each_puzzle_has_a_picture_that_tells_what_it_is_and_leads_to_hints_and_key() -> None:
    files, roots = opened(made(full_book)), texts(made(full_book))
    for puzzle in full_book().puzzles:
        root = roots[f"puzzle-{puzzle.number}.xhtml"]
        picture = fromstring(files[f"EPUB/images/puzzle-{puzzle.number}.svg"])
        svg = "{http://www.w3.org/2000/svg}"
        told = picture.findtext(f"{svg}desc") or ""
        assert picture.findtext(f"{svg}title") == f"Puzzle {puzzle.number}: {puzzle.title}"
        english, grid = catalogue("en"), puzzle.puzzle.grid
        words = [*grid_read(english, puzzle.puzzle)]
        assert all(mark in words for rule in puzzle.puzzle.rules for mark in rule.spoken(english, grid))
        assert all(f"{said}. " in told for said in words)
        assert [item.text for item in root.iterfind(f".//{X}details//{X}li")] == words
        assert len(root.findall(f".//{X}details//{X}table")) == 1
        assert all("alt" in image.attrib for image in root.iter(f"{X}img"))
        leads = [link.get("href") for link in root.iter(f"{X}a")]
        assert address(f"key-{puzzle.number}") in leads
        assert (address(f"hints-{puzzle.number}") in leads) == bool(puzzle.hints)


def test_hints_unfold_and_lead_back() -> None:
    hints = texts(made(full_book))["hints-1.xhtml"]
    told = [puzzle for puzzle in full_book().puzzles if puzzle.hints]
    assert len(hints.findall(f".//{X}details/{X}summary")) == 3 * len(told)
    assert not hints.findall(f".//{X}details[@open]")
    leads = {link.get("href") for link in hints.iter(f"{X}a")}
    assert leads == {address(f"puzzle-{puzzle.number}") for puzzle in told}


def test_the_page_list_is_that_of_the_printed_book() -> None:
    layout = load_layout("a5-book")
    pages = compose(full_book(), layout).pages
    labels = {anchor.name: page.label for page in pages for anchor in page.anchors}
    nav = texts(made(full_book))["nav.xhtml"]
    listed = nav.find(f".//{X}nav[@{OPS}type='page-list']")
    assert listed is not None
    where = {str(link.text): link.get("href") for link in listed.iter(f"{X}a")}
    order = [page.label for page in pages]
    assert sorted(where, key=order.index) == [*where]
    for puzzle in full_book().puzzles:
        marked = [label for label, href in where.items() if str(href).startswith(f"puzzle-{puzzle.number}.xhtml")]
        assert marked in ([], [labels[f"puzzle {puzzle.id}"]])
        assert labels[f"puzzle {puzzle.id}"] in where and labels[f"key {puzzle.id}"] in where
    breaks = [
        one for root in texts(made(full_book)).values() for one in root.iter() if one.get("role") == "doc-pagebreak"
    ]
    assert sorted(str(one.get("title")) for one in breaks) == sorted(map(str, where))


def test_metadata_comes_from_the_imprint_and_is_true() -> None:
    file = made(full_book)
    said = {
        tag: [one.text for one in package(file).iter(f"{DC}{tag}")]
        for tag in (
            "title",
            "creator",
            "contributor",
            "language",
            "date",
            "publisher",
            "rights",
            "source",
            "identifier",
        )
    }
    assert said["title"] == [full_book().title, full_book().subtitle]
    assert said["creator"] == [full_book().editor]
    assert set(said["contributor"]) == {puzzle.setter for puzzle in full_book().puzzles if puzzle.setter}
    assert (said["language"], said["date"], said["publisher"]) == (["en"], ["2026-03-14"], ["Attic Press"])
    assert said["rights"] == ["© 2026 Attic Press"]
    # the printed book's number is not the e-book's
    assert said["source"] == ["urn:isbn:9780110002224"] == metas(file, "pageBreakSource")
    assert str(said["identifier"][0]).startswith("urn:uuid:")
    assert metas(file, "dcterms:modified") == ["2026-03-14T00:00:00Z"]
    assert set(metas(file, "schema:accessMode")) == {"textual", "visual"}
    assert "textual" in metas(file, "schema:accessModeSufficient")
    assert metas(file, "schema:accessibilityHazard") == ["none"]
    assert {"pageNavigation", "alternativeText", "tableOfContents"} <= set(metas(file, "schema:accessibilityFeature"))
    assert not metas(file, "dcterms:conformsTo")


def test_an_e_books_own_number_is_its_identifier() -> None:
    book = full_book()
    imprint = replace(book.imprint or Imprint(), ebook_isbn="978-0-11-000223-1")
    numbered = replace(book, imprint=imprint)
    layout = load_layout("a5-book")
    file = ebook_bytes(numbered, layout, (), DATED)
    assert [one.text for one in package(file).iter(f"{DC}identifier")] == ["urn:isbn:9780110002231"]
    assert not metas(file, "pageBreakSource") and "pageNavigation" not in metas(file, "schema:accessibilityFeature")
    assert not texts(file)["nav.xhtml"].findall(f".//{X}nav[@{OPS}type='page-list']")


def test_the_cover_is_the_front_of_the_printed_one() -> None:
    picture = Image.open(BytesIO(opened(made(full_book))["EPUB/images/cover.png"]))
    assert picture.height == pytest.approx(2000, abs=2)
    assert picture.width / picture.height == pytest.approx(148 / 210, abs=0.002)
    assert picture.mode == "L" and len(picture.getcolors() or ()) > 10


def test_fonts_are_whole_and_have_their_licence_beside_them() -> None:
    files = opened(made(full_book))
    style = files["EPUB/style.css"].decode()
    for name in re.findall(r"url\(\"(.+?)\"\)", style):
        assert files[f"EPUB/{name}"] == (Path(__file__).resolve().parents[2] / name).read_bytes()
    assert b"ParaType Free Font License" in files["EPUB/fonts/LICENCE.txt"]


def test_nothing_sets_the_colour_of_words_or_paper() -> None:
    """So that night and large type are the reader's own: only pictures bring their paper with them."""
    style = re.sub(r"/\*.*?\*/", "", opened(made(full_book))["EPUB/style.css"].decode(), flags=re.DOTALL)
    rules = re.findall(r"([^{}]+)\{([^{}]*)\}", style)
    assert [where.strip() for where, said in rules if re.search(r"(?<!-)color:|background", said)] == ["img.paper"]
    assert not re.search(r"font-size:\s*[\d.]+(px|pt)", style)


def test_long_books_share_files_out() -> None:
    assert address(f"key-{TOGETHER}") == f"keys-1.xhtml#key-{TOGETHER}"
    assert address(f"hints-{TOGETHER + 1}") == f"hints-2.xhtml#hints-{TOGETHER + 1}"
    book = sample_book()
    puzzles: list[BookPuzzle] = [
        replace(book.puzzles[at % 3], number=at + 1, id=f"p{at}") for at in range(2 * TOGETHER + 1)
    ]
    chapter = replace(book.chapters[0], puzzles=tuple(puzzles))
    long = replace(book, body=(chapter, *book.body[1:]))
    layout = load_layout("a5-book")
    file = ebook_bytes(long, layout, (), DATED)
    proofs = {
        p.id: replace(sample_proofs()[0], entry=replace(sample_proofs()[0].entry, puzzle=p.puzzle)) for p in puzzles
    }
    found = check_ebook(file, "long.epub", (), proofs)
    assert found == []
    assert {"keys-3.xhtml", "hints-3.xhtml", "puzzle-49.xhtml"} <= set(texts(file))


@pytest.mark.slow
@pytest.mark.parametrize("book", [full_book, chapter_draft])
def test_epubcheck_finds_nothing(book: Callable[[], Book], tmp_path: Path) -> None:
    file = tmp_path / "book.epub"
    file.write_bytes(made(book))
    assert epub_faults(file) == []


@pytest.mark.slow
@pytest.mark.parametrize("name", ["puzzle-4.xhtml", "hints-1.xhtml", "keys-1.xhtml", "nav.xhtml", "primer.xhtml"])
def test_axe_finds_nothing(name: str, tmp_path: Path) -> None:
    with ZipFile(BytesIO(made(full_book))) as archive:
        archive.extractall(tmp_path)
    folder = tmp_path / "EPUB"
    document = (folder / name).read_text(encoding="utf-8").replace("<details>", '<details open="open">')
    assert axe_violations(document, folder, name) == []
