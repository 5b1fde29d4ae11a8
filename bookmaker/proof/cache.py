"""What is kept between runs, so that a book printed again proves nothing again.

In: a key. Out: the text kept under it by an earlier run, or None. Kept in one SQLite file in the user's cache folder,
under a hash of all that it depends on: for a proof the puzzle, its rules, the count asked for, the code of the rooms
that prove and grade, and the version of the learning prover. Each entry carries a seal that only its user's own
secret can make (`seal.py`): one that is damaged or foreign is made again. A cache that can't be used at all, or belongs
to somebody else, is done without: it never stops a book.
"""

from __future__ import annotations

import os
import sqlite3
import sys
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import closing, suppress
from functools import cache
from hashlib import sha256
from hmac import compare_digest
from pathlib import Path
from typing import Any, Protocol, TypeVar

from platformdirs import user_cache_path

from bookmaker.proof.seal import key_for, key_in, own, sealed
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.learning import learner

ROOMS_THAT_MATTER = ("puzzle", "solve", "reasons", "rules", "symmetry", "logic", "grade", "trace", "proof")
"""Any change of code in these makes every kept proof stale."""

PATIENCE = 20.0
"""Seconds to wait while another process writes."""

SILENCE = 1.0
"""Seconds of these that are waited without a word."""

Answer = TypeVar("Answer")


AT_ONCE = 500
"""Keys asked for in one question; SQLite takes at least 999."""


class Store(Protocol):
    """Where texts are kept."""

    def get(self, key: str) -> str | None:
        """The text under a key, as it was put; None where there is none."""

    def get_all(self, keys: Iterable[str]) -> dict[str, str]:
        """The texts under those of the keys that have one."""

    def put(self, texts: Iterable[tuple[str, str]]) -> None:
        """Keep texts, each with its key before it."""


class NoStore:
    """Keeps nothing."""

    def get(self, key: str) -> str | None:
        return None

    def get_all(self, keys: Iterable[str]) -> dict[str, str]:
        return {}

    def put(self, texts: Iterable[tuple[str, str]]) -> None:
        return None


class FreshStore:
    """Knows nothing, but keeps what is found for later runs."""

    def __init__(self, store: Store) -> None:
        self.store = store

    def get(self, key: str) -> str | None:
        return None

    def get_all(self, keys: Iterable[str]) -> dict[str, str]:
        return {}

    def put(self, texts: Iterable[tuple[str, str]]) -> None:
        self.store.put(texts)


