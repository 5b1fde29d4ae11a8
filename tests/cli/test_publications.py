"""`typeset --cover`, `--text`, `--metadata` and the e-book: what lies beside the book or in its place, and when."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.cli.running import run


def test_a_cover_and_a_text_when_asked_for(folder: Path, tmp_path: Path) -> None:
    result = run("typeset", folder, "--out", tmp_path, "--layout", "6x9-book", "--cover", "--text", "--braille")
    assert result.exit_code == 0, result.output
    written = ["book-braille.txt", "book.html", "book.pdf", "book.txt", "cover.pdf", "key.pdf"]
    assert sorted(path.name for path in tmp_path.iterdir()) == written
    pages = len(PdfReader(tmp_path / "book.pdf").pages)
    (cover,) = PdfReader(tmp_path / "cover.pdf").pages
    # two leaves of 6 × 9 inches, and a spine of 0.1 mm for every two pages
    assert abs(float(cover.mediabox.width) - (2 * 432 + (pages + 1) // 2 * 0.1 * 72 / 25.4)) < 0.01
    assert float(cover.mediabox.height) == 648
    assert "Key to puzzle 1: " in (tmp_path / "book.txt").read_text(encoding="utf-8")


def test_none_of_them_otherwise(folder: Path, tmp_path: Path) -> None:
    assert run("typeset", folder, "--out", tmp_path).exit_code == 0
    assert sorted(path.name for path in tmp_path.iterdir()) == ["book.pdf", "key.pdf"]


def test_an_e_book_stands_alone_and_is_dated(folder: Path, tmp_path: Path) -> None:
    out, record = tmp_path / "out", tmp_path / "record.xml"
    told = run("typeset", folder, "--out", out, "--edition", "ebook")
    assert told.exit_code == 2 and "an e-book carries its date" in told.stderr and not out.exists()
    options = ("--edition", "ebook", "--date", "2026-03-14", "--metadata", record, "--metadata", tmp_path / "a.json")
    result = run("typeset", folder, "--out", out, *options)
    assert result.exit_code == 0, result.output
    assert [path.name for path in out.iterdir()] == ["book.epub"]
    assert "book.epub: " in result.stdout
    assert "application/epub+zip" in record.read_text(encoding="utf-8")
    assert json.loads((tmp_path / "a.json").read_text(encoding="utf-8"))["datePublished"] == "2026-03-14"


@pytest.mark.parametrize("option", ["--contact", "--booklet", "--cover"])
def test_an_e_book_has_no_sheets(folder: Path, tmp_path: Path, option: str) -> None:
    told = run("typeset", folder, "--out", tmp_path / "out", "--edition", "ebook", "--date", "2026-03-14", option)
    assert told.exit_code == 2 and f"leave out {option}" in told.stderr


def test_a_record_of_another_kind_is_refused(folder: Path, tmp_path: Path) -> None:
    told = run("typeset", folder, "--out", tmp_path / "out", "--metadata", tmp_path / "a.txt")
    assert told.exit_code == 2 and "should end in .json, .jsonld, .xml" in told.stderr
