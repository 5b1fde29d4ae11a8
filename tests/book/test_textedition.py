"""The text edition, listened to: whoever hears it has every puzzle, and nothing of the manifest's notation."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest

from bookmaker.book import Book, make_book
from bookmaker.book.reading import hints_read, in_words
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.book.textedition import CELLS, braille_edition, in_short, text_edition
from bookmaker.language import catalogue
from bookmaker.manifest import load
from bookmaker.proof import prove_all
from bookmaker.rules import kinds, problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from tests.layout.sample_book import chapter_draft, full_book, sample_book
from tests.listening import listen

DEMO = Path(__file__).resolve().parents[2] / "demo_book"

ENGLISH = catalogue("en")


def test_every_puzzle_and_every_key_can_be_heard() -> None:
    heard = [*listen(text_edition(sample_book()))]
    assert [one.number for one in heard] == [puzzle.number for puzzle in sample_book().puzzles]
    for one, puzzle in zip(heard, sample_book().puzzles, strict=True):
        assert one.puzzle.grid == puzzle.puzzle.grid
        assert one.puzzle.givens == puzzle.puzzle.givens
        assert one.key == puzzle.solution


@pytest.mark.slow
def test_the_demo_book_is_solved_from_its_text_alone() -> None:
    manifest = load(DEMO)
    proofs = {proof.entry.id: proof for proof in prove_all(manifest.entries)}
    book = make_book(manifest, proofs.values(), as_listed=True)
    heard = [*listen(text_edition(book))]
    assert len(heard) == len(book.puzzles) == len(proofs)
    for one, puzzle in zip(heard, book.puzzles, strict=True):
        verdict = prove(problem_of(one.puzzle))
        assert isinstance(verdict, Unique), puzzle.id
        assert verdict.solution == one.key == proofs[puzzle.id].solution
    kept = {rule.kind for one in heard for rule in one.puzzle.rules}
    assert kept == {rule.kind for puzzle in book.puzzles for rule in puzzle.puzzle.rules}


def test_every_puzzle_says_its_rules_its_setter_and_its_marks() -> None:
    text = text_edition(sample_book())
    for puzzle in sample_book().puzzles:
        block = text[text.index(f"\nPuzzle {puzzle.number}: ") :].split("\n\n\n")[0]
        assert puzzle.setter in block and puzzle.note in block
        for rule in puzzle.puzzle.rules:
            assert block.count(f"{smart_quotes(rule.title)}: {rule.sentence(ENGLISH)}\n") == 1
            assert all(block.count(f"  {mark}\n") == 1 for mark in rule.spoken(ENGLISH, puzzle.puzzle.grid))


def test_a_draft_says_so_and_what_is_wrong() -> None:
    for text in (text_edition(chapter_draft()), braille_edition(chapter_draft())):
        assert "DRAFT" in text.splitlines()
        assert "More than one solution" in text and "No solution" in text


@pytest.mark.parametrize("edition", [text_edition, braille_edition])
def test_all_parts_with_words_are_there(edition: Callable[[Book], str]) -> None:
    text = edition(full_book())
    for said in ("ISBN 978-0-11-000222-4", "It rained, and rained.", "Foreword", "Thermometers", "Solution keys"):
        assert said in text
    assert "\u00a0" not in text and "*" not in text
    assert not re.search(r"\br\d+c\d+|\n{4}", text)


@pytest.mark.parametrize("book", [sample_book, full_book])
def test_a_permission_that_holds_for_all_is_said_once(book: Callable[[], Book]) -> None:
    (permission,) = {puzzle.permission for puzzle in book().puzzles}
    assert text_edition(book()).count(permission) == 1


def test_hints_name_cells_in_words() -> None:
    hints = [hint for puzzle in sample_book().puzzles for hint in hints_read(ENGLISH, puzzle)]
    assert any(re.search(r"row \d+ column \d+", hint) for hint in hints)
    text = text_edition(sample_book())
    assert all(f": {hint}\n" in text for hint in hints)


@pytest.mark.parametrize(
    ("language", "hint", "said"),
    [
        ("en", "The 3 in r1c2, so r12c4.", "The 3 in row 1 column 2, so row 12 column 4."),
        ("pt", "O 3 em r1c2 sai de r1c3.", "O 3 na linha 1 coluna 2 sai da linha 1 coluna 3."),
        ("pt", "Em r1c2 ou r2c2", "Na linha 1 coluna 2 ou linha 2 coluna 2"),
        ("pt", "r1c2 r1c3", "linha 1 coluna 2 linha 1 coluna 3"),
    ],
)
def test_a_preposition_before_a_cell_takes_its_article_along(language: str, hint: str, said: str) -> None:
    assert in_words(catalogue(language), hint) == said


def test_lines_for_braille_fit_a_display_and_say_the_same() -> None:
    book = full_book()
    lines = braille_edition(book).splitlines()
    assert max(map(len, lines)) == CELLS == 40
    assert all(line == line.rstrip() for line in lines)
    one = " ".join(" ".join(lines).split())
    for puzzle in book.puzzles:
        for rule in puzzle.puzzle.rules:
            assert all(in_short(ENGLISH, mark) in one for mark in rule.spoken(ENGLISH, puzzle.puzzle.grid))
        size = puzzle.puzzle.grid.size
        first = lines.index(next(line for line in lines if line.startswith(f"Puzzle {puzzle.number}: ")))
        rows = [line.replace(" ", "") for line in lines[first:] if re.fullmatch(r"[1-9A-G.]+( [1-9A-G.]+)*", line)]
        assert "".join(rows[:size]) == puzzle.puzzle.givens_text


@pytest.mark.parametrize(
    ("said", "short"),
    [
        ("Cage of 12: row 1 columns 1 to 3, row 2 column 1", "Cage of 12: r1 c1-3, r2 c1"),
        ("row 1 columns 1 to 3 and 5 to 7", "r1 c1-3 and 5-7"),
        ("rows 9 to 5 column 9", "r9-5 c9"),
        ("Row 1 column 1 is greater than row 1 column 2", "R1 c1 is greater than r1 c2"),
        ("row 1 column 1 diagonally to row 3 column 3", "r1 c1 diagonally to r3 c3"),
        ("every row, column and box", "every row, column and box"),
    ],
)
def test_rows_and_columns_by_their_letters(said: str, short: str) -> None:
    assert in_short(ENGLISH, said) == short


def test_no_kind_is_named_as_another() -> None:
    """A rule's title stands before its sentence, so a listener must know it from the others."""
    assert len({rule.title for rule in kinds().values()}) == len(kinds())
