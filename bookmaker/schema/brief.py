"""A brief, as JSON Schema. Names of bands, setters and tags are the archive's, so any are allowed."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from bookmaker.archive.cards import BY_GRID
from bookmaker.archive.listing import PERMISSIONS
from bookmaker.assemble.amounts import AMOUNT_KEYS, MOST, PHRASES
from bookmaker.assemble.brief import BRIEF_KEYS, CHAPTER_KEYS, FILE_KEYS, MOST_TIMES, TAG, WISHES
from bookmaker.assemble.demands import BY_NAME, EACH, FIRM
from bookmaker.grade.bands import FAMILIES
from bookmaker.manifest.dates import WHEN
from bookmaker.puzzle.grid import LARGEST, SMALLEST
from bookmaker.rules import kinds
from bookmaker.schema import shapes
from bookmaker.schema.manifest import FOLDERS, NOTE, TITLE, book
from bookmaker.schema.shapes import Shape
from bookmaker.schema.told import told

CURVE = re.compile(r"rising|[0-9.]+ to [0-9.]+")


def amount() -> Shape:
    """“3”, “at least 4”, “2 to 5”, or {at-least, at-most, exactly, rather}."""
    said = "|".join(rf"\s*{phrase.pattern}\s*" for phrase, _ in PHRASES).replace(" ", r"\s+")
    said = re.sub(r"(?<!\\)[a-z]", lambda letter: f"[{letter[0].upper()}{letter[0]}]", said)  # in any case
    number = shapes.whole(0, MOST)
    fields = {key: shapes.SWITCH if key == "rather" else number for key in AMOUNT_KEYS}
    least = {"anyOf": [{"required": [key]} for key in AMOUNT_KEYS if key != "rather"]}
    return {"anyOf": [{"type": ["integer", "string"], "pattern": f"^(?:{said})$"}, {**shapes.table(fields), **least}]}


def brief() -> Shape:
    """The whole file of a brief."""
    said = told()["in a brief"]
    chapter = _chosen(CHAPTER_KEYS, said, ("title", "puzzles"))
    body = _chosen(BRIEF_KEYS, said, ("title",), {"chapters": {"type": "array", "items": chapter}})
    body["anyOf"] = [{"required": ["puzzles"]}, {"required": ["chapters"]}]
    fields = {
        "brief": body,
        "book": {**book(needed=(), without=("archive", "order")), "description": "Goes into the new book as it is."},
        "archive": {**FOLDERS, "description": "The folders to choose from, as seen from this file."},
    }
    whole = shapes.table({key: fields[key] for key in FILE_KEYS}, ("brief",))
    return {**whole, "$defs": {"amount": amount()}}


def _chosen(
    keys: tuple[str, ...], said: Mapping[str, str], needed: tuple[str, ...], more: Mapping[str, Shape] | None = None
) -> Shape:
    """A table of demands."""
    much: Shape = {"$ref": "#/$defs/amount"}
    ids = shapes.one_or_many(shapes.SAID)
    wishes: Shape = {"anyOf": [shapes.choice(WISHES), {"type": "string", "pattern": f"^{TAG}"}]}
    fields: dict[str, Shape] = {
        "title": TITLE if "times" not in keys else {**TITLE, "description": "With “times”, {n} in it is the number."},
        "note": NOTE,
        "times": shapes.whole(1, MOST_TIMES),
        "puzzles": much,
        **{name: _named(much) for name in BY_NAME},
        **dict.fromkeys(EACH, much),
        "kinds": _named(much, (*BY_GRID, *kinds())),
        "families": _named(much, FAMILIES),
        "sizes": _named(much, map(str, range(SMALLEST, LARGEST + 1))),
        **dict.fromkeys(("must", "never"), ids),
        "difficulty": shapes.SAID,
        "shown": shapes.matching(re.compile("never"), re.compile(rf"(?:before|after)\s+(?:{WHEN.pattern})")),
        "permission": shapes.one_or_many(shapes.choice(PERMISSIONS)),
        "unprinted": shapes.SWITCH,
        "not-in": FOLDERS,
        "curve": shapes.matching(CURVE),
        "apart": shapes.one_or_many(shapes.choice(("setters", "kinds"))),
        "rather": shapes.one_or_many(shapes.choice(name for name in keys if name not in FIRM)),
        "pages": much,
        "prefer": shapes.one_or_many(wishes),
        **(more or {}),
    }
    return shapes.table({key: fields[key] for key in keys}, needed, said)


def _named(much: Shape, known: Iterable[str] = ()) -> Shape:
    """Amounts by name. Known names are offered and not demanded, for they may be in capitals or small letters."""
    offered = dict.fromkeys(known, much)
    return {**shapes.names(much), "properties": {**offered, "rather": shapes.SWITCH}}
