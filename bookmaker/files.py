"""Files written whole or not at all, and all of them or none.

In: paths and bytes. Out: the files, each replaced in one go. On any failure, also an interrupt, the old files are as
they were. A process killed at any moment leaves each file whole, old or new, and at worst a hidden one beside them.
"""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator, Mapping
from contextlib import ExitStack, contextmanager
from pathlib import Path


class Unwritten(OSError):
    """A file that could not be written, named in `filename`; all files are as they were before."""


def write_whole(files: Mapping[Path, bytes]) -> None:
    """Write all files beside their places first, then move each into place. Raises Unwritten."""
    moves: list[tuple[Path, Path, Path]] = []
    with ExitStack() as tidy:
        for path, content in files.items():
            with _named(path):
                place = _place_of(path)
                moves.append((path, place, _written_beside(place, content, tidy)))
        with ExitStack() as undo:
            for path, place, fresh in moves:
                with _named(path):
                    undo.callback(_restore, place, _kept(place, fresh, tidy))
                    fresh.replace(place)
            undo.pop_all()


@contextmanager
def naming(path: Path) -> Iterator[None]:
    """Give an OSError that names no file this one's name."""
    try:
        yield
    except OSError as error:
        if error.filename is None:
            raise OSError(error.errno, error.strerror or str(error), str(path)) from error
        raise


@contextmanager
def _named(path: Path) -> Iterator[None]:
    try:
        yield
    except OSError as error:
        raise Unwritten(error.errno, error.strerror or str(error), str(path)) from error


def _place_of(path: Path) -> Path:
    """Where a path leads, through links. Raises OSError where something else than a file is there."""
    place = Path(os.path.realpath(path))
    if place.exists() and not place.is_file():
        raise OSError(None, "this is not a file that could be replaced")
    return place


def _written_beside(place: Path, content: bytes, tidy: ExitStack) -> Path:
    place.parent.mkdir(parents=True, exist_ok=True)
    handle, name = tempfile.mkstemp(prefix=".bookmaker-", dir=place.parent)
    tidy.callback(Path(name).unlink, missing_ok=True)
    with os.fdopen(handle, "wb") as stream:
        stream.write(content)
        stream.flush()
        os.fsync(stream.fileno())
    Path(name).chmod(0o666 & ~_umask())
    return Path(name)


def _kept(place: Path, fresh: Path, tidy: ExitStack) -> Path | None:
    """A second name for the old file, until all new ones are in place; None where there is no old file."""
    if not place.exists():
        return None
    second = fresh.with_name(f"{fresh.name}-old")
    tidy.callback(second.unlink, missing_ok=True)
    try:
        os.link(place, second)
    except OSError:  # not every file system has links
        shutil.copy2(place, second)
    return second


def _restore(place: Path, old: Path | None) -> None:
    if old is None:
        place.unlink(missing_ok=True)
    else:
        old.replace(place)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
