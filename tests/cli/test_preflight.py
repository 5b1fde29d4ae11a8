"""`bookmaker preflight`, and the look that `typeset` and `handout` take at their own output."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader, PdfWriter
from pypdf.generic import RectangleObject

from bookmaker.cli.commands import handout, typeset
from bookmaker.display.items import Document, Group, Item, Text
from bookmaker.layout import compose, compose_handout
from tests.cli.running import run


def test_a_sound_file_against_its_book(folder: Path) -> None:
    result = run("preflight", folder / "printed" / "book.pdf", "--against", folder)
    assert result.exit_code == 0
    assert "one grid and one key match the book" in result.stdout
    compared = r"compared: an edition for the screen without a date, fingerprint [0-9a-f]{12}, with .*, proven now: "
    assert re.search(rf"^{compared}one puzzle by the search$", result.stdout, re.MULTILINE)
    assert result.stderr.count("\n") == 1 and "is not a multiple of four" in result.stderr


def test_a_changed_book_is_noticed(folder: Path, tmp_path: Path) -> None:
    text = (folder / "book.yaml").read_text(encoding="utf-8").replace("'53..7", "'53.67")
    (tmp_path / "book.yaml").write_text(text, encoding="utf-8")
    result = run("preflight", folder / "printed" / "book.pdf", "--against", tmp_path)
    assert result.exit_code == 1
    assert "the grid of “worked” is misprinted: r1c4 has nothing for 6" in result.stderr
    assert "match the book" not in result.output


def test_a_fault_without_a_book(folder: Path, tmp_path: Path) -> None:
    writer = PdfWriter(clone_from=PdfReader(folder / "printed" / "book.pdf"))
    writer.pages[1].trimbox = RectangleObject((-9, 0, 400, 400))
    writer.write(tmp_path / "moved.pdf")
    result = run("preflight", tmp_path / "moved.pdf")
    assert result.exit_code == 1
    assert f"{tmp_path / 'moved.pdf'}: page 2: " in result.stderr and "TrimBox" in result.stderr


def test_no_pdf_at_all(tmp_path: Path) -> None:
    (tmp_path / "note.pdf").write_text("not a PDF")
    result = run("preflight", tmp_path / "note.pdf")
    assert (result.exit_code, result.stderr.count("\n")) == (1, 2)
    assert "this PDF cannot be read" in result.stderr


def test_wrong_usage(tmp_path: Path) -> None:
    assert run("preflight").exit_code == run("preflight", tmp_path / "gone.pdf").exit_code == 2


def spoilt(document: Document) -> Document:
    """The document with another digit in its first grid."""

    def changed(item: Item) -> Item:
        if isinstance(item, Text) and item.text == "5":
            return replace(item, text="6")
        return replace(item, items=tuple(map(changed, item.items))) if isinstance(item, Group) else item

    return replace(
        document, pages=tuple(replace(page, items=tuple(map(changed, page.items))) for page in document.pages)
    )


def test_a_misprint_stops_the_writing(folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "book.pdf").write_bytes(b"as it was")
    monkeypatch.setattr(typeset, "compose", lambda *given: spoilt(compose(*given)))
    monkeypatch.setattr(handout, "compose_handout", lambda *given: spoilt(compose_handout(*given)))
    result = run("typeset", folder, "--out", tmp_path)
    assert result.exit_code == 1
    assert "the grid of “worked” is misprinted: r1c1 has 6 for 5" in result.stderr
    assert [path.name for path in tmp_path.iterdir()] == ["book.pdf"]
    assert (tmp_path / "book.pdf").read_bytes() == b"as it was"
    assert run("handout", folder, "--pick", "worked", "--out", tmp_path / "sheet.pdf").exit_code == 1
    assert not (tmp_path / "sheet.pdf").exists()
