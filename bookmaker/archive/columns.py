"""The columns of a spreadsheet of puzzles: those that make a puzzle, and those that only tell of it.

In: a puzzle as typed, with its card. Out: its cells by the columns' names; and back, the field that a heading means.
"""

from __future__ import annotations

import re
from typing import Any

from bookmaker.archive.cards import Card, Catalogue
from bookmaker.archive.writing import plain, typed
from bookmaker.manifest.gridfields import GRID_KEYS
from bookmaker.source.placed import Table

FIELDS = (
    "id",
    "title",
    "setter",
    "shown",
    "tags",
    "permission",
    "permission state",
    "permission by",
    "permission on",
    "permission note",
    "source",
    "note",
    "link",
    "private",
    *GRID_KEYS,
    "givens",
    "word",
    "solution",
    "rules",
)
"""Columns that are read back; those of permission make its record."""

TOLD = ("kinds", "verdict", "band", "difficulty", "effort", "hardest step", "printed in", "file")
"""Columns that are worked out, and passed over when a spreadsheet is read."""

RECORD = ("state", "by", "on", "note")


def plain_heading(text: str) -> str:
    """A heading without capitals, spaces and signs between words, to compare it by."""
    return " ".join(re.findall(r"[a-z0-9]+", text.casefold()))


def told(catalogue: Catalogue, card: Card) -> dict[str, str]:
    """The cells that are worked out."""
    return {
        "kinds": ", ".join(card.kinds) or card.grid,
        "verdict": card.verdict,
        "band": catalogue.band_name(card),
        "difficulty": card.difficulty_text,
        "effort": f"{card.effort:.0f}" if card.band else "",
        "hardest step": card.hardest,
        "printed in": "; ".join(catalogue.printed_in(card)),
        "file": card.file,
    }


def cells_of(puzzle: Table, card: Card) -> dict[str, str]:
    """The cells that make the puzzle: its fields as typed, its permission also where its book gives it."""
    typed_fields = plain(puzzle)
    cells = {name: _cell(typed_fields[name]) for name in FIELDS if name in typed_fields}
    record = typed_fields.get("permission")
    if isinstance(record, dict):
        cells |= {f"permission {name}": record.get(name, "") for name in RECORD}
        cells["permission"] = record.get("printed", "")
    if not cells.get("permission"):
        cells["permission"] = card.printed
    return cells


def _cell(value: Any) -> str:
    if isinstance(value, str):
        return value
    if isinstance(value, list) and all(isinstance(each, str) for each in value):
        return ", ".join(value)
    return typed(value)
