"""A puzzle seen eight ways: as it is, in a mirror, with rows and columns exchanged, and so on in turn.

In: a puzzle's entry in a manifest, all its values text. Out: the entry of the same puzzle as it is seen that way. Its
solution is seen that way too, so it has as many, and is as hard.
"""

from __future__ import annotations

import re
from typing import Any, Literal, TypeAlias

Look: TypeAlias = Literal["mirrored", "exchanged"]

WAYS = 8

_SIDES: dict[Look, dict[str, str]] = {
    "mirrored": {"left": "right", "right": "left"},
    "exchanged": {"left": "top", "top": "left", "right": "bottom", "bottom": "right"},
}
_DIRECTIONS: dict[Look, dict[str, str]] = {
    "mirrored": {"up-left": "up-right", "up-right": "up-left", "down-left": "down-right", "down-right": "down-left"},
    "exchanged": {"up-right": "down-left", "down-left": "up-right"},
}


def ways_of(entry: dict[str, Any]) -> int:
    """In how many ways a puzzle can be seen: only one where figures are read along cells, or boxes are not square."""
    arrows = entry.get("rules", {}).get("arrow", ())
    return 1 if "size" in entry or any(" " in arrow["circle"] for arrow in arrows) else WAYS


def seen(entry: dict[str, Any], way: int, size: int = 9) -> dict[str, Any]:
    """A puzzle on a grid of `size` × `size` cells, seen the way of that number; 0 is as it is."""
    for turn in range(way):
        entry = _dictionary(entry, "exchanged" if turn % 2 else "mirrored", size)
    return entry


def _dictionary(entry: dict[str, Any], look: Look, size: int) -> dict[str, Any]:
    sides = _SIDES[look]
    found = {}
    for key, value in entry.items():
        if key in ("top", "bottom") and look == "mirrored":
            found[key] = " ".join(reversed(value.split()))
        elif key in ("left", "right", "top", "bottom"):
            found[sides.get(key, key)] = value
        else:
            found[_words(key, look, size)] = _value(value, look, size)
    return found


def _value(value: Any, look: Look, size: int) -> Any:
    if isinstance(value, dict):
        return _dictionary(value, look, size)
    if isinstance(value, list):
        return [_value(part, look, size) for part in value]
    return _picture(value, look) if "\n" in value else _words(value, look, size)


def _picture(text: str, look: Look) -> str:
    """A grid as text, one character a cell."""
    rows = ["".join(line.split()) for line in text.splitlines() if line.strip()]
    return (
        "\n".join(row[::-1] for row in rows) if look == "mirrored" else "\n".join(map("".join, zip(*rows, strict=True)))
    )


def _words(text: str, look: Look, size: int) -> str:
    """Names of cells and directions."""

    def cell(name: re.Match[str]) -> str:
        row, column = int(name[1]), int(name[2])
        return f"r{row}c{size + 1 - column}" if look == "mirrored" else f"r{column}c{row}"

    directions = _DIRECTIONS[look]
    text = re.sub(r"\b(?:up|down)-(?:left|right)\b", lambda way: directions.get(way[0], way[0]), text)
    return re.sub(r"r(\d)c(\d)", cell, text)
