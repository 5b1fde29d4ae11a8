"""Reading typed values from the tree: right values pass, wrong ones are told at their place."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, read_choice, read_fields, read_items, read_switch, read_text, read_whole
from bookmaker.source.yamlfile import parse_yaml


def parsed(text: str) -> Node:
    tree = parse_yaml(text, "x.yaml", Collector())
    assert tree is not None
    return tree


def read(text: str, reader: Callable[[Node, Collector], Any]) -> tuple[Any, list[str]]:
    collector = Collector()
    return reader(parsed(text), collector), [f"{t.place.line}:{t.place.column} {t.code}" for t in collector.found]


@pytest.mark.parametrize(
    ("text", "value", "diagnostics"),
    [
        ("7", 7, []),
        ("+7", 7, []),
        ("'07'", 7, []),
        ("0", None, ["1:1 out-of-range"]),
        ("10", None, ["1:1 out-of-range"]),
        ("-2", None, ["1:1 out-of-range"]),
        ("seven", None, ["1:1 not-a-number"]),
        ("7.0", None, ["1:1 not-a-number"]),
        ("٧", None, ["1:1 not-a-number"]),
        ("1_0", None, ["1:1 not-a-number"]),
        ("''", None, ["1:1 no-value"]),
        ("[7]", None, ["1:1 not-a-number"]),
    ],
)
def test_whole_numbers(text: str, value: int | None, diagnostics: list[str]) -> None:
    assert read(text, lambda node, collector: read_whole(node, "the total", collector, 1, 9)) == (value, diagnostics)


@pytest.mark.parametrize(("text", "value"), [("yes", True), ("true", True), ("no", False), ("false", False)])
def test_switches(text: str, value: bool) -> None:
    assert read(text, lambda node, collector: read_switch(node, "it", collector)) == (value, [])


def test_a_switch_that_is_none() -> None:
    assert read("maybe", lambda node, collector: read_switch(node, "it", collector)) == (None, ["1:1 unknown-word"])


def test_choices_suggest_the_nearest() -> None:
    collector = Collector()
    assert read_choice(parsed("fallin"), "the diagonal", collector, ("falling", "rising", "both")) is None
    assert collector.found[0].hint == "did you mean “falling”?"


def test_text_and_items() -> None:
    assert read("a b", lambda node, collector: read_text(node, "it", collector)) == ("a b", [])
    assert read("[a]", lambda node, collector: read_text(node, "it", collector)) == (None, ["1:1 not-text"])
    assert read("[a, b]", lambda node, collector: len(read_items(node, "it", collector))) == (2, [])
    assert read("a", lambda node, collector: len(read_items(node, "it", collector))) == (1, [])
    assert read("{a: b}", lambda node, collector: len(read_items(node, "it", collector))) == (0, ["1:1 not-a-list"])


def test_fields() -> None:
    def fields(node: Node, collector: Collector) -> list[str]:
        return list(read_fields(node, "the cage", collector, ("cells", "total"), ("cells",)))

    assert read("{cells: a, total: 3}", fields) == (["cells", "total"], [])
    assert read("{total: 3}", fields) == (["total"], ["1:1 missing-key"])
    assert read("{colour: red, cells: a}", fields) == (["cells"], ["1:2 unknown-key"])
    assert read("{cels: a}", fields) == ([], ["1:2 unknown-key"]), "what is misspelt is not missing as well"
    assert read("[cells]", fields) == ([], ["1:1 not-a-table"])
