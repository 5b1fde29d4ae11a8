"""Books in a folder for tests: files by name, loaded or read for their troubles."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.manifest.model import Manifest
from bookmaker.trouble import BookTroubles, Trouble
from bookmaker.trouble_text import shown
from tests.published import SEVENTEEN

GIVENS = SEVENTEEN
"""Here only a picture of a grid without a clash."""

HEAD = "book:\n  title: Tides\n  permission: by permission\npuzzles:\n"
"""Four lines that every small book below begins with; what is under test begins on line 5."""


def write(folder: Path, files: dict[str, str | bytes]) -> None:
    """Write files, with their folders."""
    for name, content in files.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content if isinstance(content, bytes) else content.encode())


def read(folder: Path, files: dict[str, str | bytes], name: str = "book.yaml") -> Manifest:
    """The manifest of a sound book."""
    write(folder, files)
    try:
        return load(folder / name)
    except BookTroubles as found:
        pytest.fail(shown(found.troubles))


def troubles_of(folder: Path, files: dict[str, str | bytes], name: str = "book.yaml") -> tuple[Trouble, ...]:
    """The mistakes of a faulty book, without its warnings."""
    write(folder, files)
    with pytest.raises(BookTroubles) as found:
        load(folder / name)
    return tuple(trouble for trouble in found.value.troubles if not trouble.warning)
