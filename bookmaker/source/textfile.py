"""A file as text.

In: a path, and the place to point at if there is no such file. Out: the text, or None after a diagnostic.
"""

from __future__ import annotations

import codecs
from pathlib import Path

from bookmaker.source.diagnostics import LINE_BREAK, Collector, Place, nearest
from bookmaker.source.file_limits import FILE_BYTES

_SAVE_AGAIN = "save the file again with the encoding UTF-8; most editors ask for it under “Save as”"


def read_file(path: Path, shown: str, asked: Place, collector: Collector, most: int = 0) -> str | None:
    """The text of a UTF-8 file, without a byte order mark. `shown` is its name as the user would write it; the file has
    at most `most` bytes, or those that a book's file may have."""
    most = most or FILE_BYTES
    try:
        if not path.is_file():
            _say_missing(path, shown, asked, collector)
            return None
        with path.open("rb") as stream:
            data = stream.read(most + 1)
    except OSError as error:
        collector.error(asked, "unreadable", f"“{shown}” cannot be opened: {(error.strerror or str(error)).lower()}")
        return None
    if len(data) > most:
        said = f"the file is larger than {most // 1_000_000} million characters, which no book needs"
        collector.error(
            Place(shown), "file-large", said, "is it the right file? a large book can be split up with “include:”"
        )
        return None
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        collector.error(Place(shown), "not-utf-8", "the file is saved as UTF-16, not as UTF-8", _SAVE_AGAIN)
        return None
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        lines = LINE_BREAK.split(data[: error.start].decode("utf-8-sig", errors="replace"))
        place = Place(shown, len(lines), len(lines[-1]) + 1)
        collector.error(place, "not-utf-8", "from here the file is not UTF-8 text", _SAVE_AGAIN)
        return None


def _say_missing(path: Path, shown: str, asked: Place, collector: Collector) -> None:
    if path.is_dir():
        collector.error(asked, "is-folder", f"“{shown}” is a folder, not a file")
    elif path.exists():
        collector.error(asked, "unreadable", f"“{shown}” is not an ordinary file")
    elif not path.parent.is_dir():
        collector.error(asked, "no-file", f"there is no folder “{Path(shown).parent}”")
    else:
        beside = [each.name for each in path.parent.iterdir() if each.suffix == path.suffix or each.stem == path.stem]
        beside = beside or [each.name for each in path.parent.iterdir()]
        hint = nearest(path.name, beside) if beside else ""
        collector.error(asked, "no-file", f"there is no file “{shown}”", hint if hint.startswith("did") else "")
