"""The rules of a puzzle as one text.

In: a puzzle. Out: its `RulesText`: first what every such grid asks, then each rule's sentence. A rule that draws
something stands in the key to the marks, beside a sample of its mark; one that draws nothing joins the plain text.
"""

from __future__ import annotations

from functools import lru_cache

from bookmaker.book.contents import MarkLine, RulesText
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.puzzle.grid import SYMBOLS, Grid
from bookmaker.rules.common.contract import RuledPuzzle

_TO = "\u00a0to\u00a0"
"""Keeps “1 to 9” on one line."""


def rules_text(puzzle: RuledPuzzle) -> RulesText:
    """The rules of a puzzle, every sentence said once."""
    plain, marks = [base_sentence(puzzle.grid)], []
    for rule in puzzle.rules:
        sample, sentence = rule.key(), smart_quotes(rule.sentence())
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
    return f"Fill the grid so that every {houses} holds {symbols_named(grid.size)} once each."


def symbols_named(size: int) -> str:
    """“the digits 1 to 6”, “the digits 1 to 9 and the letters A to G”."""
    if size <= 9:
        return f"the digits 1{_TO}{size}"
    letters = SYMBOLS[9:size]
    match len(letters):
        case 1:
            return f"the digits 1{_TO}9 and the letter {letters}"
        case 2:
            return f"the digits 1{_TO}9 and the letters A and B"
        case _:
            return f"the digits 1{_TO}9 and the letters A{_TO}{letters[-1]}"
