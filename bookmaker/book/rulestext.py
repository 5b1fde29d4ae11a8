"""The rules of a puzzle as one text.

In: a puzzle. Out: its `RulesText`: first what every such grid asks, then each rule's sentence. A rule that draws
something stands in the key to the marks, beside a sample of its mark; one that draws nothing joins the plain text.
"""

from __future__ import annotations

from functools import lru_cache

from bookmaker.book.contents import MarkLine, RulesText
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.letters import in_letters


def rules_text(words: Catalogue, puzzle: RuledPuzzle) -> RulesText:
    """The rules of a puzzle, every sentence said once."""
    plain, marks = [base_sentence(words, puzzle.grid)], []
    for rule in puzzle.rules:
        sample, sentence = rule.key(), in_letters(words, rule.sentences(words, puzzle.grid), puzzle.grid)
        if sample is None:
            plain.append(sentence)
        else:
            marks.append(MarkLine(sample, sentence))
    return RulesText(" ".join(plain), tuple(marks))


@lru_cache
def base_sentence(words: Catalogue, grid: Grid) -> str:
    """What the grid itself asks, in the words that fit its size and its regions."""
    houses = "boxes" if grid.box else "regions" if grid.regions else "lines"
    asked = words.say("grid-asks", houses=houses, symbols=symbols_named(words, grid))
    told = words.say("letters-stand") if grid.lettered and not words.has("letters-for-digits") else ""
    return " ".join(part for part in (asked, told) if part)


def symbols_named(words: Catalogue, grid: Grid) -> str:
    """“the digits 1 to 6”, “the digits 1 to 9 and the letters A to G”, “the letters A, C and T”."""
    if grid.lettered:
        return words.say("symbols-letters", letters=words.listed(grid.symbols))
    figures = [sign for sign in grid.symbols if sign.isdigit()]
    letters = grid.symbols[len(figures) :]
    low, high = figures[0], figures[-1]
    match len(letters):
        case 0:
            return words.say("symbols-digits", low=low, high=high)
        case 1:
            return words.say("symbols-and-letter", low=low, high=high, last=letters)
        case 2:
            return words.say("symbols-and-two-letters", low=low, high=high, first=letters[0], last=letters[1])
        case _:
            without = words.listed(letter for letter in "IO" if letter < letters[-1])
            name = "symbols-and-letters-without" if without.count else "symbols-and-letters"
            ends = {"low": low, "high": high, "first": letters[0], "last": letters[-1]}
            return words.say(name, without=without, **ends)
