"""What a manifest says of the book as a publication, and the message for each misuse at its place.

The ISBN is the example of the ISBN Users' Manual (International ISBN Agency): 978-0-11-000222-4.
"""

from __future__ import annotations

from datetime import date
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

from bookmaker.manifest.isbn import check_digit
from bookmaker.manifest.markup import Run
from bookmaker.manifest.publication import PLAIN, Imprint
from tests.manifest.books import GIVENS, read, troubles_of

PUZZLE = f"puzzles:\n- id: a\n  givens: {GIVENS}\n"
HEAD = "book:\n  title: Tides\n  permission: by permission\n"
"""What is under test begins on line 4."""


def png(width: int, height: int) -> bytes:
    file = BytesIO()
    Image.new("L", (width, height), 128).save(file, "PNG")
    return file.getvalue()


def test_a_book_that_says_nothing_of_itself(tmp_path: Path) -> None:
    assert read(tmp_path, {"book.yaml": HEAD + PUZZLE}).publication == PLAIN


def test_everything_at_once(tmp_path: Path) -> None:
    said = """\
  language: de-CH
  half-title: yes
  primer: yes
  index: yes
  fold: 16
  link: https://example.org/tides
  imprint:
    publisher: Net Loft
    edition: Second edition
    date: 2026-03-14
    isbn: 978-0-11-000222-4
    rights: © 2026 Net Loft
    note: Printed at the quay.
  foreword: |
    A *slanted* word, a **bold** one.
    And 3 * 4, \\*as it is\\*.

    Another paragraph.
  cover:
    image: art/quay.png
    blurb: Fifty **puzzles**.
    leaf: 0.12 mm
"""
    files: dict[str, str | bytes] = {"book.yaml": HEAD + said + PUZZLE, "art/quay.png": png(30, 40)}
    publication = read(tmp_path, files).publication
    assert (publication.language, publication.fold, publication.link) == ("de-CH", 16, "https://example.org/tides")
    assert publication.half_title and publication.primer and publication.index
    assert publication.imprint == Imprint(
        *("Net Loft", "Second edition", date(2026, 3, 14), "978-0-11-000222-4", "© 2026 Net Loft"),
        note="Printed at the quay.",
    )
    assert publication.foreword == (
        (
            Run("A "),
            Run("slanted", "italic"),
            Run(" word, a "),
            Run("bold", "bold"),
            Run(" one. And 3 * 4, *as it is*."),
        ),
        (Run("Another paragraph."),),
    )
    cover = publication.cover
    assert cover is not None and cover.picture is not None
    assert (cover.picture.width, cover.picture.height, cover.leaf) == (30, 40, 0.12)
    assert cover.blurb == ((Run("Fifty "), Run("puzzles", "bold"), Run(".")),)


CASES = {
    "language": ("  language: xx\n", "unknown-language", 4, 13, "no language is known by the code “xx”"),
    "half title": ("  half-title: maybe\n", "unknown-word", 4, 15, "“half-title” can't be “maybe”"),
    "primer": ("  primer: 3\n", "unknown-word", 4, 11, "“primer” can't be “3”"),
    "index": ("  index: [yes]\n", "not-text", 4, 10, "“index” should be a piece of text"),
    "fold": ("  fold: 0\n", "out-of-range", 4, 9, "“fold” should be from 1 to 64, not 0"),
    "imprint": ("  imprint: Net Loft\n", "not-a-table", 4, 12, "the imprint should be lines of “name: value”"),
    "imprint key": ("  imprint: {publsher: N}\n", "unknown-key", 4, 13, "the imprint has no “publsher”"),
    "imprint date": ("  imprint: {date: May}\n", "bad-date", 4, 19, "“May” is not a date"),
    "isbn ten": (
        "  imprint: {isbn: 0-11-000222-8}\n",
        "bad-isbn",
        4,
        19,
        "“0-11-000222-8” is a ten-digit ISBN",
    ),
    "isbn": ("  imprint: {isbn: 97-0-11}\n", "bad-isbn", 4, 19, "“97-0-11” is not an ISBN"),
    "isbn digit": (
        "  imprint: {isbn: 978-0-11-000222-5}\n",
        "isbn-check",
        4,
        19,
        "a digit of the ISBN “978-0-11-000222-5” is wrong: its check digit would be 4, not 5",
    ),
    "asterisk": (
        "  foreword: |\n    B.\n\n    A *b\n",
        "lone-asterisk",
        7,
        7,
        "“foreword” has a * without its mate",
    ),
    "asterisks": ("  foreword: a **bold* word\n", "lone-asterisk", 4, 15, "“foreword” has a ** without its mate"),
    "link": ("  link: example.org\n", "bad-link", 4, 9, "“example.org” is not the address of a page"),
    "cover": ("  cover: yes\n", "not-a-table", 4, 10, "the cover should be lines of “name: value”"),
    "cover key": ("  cover: {imag: a.png}\n", "unknown-key", 4, 11, "the cover has no “imag”"),
    "leaf": (
        "  cover: {leaf: 2 mm}\n",
        "bad-leaf",
        4,
        17,
        "“2 mm” is not the thickness of a leaf, 0.03 to 0.5 mm",
    ),
    "no picture": ("  cover: {image: no.png}\n", "no-file", 4, 18, "there is no picture “no.png”"),
    "outside": ("  cover: {image: ../x.png}\n", "picture-outside", 4, 18, "“../x.png” is not inside the book's folder"),
    "no image": (
        "  cover: {image: text.png}\n",
        "not-a-picture",
        4,
        18,
        "“text.png” is not a PNG or JPEG file, whatever its name says",
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_misuse(name: str, tmp_path: Path) -> None:
    said, code, line, column, text = CASES[name]
    (diagnostic,) = troubles_of(tmp_path, {"book.yaml": HEAD + said + PUZZLE, "text.png": "no picture"})
    assert (diagnostic.code, diagnostic.place.line, diagnostic.place.column, diagnostic.text) == (
        code,
        line,
        column,
        text,
    )


def test_a_damaged_picture(tmp_path: Path) -> None:
    files: dict[str, str | bytes] = {
        "book.yaml": HEAD + "  cover: {image: a.png}\n" + PUZZLE,
        "a.png": png(90, 90)[:60],
    }
    (diagnostic,) = troubles_of(tmp_path, files)
    assert diagnostic.code == "not-a-picture"


def test_a_picture_that_a_link_leads_out_to(tmp_path: Path) -> None:
    (tmp_path / "away.png").write_bytes(png(9, 9))
    (tmp_path / "book").mkdir()
    (tmp_path / "book" / "a.png").symlink_to(tmp_path / "away.png")
    (diagnostic,) = troubles_of(tmp_path / "book", {"book.yaml": HEAD + "  cover: {image: a.png}\n" + PUZZLE})
    assert diagnostic.code == "picture-outside"


def test_check_digits() -> None:
    """ISBN Users' Manual, section on the check digit: the weighted sum of 978011000222 is 56."""
    assert sum(int(d) * w for d, w in zip("978011000222", (1, 3) * 6, strict=True)) == 56
    assert check_digit("978011000222") == "4"


def test_a_puzzles_link(tmp_path: Path) -> None:
    puzzle = f"""\
puzzles:
- id: a
  givens: {GIVENS}
  link: https://example.org/a
"""
    (entry,) = read(tmp_path, {"book.yaml": HEAD + puzzle}).entries
    assert entry.link == "https://example.org/a"
    (diagnostic,) = troubles_of(tmp_path, {"book.yaml": HEAD + puzzle.replace("https:", "ftp:")})
    assert diagnostic.code == "bad-link"
