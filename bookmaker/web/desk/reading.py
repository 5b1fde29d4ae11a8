"""The book as it is on disk → what the desk shows of it, and what has changed since it was last read.

In: the path of a book. Out: `Reading`s: the puzzles with their pictures, and the troubles. A book with mistakes changes
nothing but the troubles: the last good one stays.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from bookmaker.book.rulestext import rules_text
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.book.wording import kinds
from bookmaker.ink.svg import Drawing
from bookmaker.language import catalogue
from bookmaker.manifest import load
from bookmaker.manifest.entries import Entry, Manifest
from bookmaker.manifest.permission import unprintable
from bookmaker.proof.cache import hash_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.source.diagnostic_text import shown
from bookmaker.source.diagnostics import LINE_BREAK, BookErrors, Diagnostic, Place, in_file_order
from bookmaker.web.desk.proving import Examined
from bookmaker.web.facts import shape_told
from bookmaker.web.pictures import drawn, new_drawing

_ID = re.compile(r"""^\s*(?:-\s+)?["']?(?:id|pick)["']?\s*:\s*["']?([A-Za-z0-9-]+)""")
_RUN = re.compile(r"[rR](\d{1,2})[cC](\d{1,2})(?:\s*[-–]\s*[rR](\d{1,2})[cC](\d{1,2}))?")


@dataclass(slots=True)
class Reading:
    """The book as it was last read without mistakes, and what is known of its puzzles."""

    path: Path
    archives: tuple[Path, ...] = ()
    manifest: Manifest | None = None
    mistakes: tuple[Diagnostic, ...] = ()
    """What keeps the files from being read as they are now."""
    known: dict[RuledPuzzle, Examined] = field(default_factory=dict)
    drawing: Drawing = field(default_factory=new_drawing)
    pictures: dict[RuledPuzzle, tuple[str, dict[str, Any]]] = field(default_factory=dict)
    sheets: dict[tuple[object, ...], dict[str, Any]] = field(default_factory=dict)
    """What is shown of puzzles, as it was last made."""

    def read(self) -> None:
        """Read the files again."""
        try:
            self.manifest = load(self.path, self.archives)
            self.mistakes = ()
        except BookErrors as found:
            self.mistakes = found.diagnostics
            return
        except OSError as error:
            said = f"this can't be read: {error.strerror or error}"
            self.mistakes = (Diagnostic(Place(str(self.path)), "unreadable", said),)
            return
        self.pictures = {
            entry.puzzle: self.pictures.get(entry.puzzle) or drawn(entry.puzzle, self.drawing) for entry in self.entries
        }

    @property
    def entries(self) -> tuple[Entry, ...]:
        return self.manifest.entries if self.manifest else ()

    def unknown(self) -> list[Entry]:
        """The puzzles that have still to be proven."""
        return [entry for entry in self.entries if entry.puzzle not in self.known]

    def puzzles(self) -> dict[str, dict[str, Any]]:
        """What is shown of each puzzle, by id; `version` changes with anything of it."""
        sheets: dict[tuple[object, ...], dict[str, Any]] = {}
        for entry in self.entries:
            known = entry.puzzle in self.known
            key = (entry.id, entry.title, entry.setter, entry.note, entry.puzzle, known)
            sheets[key] = self.sheets.get(key) or self._sheet(entry)
        self.sheets = sheets
        return {str(key[0]): data for key, data in sheets.items()}

    def _sheet(self, entry: Entry) -> dict[str, Any]:
        picture, about = self.pictures[entry.puzzle]
        rules = rules_text(catalogue("en"), entry.puzzle)
        examined = self.known.get(entry.puzzle)
        data: dict[str, Any] = {
            **about,
            "id": entry.id,
            "title": smart_quotes(entry.title) if entry.title else ", ".join(kinds(catalogue("en"), entry.puzzle)),
            "setter": entry.setter,
            "kinds": list(kinds(catalogue("en"), entry.puzzle)),
            "note": smart_quotes(entry.note),
            "rules": [rules.plain, *(mark.text for mark in rules.marks)],
            "digits": list(entry.puzzle.givens),
            **shape_told(entry.puzzle.grid),
            "picture": picture,
            "known": {**examined.said, "name": self._band(examined)} if examined else None,
        }
        return data | {"version": hash_of(json.dumps(data, ensure_ascii=False))[:16]}

    def _band(self, examined: Examined) -> str:
        band = examined.said["band"]
        return self.manifest.band_names[band - 1] if band and self.manifest else ""

    def diagnostics(self) -> list[dict[str, Any]]:
        """Everything that is wrong or worth a look, in file order, with the puzzle and the cells that it speaks of."""
        found = list(self.mistakes)
        if self.manifest and not self.mistakes:
            found += self.manifest.warnings
            found += unprintable(self.entries, press=False)
            for entry in self.entries:
                if examined := self.known.get(entry.puzzle):
                    found += examined.diagnostics(entry)
            found += self._look_alikes()
        lines = _Lines()
        return [_told(diagnostic, lines) for diagnostic in in_file_order(found)]

    def _look_alikes(self) -> Iterator[Diagnostic]:
        first: dict[str, Entry] = {}
        for entry in self.entries:
            examined = self.known.get(entry.puzzle)
            if examined and examined.key:
                before = first.setdefault(examined.key, entry)
                if before is not entry and before.puzzle != entry.puzzle:
                    said = f"“{entry.id}” is the same puzzle as “{before.id}” in disguise"
                    yield Diagnostic(entry.place, "look-alike", said, "“bookmaker twins” tells the move", warning=True)

    def folders(self) -> frozenset[Path]:
        """Where the files of the book lie: its folder and its archives."""
        home = self.path if self.path.is_dir() else self.path.parent
        files = {Path(entry.place.file).parent for entry in self.entries}
        outside = {folder for folder in files if not folder.resolve().is_relative_to(home.resolve())}
        return frozenset({home, *self.archives, *outside})


class _Lines:
    """Lines of files, read once."""

    def __init__(self) -> None:
        self.files: dict[str, list[str]] = {}

    def of(self, file: str) -> list[str]:
        if file not in self.files:
            try:
                text = Path(file).read_bytes().decode("utf-8-sig", errors="replace")
            except OSError:
                text = ""
            self.files[file] = LINE_BREAK.split(text)
        return self.files[file]

    def look_up(self, file: str, line: int) -> str | None:
        lines = self.of(file)
        return lines[line - 1] if 0 < line <= len(lines) else None


def _told(diagnostic: Diagnostic, lines: _Lines) -> dict[str, Any]:
    place = diagnostic.place
    excerpt = shown([diagnostic], lines.look_up).split("\n")[1:]
    hint = f"    {diagnostic.hint}"
    if diagnostic.hint and excerpt and excerpt[-1] == hint:
        excerpt.pop()
    here = lines.look_up(place.file, place.line) or ""
    return {
        "place": str(place),
        "text": diagnostic.text,
        "hint": diagnostic.hint,
        "excerpt": "\n".join(line[4:] for line in excerpt),
        "warning": diagnostic.warning,
        "puzzle": _puzzle_at(lines.of(place.file)[: place.line]),
        "cells": list(_cells(diagnostic.text) or _cells(here)),
    }


def _puzzle_at(lines: list[str]) -> str:
    """The id that stands nearest above the last of these lines."""
    return next((found[1] for line in reversed(lines) if (found := _ID.match(line))), "")


def _cells(text: str) -> Iterable[list[int]]:
    """Rows and columns, from 0, of the cells that a text names."""
    found: dict[tuple[int, int], None] = {}
    for named in _RUN.finditer(text):
        row, column = int(named[1]) - 1, int(named[2]) - 1
        last = (int(named[3]) - 1, int(named[4]) - 1) if named[3] else (row, column)
        steps = max(abs(last[0] - row), abs(last[1] - column))
        for step in range(steps + 1):
            along = step / steps if steps else 0.0
            cell = round(row + (last[0] - row) * along), round(column + (last[1] - column) * along)
            found[cell] = None
    return [list(cell) for cell in found]


def changed(before: Mapping[str, Mapping[str, Any]], now: Mapping[str, Mapping[str, Any]]) -> list[Mapping[str, Any]]:
    """The puzzles that are new or other than they were."""
    return [data for id, data in now.items() if id not in before or before[id]["version"] != data["version"]]
