"""Files are written whole or not at all, all of them or none, whichever call goes wrong."""

from __future__ import annotations

import errno
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from bookmaker.files import Unwritten, write_whole

CALLS = [
    (os, "mkdir"),
    (tempfile, "mkstemp"),
    (os, "fdopen"),
    (os, "fsync"),
    (os, "chmod"),
    (os, "link"),
    (os, "replace"),
]
"""Everything that touches the disk on the way of a file to its place."""

DISK_FULL = OSError(errno.ENOSPC, "No space left on device")


def _contents(folder: Path) -> dict[str, bytes]:
    """Every file below a folder, hidden ones too."""
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def _fail_at(monkeypatch: pytest.MonkeyPatch, module: Any, name: str, nth: int, error: BaseException) -> list[int]:
    """Let the nth call of a function fail; the list counts calls."""
    honest: Callable[..., Any] = getattr(module, name)
    calls = [0]

    def faulty(*args: Any, **kwargs: Any) -> Any:
        calls[0] += 1
        if calls[0] == nth:
            raise error
        return honest(*args, **kwargs)

    monkeypatch.setattr(module, name, faulty)
    return calls


def test_writes_all_and_makes_the_folder(tmp_path: Path) -> None:
    write_whole({tmp_path / "new" / "a.pdf": b"a", tmp_path / "new" / "b.pdf": b"b"})
    assert _contents(tmp_path) == {"new/a.pdf": b"a", "new/b.pdf": b"b"}


@pytest.mark.parametrize("error", [DISK_FULL, KeyboardInterrupt()], ids=["disk full", "interrupt"])
@pytest.mark.parametrize("nth", [1, 2, 3])
@pytest.mark.parametrize(("module", "name"), CALLS, ids=[name for _, name in CALLS])
def test_a_failure_at_any_call_changes_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, module: Any, name: str, nth: int, error: BaseException
) -> None:
    old = {"a.pdf": b"old a", "c.pdf": b"old c"}
    for file, content in old.items():
        (tmp_path / file).write_bytes(content)
    new = {"a.pdf": b"new a", "b/b.pdf": b"new b", "c.pdf": b"new c"}
    with monkeypatch.context() as patch:
        calls = _fail_at(patch, module, name, nth, error)
        try:
            write_whole({tmp_path / file: content for file, content in new.items()})
        except Unwritten as raised:
            assert raised.errno == errno.ENOSPC
            assert Path(str(raised.filename)) in {tmp_path / file for file in new}
            assert _contents(tmp_path) == old
        except KeyboardInterrupt:
            assert _contents(tmp_path) == old
        else:
            # the call was not made so often, or the work could go on without it
            assert calls[0] < nth or name in ("link", "mkdir")
            assert _contents(tmp_path) == new


def test_a_write_that_fails_halfway_changes_nothing(tmp_path: Path) -> None:
    """A real limit of the system on the size of files, met in the middle of the second file."""
    (tmp_path / "a.pdf").write_bytes(b"old")
    script = f"""
import resource, signal
from pathlib import Path
from bookmaker.files import write_whole
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
resource.setrlimit(resource.RLIMIT_FSIZE, (100_000, 100_000))
folder = Path({str(tmp_path)!r})
write_whole({{folder / "a.pdf": b"new", folder / "b.pdf": bytes(500_000)}})
"""
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=False)
    assert "Unwritten" in run.stderr
    assert "b.pdf" in run.stderr
    assert _contents(tmp_path) == {"a.pdf": b"old"}


@pytest.mark.parametrize(("name", "nth"), [("fsync", 1), ("fsync", 2), ("chmod", 2), ("replace", 1), ("replace", 2)])
def test_killed_at_any_write_every_file_is_whole(tmp_path: Path, name: str, nth: int) -> None:
    for file in ("a.pdf", "b.pdf"):
        (tmp_path / file).write_bytes(b"old" * 10_000)
    script = f"""
import os
from pathlib import Path
from bookmaker.files import write_whole
honest, calls = os.{name}, [0]
def killed(*args, **kwargs):
    calls[0] += 1
    if calls[0] == {nth}:
        os._exit(9)
    return honest(*args, **kwargs)
os.{name} = killed
folder = Path({str(tmp_path)!r})
write_whole({{folder / file: b"new" * 10_000 for file in ("a.pdf", "b.pdf")}})
"""
    assert subprocess.run([sys.executable, "-c", script], check=False).returncode == 9
    for file in ("a.pdf", "b.pdf"):
        assert (tmp_path / file).read_bytes() in (b"old" * 10_000, b"new" * 10_000)
    write_whole({tmp_path / file: b"next" for file in ("a.pdf", "b.pdf")})
    assert (tmp_path / "a.pdf").read_bytes() == (tmp_path / "b.pdf").read_bytes() == b"next"


def test_without_links_an_old_file_is_copied(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "a.pdf").write_bytes(b"old")
    monkeypatch.setattr(os, "link", lambda *_: (_ for _ in ()).throw(OSError(errno.EPERM, "no links here")))
    copied: list[Any] = []
    honest = shutil.copy2

    def copy2(*args: Any) -> Any:
        copied.append(args)
        return honest(*args)

    monkeypatch.setattr(shutil, "copy2", copy2)
    _fail_at(monkeypatch, os, "replace", 2, DISK_FULL)
    with pytest.raises(Unwritten):
        write_whole({tmp_path / "a.pdf": b"new", tmp_path / "b.pdf": b"new"})
    assert copied
    monkeypatch.undo()
    assert _contents(tmp_path) == {"a.pdf": b"old"}


def test_a_link_goes_on_leading_where_it_led(tmp_path: Path) -> None:
    (tmp_path / "shelf").mkdir()
    (tmp_path / "a.pdf").symlink_to(tmp_path / "shelf" / "a.pdf")
    write_whole({tmp_path / "a.pdf": b"new"})
    assert (tmp_path / "a.pdf").is_symlink()
    assert (tmp_path / "shelf" / "a.pdf").read_bytes() == b"new"


@pytest.mark.parametrize("name", ["folder", "pipe"])
def test_what_is_no_file_is_left_alone(tmp_path: Path, name: str) -> None:
    (tmp_path / "folder").mkdir()
    os.mkfifo(tmp_path / "pipe")
    with pytest.raises(Unwritten, match="not a file"):
        write_whole({tmp_path / name: b"new"})
    assert (tmp_path / "pipe").is_fifo()
