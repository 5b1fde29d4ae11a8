"""`typeset --edition`: what stands in the files for the screen and for the press."""

from __future__ import annotations

from pathlib import Path

import pikepdf
import pytest

from bookmaker.preflight import inspect
from tests.cli.running import run


@pytest.fixture(scope="module")
def printed(folder: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("press")
    result = run("typeset", folder, "--out", out, "--edition", "press", "--date", "2026-03-14", "--layout", "a5-book")
    assert result.exit_code == 0, result.output
    assert "is not a multiple of four" in result.stderr or not inspect_pages(out) % 4
    return out


def inspect_pages(out: Path) -> int:
    return inspect((out / "book-press.pdf").read_bytes(), "book").pages


def test_files_stand_beside_those_for_the_screen(printed: Path) -> None:
    assert sorted(path.name for path in printed.iterdir()) == ["book-press.pdf", "key-press.pdf"]


@pytest.mark.parametrize("name", ["book-press.pdf", "key-press.pdf"])
def test_the_press_gets_pdfx_sheets(printed: Path, name: str) -> None:
    with pikepdf.open(printed / name) as pdf:
        assert str(pdf.docinfo["/GTS_PDFXVersion"]) == "PDF/X-1a:2003"
        assert str(pdf.docinfo["/CreationDate"]) == "D:20260314000000Z"
        for page in pdf.pages:
            left, bottom, right, top = map(float, page.TrimBox)
            # ISO 216: A5
            assert (right - left, top - bottom) == pytest.approx((419.528, 595.276), abs=0.01)
            assert float(page.BleedBox[0]) == pytest.approx(left - 3 * 72 / 25.4, abs=0.01)
            assert "/Annots" not in page


def test_its_grids_read_back(printed: Path) -> None:
    grids = inspect((printed / "book-press.pdf").read_bytes(), "book-press.pdf").printed
    assert sorted((grid.kind, grid.id) for grid in grids) == [("grid", "worked"), ("key", "worked")]


def test_the_screen_gets_links_and_bookmarks(folder: Path) -> None:
    with pikepdf.open(folder / "printed" / "book.pdf") as pdf:
        assert len(pdf.open_outline().root) > 2
        assert any("/Annots" in page for page in pdf.pages)
        assert "/GTS_PDFXVersion" not in pdf.docinfo
        assert all(list(page.TrimBox) == list(page.MediaBox) for page in pdf.pages)


def test_the_press_asks_for_a_date(folder: Path, tmp_path: Path) -> None:
    result = run("typeset", folder, "--out", tmp_path, "--edition", "press")
    assert result.exit_code == 2 and "--date" in result.stderr
    assert run("typeset", folder, "--out", tmp_path, "--date", "14 March").exit_code == 2
    assert not list(tmp_path.iterdir())


def test_the_imprint_dates_the_edition_and_the_option_wins(folder: Path, tmp_path: Path) -> None:
    text = (folder / "book.yaml").read_text(encoding="utf-8")
    book = tmp_path / "dated.yaml"
    more = "hints: no, language: de, imprint: {date: 2026-01-02}"
    book.write_text(text.replace("hints: no", more), encoding="utf-8")
    for option, date in (((), "20260102"), (("--date", "2026-05-06"), "20260506")):
        result = run("typeset", book, "--out", tmp_path, "--edition", "press", *option)
        assert result.exit_code == 0, result.output
        with pikepdf.open(tmp_path / "key-press.pdf") as pdf:
            assert str(pdf.docinfo["/CreationDate"]) == f"D:{date}000000Z"
            assert str(pdf.Root.Lang) == "de", "the key speaks the book's language"
