"""`typeset --cover` and `--text`: what lies beside the book, and when."""

from __future__ import annotations

from pathlib import Path

from pypdf import PdfReader

from tests.cli.running import run


def test_a_cover_and_a_text_when_asked_for(folder: Path, tmp_path: Path) -> None:
    result = run("typeset", folder, "--out", tmp_path, "--layout", "6x9-book", "--cover", "--text", "--braille")
    assert result.exit_code == 0, result.output
    written = ["book-braille.txt", "book.pdf", "book.txt", "cover.pdf", "key.pdf"]
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
