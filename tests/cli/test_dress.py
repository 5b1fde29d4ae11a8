"""Themes, colour and what a press asks around its pages, from the command line; files are read back by pikepdf."""

from __future__ import annotations

from pathlib import Path

import pikepdf
import pytest
from PIL import Image, ImageChops, ImageStat

from bookmaker.layout.lengths import mm
from tests.cli.running import run
from tests.makers.shelf import PICTURE, shelf
from tests.published import WORKED

DEMO = Path(__file__).resolve().parents[2] / "demo_book"

PROFILE = Path("/usr/share/color/icc/ghostscript/default_cmyk.icc")
"""A profile of a press with four inks, if ghostscript is there."""


def book(folder: Path, lines: str = "") -> Path:
    puzzle = f"{{id: worked, title: Worked, givens: '{WORKED}'}}"
    said = f"book:\n  title: One\n  permission: made for this test\n  hints: no\n{lines}puzzles: [{puzzle}]\n"
    (folder / "book.yaml").write_text(said, encoding="utf-8")
    return folder / "book.yaml"


def spaces(file: Path) -> set[str]:
    """The operators of colours that a file chooses."""
    with pikepdf.open(file) as pdf:
        found = {str(part.operator) for page in pdf.pages for part in pikepdf.parse_content_stream(page)}
    return found & {"k", "K", "rg", "RG"}


def test_a_press_prints_the_cover_in_four_inks_and_the_pages_in_black(tmp_path: Path) -> None:
    out = tmp_path / "out"
    file = book(tmp_path, "  theme: eelgrass\n  cover:\n    condition: FOGRA51\n")
    told = run("typeset", file, "--out", out, "--edition", "press", "--date", "2026-03-14")
    assert told.exit_code == 0, told.output
    assert "the spine is" in told.stderr and "mm thick" in told.stderr
    assert {"k"} <= spaces(out / "cover-press.pdf") <= {"k", "K"}
    assert spaces(out / "book-press.pdf") == spaces(out / "key-press.pdf") == set()
    with pikepdf.open(out / "cover-press.pdf") as pdf:
        assert str(pdf.Root.OutputIntents[0].OutputConditionIdentifier) == "FOGRA51"
    with pikepdf.open(out / "book-press.pdf") as pdf:
        assert str(pdf.Root.OutputIntents[0].OutputConditionIdentifier) == "Custom"
    assert run("preflight", out / "cover-press.pdf").exit_code == 0


def test_on_a_screen_ornament_has_the_colours_of_the_theme(tmp_path: Path) -> None:
    out = tmp_path / "out"
    assert run("typeset", book(tmp_path), "--out", out, "--theme", "plum-mosaic", "--cover").exit_code == 0
    assert "rg" in spaces(out / "book.pdf") and "rg" in spaces(out / "cover.pdf")
    assert run("typeset", book(tmp_path), "--out", out, "--cover").exit_code == 0
    assert spaces(out / "book.pdf") == spaces(out / "cover.pdf") == set()


@pytest.mark.parametrize(
    ("options", "inside", "around"),
    [(["--marks", "none"], mm(3), mm(3)), (["--marks", "none", "--no-bleed"], 0.0, mm(3))],
)
def test_bleed_without_marks(tmp_path: Path, options: list[str], inside: float, around: float) -> None:
    out = tmp_path / "out"
    told = run(
        "typeset", book(tmp_path), "--out", out, "--cover", "--edition", "press", "--date", "2026-03-14", *options
    )
    assert told.exit_code == 0, told.output
    for name, bleed in (("book", inside), ("cover", around)):
        with pikepdf.open(out / f"{name}-press.pdf") as pdf:
            page = pdf.pages[0]
            media, trim = (pikepdf.Rectangle(box) for box in (page.mediabox, page.trimbox))
            assert (media.width - trim.width) / 2 == pytest.approx(bleed, abs=0.01)
            assert list(page.mediabox) == list(page.bleedbox)


def test_marks_are_for_a_press(tmp_path: Path) -> None:
    told = run("typeset", book(tmp_path), "--out", tmp_path / "out", "--marks", "none")
    assert told.exit_code == 2 and "add --edition press" in told.stderr


