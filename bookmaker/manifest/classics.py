"""A plain text list of classics as a book.

In: text with a puzzle on each line: 81 characters, `.` or `0` for an empty cell, then its name if it has one. Lines
that begin with `#` are comments. Out: entries whose ids are their numbers in the list.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from bookmaker.manifest.entries import Entry
from bookmaker.manifest.givens import check_clashes, read_givens
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.source import file_limits as limits
from bookmaker.source.diagnostics import LINE_BREAK, Collector, Place
from bookmaker.source.placed import Word

_LINE = re.compile(r"\s*(?P<digits>[^\s#]+)\s*(?P<name>.*)")


def read_classics(text: str, file: str, collector: Collector) -> Iterator[Entry]:
    """The puzzles of a list; faulty lines are reported and left out."""
    number, own = 0, Collector()
    for number, _, entry in read_lines(LINE_BREAK.split(text), file, own):  # noqa: B007  (the last number counts)
        if entry is not None:
            yield entry
    if number > 1 and [diagnostic.code for diagnostic in own.found] == ["list-line"] * number:
        hint = "a list has 81 characters a line, a manifest goes by a name that ends in .yaml"
        collector.error(Place(file), "no-list", "no line of this file is a puzzle; is it the right file?", hint)
    else:
        collector.found.extend(own.found)
    if number == 0:
        collector.error(
            Place(file), "empty-file", "the file holds no puzzle", "a list of classics has 81 characters a line"
        )
    elif not any(collector.errors()):
        hint = "a manifest (a .yaml file) has room for setters and permission lines"
        collector.warn(Place(file), "no-permission", "a plain list has no permission lines", hint)


def read_lines(lines: Iterable[str], file: str, collector: Collector) -> Iterator[tuple[int, Place, Entry | None]]:
    """Each line that holds a puzzle: the puzzle's number in the list, its place, and its entry unless it is faulty."""
    number = 0
    for line_number, line in enumerate(lines, start=1):
        found = _LINE.match(line)
        if found is not None:
            number += 1
            place = Place(file, line_number, found.start("digits") + 1)
            yield number, place, _entry(found, place, number, collector)


def _entry(found: re.Match[str], place: Place, number: int, collector: Collector) -> Entry | None:
    digits, name = found["digits"], found["name"].strip()
    if len(digits) != len(CLASSIC.cells):
        said = f"this line begins with {len(digits)} characters without a space and should begin with 81"
        hint = "a manifest goes by a name that ends in .yaml" if digits.endswith(":") else ""
        collector.error(
            place, "list-line", said, hint or "81 characters, a dot or 0 for an empty cell; then a name, if any"
        )
        return None
    givens = read_givens(Word(place, digits), CLASSIC, collector)
    if givens is None:
        return None
    check_clashes(givens, CLASSIC.houses, CLASSIC, collector)
    title = "" if name.startswith("#") else name[: limits.LINE]
    return Entry(str(number), Puzzle(CLASSIC, givens.digits), place, title)
