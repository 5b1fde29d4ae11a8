"""Catalogues as they are written: the messages of a folder, parsed."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from pathlib import Path

from fluent.syntax import FluentParser
from fluent.syntax.ast import BaseNode, Junk, Message, TextElement, VariableReference

HOME = Path(__file__).resolve().parents[2] / "bookmaker" / "language"


@cache
def messages(language: str) -> dict[str, Message]:
    """The messages of one folder by name. Fails for what is no message, and for a name that stands twice."""
    found: dict[str, Message] = {}
    for file in sorted((HOME / language).glob("*.ftl")):
        for entry in FluentParser().parse(file.read_text(encoding="utf-8")).body:
            assert not isinstance(entry, Junk), f"{file.name}: {entry.content}"
            if isinstance(entry, Message):
                assert entry.id.name not in found, f"{entry.id.name} stands twice"
                found[entry.id.name] = entry
    return found


def attributes(message: Message) -> set[str]:
    """The names of a message's attributes."""
    return {attribute.id.name for attribute in message.attributes}


def variables(message: Message) -> set[str]:
    """The arguments that some wording prints or chooses by."""
    return {node.id.name for node in nodes(message) if isinstance(node, VariableReference)}


def texts(message: Message) -> list[str]:
    """The pieces of text of all wordings."""
    return [node.value.strip() for node in nodes(message) if isinstance(node, TextElement)]


def nodes(node: object) -> Iterator[BaseNode]:
    """A part of a message and all parts of it."""
    if isinstance(node, BaseNode):
        yield node
        for child in vars(node).values():
            yield from nodes(child)
    elif isinstance(node, list):
        for child in node:
            yield from nodes(child)
