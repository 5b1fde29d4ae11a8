"""The rules of a puzzle as one text.

In: a puzzle. Out: its `RulesText`: first what every such grid asks, then each rule's sentence. A rule that draws
something stands in the key to the marks, beside a sample of its mark; one that draws nothing joins the plain text.
"""

from __future__ import annotations

from functools import lru_cache

from bookmaker.book.contents import MarkLine, RulesText
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import SYMBOLS, Grid
from bookmaker.rules.common.contract import RuledPuzzle


def rules_text(words: Catalogue, puzzle: RuledPuzzle) -> RulesText:
    """The rules of a puzzle, every sentence said once."""
    plain, marks = [base_sentence(words, puzzle.grid)], []
    for rule in puzzle.rules:
        sample, sentence = rule.key(), rule.sentence(words)
        if sample is None:
            plain.append(sentence)
        else:
            marks.append(MarkLine(sample, sentence))
    return RulesText(" ".join(plain), tuple(marks))


@lru_cache
def base_sentence(words: Catalogue, grid: Grid) -> str:
    """What the grid itself asks, in the words that fit its size and its regions."""
    houses = "boxes" if grid.box else "regions" if grid.regions else "lines"
    return words.say("grid-asks", houses=houses, symbols=symbols_named(words, grid.size))


def symbols_named(words: Catalogue, size: int) -> str:
    """“the digits 1 to 6”, “the digits 1 to 9 and the letters A to G”."""
    letters = SYMBOLS[9:size]
    match len(letters):
        case 0:
            return words.say("symbols-digits", last=str(size))
        case 1:
            return words.say("symbols-and-letter", last=letters)
        case 2:
            return words.say("symbols-and-two-letters", first=letters[0], last=letters[1])
        case _:
            return words.say("symbols-and-letters", first=letters[0], last=letters[-1])
