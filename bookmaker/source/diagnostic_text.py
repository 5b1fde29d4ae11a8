"""Diagnostics as a person reads them: the place, what is wrong, the line itself with carets, how to mend it.

In: diagnostics in order and a way to look up lines of files. Out: plain text for a terminal.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from functools import cache
from pathlib import Path
from unicodedata import category, combining, east_asian_width

from bookmaker.source.diagnostics import LINE_BREAK, Diagnostic
from bookmaker.visible import visible

LineReader = Callable[[str, int], str | None]
"""The text of a line, counted from 1, of a file by the name that places give it; None where there is none."""

MOST_SHOWN = 200
"""Diagnostics shown before the rest is only counted."""

MOST_COLUMNS = 110
"""Columns of a source line that are shown."""

_UNSEEN = "Cf"
"""The category of characters that take no room: in a line of a file they may be what is wrong with it."""


def shown(diagnostics: Iterable[Diagnostic], read_line: LineReader | None = None) -> str:
    """All diagnostics, each with its source lines. Without `read_line` the files are read from disk."""
    look_up = read_line or _lines_on_disk()
    said = [_one(diagnostic, look_up) for diagnostic in diagnostics]
    if len(said) > MOST_SHOWN:
        said[MOST_SHOWN:] = [f"… and {len(said) - MOST_SHOWN} more like these"]
    return "\n".join(said)


def _one(diagnostic: Diagnostic, look_up: LineReader) -> str:
    text = f"{diagnostic.place}: {'worth a look: ' if diagnostic.warning else ''}{diagnostic.text} [{diagnostic.code}]"
    hint = [f"    {diagnostic.hint}"] if diagnostic.hint else []
    return "\n".join(_printable(line) for line in (text, *_excerpt(diagnostic, look_up), *hint))


def _excerpt(diagnostic: Diagnostic, look_up: LineReader) -> Iterator[str]:
    """Every line that the diagnostic points into, with a caret under each place."""
    places = [
        place for place in (diagnostic.place, *diagnostic.also) if place.line and place.file == diagnostic.place.file
    ]
    numbers = sorted({place.line for place in places})
    width = max((len(str(number)) for number in numbers), default=0)
    for before, number in zip([0, *numbers], numbers, strict=False):
        line = look_up(diagnostic.place.file, number)
        if line is None:
            continue
        if before and number > before + 1:
            yield f"    {'':{width}} ⋮"
        columns = [place.column for place in places if place.line == number and place.column]
        source, carets = _with_carets(_printable(line), columns)
        yield f"    {number:{width}} | {source}".rstrip()
        if carets:
            yield f"    {'':{width}} | {carets}"


def _with_carets(line: str, columns: list[int]) -> tuple[str, str]:
    """The line and its carets, both cut to the stretch around the first caret where the line is long."""
    skipped = 0
    if len(line) > MOST_COLUMNS:
        skipped = max(0, min(columns, default=1) - 1 - MOST_COLUMNS // 2)
        line = ("…" if skipped else "") + line[skipped + bool(skipped) : skipped + MOST_COLUMNS]
    stops = {_columns(line[: column - 1 - skipped]) for column in columns if 0 < column - skipped <= MOST_COLUMNS}
    return line, "".join("^" if at in stops else " " for at in range(max(stops, default=-1) + 1))


def _columns(text: str) -> int:
    """Columns that a text takes on a terminal."""
    return sum(0 if combining(char) else 2 if east_asian_width(char) in "WF" else 1 for char in text)


def _printable(line: str) -> str:
    """The line without characters that would move the cursor or change colours; a tab shows as an arrow."""
    line = visible(line.replace("\t", "→").replace("\n", "\v"))
    return "".join("\N{REPLACEMENT CHARACTER}" if category(char) == _UNSEEN else char for char in line)


def _lines_on_disk() -> LineReader:
    @cache
    def lines(file: str) -> list[str]:
        try:
            return LINE_BREAK.split(Path(file).read_bytes().decode("utf-8-sig", errors="replace"))
        except OSError:
            return []

    def look_up(file: str, line: int) -> str | None:
        return lines(file)[line - 1] if line <= len(lines(file)) else None

    return look_up
