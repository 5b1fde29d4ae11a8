"""The text edition, listened to: whoever hears it has every puzzle, and nothing of the manifest's notation."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest

from bookmaker.book import Book, make_book
from bookmaker.book.reading import hints_read
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.book.textedition import CELLS, braille_edition, text_edition
from bookmaker.language import Manner, catalogue
from bookmaker.manifest import load
from bookmaker.phrases import Phrasebook
from bookmaker.proof import prove_all
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.reasons import MarkRef
from bookmaker.reasons.marks import At
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.words.speech import cells_said, line_said
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from tests.layout.sample_book import chapter_draft, full_book, sample_book
from tests.listening import listen

DEMO = Path(__file__).resolve().parents[2] / "demo_book"

ENGLISH = catalogue("en")

SHORT = ENGLISH.in_manner("short")


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
    hints = [hint for puzzle in sample_book().puzzles for hint in hints_read(puzzle)]
    assert any(re.search(r"row \d+ column \d+", hint) for hint in hints)
    text = text_edition(sample_book())
    assert all(f": {hint}\n" in text for hint in hints)


@pytest.mark.parametrize(
    ("manner", "said"),
    [
        ("printed", "a seta em r1c2; na linha 1: Para r1c2 só resta o 3."),
        ("heard", "a seta na linha 1 coluna 2; na linha 1: Para a linha 1 coluna 2 só resta o 3."),
        ("short", "a seta na l1 c2; na l1: Para a l1 c2 só resta o 3."),
    ],
)
def test_a_preposition_before_a_cell_takes_its_article_along(manner: Manner, said: str) -> None:
    words = Phrasebook(CLASSIC, "pt", manner)
    arrow = words.mark(MarkRef("pointing", (1,), At(1)))
    row = words.house(CLASSIC.rows[0].ref).form("em")
    single = words.say("claim-naked-single", cell=words.cell(1), digit="3")
    assert f"{arrow}; {row}: {single}" == said


def test_only_the_first_of_several_cells_takes_it() -> None:
    printed, heard = Phrasebook(CLASSIC, "pt"), Phrasebook(CLASSIC, "pt", "heard")
    said = [words.say("placed", digits="4", cells=words.cells((1, 10))) for words in (printed, heard)]
    assert said == ["4 em r1c2 e r2c2", "4 na linha 1 coluna 2 e linha 2 coluna 2"]


def test_lines_for_braille_fit_a_display_and_say_the_same() -> None:
    book = full_book()
    lines = braille_edition(book).splitlines()
    assert max(map(len, lines)) == CELLS == 40
    assert all(line == line.rstrip() for line in lines)
    one = " ".join(" ".join(lines).split())
    for puzzle in book.puzzles:
        for rule in puzzle.puzzle.rules:
            assert all(mark in one for mark in rule.spoken(SHORT, puzzle.puzzle.grid))
        size = puzzle.puzzle.grid.size
        first = lines.index(next(line for line in lines if line.startswith(f"Puzzle {puzzle.number}: ")))
        rows = [line.replace(" ", "") for line in lines[first:] if re.fullmatch(r"[1-9A-G.]+( [1-9A-G.]+)*", line)]
        assert "".join(rows[:size]) == puzzle.puzzle.givens_text


@pytest.mark.parametrize(
    ("cells", "said"),
    [
        ((0, 1, 2, 9), "r1 c1-3, r2 c1"),
        ((0, 1, 2, 4, 5, 6), "r1 c1-3 and 5-7"),
        ((0, 9), "r1 and 2 c1"),
    ],
)
def test_rows_and_columns_by_their_letters(cells: tuple[int, ...], said: str) -> None:
    assert cells_said(SHORT, CLASSIC, cells) == said


@pytest.mark.parametrize(
    ("chain", "said"),
    [((80, 71, 62, 53, 44), "r9-5 c9"), ((0, 10, 20), "r1 c1 diagonally to r3 c3"), ((0, 1, 2), "r1 c1-3")],
)
def test_lines_by_their_letters(chain: tuple[int, ...], said: str) -> None:
    assert line_said(SHORT, CLASSIC, chain) == said


def test_no_kind_is_named_as_another() -> None:
    """A rule's title stands before its sentence, so a listener must know it from the others."""
    assert len({rule.title for rule in kinds().values()}) == len(kinds())
