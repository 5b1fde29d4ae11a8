"""Files written whole or not at all.

In: a path and bytes. Out: the file, replaced in one go; on any failure the old file stays as it was.
"""

from __future__ import annotations

import os
import tempfile
from collections.abc import Mapping
from pathlib import Path


def write_whole(files: Mapping[Path, bytes]) -> None:
    """Write all files beside their places first, then move each into place. Raises OSError and leaves no half file."""
    waiting: list[tuple[str, Path]] = []
    try:
        for path, content in files.items():
            path.parent.mkdir(parents=True, exist_ok=True)
            handle, name = tempfile.mkstemp(prefix=f".{path.name}.", dir=path.parent)
            waiting.append((name, path))
            with os.fdopen(handle, "wb") as stream:
                stream.write(content)
                stream.flush()
                os.fsync(stream.fileno())
            Path(name).chmod(0o666 & ~_umask())
        while waiting:
            name, path = waiting[0]
            Path(name).replace(path)
            waiting.pop(0)
    finally:
        for name, _ in waiting:
            Path(name).unlink(missing_ok=True)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
