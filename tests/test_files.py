"""Files are written whole or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker import files
from bookmaker.files import write_whole


def test_writes_all_and_makes_the_folder(tmp_path: Path) -> None:
    write_whole({tmp_path / "new" / "a.pdf": b"a", tmp_path / "new" / "b.pdf": b"b"})
    assert (tmp_path / "new" / "a.pdf").read_bytes() == b"a"
    assert sorted(path.name for path in (tmp_path / "new").iterdir()) == ["a.pdf", "b.pdf"]


def test_a_failure_leaves_the_old_files_and_no_half_ones(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "a.pdf").write_bytes(b"old")
    calls = 0

    def full(handle: int) -> None:
        nonlocal calls
        calls += 1
        if calls == 2:
            raise OSError(28, "No space left on device")

    monkeypatch.setattr(files.os, "fsync", full)
    with pytest.raises(OSError, match="No space"):
        write_whole({tmp_path / "a.pdf": b"new", tmp_path / "b.pdf": b"new"})
    assert [path.name for path in tmp_path.iterdir()] == ["a.pdf"]
    assert (tmp_path / "a.pdf").read_bytes() == b"old"
