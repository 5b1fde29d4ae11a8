"""Conventions of English book typography: common practice, no source."""

from __future__ import annotations

import pytest

from bookmaker.book.smart_quotes import curled_runs, smart_quotes
from bookmaker.manifest.markup import Run


@pytest.mark.parametrize(
    ("typed", "wanted"),
    [
        ('"Hello"', "“Hello”"),
        ('He said "go".', "He said “go”."),
        ("It's the setters' night", "It’s the setters’ night"),
        ("the '80s", "the ’80s"),
        ("a 'quiet' one", "a ‘quiet’ one"),
        ('("so")', "(“so”)"),
        ("wait...", "wait…"),
        ("pages 3-5", "pages 3–5"),
        ("on 2026-03-14", "on 2026-03-14"),
        ("one - two", "one – two"),
        ("one -- two", "one – two"),
        ("well-known", "well-known"),
        ("a 9x9 grid", "a 9×9 grid"),
        ("0xff", "0xff"),
        ("r1c1-r1c9", "r1c1-r1c9"),
        ("  two\n lines ", "two lines"),
        ("a knight's move", "a knight’s move"),
        ("1\u00a0to\u00a09", "1\u00a0to\u00a09"),
        ("“set” – already", "“set” – already"),
    ],
)
def test_plain_signs_become_real_ones(typed: str, wanted: str) -> None:
    assert smart_quotes(typed) == wanted
    assert smart_quotes(wanted) == wanted


def test_quotes_across_styles() -> None:
    runs = (Run("He said "), Run('"Wait"', "italic"), Run(' -- it\'s "late".'))
    assert [run.text for run in curled_runs(runs)] == ["He said ", "“Wait”", " – it’s “late”."]
    runs = (Run('"'), Run("'Wait'", "italic"), Run(' was said."'))
    assert [run.text for run in curled_runs(runs)] == ["“", "‘Wait’", " was said.”"]
