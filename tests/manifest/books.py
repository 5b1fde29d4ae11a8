"""Books in a folder for tests: files by name, loaded or read for their diagnostics."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.manifest.entries import Manifest
from bookmaker.source.diagnostic_text import shown
from bookmaker.source.diagnostics import BookErrors, Diagnostic
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
    except BookErrors as found:
        pytest.fail(shown(found.diagnostics))


def troubles_of(folder: Path, files: dict[str, str | bytes], name: str = "book.yaml") -> tuple[Diagnostic, ...]:
    """The mistakes of a faulty book, without its warnings."""
    write(folder, files)
    with pytest.raises(BookErrors) as found:
        load(folder / name)
    return tuple(diagnostic for diagnostic in found.value.diagnostics if not diagnostic.warning)
