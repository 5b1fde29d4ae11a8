"""The rules of a puzzle as one text.

In: a puzzle. Out: its `RulesText`: first what every such grid asks, then each rule's sentence. A rule that draws
something stands in the key to the marks, beside a sample of its mark; one that draws nothing joins the plain text.
"""

from __future__ import annotations

from functools import lru_cache

from bookmaker.book.contents import MarkLine, RulesText
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import in_letters, listed

_TO = "\u00a0to\u00a0"
"""Keeps “1 to 9” on one line."""


def rules_text(puzzle: RuledPuzzle) -> RulesText:
    """The rules of a puzzle, every sentence said once."""
    plain, marks = [base_sentence(puzzle.grid)], []
    for rule in puzzle.rules:
        sample, sentence = rule.key(), smart_quotes(in_letters(rule.sentence(), puzzle.grid))
        if sample is None:
            plain.append(sentence)
        else:
            marks.append(MarkLine(sample, sentence))
    return RulesText(" ".join(plain), tuple(marks))


@lru_cache
def base_sentence(grid: Grid) -> str:
    """What the grid itself asks, in the words that fit its size and its regions."""
    if not grid.regions:
        houses = "row and column"
    else:
        houses = "row, column and box" if grid.box else "row, column and outlined region"
    return f"Fill the grid so that every {houses} holds {symbols_named(grid)} once each."


def symbols_named(grid: Grid) -> str:
    """“the digits 1 to 6”, “the digits 1 to 9 and the letters A to G”, “the letters A, C and T”."""
    if grid.lettered:
        return f"the letters {listed(grid.symbols)}"
    figures = [sign for sign in grid.symbols if sign.isdigit()]
    letters = grid.symbols[len(figures) :]
    digits = f"the digits {figures[0]}{_TO}{figures[-1]}"
    match len(letters):
        case 0:
            return digits
        case 1:
            return f"{digits} and the letter {letters}"
        case 2:
            return f"{digits} and the letters A and B"
        case _:
            left_out = listed(letter for letter in "IO" if letter < letters[-1])
            without = f" without {left_out}" if left_out else ""
            return f"{digits} and the letters A{_TO}{letters[-1]}{without}"
