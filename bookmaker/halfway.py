"""A set of files whose process was killed between two of them: what is needed to put the old ones back.

In: files about to be moved into places of one folder. Out: a hidden note beside them, there from before the first move
until after the last, and gone in one go; so that a note whose process has ended tells of a set that is half new. The
next process that writes into the folder undoes such a set, as far as nobody has touched it since. What a note says is
not trusted: it can name files of its own folder only, and only what it knows for the new file is replaced.

Sets in several folders have a note in each: killed while the notes go, one folder may be all new and one all old.
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from hashlib import file_digest
from pathlib import Path
from typing import Any

from bookmaker.alone import alone_in

HIDDEN = ".bookmaker-"
"""How the names of all files begin that are there only while others are written."""

NOTE = f"{HIDDEN}halfway"

LONGEST = 1_000_000
"""Bytes of a note; the moments of a long story are a thousand files."""


@dataclass(frozen=True)
class Move:
    """A new file `fresh` that is to take the place of one that has `old` for a second name, if there is one."""

    place: Path
    fresh: Path
    old: Path | None


@dataclass(frozen=True)
class _Noted:
    place: Path
    fresh: Path
    old: Path | None
    mark: str
    """What the new file is known by."""


def note(folder: Path, moves: Sequence[Move], fresh: Path) -> None:
    """Leave a note of moves into a folder, written into the hidden file `fresh` first. To be called alone in it."""
    lines = [
        [move.place.name, move.fresh.name, move.old.name if move.old else None, _mark(move.fresh)] for move in moves
    ]
    with fresh.open("w", encoding="utf-8") as stream:
        json.dump(lines, stream)
        stream.flush()
        os.fsync(stream.fileno())
    fresh.replace(folder / NOTE)


def undo(folder: Path) -> list[Path]:
    """Put back what was there before a set that is half new, and take its hidden files away. To be called alone in the
    folder. The places that the set had."""
    found = _noted(folder)
    for one in found:
        if _mark(one.place) == one.mark:
            if one.old is None:
                one.place.unlink()
            elif one.old.exists():
                one.old.replace(one.place)
    (folder / NOTE).unlink(missing_ok=True)
    for one in found:
        one.fresh.unlink(missing_ok=True)
        if one.old is not None:
            one.old.unlink(missing_ok=True)
    return [one.place for one in found]


def halfway(file: Path) -> list[Path]:
    """The set that a file belongs to, if it is half new and nobody is at work on it."""
    place = Path(os.path.realpath(file))
    with suppress(OSError), alone_in(place.parent):
        places = [one.place for one in _noted(place.parent)]
        return places if place in places else []
    return []


def _noted(folder: Path) -> list[_Noted]:
    """What a note says; nothing where there is none, or none that could be ours."""
    file = folder / NOTE
    if file.is_symlink() or not file.is_file() or file.stat().st_size > LONGEST:
        return []
    try:
        return list(_read(folder, json.loads(file.read_text(encoding="utf-8"))))
    except (ValueError, RecursionError):
        return []


def _read(folder: Path, lines: Any) -> Iterator[_Noted]:
    """Raises ValueError for what no note says."""
    if not isinstance(lines, list):
        raise ValueError
    for line in lines:
        if not isinstance(line, list) or len(line) != 4:
            raise ValueError
        place, fresh, old, mark = line
        if not _named(place) or not _hidden(fresh) or not (old is None or _hidden(old)) or not isinstance(mark, str):
            raise ValueError
        yield _Noted(folder / place, folder / fresh, folder / old if old else None, mark)


def _named(name: Any) -> bool:
    """Can this be the name of a file in a folder?"""
    return isinstance(name, str) and name not in ("", ".", "..") and not {"/", "\\", "\0"} & {*name}


def _hidden(name: Any) -> bool:
    return _named(name) and name.startswith(HIDDEN) and name != NOTE


def _mark(file: Path) -> str | None:
    """What a file is known by, whatever name it has; None where there is none that could be read."""
    try:
        if file.is_symlink():
            return None
        with file.open("rb") as stream:
            return file_digest(stream, "sha256").hexdigest()
    except OSError:
        return None
