"""Books, keys and sheets as they are read by who does not see them: words, their order, the grids."""

from __future__ import annotations

import os
import re
from dataclasses import replace
from io import BytesIO
from itertools import pairwise
from pathlib import Path

import pikepdf
import pytest

from bookmaker.book.contents import BookPuzzle
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.language import catalogue
from bookmaker.layout import compose, compose_handout, compose_key, load_layout
from bookmaker.layout.lengths import mm
from bookmaker.puzzle.grid import SYMBOLS
from tests.layout.pinned import crib, pinned_document
from tests.layout.sample_book import full_book, picked, sample_book
from tests.layout.test_pages import MAKERS, document
from tests.marked import assert_marked
from tests.told import Told, told

GOLDEN = Path(__file__).parent / "golden" / "told.outline"

SOME = ("a4-book-six book", "6x9-book draft", "a4-large-print full", "letter-handout contest", "a4-handout marker")
FEET = ("a4-handout key foot", "a4-handout key reverse")


def test_the_small_book_and_a_crib_are_read_as_before() -> None:
    """`RENEW_GOLDEN=1` writes it again, after a look."""
    outline = "\n".join([*told(pdf_bytes(pinned_document())).outline(), *told(pdf_bytes(crib())).outline(), ""])
    if os.environ.get("RENEW_GOLDEN"):
        GOLDEN.write_text(outline, encoding="utf-8")
    assert outline.splitlines() == GOLDEN.read_text(encoding="utf-8").splitlines()


@pytest.mark.parametrize("name", [*SOME, *FEET])
def test_everything_is_marked_and_headings_skip_no_level(name: str) -> None:
    assert name in MAKERS
    file = pdf_bytes(document(name))
    assert_marked(file)
    levels = [int(heading.type[1]) for heading in told(file).every(*(f"H{level}" for level in range(1, 7)))]
    assert levels[0] == 1 and all(after <= before + 1 for before, after in pairwise(levels))


def digits(table: Told) -> tuple[list[int], list[bool]]:
    """The digits of a table, 0 for an empty cell, and which of them are said to be given."""
    heads, *rows = table.kids
    size = len(rows)
    assert [kid.words for kid in heads.kids] == ["", *(f"column {at + 1}" for at in range(size))]
    assert [row.kids[0].words for row in rows] == [f"row {at + 1}" for at in range(size)]
    cells = [kid.words.strip() for row in rows for kid in row.kids[1:]]
    assert len(cells) == size**2
    found = [re.fullmatch(r"(given )?(\w)|empty", cell) for cell in cells]
    assert all(found), cells
    read = [SYMBOLS.index(cell[2]) + 1 if cell and cell[2] else 0 for cell in found]
    return read, [bool(cell and cell[1]) for cell in found]


def by_number(section: Told, puzzles: tuple[BookPuzzle, ...]) -> BookPuzzle:
    (title,) = section.every("H2", "H3")
    return next(puzzle for puzzle in puzzles if title.words.startswith(f"{puzzle.number}. "))


def test_grids_and_keys_say_their_digits_and_marks() -> None:
    book = sample_book()
    sections = [*told(pdf_bytes(compose(book, load_layout("a4-book")))).every("Sect")]
    sections = [section for section in sections if [*section.every("Table")]]
    assert len(sections) == 2 * len(book.puzzles)
    for at, section in enumerate(sections):
        puzzle = by_number(section, book.puzzles)
        found, given = digits(*section.every("Table"))
        if at < len(book.puzzles):
            assert tuple(found) == puzzle.puzzle.givens and given == [*map(bool, found)]
            said = [figure.said for figure in section.every("Figure")]
            for rule in puzzle.puzzle.rules:
                for mark in rule.spoken(catalogue("en"), puzzle.puzzle.grid):
                    assert sum(mark in one for one in said) == 1
        else:
            assert tuple(found) == puzzle.solution and given == [*map(bool, puzzle.puzzle.givens)]


def test_a_puzzle_is_read_title_first_then_rules_marks_grid_and_pointers() -> None:
    """Also where its key stands beside the grid or its title under the band."""
    for layout in ("a4-book", "a4-book-two"):
        for section in told(pdf_bytes(compose(full_book(), load_layout(layout)))).every("Sect"):
            kinds = [kid.type for kid in section.kids]
            words = [kid.words for kid in section.kids]
            if "Table" in kinds and any("Key on page" in one for one in words):
                table = kinds.index("Table")
                assert kinds[0] in ("H2", "H3") and any("every row" in one for one in words[:table])
                assert all(kind == "P" or kind == "Figure" for kind in kinds[1:table] + kinds[table + 1 :])
                assert "Key on page" in words[-1] or "Hints on page" in words[-1]


def test_a_key_by_itself_begins_with_its_title() -> None:
    found = told(pdf_bytes(compose_key(sample_book(), load_layout("a5-book"))))
    assert [kid.type for kid in found.kids] == ["H1", *["Sect"] * len(sample_book().puzzles)]


def test_the_code_of_a_link_can_be_clicked_on() -> None:
    """In a book and on a handout; the link says where it leads."""
    address = "https://example.org/kettle"
    book = picked("kettle")
    linked = tuple(replace(puzzle, link=address) for puzzle in book.puzzles)
    (chapter,) = book.chapters
    body = tuple(replace(part, puzzles=linked) if part is chapter else part for part in book.body)
    book = replace(book, body=body)
    for made in (compose(book, load_layout("a5-book")), compose_handout(book, load_layout("a4-handout"))):
        with pikepdf.open(BytesIO(pdf_bytes(made))) as pdf:
            notes = [note for page in pdf.pages for note in page.get("/Annots", []) if "/A" in note]
            (note,) = notes
            assert str(note.A.URI) == address and address in str(note.Contents)
            left, bottom, right, top = map(float, note.Rect)
            assert right - left == pytest.approx(top - bottom, abs=0.01) and right - left > mm(10)
        (link,) = [each for each in told(pdf_bytes(made)).every("Link") if [*each.every("Figure")]]
        assert address in str(link)
