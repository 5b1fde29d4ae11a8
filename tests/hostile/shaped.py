"""Trees drawn from the schemas of bookmaker's files, so that whatever may be typed into one is drawn, and what is
nearly that."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache
from random import Random
from typing import Any

import yaml
from hypothesis import strategies as st

from bookmaker.resources import shipped
from bookmaker.schema import SCHEMAS

WORDS = ("Tides", "p0", "r1c1-r1c3", "r2c2 r3c3", "3", "12", "0", "-1", "1.5", "1e9", "yes", "", "~", "x" * 300,
         "{ $n }", "Ümläut", "\u202e", "../x", "de", "a: b", "own", "Ramble")  # fmt: skip
ODD: tuple[Any, ...] = (None, True, 0, -1, 10**30, 2.5, float("nan"), "", [], {}, [[]], {"x": None})
DEPTH = 9

Schema = Mapping[str, Any]


class Shaped:
    """Draws values that a schema allows, and now and then another."""

    def __init__(self, whole: Schema, rng: Random, odd: float = 0.03) -> None:
        self.whole, self.rng, self.odd = whole, rng, odd

    def value(self, schema: Schema, depth: int = 0) -> Any:
        if self.rng.random() < self.odd:
            return self.rng.choice(ODD)
        if "$ref" in schema:
            return self.value(self.whole["$defs"][schema["$ref"].rpartition("/")[2]], depth)
        if "enum" in schema:
            return self.rng.choice(schema["enum"])
        if "const" in schema:
            return schema["const"]
        for several in ("anyOf", "oneOf"):
            if several in schema:
                return self.value(self.rng.choice(schema[several]), depth)
        if "if" in schema and "type" not in schema:
            return self.value(self.rng.choice([schema["if"], schema["then"], schema["else"]]), depth)
        kinds = schema.get("type", "string")
        return self._of(kinds if isinstance(kinds, str) else self.rng.choice(kinds), schema, depth)

    def _of(self, kind: str, schema: Schema, depth: int) -> Any:
        rng = self.rng
        match kind:
            case "object" if depth < DEPTH:
                return self._table(schema, depth)
            case "array" if depth < DEPTH:
                many = rng.randint(schema.get("minItems", 0), schema.get("maxItems", 3))
                return [self.value(schema.get("items", {}), depth + 1) for _ in range(many)]
            case "integer" | "number":
                low, high = schema.get("minimum", 0), schema.get("maximum", 40)
                drawn = rng.choice([low, high, low - 1, high + 1, *(rng.uniform(low, high) for _ in range(6))])
                return int(drawn) if kind == "integer" else round(drawn, 2)
            case "boolean":
                return rng.random() < 0.5
            case "null" | "object" | "array":
                return None
        if "pattern" in schema and rng.random() < 0.8:
            return _matching(schema["pattern"], rng.randrange(COPIES))
        return rng.choice(schema.get("examples", WORDS))

    def _table(self, schema: Schema, depth: int) -> dict[str, Any]:
        named = schema.get("properties", {})
        many = self.rng.choice([0, 1, 1, 2, 3, 5] if depth > 1 else [1, 1, 2, 3, 5, 8])
        few = self.rng.sample(sorted(named), min(len(named), many))
        needed = [name for name in schema.get("required", ()) if name in named and self.rng.random() < 0.97]
        tree = {name: self.value(named[name], depth + 1) for name in dict.fromkeys([*needed, *few])}
        more = schema.get("additionalProperties", self.rng.random() < self.odd)
        if more and (not tree or self.rng.random() < 0.3):
            tree[self.rng.choice(WORDS)] = self.value(more if isinstance(more, Mapping) else {}, depth + 1)
        return tree


COPIES = 40
"""So many texts are made for each pattern, once."""


@cache
def _copies(pattern: str) -> Sequence[str]:
    made: list[str] = []
    from hypothesis import HealthCheck, Phase, given, seed, settings

    @seed(1)
    @settings(max_examples=COPIES, database=None, phases=[Phase.generate], suppress_health_check=list(HealthCheck))
    @given(st.from_regex(pattern))
    def fill(text: str) -> None:
        made.append(text)

    fill()
    return made


def _matching(pattern: str, number: int) -> str:
    made = _copies(pattern)
    return made[number % len(made)]


@cache
def schema(kind: str) -> Schema:
    return SCHEMAS[kind][1]()


@cache
def _bases(kind: str) -> tuple[Any, ...]:
    """Files of a kind that come with bookmaker, as trees; those of layouts and themes need all their fields."""
    folder = {"layout": shipped("layouts"), "theme": shipped("layouts") / "themes"}.get(kind)
    return tuple(yaml.safe_load(path.read_text("utf-8")) for path in sorted(folder.glob("*.yaml"))) if folder else ()


def over(basis: Any, drawn: Any) -> Any:
    """A tree with another laid over it."""
    if not isinstance(basis, dict) or not isinstance(drawn, dict):
        return drawn
    return {**basis, **{name: over(basis.get(name), value) for name, value in drawn.items()}}


@st.composite
def files(draw: st.DrawFn, kind: str) -> str:
    """A file of a kind that a schema knows: sound, or nearly so."""
    rng = Random(draw(st.integers(0, 2**40)))
    return typed(tree_of(kind, rng))


def tree_of(kind: str, rng: Random) -> Any:
    whole = schema(kind)
    drawn = Shaped(whole, rng, rng.choice([0.0, 0.01, 0.05])).value(whole)
    bases = _bases(kind)
    return over(rng.choice(bases), drawn) if bases and rng.random() < 0.9 else drawn


def typed(tree: Any) -> str:
    """The tree as YAML."""
    return yaml.safe_dump(tree, allow_unicode=True, sort_keys=False, width=100)
