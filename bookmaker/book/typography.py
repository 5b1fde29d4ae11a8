"""Typed text → set text: real quotes, dashes and signs for the plain ones of a keyboard.

In: text as an editor types it in a manifest. Out: the same words with “quotes”, ‘inner quotes’, apostrophes, dashes, an
ellipsis and the multiplication sign. Conventions of English book typography (common practice, no source).
"""

from __future__ import annotations

import re

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


def curled(text: str) -> str:
    """The text as a compositor would set it; text that is already set stays as it is."""
    for pattern, replacement in _RULES:
        text = re.sub(pattern, replacement, text)
    return text.strip()
