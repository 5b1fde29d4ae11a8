"""Typed text → set text: real quotes, dashes and signs for the plain ones of a keyboard.

In: text as an editor types it in a manifest. Out: the same words with “quotes”, ‘inner quotes’, apostrophes, dashes, an
ellipsis and the multiplication sign. Conventions of English book typography (common practice, no source).
"""

from __future__ import annotations

import re
from dataclasses import replace

from bookmaker.manifest.markup import Runs

_SEAM = "\ue000"
"""Stands between two runs while their quotes are set."""

_OPENS = r"(^|[\s(\[{“‘—–/-])"
_RULES = (
    (r"[ \t\r\n]+", " "),
    (r"\.\.\.", "…"),
    (r"\s*---\s*", "—"),
    (r" ?-- ?| - ", " – "),
    (r"(?<![\d-])(\d{1,3})-(?=\d{1,3}\b(?!-))", r"\1–"),
    (r"\b(\d+) ?[xX] ?(?=\d)", r"\1×"),
    (_OPENS + r'"', r"\1“"),
    (r'"', "”"),
    (r"'(?=\d0s\b)", "’"),
    (_OPENS + r"'", r"\1‘"),
    (r"'", "’"),
)


def smart_quotes(text: str) -> str:
    """The text as a compositor would set it; text that is already set stays as it is."""
    for pattern, replacement in _RULES:
        text = re.sub(pattern, replacement, text)
    return text.strip()


def curled_runs(runs: Runs) -> Runs:
    """A paragraph of several styles with its quotes and dashes set as if it were of one."""
    text = _SEAM.join(run.text for run in runs)
    for typed, opening in (('"', "“"), ("'", "‘")):
        text = re.sub(rf"{_OPENS}({_SEAM}?){typed}", rf"\1\2{opening}", text)
    return tuple(replace(run, text=piece) for run, piece in zip(runs, smart_quotes(text).split(_SEAM), strict=True))
