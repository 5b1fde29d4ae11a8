"""A table as people save it: cells with commas, semicolons or tabs between them, each with its place.

In: the bytes of a file. Out: rows of cells, or a diagnostic. A byte order mark, UTF-16 and the encodings of
older spreadsheet programs are understood; so is a first line such as “sep=;”.
"""

from __future__ import annotations

import codecs
import re
from collections import Counter
from dataclasses import dataclass

from bookmaker.source.diagnostics import LINE_BREAK, Collector, Place

SEPARATORS = "\t;,"

_SAID = re.compile(r'"?sep=([,;\t])"?[,;\t ]*', re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Cell:
    """What is written in a cell, without spaces around it, and where it begins."""

    place: Place
    text: str


def read_sheet(data: bytes, file: str, collector: Collector) -> list[list[Cell]]:
    """The rows that hold anything; empty, with a diagnostic, where the file is no table of text."""
    text = _decoded(data)
    if "\0" in text:
        hint = "save the table from your spreadsheet program as CSV (comma or semicolon separated)"
        collector.error(Place(file), "not-a-table", "this is not a table of text", hint)
        return []
    lines = LINE_BREAK.split(text)
    said = _SAID.fullmatch(lines[0])
    separator = said[1] if said else _separator(lines)
    rows = (_cells(line, Place(file, number), separator, collector) for number, line in enumerate(lines, start=1))
    kept = [row for row in rows if any(cell.text for cell in row)]
    return kept[1:] if said else kept


def _decoded(data: bytes) -> str:
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        return data.decode("utf-16", errors="replace")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("cp1252", errors="replace")


def _separator(lines: list[str]) -> str:
    """The one that stands in the most lines; of equals a tab before a semicolon before a comma, which also stands in
    numbers."""
    counts = Counter({mark: sum(mark in line for line in lines) for mark in SEPARATORS})
    return max(SEPARATORS, key=lambda mark: counts[mark])


def _cells(line: str, place: Place, separator: str, collector: Collector) -> list[Cell]:
    """The cells of a line; one in quotes may hold the separator, and two quotes for one."""
    cells = []
    at = 0
    while True:
        start = at + len(line[at:]) - len(line[at:].lstrip(" "))
        if line[start : start + 1] == '"':
            end, text = _quoted(line, start)
            if end < 0:
                here = Place(place.file, place.line, start + 1)
                collector.error(here, "open-quote", "the quotes that begin here are not closed on this line")
                end = len(line)
        else:
            end = line.find(separator, at)
            end = len(line) if end < 0 else end
            text = line[at:end]
        cells.append(Cell(Place(place.file, place.line, start + 1), " ".join(text.split())))
        at = line.find(separator, end) + 1
        if not at:
            return cells


def _quoted(line: str, start: int) -> tuple[int, str]:
    """Where the quotes that begin at `start` end, -1 if nowhere, and what they hold."""
    end = start + 1
    while (end := line.find('"', end)) >= 0 and line[end + 1 : end + 2] == '"':
        end += 2
    return (end + 1 if end >= 0 else -1), line[start + 1 : end if end >= 0 else len(line)].replace('""', '"')
