"""The kinds of rules under `rules:`, each shaped as its `form` says and described by its primer and its example."""

from __future__ import annotations

from bookmaker.language import catalogue
from bookmaker.manifest.rulefields import IN
from bookmaker.puzzle.grid import SYMBOLS
from bookmaker.puzzle.overlapping import LETTERS
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.schema import shapes
from bookmaker.schema.shapes import Shape

LINES = shapes.one_or_many(shapes.SAID)

WORDS: dict[str, Shape] = {
    "yes": shapes.YES,
    "switch": shapes.SWITCH,
    "text": shapes.SAID,
    "lines": LINES,
    "picture": {"type": "string"},
    "whole": shapes.whole(0, 999),
    "numbers": shapes.names(shapes.whole(1, 999)),
    "names": shapes.names(shapes.SAID),
    "items": LINES,
}
"""The words of a rule's form (`contract.FORMS`)."""


def rules() -> Shape:
    """What may stand under `rules:`."""
    found = shapes.table({kind: rule(its) for kind, its in kinds().items()})
    in_grid = {"$ref": "#/$defs/rules", "description": "Rules of one of several grids that overlap."}
    return {**found, "type": ["object", "null"], "patternProperties": {f"^{IN}[{LETTERS}]$": in_grid}}


def rule(its: type[Rule]) -> Shape:
    """How marks of a kind are typed, with what it is."""
    told = f"{its.title}. {its.primer(catalogue('en'))}\n\nFor example:\n\n{its.example}"
    return {**_body(its.typed), "description": told}


def _body(typed: tuple[str, ...]) -> Shape:
    """Any of the ways; tables that may be items of a list are allowed as items beside lines of text."""
    tables = [_way(way[1:-1]) for way in typed if way.startswith("[")]
    items = shapes.one_or_many(shapes.any_of([shapes.SAID, *tables])) if tables else LINES
    whole = [_way(way, items) for way in typed if not way.startswith("[")]
    if tables:
        whole = [way for way in whole if way is not LINES] + [items]
    return shapes.any_of(whole) if whole else {}


def _way(way: str, items: Shape = LINES) -> Shape:
    if " | " in way:
        return shapes.choice(way.split(" | "))
    if ": " not in way:
        return WORDS[way]
    words = WORDS | {"items": items}
    fields = {name: words[word] for name, word in (part.split(": ") for part in way.split(", "))}
    return shapes.names(fields["*"]) if "*" in fields else shapes.table(fields)


def digits(size: int) -> str:
    """A pattern for one cell of a grid of digits: its digits in capitals or small letters, a dot or a nought."""
    letters = SYMBOLS[9:size]
    return f"[.0-{min(size, 9)}{letters}{letters.lower()}]"
