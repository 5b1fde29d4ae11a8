"""Sheets to fill in on a screen: a field on each empty cell, paper as it was, and what is typed comes out."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from io import BytesIO
from pathlib import Path
from typing import Any

import pikepdf
import pypdfium2
import pytest

from bookmaker.display.items import Document
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.pixels import page_pictures
from bookmaker.layout import compose_handout, fillable, load_layout
from bookmaker.preflight.filled import mark, read_filled
from bookmaker.puzzle.grid import SYMBOLS
from bookmaker.source.diagnostics import BookErrors
from tests.filling import filled
from tests.layout.sample_book import picked
from tests.marked import assert_marked, numbers
from tests.told import told

IDS = ("kettle", "morning", "stairs")
PUZZLES = {puzzle.id: puzzle for puzzle in picked(*IDS).puzzles}


@cache
def sheets() -> Document:
    return compose_handout(picked(*IDS), load_layout("a4-handout"))


@cache
def made() -> bytes:
    return pdf_bytes(fillable(sheets()))


def fields(pdf: pikepdf.Pdf) -> Iterator[tuple[Any, Any]]:
    """Each field with its group, in the order of the form."""
    for group in pdf.Root.AcroForm.Fields:
        yield from ((group, field) for field in group.Kids)


def test_each_empty_cell_is_a_field_and_nothing_else_is() -> None:
    with pikepdf.open(BytesIO(made())) as pdf:
        names = [f"{group.T}.{field.T}" for group, field in fields(pdf)]
        assert names == [
            f"{puzzle.id}.{grid.name(cell)}"
            for puzzle in PUZZLES.values()
            for grid in [puzzle.puzzle.grid]
            for cell in grid.cells
            if not puzzle.puzzle.givens[cell]
        ]
        assert all(group.FT == "/Tx" and int(group.get("/Ff", 0)) == 0 for group, _ in fields(pdf))
        assert {str(group.T): int(group.MaxLen) for group, _ in fields(pdf)} == {
            puzzle.id: puzzle.puzzle.grid.size for puzzle in PUZZLES.values()
        }
        said = {str(field.TU) for group, field in fields(pdf) if field.T == "r3c5"}
        assert said == {"Row 3, column 5"}
        assert b"/JavaScript" not in made() and "/AA" not in pdf.Root and "/OpenAction" not in pdf.Root
        # the tab key follows the structure, and that goes by rows
        assert all(page.obj.Tabs == "/S" for page in pdf.pages)


def test_fields_are_part_of_the_table() -> None:
    assert_marked(made())
    with pikepdf.open(BytesIO(made())) as pdf:
        tree = dict(numbers(pdf.Root.StructTreeRoot.ParentTree))
        for _, field in fields(pdf):
            form = tree[int(field.StructParent)]
            assert form.S == "/Form" and form.P.S == "/TD"
    assert len([*told(made()).every("Table")]) == 2 * len(PUZZLES)


def test_paper_is_as_it_was() -> None:
    before, after = ([page.tobytes() for page in page_pictures(file, 60)] for file in (pdf_bytes(sheets()), made()))
    assert before == after


@pytest.fixture(scope="module")
def answered() -> bytes:
    """The kettle solved but for one wrong cell and one with notes; the others untouched."""
    puzzle = PUZZLES["kettle"]
    grid, solution = puzzle.puzzle.grid, puzzle.solution
    assert solution is not None
    empty = [cell for cell in grid.cells if not puzzle.puzzle.givens[cell]]
    typed = {cell: SYMBOLS[solution[cell] - 1] for cell in empty}
    typed[empty[0]] = SYMBOLS[solution[empty[0]] % grid.size]
    typed[empty[1]] = "12"
    return filled(made(), {f"kettle.{grid.name(cell)}": text for cell, text in typed.items()})


def test_what_is_typed_is_read_back(answered: bytes, tmp_path: Path) -> None:
    (file := tmp_path / "answered.pdf").write_bytes(answered)
    read = read_filled(file)
    assert set(read) == set(IDS)
    puzzle = PUZZLES["kettle"]
    grid, givens, solution = puzzle.puzzle.grid, puzzle.puzzle.givens, puzzle.solution
    assert solution is not None
    empty = [cell for cell in grid.cells if not givens[cell]]
    marked = mark(grid, givens, solution, read["kettle"])
    assert (marked.wrong, marked.empty, marked.solved) == ((empty[0],), (empty[1],), False)
    all_right = {(grid.row(c) + 1, grid.column(c) + 1): SYMBOLS[solution[c] - 1].lower() for c in empty}
    assert mark(grid, givens, solution, all_right).solved


def test_what_is_typed_is_seen_in_its_cell(answered: bytes) -> None:
    """PDFium paints the field; around it, and on the sheets that were not touched, all is as it was."""
    blank, typed = (_picture(file) for file in (made(), answered))
    with pikepdf.open(BytesIO(answered)) as pdf:
        high = float(pdf.pages[0].mediabox[3])
        left, bottom, right, top = map(float, next(field for _, field in fields(pdf)).Rect)
    box = tuple(round(2 * edge) for edge in (left, high - top, right, high - bottom))
    inked = [sum(picture.crop(box).point(lambda grey: grey < 128).tobytes()) for picture in (blank, typed)]
    assert inked[0] == 0 < inked[1]
    around = (0, 0, typed.width, round(2 * (high - top)) - 1)
    assert blank.crop(around).tobytes() == typed.crop(around).tobytes()


def _picture(file: bytes) -> Any:
    document = pypdfium2.PdfDocument(file)
    document.init_forms()
    return document[0].render(scale=2, may_draw_forms=True).to_pil().convert("L")


@pytest.mark.parametrize(
    ("content", "code"), [(b"no PDF", "unreadable"), (pdf_bytes(Document("t", "", "", ())), "no-fields")]
)
def test_other_files_are_refused(content: bytes, code: str, tmp_path: Path) -> None:
    (file := tmp_path / "other.pdf").write_bytes(content)
    with pytest.raises(BookErrors) as found:
        read_filled(file)
    assert [diagnostic.code for diagnostic in found.value.diagnostics] == [code]
