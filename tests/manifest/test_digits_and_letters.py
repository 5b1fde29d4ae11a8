"""Digits from 0, letters in place of digits, and a word that the solution spells, from the manifest to the page."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.book import make_book
from bookmaker.book.contents import Credits
from bookmaker.book.primer import lessons
from bookmaker.book.textedition import text_edition
from bookmaker.language import catalogue
from bookmaker.manifest import load
from bookmaker.manifest.entries import Entry
from bookmaker.manifest.written import puzzle_lines
from bookmaker.proof import prove_all
from bookmaker.proof.claims import wrong_claims
from bookmaker.puzzle.grid import SYMBOLS
from bookmaker.source.diagnostics import BookErrors
from tests.listening import listen

LETTERS = """\
  - id: tide
    size: 4
    boxes: none
    letters: TIDE
    word: {cells: r1c1-r1c4, reads: %s}
    givens: |
      T . . E
      I . . .
      . . T .
      . D . .
"""

ZERO = """\
  - id: nought
    size: 4
    digits: from-zero
    givens: |
      0 . . 3
      2 . 0 .
      . . 3 2
      . . . .
    rules:
      cage:
        - {cells: r4c3 r4c4, total: 1}
"""


def entries(folder: Path, puzzles: str) -> tuple[Entry, ...]:
    (folder / "book.yaml").write_text(f"book:\n  title: T\npuzzles:\n{puzzles}", encoding="utf-8")
    return load(folder / "book.yaml").entries


def codes(folder: Path, puzzles: str) -> list[str]:
    with pytest.raises(BookErrors) as caught:
        entries(folder, puzzles)
    return [found.code for found in caught.value.diagnostics if not found.warning]


def test_letters_are_read_in_any_order_and_hide_a_word(tmp_path: Path) -> None:
    (entry,) = entries(tmp_path, LETTERS % "TIDE")
    assert entry.puzzle.grid.symbols == "DEIT"
    assert entry.puzzle.givens_text.startswith("T..E")
    (proof,) = prove_all([entry])
    assert not [*wrong_claims([proof])]
    book = make_book(load(tmp_path / "book.yaml"), [proof])
    (puzzle,) = book.puzzles
    assert "holds the letters D, E, I and T once each" in puzzle.rules.plain
    assert "TIDE" not in text_edition(book).partition("Key to puzzle")[0]
    (credit,) = (part for part in book.body if isinstance(part, Credits))
    assert credit.puzzles == (puzzle,)
    assert "row 1 spells TIDE" in text_edition(book)
    assert not [text for text in (puzzle.hints.what, puzzle.hints.how) if "digit" in text] if puzzle.hints else True
    (heard,) = listen(text_edition(book))
    assert (heard.puzzle.grid, heard.puzzle.givens, heard.key) == (
        entry.puzzle.grid,
        entry.puzzle.givens,
        proof.solution,
    )


def test_a_word_that_the_solution_does_not_spell_is_told(tmp_path: Path) -> None:
    proofs = prove_all(entries(tmp_path, LETTERS % "TDIE"))
    (found,) = wrong_claims(proofs)
    assert found.code == "other-word"
    assert "reads TIDE" in found.text


def test_digits_from_zero_are_worth_what_they_say(tmp_path: Path) -> None:
    (entry,) = entries(tmp_path, ZERO)
    (proof,) = prove_all([entry])
    assert proof.solution is not None
    inside = [entry.puzzle.grid.symbol(proof.solution[cell]) for cell in (14, 15)]
    assert sorted(inside) == ["0", "1"]
    assert entry.puzzle.givens_text[0] == "0"
    heard = [*listen(text_edition(make_book(load(tmp_path / "book.yaml"), [proof])))]
    assert heard[0].puzzle.givens == entry.puzzle.givens


@pytest.mark.parametrize(("puzzles", "taught"), [(LETTERS % "TIDE", False), (ZERO, True)])
def test_the_primer_says_that_its_examples_begin_with_one(tmp_path: Path, puzzles: str, taught: bool) -> None:
    said = lessons(catalogue("en"), [entry.puzzle for entry in entries(tmp_path, puzzles)])
    assert ("Digits from 0" in [lesson.title for lesson in said]) == taught


@pytest.mark.parametrize("puzzles", [LETTERS % "TIDE", ZERO])
def test_what_is_written_reads_back(tmp_path: Path, puzzles: str) -> None:
    (entry,) = entries(tmp_path, puzzles)
    lines = puzzle_lines(entry.puzzle, {"id": "again"})
    (again,) = entries(tmp_path, "".join(f"  {line}\n" for line in lines))
    assert again.puzzle == entry.puzzle


@pytest.mark.parametrize(
    ("change", "code"),
    [
        (("letters: TIDE", "letters: TIDES"), "bad-letters"),
        (("letters: TIDE", "letters: TIDT"), "bad-letters"),
        (("letters: TIDE", "letters: T1DE"), "bad-letters"),
        (("letters: TIDE", "letters: TIDE\n    digits: from-zero"), "digits-and-letters"),
        (("letters: TIDE", "digits: from 0"), "bad-digits"),
        (("reads: TIDE", "reads: TIDES"), "word-sign"),
        (("reads: TIDE", "reads: TID"), "word-length"),
        (("T . . E", "T . . S"), "not-a-digit"),
        (("    givens", "    rules:\n      thermometer: r1c1-r1c3\n    givens"), "other-signs"),
    ],
)
def test_a_slip_is_one_message(tmp_path: Path, change: tuple[str, str], code: str) -> None:
    assert [*codes(tmp_path, (LETTERS % "TIDE").replace(*change))] == [code]


def test_signs_of_large_grids() -> None:
    assert len(SYMBOLS) == len(set(SYMBOLS)) == 25
    assert not set(SYMBOLS) & set("IO0")
