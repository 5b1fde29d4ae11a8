"""The few shapes that fields have, as JSON Schema (draft 2020-12).

An editor reads YAML's plain words as numbers, truth values or nothing, where bookmaker reads all of them as text: a
title may be 1984. What is limited to certain texts has a pattern, which leaves such values alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any, TypeAlias

Shape: TypeAlias = dict[str, Any]

TEXT: Shape = {"type": ["string", "number", "boolean", "null"]}
"""Text of any kind; a field left empty counts as left out."""

SAID: Shape = {"type": ["string", "number", "boolean"], "pattern": r"\S"}
"""Text that must not be left empty."""

SWITCH: Shape = {"enum": ["yes", "no", "true", "false", True, False]}

YES: Shape = {"enum": ["yes", "true", True, "", None]}
"""For what is either there or left out."""

PATH: Shape = {"type": "string", "pattern": r"\S"}


def text(most: int) -> Shape:
    """Text of at most so many characters."""
    return {**TEXT, "maxLength": most}


def matching(*patterns: re.Pattern[str], most: int | None = None, numbers: bool = False) -> Shape:
    """Text that one of the patterns matches as a whole; blank space around it does not count. `numbers` says that it
    may look like a whole number to an editor."""
    either = "|".join(pattern.pattern for pattern in patterns)
    kinds = ["string", "integer"] if numbers else ["string"]
    shape: Shape = {"type": kinds, "pattern": rf"^\s*(?:{either})\s*$"}
    return shape if most is None else {**shape, "maxLength": most}


def whole(least: int, most: int) -> Shape:
    """A whole number."""
    return {"type": ["integer", "string"], "minimum": least, "maximum": most, "pattern": "^[+-]?[0-9]{1,9}$"}


def number(least: float, most: float) -> Shape:
    """A number that may have a fraction."""
    return {"type": ["number", "string"], "minimum": least, "maximum": most, "pattern": r"^[0-9]{1,4}(\.[0-9]{1,4})?$"}


def choice(words: Iterable[str]) -> Shape:
    """One of some words."""
    return {"enum": list(words)}


def one_or_many(item: Shape) -> Shape:
    """A list, or one item in place of it."""
    return {"anyOf": [item, {"type": "array", "items": item}]}


def any_of(shapes: Iterable[Shape]) -> Shape:
    """One of several shapes."""
    found = list(shapes)
    return found[0] if len(found) == 1 else {"anyOf": found}


def table(fields: Mapping[str, Shape], needed: Iterable[str] = (), told: Mapping[str, str] | None = None) -> Shape:
    """Lines of “name: value”, and no other names; `told` describes fields by name."""
    described = {name: {**shape, "description": told[name]} if told and name in told else shape
                 for name, shape in fields.items()}  # fmt: skip
    shape: Shape = {"type": "object", "properties": described, "additionalProperties": False}
    if required := list(needed):
        shape["required"] = required
    return shape


def names(value: Shape) -> Shape:
    """Lines of “name: value” with names of the user's own."""
    return {"type": "object", "additionalProperties": value}


def picture(signs: str, size: int) -> Shape:
    """A picture of a grid: for each row as many of the `signs` (a class of a pattern) as there are columns, with spaces
    and ruled lines as one likes. Rows may also run on in one line."""
    row = rf"{signs}(?:[ \t|+_-]*{signs}){{{size - 1}}}"
    return {"type": ["string", "number"], "pattern": rf"^[\s|+_-]*(?:{row}[\s|+_-]*){{{size}}}$"}
