"""Where words may be parted at the end of a line.

In: a word and a language. Out: its pieces. Patterns: pyphen's, which are those of the Hunspell dictionaries.
"""

from __future__ import annotations

import re
from functools import cache, lru_cache

import pyphen

SHORTEST = 7
"""Shorter words are never parted (common practice, no source)."""

_WORD = re.compile(r"[^\W\d_]+")


@cache
def languages() -> tuple[str, ...]:
    """The languages there are patterns for, as they are typed: “en”, “en-GB”, “de”."""
    full = {name.replace("_", "-") for name in pyphen.LANGUAGES}
    return tuple(sorted(full | {name.split("-")[0] for name in full}))


@lru_cache(maxsize=20_000)
def pieces(word: str, language: str) -> tuple[str, ...]:
    """The word in the pieces it may be parted into, at least two letters before a hyphen and three after it.

    Signs around the letters stay with the first and the last piece; a word that holds anything else (a dash, a digit,
    an apostrophe) is one piece. Raises KeyError for an unknown language.
    """
    letters = _WORD.search(word)
    if letters is None or len(letters[0]) < SHORTEST or _WORD.search(word, letters.end()) or letters[0].isupper():
        return (word,)
    start, end = letters.span()
    cuts = [start + at for at in _patterns(language).positions(letters[0])]
    cuts = [at for at in cuts if at - start >= 2 and end - at >= 3]
    return tuple(word[a:b] for a, b in zip([0, *cuts], [*cuts, len(word)], strict=True))


@cache
def _patterns(language: str) -> pyphen.Pyphen:
    return pyphen.Pyphen(lang=pyphen.language_fallback(language.replace("-", "_")))
