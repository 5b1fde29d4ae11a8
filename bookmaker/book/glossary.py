"""The terms that a book's hints ask a reader to know, each with its meaning.

In: hints. Out: the terms that the catalogue has for their concepts, in the order of the alphabet.
"""

from __future__ import annotations

from collections.abc import Iterable

from bookmaker.book.contents import Hints, Term
from bookmaker.language import Catalogue


def terms_of(words: Catalogue, hints: Iterable[Hints], divided: str = "boxes") -> tuple[Term, ...]:
    """The terms behind some hint, in a book whose grids are so `divided` (a word of `Grid.divided`)."""
    names = {f"term-{concept}" for hint in hints for concept in hint.concepts}
    found = (Term(words.say(name), words.say(name, "meaning", divided=divided)) for name in names if words.has(name))
    return tuple(sorted(found, key=lambda term: words.dictionary("".join(filter(str.isalpha, term.name)))))
