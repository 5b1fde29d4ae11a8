"""`bookmaker mark`, and the sheets it is for."""

from __future__ import annotations

from pathlib import Path

from bookmaker.manifest import load
from bookmaker.proof import prove_all
from bookmaker.puzzle.grid import SYMBOLS
from tests.cli.running import run
from tests.filling import filled


def test_a_sheet_goes_out_and_comes_back(folder: Path, tmp_path: Path) -> None:
    sheet = tmp_path / "sheet.pdf"
    result = run("handout", folder, "--pick", "worked", "--out", sheet, "--fillable")
    made = tmp_path / "sheet-fillable.pdf"
    assert result.exit_code == 0 and str(made) in result.stdout and not sheet.exists()
    (proof,) = prove_all(load(folder).entries)
    puzzle, solution = proof.entry.puzzle, proof.solution
    assert solution is not None
    grid, open_cells = puzzle.grid, [cell for cell in puzzle.grid.cells if not puzzle.givens[cell]]
    answers = {f"worked.{grid.name(cell)}": SYMBOLS[solution[cell] - 1] for cell in open_cells}
    solved, wrong = tmp_path / "heron.pdf", tmp_path / "wick.pdf"
    solved.write_bytes(filled(made.read_bytes(), answers))
    first, second, *_ = open_cells
    answers[f"worked.{grid.name(first)}"] = SYMBOLS[solution[first] % grid.size]
    del answers[f"worked.{grid.name(second)}"]
    wrong.write_bytes(filled(made.read_bytes(), answers))
    result = run("mark", solved, wrong, "--against", folder)
    assert result.exit_code == 0
    name = f"  {proof.entry.title or 'worked'} (worked): "
    assert result.stdout.splitlines() == [
        f"{solved}: 1 of 1 solved",
        f"{name}solved",
        f"{wrong}: 0 of 1 solved",
        f"{name}1 wrong ({grid.name(first)}), 1 empty ({grid.name(second)})",
    ]


def test_a_book_to_fill_in(folder: Path, tmp_path: Path) -> None:
    result = run("typeset", folder, "--out", tmp_path / "out", "--edition", "fillable")
    assert result.exit_code == 0 and [file.name for file in (tmp_path / "out").iterdir()] == ["book-fillable.pdf"]
    marked = run("mark", tmp_path / "out" / "book-fillable.pdf", "--against", folder)
    assert marked.exit_code == 0 and " empty" in marked.stdout and "wrong" not in marked.stdout
    assert run("typeset", folder, "--out", tmp_path, "--edition", "fillable", "--booklet").exit_code == 2


def test_sheets_that_cannot_be_marked_are_all_named(folder: Path, tmp_path: Path) -> None:
    note, plain, strange = tmp_path / "note.pdf", folder / "printed" / "book.pdf", tmp_path / "strange.pdf"
    note.write_text("not a PDF")
    run("handout", folder, "--pick", "worked", "--out", tmp_path / "s.pdf", "--fillable")
    other = (folder / "book.yaml").read_text(encoding="utf-8").replace("worked", "another")
    (tmp_path / "book.yaml").write_text(other, encoding="utf-8")
    strange.write_bytes((tmp_path / "s-fillable.pdf").read_bytes())
    result = run("mark", note, plain, strange, "--against", tmp_path / "book.yaml")
    assert result.exit_code == 1 and not result.stdout
    assert "cannot be read" in result.stderr and "no cells to fill in" in result.stderr
    assert "its grid “worked” belongs to no puzzle in the book" in result.stderr
