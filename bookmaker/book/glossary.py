"""The words that a book's hints use without explaining them, each with its meaning.

In: hints. Out: the terms that occur in them, in the order of the alphabet.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from bookmaker.book.contents import Hints, Term
from bookmaker.language import Catalogue


def terms_in(words: Catalogue, hints: Iterable[Hints], divided: str = "boxes") -> tuple[Term, ...]:
    """The terms that some hint uses or relies on, in a book whose grids are so `divided` (a word of `Grid.divided`)."""
    said = "\n".join(text for hint in hints for text in (hint.where, hint.what, hint.how)).casefold()
    found = (
        Term(words.say(name), words.say(name, "meaning", divided=divided))
        for name in words.names()
        if name.startswith("term-") and re.search(_signs(words.say(name, "signs")), said)
    )
    return tuple(sorted(found, key=lambda term: words.dictionary("".join(filter(str.isalpha, term.name)))))


def _signs(typed: str) -> str:
    """What finds a term in a hint: each of its signs, where a word begins."""
    return "|".join(rf"\b{re.escape(sign.strip())}" for sign in typed.casefold().split("|"))
