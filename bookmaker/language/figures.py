"""Figures as a language prints them, by the Unicode CLDR (as Babel has it).

In: a number as the program writes it, with a point. Out: “3.4”, “3,4”.
"""

from __future__ import annotations

from functools import cache

from babel.numbers import get_decimal_symbol

from bookmaker.language.catalogues import Catalogue


def decimal_said(words: Catalogue, figure: str) -> str:
    """The number with what stands before its decimals in the language."""
    return figure.replace(".", _point(words.locale))


_point = cache(get_decimal_symbol)
