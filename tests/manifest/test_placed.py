"""Reading typed values from the tree: right values pass, wrong ones are told at their place."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from bookmaker.manifest.yamlfile import parse_yaml
from bookmaker.placed import Node, read_choice, read_fields, read_items, read_switch, read_text, read_whole
from bookmaker.trouble import Desk


def parsed(text: str) -> Node:
    tree = parse_yaml(text, "x.yaml", Desk())
    assert tree is not None
    return tree


def read(text: str, reader: Callable[[Node, Desk], Any]) -> tuple[Any, list[str]]:
    desk = Desk()
    return reader(parsed(text), desk), [f"{t.place.line}:{t.place.column} {t.code}" for t in desk.found]


@pytest.mark.parametrize(
    ("text", "value", "troubles"),
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
def test_whole_numbers(text: str, value: int | None, troubles: list[str]) -> None:
    assert read(text, lambda node, desk: read_whole(node, "the total", desk, 1, 9)) == (value, troubles)


@pytest.mark.parametrize(("text", "value"), [("yes", True), ("true", True), ("no", False), ("false", False)])
def test_switches(text: str, value: bool) -> None:
    assert read(text, lambda node, desk: read_switch(node, "it", desk)) == (value, [])


def test_a_switch_that_is_none() -> None:
    assert read("maybe", lambda node, desk: read_switch(node, "it", desk)) == (None, ["1:1 unknown-word"])


def test_choices_suggest_the_nearest() -> None:
    desk = Desk()
    assert read_choice(parsed("fallin"), "the diagonal", desk, ("falling", "rising", "both")) is None
    assert desk.found[0].hint == "did you mean “falling”?"


def test_text_and_items() -> None:
    assert read("a b", lambda node, desk: read_text(node, "it", desk)) == ("a b", [])
    assert read("[a]", lambda node, desk: read_text(node, "it", desk)) == (None, ["1:1 not-text"])
    assert read("[a, b]", lambda node, desk: len(read_items(node, "it", desk))) == (2, [])
    assert read("a", lambda node, desk: len(read_items(node, "it", desk))) == (1, [])
    assert read("{a: b}", lambda node, desk: len(read_items(node, "it", desk))) == (0, ["1:1 not-a-list"])


def test_fields() -> None:
    def fields(node: Node, desk: Desk) -> list[str]:
        return list(read_fields(node, "the cage", desk, ("cells", "total"), ("cells",)))

    assert read("{cells: a, total: 3}", fields) == (["cells", "total"], [])
    assert read("{total: 3}", fields) == (["total"], ["1:1 missing-key"])
    assert read("{colour: red, cells: a}", fields) == (["cells"], ["1:2 unknown-key"])
    assert read("{cels: a}", fields) == ([], ["1:2 unknown-key"]), "what is misspelt is not missing as well"
    assert read("[cells]", fields) == ([], ["1:1 not-a-table"])
