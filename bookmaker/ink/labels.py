"""Page labels as PDF counts them: stretches of pages numbered on in one style (ISO 32000-1, 12.4.2).

In: the printed label of each page (“”, “iv”, “12”, “A-3”). Out: the stretches that spell exactly these labels.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from bookmaker.display.numerals import roman_value


@dataclass(frozen=True, slots=True)
class Stretch:
    """From page `first` (counted from 0) on: `prefix`, then numbers from `start` in `style`; no number for None."""

    first: int
    prefix: str
    style: Literal["ARABIC", "ROMAN_LOWER", "ROMAN_UPPER"] | None
    start: int | None


def stretches(labels: tuple[str, ...]) -> list[Stretch]:
    """The fewest stretches that give each page its label."""
    found: list[Stretch] = []
    for page, label in enumerate(labels):
        here = _read(page, label)
        last = found[-1] if found else None
        if last and here.style and last.start is not None and here.start == last.start + page - last.first:
            if (here.style, here.prefix) == (last.style, last.prefix):
                continue
        elif last and not here.style and (None, here.prefix) == (last.style, last.prefix):
            continue
        found.append(here)
    return found


def _read(page: int, label: str) -> Stretch:
    for style, numerals in (("ROMAN_LOWER", label), ("ROMAN_UPPER", label.lower() if label.isupper() else "")):
        if value := roman_value(numerals):
            return Stretch(page, "", "ROMAN_LOWER" if style == "ROMAN_LOWER" else "ROMAN_UPPER", value)
    prefix = label.rstrip("0123456789")
    figures = label[len(prefix) :]
    zeros = len(figures) - len(figures.lstrip("0"))
    prefix, figures = prefix + figures[:zeros], figures[zeros:]
    return Stretch(page, prefix, "ARABIC", int(figures)) if figures else Stretch(page, prefix, None, None)
