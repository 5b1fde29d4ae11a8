"""What may be typed into bookmaker's files, as JSON Schema (draft 2020-12), for editors that complete and explain it.

In: the name of a kind of file. Out: its schema, made from what the readers themselves know: their field names, words to
choose from, patterns and limits, and the README's tables. A schema sees the shape of a file; whether givens clash or a
cage can be filled, only `bookmaker proof` says.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from typing import Any

from bookmaker.schema import brief, layout, manifest, theme, wish

__all__ = ["SCHEMAS", "schema_text"]

DRAFT = "https://json-schema.org/draft/2020-12/schema"

SCHEMAS: Mapping[str, tuple[str, Callable[[], Mapping[str, Any]]]] = {
    "manifest": ("A book, or a file with puzzles for one", manifest.manifest),
    "brief": ("What a collection shall hold", brief.brief),
    "wish": ("What puzzles should be, for “bookmaker draft”", wish.wish),
    "archive": ("What an archive says of itself, in archive.yaml", manifest.archive),
    "layout": ("Paper, margins, type and the room for puzzles", layout.layout),
    "theme": ("Colours and patterns of a cover and of ornament", theme.theme),
}
"""A title and a maker for each kind of file."""


def schema_text(name: str) -> str:
    """The schema of a kind of file, as JSON. Raises KeyError for a kind that is not in `SCHEMAS`."""
    title, make = SCHEMAS[name]
    return json.dumps({"$schema": DRAFT, "title": title, **make()}, ensure_ascii=False, indent=1) + "\n"
