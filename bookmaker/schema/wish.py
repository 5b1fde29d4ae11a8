"""A file of wishes, as JSON Schema."""

from __future__ import annotations

from itertools import product
from typing import get_args

from bookmaker.changes.arrangement import ARRANGEMENTS
from bookmaker.manifest.gridfields import BOXES, FROM_ZERO, WORD
from bookmaker.manifest.overlapfields import CORNERS
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import CLASSIC, LARGEST, SMALLEST
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.parts import Form
from bookmaker.schema import rules, shapes
from bookmaker.schema.manifest import LINE, NOTE
from bookmaker.schema.shapes import Shape
from bookmaker.schema.told import told
from bookmaker.wishes.reading import MOST_PUZZLES, TEXTS, WISH_KEYS
from bookmaker.wishes.rulewishes import COUNTED, own_words
from bookmaker.wishes.span import FORMS
from bookmaker.wishes.techniques import nameable
from bookmaker.wishes.wish import Where

SPAN: Shape = {**shapes.matching(*(form for form, _ in FORMS)), "type": ["integer", "number", "string"]}


def wish() -> Shape:
    """The whole file: one wish, or a list."""
    said = told()["in a wish"]
    techniques = shapes.any_case(nameable(kinds()))
    named: Shape = {"type": "object", "propertyNames": techniques, "additionalProperties": SPAN}
    some = shapes.one_or_many(techniques)
    where = shapes.choice(word for word in get_args(Where) if word)
    fields: dict[str, Shape] = {
        "puzzles": shapes.whole(1, MOST_PUZZLES),
        "size": shapes.whole(SMALLEST, LARGEST),
        "boxes": {"type": "string", "pattern": f"^(?:none|{BOXES.pattern})$"},
        "regions": {"type": "string"},
        "grids": shapes.matching(CORNERS),
        "holes": {"type": "string"},
        "digits": shapes.choice((FROM_ZERO,)),
        "letters": {"type": "string", "pattern": WORD.pattern},
        "pattern": {"type": "string"},
        "rules": _rules(),
        "arrangement": shapes.choice(ARRANGEMENTS),
        **dict.fromkeys(("givens", "difficulty", "openings"), SPAN),
        "fixed": {"type": ["string", "number"]},
        "band": _bands(),
        "want": {"anyOf": [*some["anyOf"], named]},
        "refuse": some,
        **dict.fromkeys(("singles-only", "mirrored", "idle-marks"), shapes.SWITCH),
        "bottlenecks": {"anyOf": [SPAN, shapes.table({"how-many": SPAN, "where": where})]},
        "seed": shapes.whole(0, 999_999_999),
        "tags": shapes.one_or_many(shapes.TEXT),
        **{name: NOTE if name == "note" else LINE for name in TEXTS},
    }
    one = shapes.table({key: fields[key] for key in WISH_KEYS}, told=said)
    one["not"] = {"anyOf": [{"required": ["boxes", "regions"]}, {"required": ["grids", "regions"]}]}
    either: Shape = {"wish": {"$ref": "#/$defs/wish"}, "wishes": shapes.one_or_many({"$ref": "#/$defs/wish"})}
    return {**shapes.table(either), "minProperties": 1, "$defs": {"wish": one}}


def _bands() -> Shape:
    """A band, or one “to” another that is no easier."""
    apart = [f"{low} to {high}" for (i, low), (j, high) in product(enumerate(BAND_NAMES), repeat=2) if i <= j]
    return shapes.any_case((*BAND_NAMES, *apart))


def _rules() -> Shape:
    """Kinds alone, or with marks drawn as in a book or with what is to be drawn by chance."""
    some = shapes.one_or_many(shapes.choice(kinds()))
    by_name = {kind: _rule(rule) for kind, rule in kinds().items()}
    return {"anyOf": [{"type": "null"}, *some["anyOf"], shapes.table(by_name)]}


def _rule(rule: type[Rule]) -> Shape:
    drawn = rules.rule(rule)
    if rule.form is Form.WHOLE:
        return {**shapes.any_of([drawn, {"type": "null"}]), "description": drawn["description"]}
    places: Shape = {"type": ["string", "array", "object"]}
    chance: dict[str, Shape] = {COUNTED[rule.form]: SPAN}
    chance |= {word: SPAN if word == "cells" else places for word in own_words(rule)}
    blank = rule.blank(CLASSIC)
    for name in rule.options:
        switch = isinstance(getattr(blank, name.replace("-", "_")), bool)
        chance[name] = shapes.SWITCH if switch else shapes.whole(1, LARGEST)
    return {**shapes.any_of([drawn, {"type": "null"}, shapes.table(chance)]), "description": drawn["description"]}
