"""The words that a book's hints use without explaining them, each with its meaning.

In: hints. Out: the terms that occur in them, in the order of the alphabet.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from bookmaker.book.contents import Hints, Term
from bookmaker.book.wording import GLOSSARY


def terms_in(hints: Iterable[Hints]) -> tuple[Term, ...]:
    """The terms that some hint uses or relies on."""
    said = "\n".join(text for hint in hints for text in (hint.where, hint.what, hint.how)).lower()
    found = (
        Term(name, meaning)
        for name, signs, meaning in GLOSSARY
        if re.search("|".join(rf"\b{re.escape(sign)}" for sign in signs), said)
    )
    return tuple(sorted(found, key=lambda term: [letter for letter in term.name.lower() if letter.isalpha()]))
