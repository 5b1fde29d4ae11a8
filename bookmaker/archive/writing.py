"""Puzzles as text that a manifest reads: what spreadsheets and books are written with.

In: nodes as they were typed. Out: YAML of the same values, pictures as blocks, one field a line.
"""

from __future__ import annotations

import textwrap
from collections.abc import Iterable
from typing import Any, ClassVar

import yaml

from bookmaker.puzzle.grid import USUAL_BOXES
from bookmaker.source.placed import Node, Sequence, Word

WIDTH = 100


def plain(node: Node) -> Any:
    """A node as lists, dictionaries and text."""
    match node:
        case Word(value=value):
            return value
        case Sequence(values=values):
            return [plain(value) for value in values]
        case _:
            return {key.value: plain(value) for key, value in node.entries}


def typed(value: Any) -> str:
    """YAML of plain data that reads back as the same."""
    return yaml.dump(value, Dumper=_Dumper, allow_unicode=True, sort_keys=False, width=WIDTH, default_flow_style=False)


def typed_item(entries: Iterable[tuple[str, Any]]) -> str:
    """One item of a list of puzzles, with its fields in this order."""
    text = typed(dict(entries))
    return "- " + textwrap.indent(text, "  ")[2:]


def as_picture(text: str, size: int, empty: str = ".0") -> str:
    """Rows of characters with a gap between boxes and an empty line between bands, and a dot for the `empty` ones; what
    is no plain row of characters stays as it is."""
    if len(text) != size * size or any(char.isspace() for char in text):
        return text
    down, across = USUAL_BOXES.get(size, (size, size))
    rows = []
    for row in range(size):
        if row and row % down == 0:
            rows.append("")
        line = "".join("." if char in empty else char for char in text[row * size : (row + 1) * size])
        rows.append("  ".join(" ".join(line[i : i + across]) for i in range(0, size, across)))
    return "\n".join(rows) + "\n"


class _Dumper(yaml.SafeDumper):
    """Text of several lines is a block; all else as plain as it can be. A manifest knows text only, so that yes and
    2026 need no quotes."""

    yaml_implicit_resolvers: ClassVar[dict[str, Any]] = {}  # type: ignore[misc]

    def ignore_aliases(self, data: Any) -> bool:
        return True

    def increase_indent(self, flow: bool = False, indentless: bool = False) -> None:
        super().increase_indent(flow, False)


def _text(dumper: yaml.SafeDumper, value: str) -> yaml.ScalarNode:
    return dumper.represent_scalar("tag:yaml.org,2002:str", value, style="|" if "\n" in value else None)


_Dumper.add_representer(str, _text)
