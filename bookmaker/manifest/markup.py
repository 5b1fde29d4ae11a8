"""Simple marked-up text: paragraphs separated by empty lines, *slanted* and **bold** words.

In: a field of text. Out: its paragraphs, each as runs of one style, or a trouble at an asterisk without its mate. An
asterisk with a space on both sides, or \\*, is printed as it is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Literal, TypeAlias

from bookmaker.manifest.texts import read_note
from bookmaker.placed import Node, Word
from bookmaker.trouble import Desk

Style: TypeAlias = Literal["plain", "italic", "bold"]


@dataclass(frozen=True, slots=True)
class Run:
    """Words of one style."""

    text: str
    style: Style = "plain"


Runs: TypeAlias = tuple[Run, ...]

_MARK = re.compile(r"(?<!\\)(\*\*|\*)")
_ALONE = re.compile(r"(?<=\s)(\*+)(?=\s)")


def read_marked_up(fields: Mapping[str, Node], name: str, desk: Desk) -> tuple[Runs, ...]:
    """The paragraphs of a field; none where it is missing, empty or faulty."""
    before = len(desk.found)
    text = read_note(fields, name, desk)
    if len(desk.found) > before or not text:
        return ()
    node = fields[name]
    assert isinstance(node, Word)
    if _unmatched(node, name, desk):
        return ()
    return tuple(tuple(_runs(" ".join(part.split()))) for part in re.split(r"\n\s*\n", text))


def _unmatched(node: Word, name: str, desk: Desk) -> bool:
    """Is there an asterisk without its mate in its paragraph? It is reported where it stands."""
    start = 0
    for part in re.split(r"(\n[ \t]*\n)", node.value):
        waiting: list[tuple[str, int]] = []
        for match in _MARK.finditer(_ALONE.sub(lambda alone: "_" * len(alone[1]), part)):
            if waiting and waiting[-1][0] == match[1]:
                waiting.pop()
            else:
                waiting.append((match[1], start + match.start()))
        if waiting:
            mark, at = waiting[0]
            hint = "*slanted* and **bold** words have asterisks on both sides; write \\* for one to be printed"
            desk.error(node.at_offset(at), "lone-asterisk", f"“{name}” has a {mark} without its mate", hint)
            return True
        start += len(part)
    return False


def _runs(text: str) -> Iterator[Run]:
    style: Style = "plain"
    text = _ALONE.sub(lambda alone: "\\*" * len(alone[1]), text)
    for piece in _MARK.split(text):
        if piece in ("*", "**"):
            marked: Style = "bold" if piece == "**" else "italic"
            style = "plain" if style == marked else marked
        elif piece:
            yield Run(piece.replace("\\*", "*"), style)
