"""Layouts of one's own on the command line: in a manifest, with --layout, explained, and what is told of mistakes."""

from __future__ import annotations

from pathlib import Path

import pikepdf
import pytest

from bookmaker.layout import layout_names
from bookmaker.preflight import inspect
from tests.cli.running import run
from tests.published import WORKED

BOOK = "book: {{title: One, permission: made for this test, hints: no, layout: {layout}}}\npuzzles:\n  - {puzzle}\n"
PUZZLE = f"{{id: worked, title: Worked, givens: '{WORKED}'}}"


def book(folder: Path, layout: str, text: str = "") -> Path:
    (folder / "book.yaml").write_text(BOOK.format(layout=layout, puzzle=PUZZLE), encoding="utf-8")
    if text:
        (folder / layout).write_text(text, encoding="utf-8")
    return folder


def page_size(file: Path) -> list[float]:
    with pikepdf.open(file) as pdf:
        return [float(each) for each in pdf.pages[0].TrimBox]


def test_a_layout_beside_the_book(tmp_path: Path) -> None:
    folder = book(tmp_path, "square.yaml", "based-on: a5-book\npaper: 8 x 8 in\n")
    assert run("proof", folder).exit_code == 0
    result = run("typeset", folder, "--out", tmp_path / "printed")
    assert result.exit_code == 0, result.output
    assert page_size(tmp_path / "printed" / "book.pdf") == pytest.approx([0, 0, 576, 576])
    assert inspect(tmp_path / "printed" / "book.pdf", "book").sound


def test_a_layout_for_one_printing(tmp_path: Path, folder: Path) -> None:
    (tmp_path / "mine.yaml").write_text("based-on: b5-book\npuzzles: {coordinates: yes}\n")
    result = run("typeset", folder, "--layout", tmp_path / "mine.yaml", "--out", tmp_path)
    assert result.exit_code == 0, result.output
    # ISO 216: B5
    assert page_size(tmp_path / "book.pdf") == pytest.approx([0, 0, 498.898, 708.661], abs=0.01)


def test_mistakes_are_told_where_they_are(tmp_path: Path) -> None:
    folder = book(tmp_path, "mine.yaml", "based-on: a5-book\nmargins:\n  iner: 22 mm\n  top: wide\n")
    for command in (("proof", folder), ("typeset", folder, "--out", tmp_path / "printed")):
        result = run(*command)
        assert result.exit_code == 1
        assert f"{folder / 'mine.yaml'}:3:3: “margins” has no “iner”" in result.stderr
        assert "did you mean “inner”?" in result.stderr
        assert f"{folder / 'mine.yaml'}:4:8: “top” should be a length" in result.stderr
    assert not (tmp_path / "printed").exists() or not [*(tmp_path / "printed").iterdir()]


def test_a_layout_that_is_not_there(tmp_path: Path) -> None:
    (tmp_path / "mine.yaml").write_text("based-on: a5-book\n")
    result = run("proof", book(tmp_path, "mien.yaml"))
    assert result.exit_code == 1
    assert f"{tmp_path / 'book.yaml'}:1:" in result.stderr and "did you mean “mine.yaml”?" in result.stderr


def test_what_will_not_bind_is_told_before_printing(tmp_path: Path) -> None:
    folder = book(tmp_path, "mine.yaml", "based-on: a5-book\nmargins: {inner: 9 mm}\npuzzles: {columns: 3}\n")
    result = run("typeset", folder, "--out", tmp_path / "printed")
    assert result.exit_code == 0, result.output
    assert "mine.yaml:2:11: worth a look: an inner margin of 9 mm is narrow" in " ".join(result.stderr.split())
    assert "mine.yaml:3:1: worth a look: only small puzzles will share a page" in " ".join(result.stderr.split())
    assert "mine.yaml:3:1" in run("proof", folder).stderr


def test_the_list_and_one_layout_explained(tmp_path: Path) -> None:
    listed = run("layouts").stdout
    assert all(name in listed for name in layout_names())
    told = run("layouts", "a5-book").stdout
    assert "inner" in told and "18 mm" in told and "At the spine" in told and "based-on: a5-book" in told
    assert max(map(len, told.splitlines())) <= 110
    (tmp_path / "mine.yaml").write_text("based-on: a5-book\nmargins: {inner: 21 mm}\n")
    assert "21 mm" in run("layouts", tmp_path / "mine.yaml").stdout
    result = run("layouts", "a5-bok")
    assert result.exit_code == 1 and "a5-book" in result.stderr


def test_one_layout_drawn(tmp_path: Path) -> None:
    result = run("layouts", "a5-book", "--out", tmp_path / "drawn")
    assert result.exit_code == 0, result.output
    assert inspect(tmp_path / "drawn.pdf", "drawn", folded=False).sound
    assert run("layouts", "--out", tmp_path / "drawn.pdf").exit_code == 2
