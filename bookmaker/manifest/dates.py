"""Dates as editors know them: a day, a month, or only a year.

In: a node. Out: a `When`, or None with the trouble on the desk.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date

from bookmaker.placed import Node, read_text
from bookmaker.trouble import Desk, quoted

WHEN = re.compile(r"([0-9]{4})(?:-([0-9]{2})(?:-([0-9]{2}))?)?")

HOW = "write year-month-day, year-month or the year alone, such as 2026-03-14, 2026-03 or 2026"


@dataclass(frozen=True, order=True, slots=True)
class When:
    """A day, or with `day` 0 a month, or with `month` 0 too a year. What is less exact comes first in order."""

    year: int
    month: int = 0
    day: int = 0

    def __str__(self) -> str:
        """As it is typed: 2026-03-14, 2026-03 or 2026."""
        parts = (f"{self.year:04}", *(f"{part:02}" for part in (self.month, self.day) if part))
        return "-".join(parts)

    def first_day(self) -> date:
        """The first day that it can mean."""
        return date(self.year, self.month or 1, self.day or 1)


def when_from(text: str) -> When | None:
    """The date in a text, as `HOW` says; None where it is none, or no such day is."""
    parts = WHEN.fullmatch(text)
    if parts is None:
        return None
    found = When(*(int(part or 0) for part in parts.groups()))
    months = parts[2] is None or found.month
    days = parts[3] is None or found.day
    try:
        found.first_day()
    except ValueError:
        return None
    return found if months and days else None


def read_when(node: Node, name: str, desk: Desk) -> When | None:
    """A date; a field left empty counts as left out."""
    text = read_text(node, f"“{name}”", desk)
    if not text:
        return None
    found = when_from(text)
    if found is None:
        part = "day" if len(text) == len("2026-03-14") else "month"
        said = f"there is no such {part} as {text}" if WHEN.fullmatch(text) else f"{quoted(text)} is not a date"
        desk.error(node.place, "bad-date", said, HOW)
    return found
