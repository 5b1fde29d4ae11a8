"""Lines that lost the name above them: YAML takes them for more of the text before.

Without its “givens: |” a picture becomes a part of the setter's name; without “rules:” the rules become rows of the
picture. In: the fields of a puzzle. Out: the fields as they were meant, so that whatever else is wrong with them is
found as well, with a diagnostic at the first line that went astray.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import NamedTuple

from bookmaker.puzzle.grid import LARGEST, SMALLEST
from bookmaker.source.diagnostics import Collector, Place, quoted
from bookmaker.source.placed import Node, Word
from bookmaker.source.textgrid import drawn_in

PICTURES = ("givens", "regions", "solution", "holes")

_NAMED = re.compile(r"(?:- *)?[A-Za-z][\w-]*:(?:\s|$)")
"""The beginning of a line “name: value”, in a picture."""

_HEADING = re.compile(r"(givens|regions|rules|solution): *[|>]?")
"""A line that is set in too far if it stands in other text."""


class _Line(NamedTuple):
    """A line of a word: its text, where it begins in the word's value, and where it stands in the file."""

    text: str
    offset: int
    place: Place


def parted(fields: Mapping[str, Node], collector: Collector) -> Mapping[str, Node]:
    """The fields, each without the lines that it has swallowed; a picture found so stands under its own name."""
    meant = dict(fields)
    left = list(fields)
    while left:
        name = left.pop()
        node = meant[name]
        if name == "rules" or not isinstance(node, Word) or len(node.origins) < 2:
            continue
        lines = _lines(node)
        if at := _named_line(name, lines):
            kind = _say_named(name, lines[at], collector)
            begin = at + 1
        elif name in PICTURES and _begun_wrong(name, lines):
            said = f"{quoted(lines[0].text)} follows “{name}:” where an upright bar is needed"
            collector.error(lines[0].place, "no-bar", said, f"write “{name}: |”")
            meant[name] = _word(lines[1:])
            continue
        elif found := _picture(name, lines):
            begin, kind = found
            at = begin
            kind = next((free for free in (kind, *PICTURES) if free not in meant), kind)
            said = f"this picture has no name of its own and has become part of “{name}”"
            hint = f"write “{kind}: |” above it, in the same column as “{name}”"
            collector.error(lines[at].place, "lost-name", said, hint)
        else:
            continue
        meant[name] = _word(lines[:at]) if at else Word(node.place, "")
        left.append(name)
        if kind in PICTURES and kind not in meant and lines[begin:]:
            meant[kind] = _word(lines[begin:])
            left.append(kind)
    return meant


def _say_named(name: str, line: _Line, collector: Collector) -> str:
    """Report a line with a name of its own inside a field; the name of the picture that it begins, if it does."""
    text = "a row of the picture" if name in PICTURES else "more of the text"
    if line.text.startswith("-"):
        hint = "a new item of the list begins in the column of the dashes above"
    else:
        hint = f"begin it in the same column as “{name}”; kinds of rules go under “rules:”, indented further"
    collector.error(line.place, "lost-name", f"this line is taken as {text} under “{name}”", hint)
    heading = _HEADING.fullmatch(line.text)
    return heading[1] if heading else ""


def _begun_wrong(name: str, lines: list[_Line]) -> bool:
    """Does a sign that is no row stand before the rows of a picture?"""
    sign, *rows = lines
    return len(sign.text) < SMALLEST <= len(rows) and all(_kind(row.text) == name for row in rows)


def _named_line(name: str, lines: list[_Line]) -> int:
    """The first line after the first that begins with a name of its own; 0 where there is none."""
    lost = _NAMED.match if name in PICTURES else _HEADING.fullmatch
    return next((at for at, line in enumerate(lines) if at and lost(line.text)), 0)


def _lines(word: Word) -> list[_Line]:
    ends = [*(offset for offset, _ in word.origins[1:]), len(word.value)]
    return [
        _Line(word.value[offset:end].rstrip(), offset, place)
        for (offset, place), end in zip(word.origins, ends, strict=True)
    ]


def _word(lines: list[_Line]) -> Word:
    """A word of these lines, one below the other whatever they were folded to."""
    starts = [0]
    for line in lines[:-1]:
        starts.append(starts[-1] + len(line.text) + 1)
    origins = tuple((start, line.place) for start, line in zip(starts, lines, strict=True))
    return Word(lines[0].place, "\n".join(line.text for line in lines), origins if len(lines) > 1 else ())


def _picture(name: str, lines: list[_Line]) -> tuple[int, str] | None:
    """Where the picture begins that these lines end in, and what it shows; None where they end in what they should."""
    kinds = [_kind(line.text) for line in lines]
    begin = len(kinds)
    while begin and kinds[-1] and (kinds[begin - 1] == kinds[-1] or not drawn_in(lines[begin - 1].text)):
        begin -= 1
    rows = [row for line in lines[begin:] if (row := drawn_in(line.text))]
    shows = "givens" if name in ("solution", "holes") else name
    if len(rows) < SMALLEST or kinds[-1] == shows or (name in PICTURES and not begin):
        return None
    if kinds[-1] == "regions" and any(len(row) != len(rows) for row in rows):  # letters are words as well
        return None
    return begin, kinds[-1]


def _kind(text: str) -> str:
    """What a line looks like a row of: “givens”, “regions” or "" for none."""
    signs = "".join(char for char, _, _ in drawn_in(text))
    if not SMALLEST <= len(signs) <= LARGEST:
        return ""
    apart = all(len(part) == 1 for part in text.split())
    if re.fullmatch(r"[0-9.]+", signs) or (apart and re.search(r"[0-9.]", signs)):
        return "givens"
    return "regions" if signs.isalpha() and (apart or " " not in text.strip()) else ""
