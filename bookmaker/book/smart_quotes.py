"""Typed text → set text: real quotes, dashes and signs for the plain ones of a keyboard.

In: text as an editor types it in a manifest. Out: the same words with “quotes”, ‘inner quotes’, apostrophes, dashes, an
ellipsis and the multiplication sign. Conventions of book typography (common practice, no source).
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import lru_cache
from typing import TypeAlias

from bookmaker.manifest.markup import Runs

Marks: TypeAlias = tuple[str, str, str, str]
"""Opening and closing, of a quotation and of one inside it."""

ENGLISH: Marks = ("“", "”", "‘", "’")

_SEAM = "\ue000"
"""Stands between two runs while their quotes are set."""

_OPENS = r"(^|[\s(\[{“‘«„‚—–/-])"
_RULES = (
    (r"[ \t\r\n]+", " "),
    (r"\.\.\.", "…"),
    (r"\s*---\s*", "—"),
    (r" ?-- ?| - ", " – "),
    (r"(?<![\d-])(\d{1,3})-(?=\d{1,3}\b(?!-))", r"\1–"),
    (r"\b(\d+) ?[xX] ?(?=\d)", r"\1×"),
)


@lru_cache(maxsize=1000)  # setters and notes come again and again
def smart_quotes(text: str, marks: Marks = ENGLISH) -> str:
    """The text as a compositor would set it, in the quotation marks of a language; text that is already set stays as it
    is."""
    opens, closes, inner_opens, inner_closes = marks
    quotes = (
        (_OPENS + r'"', rf"\1{opens}"),
        (r'"', closes),
        (r"'(?=\d0s\b)", "’"),
        (r"(?<=\w)'(?=\w)", "’"),
        (_OPENS + r"'", rf"\1{inner_opens}"),
        (r"(?<=\w)'", "’" if inner_closes == "’" else _closing(text, inner_closes)),
        (r"'", inner_closes),
    )
    for pattern, replacement in (*_RULES, *quotes):
        text = re.sub(pattern, replacement, text)
    return text.strip()


def curled_runs(runs: Runs, marks: Marks = ENGLISH) -> Runs:
    """A paragraph of several styles with its quotes and dashes set as if it were of one."""
    text = _SEAM.join(run.text for run in runs)
    for typed, opening in (('"', marks[0]), ("'", marks[2])):
        text = re.sub(rf"{_OPENS}({_SEAM}?){typed}", rf"\1\2{opening}", text)
    pieces = smart_quotes(text, marks).split(_SEAM)
    return tuple(replace(run, text=piece) for run, piece in zip(runs, pieces, strict=True))


def _closing(text: str, mark: str) -> str:
    """What a plain mark after a letter is: the end of an inner quotation where one was opened, else an apostrophe."""
    return mark if re.search(rf"{_OPENS}'", text) else "’"