@pytest.mark.parametrize("command", [["proof"], ["typeset", "--out", "out"]])
def test_what_is_wrong_with_the_dress_is_told_at_once(tmp_path: Path, command: list[str]) -> None:
    file = book(tmp_path, "  theme: eel-grass\n  cover:\n    condition: FOGRA\n    sample: workd\n")
    told = run(command[0], file, *(tmp_path / word if word == "out" else word for word in command[1:]))
    assert told.exit_code == 1
    assert "book.yaml:5:10: there is no theme “eel-grass”" in told.stderr and "eelgrass" in told.stderr
    assert "book.yaml:7:16: there is no printing condition “FOGRA”" in told.stderr
    assert "book.yaml:8:13: there is no puzzle “workd”" in told.stderr


@pytest.mark.skipif(not PROFILE.exists(), reason="ghostscript’s profiles are not installed")
def test_a_printer_s_own_profile_goes_into_the_file(tmp_path: Path) -> None:
    content = PROFILE.read_bytes()
    (tmp_path / "press.icc").write_bytes(content)
    file = book(tmp_path, "  theme: deckchair\n  cover:\n    profile: press.icc\n")
    out = tmp_path / "out"
    told = run("typeset", file, "--out", out, "--edition", "press", "--date", "2026-03-14")
    if content[8] > 2:
        assert told.exit_code == 1 and "PDF/X-1a takes version 2 only" in told.stderr
        return
    assert told.exit_code == 0, told.output
    with pikepdf.open(out / "cover-press.pdf") as pdf:
        (intent, _) = pdf.Root.OutputIntents
        assert intent.DestOutputProfile.N == 4 and intent.DestOutputProfile.read_bytes() == content


def test_a_book_is_drawn_in_every_theme(tmp_path: Path) -> None:
    told = run("themes", book(tmp_path, "  layout: a5-book\n"), "--out", tmp_path / "covers.png")
    assert told.exit_code == 0 and "covers.png: six themes" in told.stdout
    with Image.open(tmp_path / "covers.png") as sheet:
        assert (
            sheet.mode == "RGB"
            and len(set(sheet.convert("P", palette=Image.Palette.ADAPTIVE, colors=64).tobytes())) > 20
        )
    assert run("themes", book(tmp_path)).exit_code == 2


def unlike(*files: Image.Image) -> float:
    """How far two pictures differ when they are small, the channel that differs most on average, of 255."""
    small = [file.convert("RGB").resize((96, 108), Image.Resampling.BOX) for file in files]
    return max(ImageStat.Stat(ImageChops.difference(*small)).mean)


@pytest.mark.slow
def test_the_first_picture_in_the_readme_is_up_to_date() -> None:
    """`python -m tests.makers.shelf` draws it again."""
    with Image.open(PICTURE) as kept:
        assert unlike(shelf(), kept) < 2
    assert PICTURE.stat().st_size < 100_000


@pytest.mark.slow
def test_the_picture_in_the_readme_is_up_to_date(tmp_path: Path) -> None:
    """Small, so that neither its size nor its few colours matter. If covers were meant to change: “bookmaker themes
    demo_book --out covers.png”, made a third smaller, with 128 colours."""
    assert run("themes", DEMO, "--out", tmp_path / "covers.png").exit_code == 0
    with Image.open(tmp_path / "covers.png") as drawn, Image.open(DEMO / "pictures" / "covers.png") as kept:
        assert unlike(drawn, kept) < 3


def test_themes_are_listed() -> None:
    told = run("themes")
    assert told.exit_code == 0 and "harbour-night" in told.stdout and "theme: brick-and-lime" in told.stdout


def test_a_layout_dresses_books_that_name_no_theme(tmp_path: Path) -> None:
    """The book's own theme comes before that of its layout, and one on the command line before both."""

    def ground(lines: str, *options: str) -> bytes:
        file = book(tmp_path, f"  layout: mine.yaml\n{lines}")
        assert run("typeset", file, "--out", tmp_path / "out", "--cover", *options).exit_code == 0
        with pikepdf.open(tmp_path / "out" / "cover.pdf") as pdf:
            return bytes(pdf.pages[0].Contents.read_bytes())

    (tmp_path / "mine.yaml").write_text("based-on: a5-book\ntheme: eelgrass\n", encoding="utf-8")
    of_layout, of_book = ground(""), ground("  theme: deckchair\n")
    assert of_layout == ground("  theme: eelgrass\n") != of_book
    assert ground("", "--theme", "deckchair") == of_book
    (tmp_path / "mine.yaml").write_text("based-on: a5-book\ntheme: eelgras\n", encoding="utf-8")
    told = run("proof", book(tmp_path, "  layout: mine.yaml\n"))
    assert told.exit_code == 1 and "mine.yaml:2:8" in told.stderr and "eelgrass" in told.stderr
