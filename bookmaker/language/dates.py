"""Dates as a language writes them in words, by the Unicode CLDR (as Babel has it).

In: a date, as exact as it is known. Out: “14 March 2026”, “March 2026” or “2026”. Narrow spaces that do not break are
plain ones that do not break: few typefaces have them.
"""

from __future__ import annotations

from datetime import date

from babel.dates import format_date, format_skeleton

from bookmaker.language.catalogues import Catalogue


def date_said(words: Catalogue, year: int, month: int = 0, day: int = 0) -> str:
    """A day, a month (no `day`) or a year (no `month`) in words."""
    if not month:
        return str(year)
    if day:
        said = format_date(date(year, month, day), "long", locale=words.locale)
    else:
        said = format_skeleton("yMMMM", date(year, month, 1), locale=words.locale)
    return str(said).replace("\u202f", "\u00a0")
