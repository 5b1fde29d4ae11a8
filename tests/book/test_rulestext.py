from __future__ import annotations

import pytest

from bookmaker.book.rulestext import base_sentence, rules_text, symbols_named
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.language import catalogue
from bookmaker.manifest.example import example_rule
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid, irregular_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from tests.layout.sample_book import sample_book


def plain(text: str) -> str:
    return text.replace("\u00a0", " ")


def test_the_grids_own_rule_fits_its_size_and_regions() -> None:
    wanted = "Fill the grid so that every row, column and box holds the digits 1 to 9 once each."
    assert plain(base_sentence(catalogue("en"), CLASSIC)) == wanted
    assert "box holds the digits 1 to 6 once" in plain(base_sentence(catalogue("en"), boxed_grid(6, 2, 3)))
    labels = [label for label in "abcd" for _ in range(4)]
    assert "row, column and outlined region holds" in base_sentence(catalogue("en"), irregular_grid(4, labels))
    assert "every row and column holds" in base_sentence(catalogue("en"), Grid(5, ()))


@pytest.mark.parametrize(
    ("size", "named"),
    [
        (4, "the digits 1 to 4"),
        (10, "the digits 1 to 9 and the letter A"),
        (11, "the digits 1 to 9 and the letters A and B"),
        (16, "the digits 1 to 9 and the letters A to G"),
        (25, "the digits 1 to 9 and the letters A to R without I and O"),
    ],
)
def test_symbols_are_named(size: int, named: str) -> None:
    assert plain(symbols_named(catalogue("en"), Grid(size, ()))) == named


def test_every_sentence_is_said_once_and_every_mark_has_its_sample() -> None:
    loom = next(puzzle for puzzle in sample_book().puzzles if puzzle.id == "loom")
    sentences = [smart_quotes(rule.sentence(catalogue("en"))) for rule in loom.puzzle.rules]
    assert [mark.text for mark in loom.rules.marks] == sentences
    assert [mark.sample.rule.kind for mark in loom.rules.marks] == [rule.kind for rule in loom.puzzle.rules]


def test_rules_that_draw_nothing_join_the_plain_text() -> None:
    silent = [kind for kind in kinds().values() if kind.sample() is None]
    if not silent:
        pytest.skip("every rule kind draws something")
    rules = (example_rule(silent[0]),)
    text = rules_text(catalogue("en"), Puzzle(CLASSIC, (0,) * 81, rules))
    assert text.marks == ()
    assert text.plain.endswith(smart_quotes(rules[0].sentence(catalogue("en"))))
