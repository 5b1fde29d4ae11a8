"""Files written whole or not at all, and all of them or none.

In: paths, and what goes into them. Out: the files, each replaced in one go. On any failure, also an interrupt, the old
files are as they were. A process killed at any moment leaves each file whole, old or new, and at worst hidden ones
beside them; killed between two files of a set, it leaves a note (`halfway.py`), and the next process that writes into
the folder puts the old ones back. Of two processes that write into one folder, the files of the one or of the other are
there at the end.
"""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator, Mapping, Sequence
from contextlib import ExitStack, contextmanager
from errno import EINVAL
from pathlib import Path

from bookmaker import halfway
from bookmaker.alone import alone_in
from bookmaker.stopping import held_back


class NotOrdinary(OSError):
    """A pipe or a device, named in `filename`: to read it might never come to an end."""


def ordinary(path: Path) -> Path:
    """The same path. Raises NotOrdinary where it leads to something else than a file or a folder."""
    if path.exists() and not (path.is_file() or path.is_dir()):
        raise NotOrdinary(EINVAL, "this is not an ordinary file", str(path))
    return path


written: list[Path] = []
"""All that this process has written."""


undone: list[Path] = []
"""Files that this process found in a set that was half new, and put back as they were before that."""


class Unwritten(OSError):
    """A file that could not be written, named in `filename`; all files are as they were before."""


def write_whole(files: Mapping[Path, bytes]) -> None:
    """Write all files beside their places first, then move each into place. Raises Unwritten."""
    with replacing() as beside:
        for path, content in files.items():
            with _named(path):
                beside(path).write_bytes(content)


class Beside:
    """Makes hidden files beside the places of others; called with a path, it gives the one that is to take its place,
    always the same. Raises Unwritten where there can be none."""

    def __init__(self, tidy: ExitStack) -> None:
        self._tidy = tidy
        self.moves: dict[Path, tuple[Path, Path]] = {}

    def __call__(self, path: Path) -> Path:
        if path not in self.moves:
            with _named(path):
                place = _place_of(path)
                self.moves[path] = place, self.fresh(place)
        return self.moves[path][1]

    def fresh(self, place: Path) -> Path:
        """An empty hidden file beside a place, gone at the end."""
        place.parent.mkdir(parents=True, exist_ok=True)
        handle, name = tempfile.mkstemp(prefix=halfway.HIDDEN, dir=place.parent)
        self._tidy.callback(Path(name).unlink, missing_ok=True)
        os.close(handle)
        return Path(name)


@contextmanager
def replacing() -> Iterator[Beside]:
    """Fill the files that `Beside` gives; when all went well, each is moved into its place. Raises Unwritten."""
    with ExitStack() as tidy:
        beside = Beside(tidy)
        yield beside
        for path, (_, fresh) in beside.moves.items():
            with _named(path):
                _settle(fresh)
        folders = sorted({place.parent for place, _ in beside.moves.values()})
        for folder in folders:
            tidy.enter_context(alone_in(folder))
        with held_back():
            for folder in folders:
                with _named(folder):
                    undone.extend(halfway.undo(folder))
            _move_all(beside, folders, tidy)
            written.extend(beside.moves)
            tidy.close()


def _move_all(beside: Beside, folders: Sequence[Path], tidy: ExitStack) -> None:
    """Move each file into its place; where there are several, with notes by which all is undone if one move fails."""
    if len(beside.moves) == 1:
        for path, (place, fresh) in beside.moves.items():
            with _named(path):
                fresh.replace(place)
        return
    moves: dict[Path, halfway.Move] = {}
    for path, (place, fresh) in beside.moves.items():
        with _named(path):
            moves[path] = halfway.Move(place, fresh, _kept(place, fresh, tidy))
    try:
        for folder in folders:
            mine = [move for move in moves.values() if move.place.parent == folder]
            with _named(mine[0].place):
                halfway.note(folder, mine, beside.fresh(mine[0].place))
        for path, move in moves.items():
            with _named(path):
                move.fresh.replace(move.place)
        for folder in folders:
            with _named(folder):
                (folder / halfway.NOTE).unlink()
    except BaseException:
        try:
            for folder in folders:
                halfway.undo(folder)
        except OSError:
            tidy.pop_all()  # what is hidden is still needed
            raise
        raise


@contextmanager
def naming(path: Path, kind: type[OSError] = OSError) -> Iterator[None]:
    """Give an OSError that names no file this one's name, and make it one of that kind."""
    try:
        yield
    except OSError as error:
        if error.filename is None:
            raise kind(error.errno, error.strerror or str(error), str(path)) from error
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


def _settle(fresh: Path) -> None:
    """See to it that a file is on the disk whatever happens, and may be read by whoever may read new files."""
    with fresh.open("rb+") as stream:
        os.fsync(stream.fileno())
    fresh.chmod(0o666 & ~_umask())


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


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
