"""Values read from a YAML file that remember where they stand.

In: nodes made by `manifest.yamlfile` (and by tests). Out: typed values, or diagnostics at the exact character.

Three shapes, as in YAML: `Word` (any scalar, kept as the text that was typed), `Sequence`, `Table`. The
reading methods (`text`, `whole`, `items`, `fields`) report what is wrong to a `Collector` and return None, so that
a reader can go on and find the next mistake.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Mapping
from dataclasses import dataclass
from typing import TypeAlias

from bookmaker.source.diagnostics import Collector, Place, nearest, quoted
from bookmaker.visible import STRAY


@dataclass(frozen=True, slots=True)
class Word:
    """A scalar, kept as the text that was typed.

    `origins` says where the value stands in the file when that is not simply at `place`: for each stretch that lies
    there unbroken (a line of a block, the text between two escapes) its offset in the value and its place.
    """

    place: Place
    value: str
    origins: tuple[tuple[int, Place], ...] = ()

    def at(self, line: int, column: int) -> Place:
        """Place of a character of the value; its line and column in the value are counted from 0."""
        before = self.value.splitlines(keepends=True)[:line]
        return self.at_offset(sum(map(len, before)) + column)

    def at_offset(self, offset: int) -> Place:
        """Place of a character of the value by its offset."""
        index = bisect_right(self.origins, offset, key=lambda origin: origin[0]) - 1
        begins, start = self.origins[max(index, 0)] if self.origins else (0, self.place)
        return Place(start.file, start.line, start.column + max(offset - begins, 0))


@dataclass(frozen=True, slots=True)
class Sequence:
    """A list of nodes."""

    place: Place
    values: tuple[Node, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """A mapping from keys, each with its own place, to nodes."""

    place: Place
    entries: tuple[tuple[Word, Node], ...]

    def get(self, key: str) -> Node | None:
        """The value under a key, or None."""
        return next((value for word, value in self.entries if word.value == key), None)


Node: TypeAlias = Word | Sequence | Table


_WHOLE = re.compile(r"[+-]?[0-9]{1,9}")


def read_text(node: Node, what: str, collector: Collector) -> str | None:
    """The node's text, or a diagnostic that names `what` was expected, or where a character stands that shows
    nothing."""
    if isinstance(node, Word):
        if stray := STRAY.search(node.value):
            said = f"{what} holds a character that cannot be printed (U+{ord(stray.group()):04X})"
            hint = "delete it; it may have come along with a text that was pasted"
            collector.error(node.at_offset(stray.start()), "stray-character", said, hint)
            return None
        return node.value
    collector.error(node.place, "not-text", f"{what} should be a piece of text", _stray_colon(node))
    return None


def read_whole(node: Node, what: str, collector: Collector, least: int, most: int) -> int | None:
    """A whole number between `least` and `most`, or a diagnostic."""
    if not isinstance(node, Word):
        collector.error(node.place, "not-a-number", f"{what} should be a whole number")
        return None
    if not node.value:
        collector.error(node.place, "no-value", f"{what} is left empty", f"write a whole number from {least} to {most}")
        return None
    if not _WHOLE.fullmatch(node.value):
        said, hint = f"{what} should be a whole number, not {quoted(node.value)}", f"write one from {least} to {most}"
        collector.error(node.place, "not-a-number", said, hint)
        return None
    number = int(node.value)
    if least <= number <= most:
        return number
    collector.error(node.place, "out-of-range", f"{what} should be from {least} to {most}, not {number}")
    return None


def read_choice(node: Node, what: str, collector: Collector, choices: tuple[str, ...]) -> str | None:
    """One of a few words, or a diagnostic that suggests the nearest."""
    word = read_text(node, what, collector)
    if word is None or word in choices:
        return word
    said = f"{what} can't be {quoted(word)}" if word else f"{what} is left empty"
    collector.error(node.place, "unknown-word", said, nearest(word, choices))
    return None


def read_switch(node: Node, what: str, collector: Collector) -> bool | None:
    """yes or no."""
    word = read_choice(node, what, collector, ("yes", "no", "true", "false"))
    return None if word is None else word in ("yes", "true")


def read_items(node: Node, what: str, collector: Collector) -> tuple[Node, ...]:
    """The members of a list; a single word counts as a list of one; a table is a diagnostic."""
    if isinstance(node, Sequence):
        return node.values
    if isinstance(node, Word):
        return (node,)
    collector.error(node.place, "not-a-list", f"{what} should be a list, each item on a line of its own after a dash")
    return ()


def read_fields(
    node: Node, what: str, collector: Collector, known: tuple[str, ...], needed: tuple[str, ...] = ()
) -> Mapping[str, Node]:
    """The named fields of a table; unknown and missing names are diagnostics, known ones are returned all the same."""
    if not isinstance(node, Table):
        hint = "its names: " + ", ".join(known)
        collector.error(node.place, "not-a-table", f"{what} should be lines of “name: value”", hint)
        return {}
    fields: dict[str, Node] = {}
    suggested = ""
    for key, value in node.entries:
        if key.value in known:
            fields[key.value] = value
        else:
            hint = nearest(key.value, known)
            suggested += hint
            collector.error(key.place, "unknown-key", f"{what} has no {quoted(key.value)}", hint)
    for name in needed:
        if name not in fields and f"“{name}”" not in suggested:
            collector.error(node.place, "missing-key", f"{what} needs “{name}”", f"add a line “{name}: …”")
    return fields


def _stray_colon(node: Node) -> str:
    """Text with a colon in it, such as “Estuary: a tide”, reads as a table; say so."""
    return "if the text contains “: ”, put it in quotes: 'like: this'" if isinstance(node, Table) else ""
