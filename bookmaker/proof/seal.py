"""A secret of the user's own, with which what is kept is sealed: nobody else can put an entry in that passes.

In: the folder of a cache. Out: a key, and seals made with it (HMAC-SHA-256, RFC 2104). The key lies beside the cache in
a file that only its owner reads. Raises OSError where there can be none.
"""

from __future__ import annotations

import hmac
import os
import secrets
import tempfile
from contextlib import suppress
from pathlib import Path

NAME = "seal.key"
LENGTH = 32
"""Bytes of the key: as many as the seal has (RFC 2104, section 3)."""


class ForeignCache(OSError):
    """A cache that belongs to somebody else, or a key that others could have read."""


def key_in(folder: Path) -> bytes:
    """The key in a folder. Raises OSError where there is none that can be trusted."""
    file = folder / NAME
    own(file)
    key = file.read_bytes()
    if len(key) != LENGTH or (os.name == "posix" and file.stat().st_mode & 0o077):
        raise ForeignCache(f"{file} is no key")
    return key


def key_for(folder: Path) -> bytes:
    """The key in a folder that is to be written into; a new one where there is none to be trusted.

    Of several processes that make one at once, all go on with that of the first.
    """
    with suppress(FileNotFoundError):
        try:
            return key_in(folder)
        except ForeignCache:
            (folder / NAME).unlink()
    handle, name = tempfile.mkstemp(prefix=".seal-", dir=folder)  # which nobody else may read or write
    fresh = Path(name)
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.write(secrets.token_bytes(LENGTH))
        try:
            (folder / NAME).hardlink_to(fresh)
        except FileExistsError:
            pass
        except OSError:  # a disk without links
            fresh.replace(folder / NAME)
    finally:
        fresh.unlink(missing_ok=True)
    return key_in(folder)


def sealed(key: bytes, *parts: str) -> str:
    """The seal of some texts; where one ends and the next begins counts."""
    total = hmac.new(key, digestmod="sha256")
    for part in parts:
        total.update(f"{len(part)}:{part}".encode())
    return total.hexdigest()


def own(file: Path) -> None:
    """Raises ForeignCache where a file belongs to somebody else, FileNotFoundError where there is none."""
    owner = file.stat().st_uid
    if os.name == "posix" and owner != os.geteuid():
        raise ForeignCache(f"{file} belongs to somebody else")
