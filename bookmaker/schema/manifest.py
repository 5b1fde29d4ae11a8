"""A book, a file of puzzles and what an archive says of itself, as JSON Schema."""

from __future__ import annotations

from collections.abc import Mapping
from typing import get_args

from bookmaker.archive.settings import SETTINGS_KEYS
from bookmaker.hyphenation import languages
from bookmaker.ink.conditions import CONDITIONS
from bookmaker.layout.specfile import layout_names, load_layout
from bookmaker.layout.themefile import theme_names
from bookmaker.manifest import CHAPTER_KEYS, CHAPTER_ORDERS, MANIFEST_KEYS
from bookmaker.manifest.bookfields import BOOK_KEYS
from bookmaker.manifest.dates import WHEN
from bookmaker.manifest.entries import Order
from bookmaker.manifest.gridfields import BOXES, FROM_ZERO, WORD
from bookmaker.manifest.overlapfields import CORNERS
from bookmaker.manifest.permission import RECORD_KEYS, STATES
from bookmaker.manifest.publication import COVER_KEYS, FOCUS, IMPRINT_KEYS, LEAF, LINK, MOST_FOLD
from bookmaker.manifest.puzzlefields import PUZZLE_KEYS
from bookmaker.manifest.texts import DATE, ID
from bookmaker.manifest.translations import TEXTS
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import LARGEST, SMALLEST, USUAL_BOXES
from bookmaker.schema import rules, shapes
from bookmaker.schema.shapes import Shape
from bookmaker.schema.told import told
from bookmaker.source import file_limits as limits

LINE, NOTE = shapes.text(limits.LINE), shapes.text(limits.NOTE)
TITLE: Shape = {**shapes.SAID, "maxLength": limits.LINE}
IDENTIFIER = shapes.matching(ID, most=limits.ID, numbers=True)
FOLDERS = shapes.one_or_many(shapes.PATH)


def empty_or(shape: Shape) -> Shape:
    """A field that counts as left out where it is empty."""
    kinds = shape["type"]
    return {**shape, "type": [*kinds, "null"]}


BANDS: Shape = {
    "type": "array",
    "items": {**shapes.SAID, "maxLength": limits.BAND_NAME},
    "minItems": len(BAND_NAMES),
    "maxItems": len(BAND_NAMES),
    "uniqueItems": True,
}

IMPRINT: Mapping[str, Shape] = {
    **dict.fromkeys(("publisher", "edition"), LINE),
    "date": empty_or(shapes.matching(DATE)),
    **dict.fromkeys(("isbn", "ebook-isbn"), LINE),
    **dict.fromkeys(("rights", "note"), NOTE),
}

COVER: Mapping[str, Shape] = {
    "blurb": NOTE,
    **dict.fromkeys(("image", "profile"), shapes.TEXT),
    "focus": shapes.matching(FOCUS),
    "leaf": shapes.matching(LEAF),
    **dict.fromkeys(("price", "category", "sample"), LINE),
    "condition": {**LINE, "examples": list(CONDITIONS)},
}

PERMISSION: Mapping[str, Shape] = {
    "state": shapes.choice(STATES),
    "by": LINE,
    "on": empty_or(shapes.matching(WHEN, numbers=True)),
    "printed": LINE,
    "note": NOTE,
}


def archive() -> Shape:
    """What `archive.yaml` may say."""
    return _in_order(SETTINGS_KEYS, {"printed-in": FOLDERS, "bands": BANDS})


def book(needed: tuple[str, ...] = ("title",), without: tuple[str, ...] = ()) -> Shape:
    """What may stand under `book:`."""
    said = told()["under `book:`"]
    layouts = [name for name in layout_names() if load_layout(name).use == "book"]
    fields: dict[str, Shape] = {
        "title": TITLE,
        **dict.fromkeys(("subtitle", "editor", "permission"), LINE),
        "layout": {"type": ["string", "null"], "examples": layouts},
        "order": shapes.choice(get_args(Order)),
        "bands": BANDS,
        "archive": {**FOLDERS, "description": "Folders to pick puzzles from, as seen from this file."},
        "language": shapes.choice(sorted(languages())),
        **dict.fromkeys(("half-title", "primer", "hints", "index", "contents", "credits"), shapes.SWITCH),
        "imprint": _in_order(IMPRINT_KEYS, IMPRINT, _within(said, "imprint")),
        "foreword": NOTE,
        "fold": shapes.whole(1, MOST_FOLD),
        "link": empty_or(shapes.matching(LINK)),
        "theme": {"type": ["string", "null"], "examples": list(theme_names())},
        "cover": _in_order(COVER_KEYS, COVER, _within(said, "cover")),
    }
    keys = tuple(key for key in BOOK_KEYS if key not in without)
    return _in_order(keys, {key: fields[key] for key in keys}, said, needed)


