"""The text edition, read back line by line: what a screen reader says is what the manifest holds."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from bookmaker.book.model import Book
from bookmaker.book.textedition import spoken, text_edition
from bookmaker.puzzle.grid import SYMBOLS
from bookmaker.rules import kinds
from tests.layout.sample_book import chapter_draft, full_book, sample_book


def rows_after(text: str, heading: str) -> tuple[int, ...]:
    """The digits of the rows under a heading, 0 where a cell is blank."""
    lines = text[text.index(f"\n{heading}\n") + 1 :].split("\n\n")[0].splitlines()
    rows = [line.split(": ")[1].split(", ") for line in lines if re.match(r"Row \d+: ", line)]
    return tuple(0 if cell == "blank" else SYMBOLS.index(cell) + 1 for row in rows for cell in row)


def test_every_puzzle_and_every_key_can_be_read_back() -> None:
    text = text_edition(sample_book())
    for puzzle in sample_book().puzzles:
        assert rows_after(text, f"Puzzle {puzzle.number}: {puzzle.title}") == puzzle.puzzle.givens
        assert rows_after(text, f"Key to puzzle {puzzle.number}: {puzzle.title}") == puzzle.solution


def test_every_puzzle_says_its_rules_its_setter_and_its_marks() -> None:
    text = text_edition(sample_book())
    for puzzle in sample_book().puzzles:
        block = text[text.index(f"\nPuzzle {puzzle.number}: ") :].split("\n\n\n")[0]
        assert puzzle.rules.whole.replace("\u00a0", " ") in block
        assert puzzle.setter in block and puzzle.note in block
        for rule, marks in zip(puzzle.puzzle.rules, puzzle.marks, strict=True):
            assert all(f"  {spoken(mark)}\n" in block for mark in marks)
            assert not marks or f"{rule.title}:\n" in block


def test_a_draft_says_so_and_what_is_wrong() -> None:
    text = text_edition(chapter_draft())
    assert "DRAFT" in text.splitlines()
    assert "More than one solution" in text and "No solution" in text


def test_all_parts_with_words_are_there() -> None:
    text = text_edition(full_book())
    for said in ("ISBN 978-0-11-000222-4", "It rained, and rained.", "Foreword", "Thermometers. ", "Solution keys"):
        assert said in text
    assert "\u00a0" not in text and "*" not in text


@pytest.mark.parametrize("book", [sample_book, full_book])
def test_a_permission_that_holds_for_all_is_said_once(book: Callable[[], Book]) -> None:
    (permission,) = {puzzle.permission for puzzle in book().puzzles}
    assert text_edition(book()).count(permission) == 1


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("r1c2-r1c4 r2c5", "row 1 column 2 to row 1 column 4, row 2 column 5"),
        ("cells: R1C1 r1c2; total: 12", "cells: row 1 column 1, row 1 column 2; total: 12"),
        ("left: . 12 . 0", "left: none, 12, none, 0"),
        ("r1c1 > r1c2", "row 1 column 1 is greater than row 1 column 2"),
        ("both", "both"),
    ],
)
def test_marks_in_words(typed: str, said: str) -> None:
    assert spoken(typed) == said


@pytest.mark.parametrize("name", sorted(kinds()))
def test_no_cell_name_is_left_unspoken(name: str) -> None:
    body = re.sub(r"\s+#.*", "", kinds()[name].example)
    assert not re.search(r"\br\d+c\d+", spoken(body))
