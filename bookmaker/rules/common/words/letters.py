"""Sentences about digits, as they are said of a grid with letters in their place.

In: a sentence in a language. Out: the same of letters, where the language can say it by changing single words.
"""

from __future__ import annotations

import re

from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import Grid


def in_letters(words: Catalogue, text: str, grid: Grid) -> str:
    """The sentence for the grid. `letters-for-digits` has pairs of words, such as “digit letter”. A language
    whose sentences would no longer agree has none; there `letters-stand` says what letters are."""
    if not grid.lettered or not words.has("letters-for-digits"):
        return text
    for pair in words.say("letters-for-digits").split("|"):
        of_digits, of_letters = pair.split()
        for one, other in ((of_digits, of_letters), (of_digits.capitalize(), of_letters.capitalize())):
            text = re.sub(rf"\b{one}\b", other, text)
    return text
