"""Two processes of which each wants the same place to itself.

In: a folder, or an open file. Out: it is this process's alone, by an advisory lock of the system that goes away with
the process, however this ends. Where the system or the disk has no such locks, nothing is held.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

if sys.platform != "win32":
    import fcntl


class Taken(OSError):
    """Another process has it, named in `filename`."""


@contextmanager
def alone_in(folder: Path) -> Iterator[None]:
    """Wait until no other process is in this, and be alone in it; for what takes a moment."""
    if sys.platform == "win32":
        yield
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        with suppress(OSError):
            fcntl.flock(handle, fcntl.LOCK_EX)
        yield
    finally:
        os.close(handle)


@contextmanager
def at_work_on(file: Path) -> Iterator[None]:
    """Be the only one at work on a file that is replaced now and then; for what takes long. Raises Taken.

    The lock is on a hidden file beside it: the file itself is another one whenever it was replaced.
    """
    if sys.platform == "win32":
        yield
        return
    beside = file.with_name(f".{file.name}.lock")
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
        handle = os.open(beside, os.O_RDWR | os.O_CREAT, 0o600)
    except OSError as error:
        raise OSError(error.errno, error.strerror, str(file)) from error
    try:
        claim(handle, file)
        try:
            yield
        finally:
            beside.unlink(missing_ok=True)
    finally:
        os.close(handle)


def claim(handle: int, file: Path) -> None:
    """Be the only one that has the open file claimed, until it is closed. Raises Taken where another process is."""
    if sys.platform == "win32":
        return
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError as error:
        raise Taken(error.errno, "another bookmaker is at work on this file", str(file)) from None
    except OSError:
        return
