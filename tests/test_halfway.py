"""A set of files whose process is killed between two of them: the next run puts the old ones back, and nothing else."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from bookmaker import files, halfway
from bookmaker.files import write_whole
from tests.cli.running import run

SCRIPT = """
import os, sys
from pathlib import Path
from bookmaker.files import write_whole
honest, calls = getattr(os, sys.argv[1]), [0]
def killed(*args, **kwargs):
    calls[0] += 1
    if calls[0] == int(sys.argv[2]):
        os._exit(9)
    return honest(*args, **kwargs)
setattr(os, sys.argv[1], killed)
write_whole({Path(name): b"new " + name.encode() for name in sys.argv[3:]})
"""
OLD = {"a.pdf": b"old a", "b.pdf": b"old b"}
NAMES = ("a.pdf", "b.pdf", "c.pdf")
NEW = {name: b"new " + name.encode() for name in NAMES}


def killed_at(folder: Path, call: str, nth: int) -> bool:
    """Write three files over two in a process that ends at the nth call of a function of `os`. Was it killed?"""
    for name, content in OLD.items():
        (folder / name).write_bytes(content)
    code = subprocess.run([sys.executable, "-c", SCRIPT, call, str(nth), *NAMES], cwd=folder, check=False).returncode
    assert code in (0, 9)
    return code == 9


def contents(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def half_new(folder: Path) -> None:
    """The first file is new, the others are as they were; the note is the first that is moved."""
    assert killed_at(folder, "replace", 3)
    assert {name: (folder / name).read_bytes() for name in OLD} == {**OLD, "a.pdf": NEW["a.pdf"]}


@pytest.mark.parametrize(("call", "nth"), [("replace", n) for n in range(1, 6)] + [("unlink", n) for n in range(1, 9)])
def test_after_a_kill_the_next_run_finds_all_files_old_or_all_new(tmp_path: Path, call: str, nth: int) -> None:
    killed = killed_at(tmp_path, call, nth)
    write_whole({tmp_path / "other": b"other"})
    found = contents(tmp_path)
    hidden = [name for name in found if name.startswith(halfway.HIDDEN)]
    shown = {name: found[name] for name in found if name not in hidden}
    assert shown in ({**OLD, "other": b"other"}, {**NEW, "other": b"other"})
    assert halfway.NOTE not in found
    if not killed or (call == "replace" and 2 <= nth <= 4):
        assert not hidden


def test_what_was_put_back_is_said(tmp_path: Path) -> None:
    half_new(tmp_path)
    (tmp_path / "list.txt").write_text("." * 81 + "\n")
    result = run("proof", tmp_path / "list.txt", "--json", tmp_path / "r.json")
    assert "killed while it put new files in place, so these were put back" in result.stderr
    assert all(str(tmp_path / name) in result.stderr for name in NAMES)
    assert {name: (tmp_path / name).read_bytes() for name in OLD} == OLD
    assert not files.undone


def test_what_somebody_has_changed_since_is_left_alone(tmp_path: Path) -> None:
    half_new(tmp_path)
    (tmp_path / "a.pdf").write_bytes(b"my own")
    (tmp_path / "c.pdf").write_bytes(b"my own, too")
    write_whole({tmp_path / "other": b""})
    assert contents(tmp_path) == {**OLD, "a.pdf": b"my own", "c.pdf": b"my own, too", "other": b""}


def test_preflight_tells_of_it(tmp_path: Path) -> None:
    half_new(tmp_path)
    told = run("preflight", tmp_path / "b.pdf")
    assert told.exit_code == 1
    assert "some of a.pdf, b.pdf and c.pdf are new and some old [half-new]" in told.stderr
    (tmp_path / "d.pdf").write_bytes(b"")
    assert "half-new" not in run("preflight", tmp_path / "d.pdf").stderr
    write_whole({tmp_path / "other": b""})
    assert "half-new" not in run("preflight", tmp_path / "b.pdf").stderr


FORGED: list[Any] = [
    [["../outside", ".bookmaker-x", None, "MARK"]],
    [["outside/file", ".bookmaker-x", None, "MARK"]],
    [["..", ".bookmaker-x", None, "MARK"]],
    [["mine", "../outside", None, "MARK"]],
    [["mine", ".bookmaker-x", "../outside", "MARK"]],
    [["mine", "mine", "mine", "MARK"]],
    [["mine", ".bookmaker-x", None, None]],
    [["mine"]],
    [[1, 2, 3, 4]],
    [["missing", ".bookmaker-x", None, None]],
    {"mine": 1},
    None,
    "x" * (halfway.LONGEST + 1),
]


@pytest.mark.parametrize("said", FORGED, ids=range(len(FORGED)))
def test_a_forged_note_reaches_nothing(tmp_path: Path, said: Any) -> None:
    """Not even where it knows the content of a file, since it may name files of its own folder only."""
    folder = tmp_path / "folder"
    folder.mkdir()
    for file in (tmp_path / "outside", folder / "mine"):
        file.write_bytes(b"whole")
    mark = halfway._mark(folder / "mine")
    (folder / halfway.NOTE).write_text(json.dumps(said).replace("MARK", str(mark)))
    write_whole({folder / "a": b"a", folder / "b": b"b"})
    assert contents(folder) == {"mine": b"whole", "a": b"a", "b": b"b"}
    assert (tmp_path / "outside").read_bytes() == b"whole"


@pytest.mark.parametrize("kind", ["pipe", "link", "no text", "deep"])
def test_a_note_that_is_none_is_passed_over(tmp_path: Path, kind: str) -> None:
    note = tmp_path / halfway.NOTE
    match kind:
        case "pipe":
            os.mkfifo(note)
        case "link":
            (tmp_path / "target").write_text("[]")
            note.symlink_to(tmp_path / "target")
        case "no text":
            note.write_bytes(b"\xff\xfe")
        case "deep":
            note.write_text("[" * 100_000)
    write_whole({tmp_path / "a": b"a", tmp_path / "b": b"b"})
    assert {name: content for name, content in contents(tmp_path).items() if name != "target"} == {"a": b"a", "b": b"b"}
    assert kind != "link" or (tmp_path / "target").read_text() == "[]"