def puzzle() -> Shape:
    """A puzzle of a list, or what stands in place of one: “include: file” or “pick: id” with fields of its own."""
    said = told()["field"]
    record = _in_order(RECORD_KEYS, PERMISSION, needed=("state",))
    fields: dict[str, Shape] = {
        "id": {**IDENTIFIER, "description": "Its name on the command line and in links; no two alike."},
        **dict.fromkeys(("title", "setter", "source"), LINE),
        "shown": empty_or(shapes.matching(WHEN, numbers=True)),
        "permission": {"anyOf": [LINE, record]},
        **dict.fromkeys(("note", "private"), NOTE),
        "link": empty_or(shapes.matching(LINK)),
        "size": shapes.whole(SMALLEST, LARGEST),
        "boxes": {"type": "string", "pattern": f"^(?:none|{BOXES.pattern})$"},
        "regions": {"type": "string"},
        "grids": shapes.matching(CORNERS),
        "holes": {"type": "string"},
        "digits": shapes.choice((FROM_ZERO,)),
        "letters": {"type": "string", "pattern": WORD.pattern},
        "givens": {"type": ["string", "number"]},
        "rules": {"$ref": "#/$defs/rules"},
        "solution": {"type": ["string", "number", "null"]},
        "word": shapes.table({"cells": shapes.SAID, "reads": shapes.SAID}, ("cells", "reads")),
        "tags": shapes.one_or_many(shapes.TEXT),
    }
    of_pick: Mapping[str, Shape] = {
        "include": {**shapes.PATH, "description": "A file with a list of puzzles, in this folder or below."},
        "pick": {
            **shapes.SAID,
            "description": "The id of a puzzle of the archive; fields beside it hold for this book.",
        },
        "from": {**shapes.PATH, "description": "The file of the puzzle that is picked, where two have its id."},
    }
    shape = _in_order(PUZZLE_KEYS, fields, said)
    shape["properties"] |= of_pick
    own: Shape = {"required": ["id"], "anyOf": [{"required": ["givens"]}, {"required": ["rules"]}]}
    either = {"if": {"required": ["pick"]}, "then": {}, "else": {**own, "not": {"required": ["from"]}}}
    alone = {"properties": {"include": True}, "additionalProperties": False}
    shape |= {"if": {"required": ["include"]}, "then": alone, "else": either}
    shape["not"] = {"anyOf": [{"required": ["boxes", "regions"]}, {"required": ["grids", "regions"]}]}
    shape["allOf"] = [_pictures(size) for size in range(SMALLEST, LARGEST + 1)]
    return shape


def manifest() -> Shape:
    """A book, or a file of puzzles alone: a list, one puzzle, or `puzzles:` without a book."""
    puzzles = {"anyOf": [{"type": "array", "items": {"$ref": "#/$defs/puzzle"}}, {"$ref": "#/$defs/puzzle"}]}
    puzzles["anyOf"][1] = {"allOf": [{"type": "object"}, puzzles["anyOf"][1]]}
    chapter_fields: Mapping[str, Shape] = {
        "title": TITLE,
        "note": NOTE,
        "order": shapes.choice(CHAPTER_ORDERS),
        "puzzles": {"$ref": "#/$defs/puzzles"},
    }
    chapter = _in_order(CHAPTER_KEYS, chapter_fields, needed=("title", "puzzles"))
    top: Mapping[str, Shape] = {
        "book": {"$ref": "#/$defs/book"},
        "puzzles": {"$ref": "#/$defs/puzzles"},
        "chapters": {"type": "array", "items": chapter, "minItems": 1},
    }
    whole = _in_order(MANIFEST_KEYS, top)
    whole["not"] = {"required": ["puzzles", "chapters"]}
    whole["if"], whole["then"] = {"required": ["chapters"]}, {"required": ["book"]}
    whole["anyOf"] = [{"required": ["puzzles"]}, {"required": ["chapters"]}]
    by_chapters: Shape = {"properties": {"book": {"properties": {"order": {"const": "chapters"}}}}}
    listed: Shape = {"properties": {"book": {"properties": {"order": {"not": {"const": "chapters"}}}}}}
    whole["allOf"] = [{"if": {"required": ["chapters"]}, "then": by_chapters, "else": listed}]
    single = {"anyOf": [{"required": ["id"]}, {"required": ["givens"]}]}
    return {
        "if": {"type": "array"},
        "then": {"$ref": "#/$defs/puzzles"},
        "else": {"if": single, "then": {"$ref": "#/$defs/puzzle"}, "else": whole},
        "$defs": {"book": book(), "puzzle": puzzle(), "puzzles": puzzles, "rules": rules.rules()},
    }


def _pictures(size: int) -> Shape:
    """What pictures must look like in a grid of a size; 9 is meant where none is given."""
    asked: Shape = {"properties": {"size": {"enum": [size, str(size)]}}}
    if size != 9:
        asked["required"] = ["size"]
    drawn: Shape = {"regions": {**shapes.picture(r"[^\s|+_.-]", size), "type": "string"}}
    given: Shape = {"givens": shapes.picture(rules.digits(size), size)}
    otherwise: Shape = {"anyOf": [{"required": [name]} for name in ("digits", "letters", "grids", "holes")]}
    holed: Shape = {"if": {"required": ["holes"]}, "else": {"properties": drawn}}
    then: Shape = {"allOf": [holed], "if": otherwise, "else": {"properties": given}}
    if size not in USUAL_BOXES:
        then["anyOf"] = [{"required": [name]} for name in ("boxes", "regions", "holes", "pick", "include")]
    return {"if": asked, "then": then}


def _within(said: Mapping[str, str], name: str) -> dict[str, str]:
    """What is told of the fields inside a field."""
    return {key.partition(".")[2]: words for key, words in said.items() if key.startswith(f"{name}.")}


def _in_order(
    keys: tuple[str, ...],
    fields: Mapping[str, Shape],
    said: Mapping[str, str] | None = None,
    needed: tuple[str, ...] = (),
) -> Shape:
    """A table of exactly the fields that the reader knows, in its order. Raises KeyError where one has no shape."""
    if extra := set(fields) - set(keys):
        raise KeyError(f"no reader knows {sorted(extra)}")
    shown = {key: _in_several(fields[key]) if key in TEXTS else fields[key] for key in keys}
    return shapes.table(shown, needed, said)


def _in_several(shape: Shape) -> Shape:
    """A text, or the same in several languages."""
    codes = {"pattern": "^[a-z]{2,3}([-_][A-Za-z]+)*$"}
    each = {"type": "object", "propertyNames": codes, "additionalProperties": shape, "minProperties": 1}
    return shapes.any_of([shape, each])
