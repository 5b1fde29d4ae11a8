"""How long somebody took, as people write it down.

In: the text of a cell: “12”, “12.5”, “12,5”, “12:30”, “1:02:30”, “12 min”, “12′30″”, “1 h 2 min”, “12m30s”. Out:
minutes, or None. A lone number counts minutes; of two numbers with a colon the first does, of three the first counts
hours. Whatever begins with “>” or “over” was not finished after so long.
"""

from __future__ import annotations

import re

MOST = 7 * 24 * 60.0
"""Minutes of a week: nobody took longer."""

_NUMBER = r"(\d{1,6}(?:[.,]\d{1,6})?)"
_PLAIN = re.compile(rf"{_NUMBER}")
_CLOCK = re.compile(r"(?:(\d{1,3}):)?(\d{1,4}):(\d{2})(?:[.,]\d+)?")
_UNITS = re.compile(
    rf"(?:{_NUMBER} ?(?:h|hrs?|hours?))? ?(?:{_NUMBER} ?(?:m|min|mins|minutes?|['′’]))?"
    rf" ?(?:{_NUMBER} ?(?:s|secs?|seconds?|\"|″|''|’’))?\.?",
    re.IGNORECASE,
)
_OVER = re.compile(r"(?:>=?|≥|over |more than )\s*(.+)", re.IGNORECASE)


def minutes_of(text: str) -> float | None:
    """Minutes above 0, at most a week's; None where the text says no such time."""
    minutes = _minutes(text)
    return minutes if minutes is not None and 0 < minutes <= MOST else None


def unfinished_after(text: str) -> str | None:
    """What stands behind “>” or “over”; None where the text begins with neither."""
    found = _OVER.fullmatch(text)
    return found[1] if found else None


def _minutes(text: str) -> float | None:
    if found := _PLAIN.fullmatch(text):
        return _number(found[1])
    if found := _CLOCK.fullmatch(text):
        hours, minutes, seconds = (int(part or 0) for part in found.groups())
        return 60 * hours + minutes + seconds / 60 if seconds < 60 and (not found[1] or minutes < 60) else None
    if text and (found := _UNITS.fullmatch(text)) and any(found.groups()):
        hours_, minutes_, seconds_ = (_number(part) if part else 0.0 for part in found.groups())
        return 60 * hours_ + minutes_ + seconds_ / 60
    return None


def _number(text: str) -> float:
    return float(text.replace(",", "."))