class FileStore:
    """Keeps texts in a SQLite file; several processes may use it at once, and one may be killed at any moment.

    `waiting` is called once if another process holds the file for more than a moment.
    """

    def __init__(self, file: Path, waiting: Callable[[], None] = lambda: None) -> None:
        self.file = file
        self.waiting = waiting
        self._reading: tuple[int, sqlite3.Connection] | None = None
        self._secret = b""

    def get(self, key: str) -> str | None:
        try:
            rows = self._ask("SELECT text, seal FROM proofs WHERE key = ?", (key,))
            return next((str(text) for text, seal in rows if self._seals(key, text, seal)), None)
        except (sqlite3.Error, OSError):
            self._done_reading()
            return None

    def get_all(self, keys: Iterable[str]) -> dict[str, str]:
        wanted = list(keys)
        found: dict[str, str] = {}
        try:
            for at in range(0, len(wanted), AT_ONCE):
                some = wanted[at : at + AT_ONCE]
                marks = ", ".join("?" * len(some))
                rows = self._ask(f"SELECT key, text, seal FROM proofs WHERE key IN ({marks})", some)
                found.update((key, text) for key, text, seal in rows if self._seals(key, text, seal))
        except (sqlite3.Error, OSError):
            self._done_reading()
        return found

    def put(self, texts: Iterable[tuple[str, str]]) -> None:
        kept = list(texts)
        rows: list[tuple[str, str, str]] = []
        try:
            secret = self._ready()
            rows += [(key, text, sealed(secret, key, text)) for key, text in kept]
            self._write(rows)
        except sqlite3.DatabaseError as error:
            if isinstance(error, sqlite3.OperationalError):
                return  # locked, read-only or full: the next run proves again
            self._done_reading()
            with suppress(OSError, sqlite3.Error):  # not a database any more: begin a new one
                self.file.unlink(missing_ok=True)
                self._ready()
                self._write(rows)
        except OSError:
            return

    def _ask(self, question: str, values: Sequence[str]) -> list[Any]:
        def ask(seconds: float) -> list[Any]:
            reader = self._reader()
            reader.execute(f"PRAGMA busy_timeout = {round(seconds * 1000)}")
            return reader.execute(question, values).fetchall()

        return self._patiently(ask)

    def _reader(self) -> sqlite3.Connection:
        """A connection that stays open from one text to the next; never one of the process that this one came from."""
        if self._reading is None or self._reading[0] != os.getpid():
            own(self.file)
            self._secret = key_in(self.file.parent)
            self._reading = os.getpid(), sqlite3.connect(self.file)
        return self._reading[1]

    def _seals(self, key: str, text: object, seal: object) -> bool:
        """Was this text put here by its owner, under this key?"""
        return isinstance(text, str) and isinstance(seal, str) and compare_digest(sealed(self._secret, key, text), seal)

    def _ready(self) -> bytes:
        """See to it that there is a file that nobody else reads or writes; the key that seals what goes into it."""
        self.file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        secret = key_for(self.file.parent)
        os.close(os.open(self.file, os.O_CREAT | os.O_RDWR, 0o600))
        own(self.file)
        self.file.chmod(0o600)
        return secret

    def _done_reading(self) -> None:
        if self._reading is not None:
            with suppress(sqlite3.Error):
                self._reading[1].close()
            self._reading = None

    def _write(self, rows: list[tuple[str, str, str]]) -> None:
        def write(seconds: float) -> None:
            with closing(sqlite3.connect(self.file, timeout=seconds)) as database, database:
                database.execute("CREATE TABLE IF NOT EXISTS proofs (key TEXT PRIMARY KEY, text TEXT, seal TEXT)")
                database.executemany("INSERT OR REPLACE INTO proofs VALUES (?, ?, ?)", rows)

        self._patiently(write)

    def _patiently(self, work: Callable[[float], Answer]) -> Answer:
        """What comes of work that waits some seconds for the file; tried again with a word where another holds it."""
        try:
            return work(SILENCE)
        except sqlite3.OperationalError as error:
            if getattr(error, "sqlite_errorcode", None) not in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
                raise
        self.waiting()
        self.waiting = lambda: None
        return work(PATIENCE - SILENCE)


def key_of(puzzle: RuledPuzzle, count: int) -> str:
    """The key of a puzzle's findings: a hash of everything they depend on. Rules are frozen values, told by repr."""
    grid = puzzle.grid
    return hash_of(
        code_version(*ROOMS_THAT_MATTER),
        learner(),
        repr((*grid.shape, grid.symbols, grid.first, puzzle.givens, puzzle.rules, count)),
    )


@cache
def code_version(*places: str) -> str:
    """A hash of the code of some rooms or files of bookmaker, and of the Python that runs it."""
    home = Path(__file__).resolve().parent.parent
    named = [home / place for place in places]
    files = sorted(file for place in named for file in ([place] if place.is_file() else _code_in(place)))
    return hash_of(sys.version, *(f"{path.relative_to(home)}\n{path.read_text(encoding='utf-8')}" for path in files))


def _code_in(room: Path) -> Iterator[Path]:
    """The files of a room whose change may change what it says: code, and the messages of languages."""
    return (file for file in room.rglob("*") if file.suffix in (".py", ".ftl"))


def user_store(waiting: Callable[[], None] = lambda: None) -> FileStore:
    """The store in the user's cache folder; `BOOKMAKER_CACHE` names another folder."""
    named = os.environ.get("BOOKMAKER_CACHE")
    folder = Path(named) if named else user_cache_path("bookmaker", appauthor=False, opinion=False)
    if not named and folder.is_dir():
        with suppress(OSError):
            folder.chmod(0o700)  # an earlier version made it for all to read
    return FileStore(folder / "proofs.sqlite", waiting)


def hash_of(*parts: str) -> str:
    """One hash of several texts; where one ends and the next begins counts."""
    total = sha256()
    for part in parts:
        total.update(f"{len(part)}:{part}".encode())
    return total.hexdigest()
