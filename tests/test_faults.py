"""Commands in a world that is not as they would like it: old files stay whole, and the message says what to do."""

from __future__ import annotations

import errno
import json
import os
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any, Literal

import pytest

from bookmaker import resources
from bookmaker.typeface import font_files
from tests.cli.running import run
from tests.published import WORKED

GIVENS = WORKED
BOOK = f"""\
book:
  title: Über Łódź
  permission: made for this test
puzzles:
  - id: worked
    title: “Worked” – Ś
    setter: Zoë
    givens: '{GIVENS}'
"""
BOOKMAKER = "from bookmaker.cli import main; main()"
ROOT = Path(__file__).resolve().parent.parent


@pytest.fixture
def book(tmp_path: Path) -> Path:
    folder = tmp_path / "a böok"
    folder.mkdir()
    (folder / "book.yaml").write_text(BOOK, encoding="utf-8")
    return folder


def _elsewhere(
    *arguments: object, cwd: Path, stdout: int = subprocess.PIPE, **environment: Any
) -> subprocess.CompletedProcess[bytes]:
    """A command in a process of its own, with other environment variables."""
    return subprocess.run(
        [sys.executable, "-c", BOOKMAKER, *map(str, arguments)],
        cwd=cwd,
        env={**os.environ, "PYTHONPATH": str(ROOT), **environment},
        stdout=stdout,
        stderr=subprocess.PIPE,
        check=False,
    )


@pytest.mark.parametrize(
    ("number", "said"),
    [(errno.ENOSPC, "free some room"), (errno.EROFS, "another one"), (errno.EACCES, "where you may write")],
    ids=["disk full", "read-only disk", "not allowed"],
)
def test_where_nothing_can_be_written(book: Path, monkeypatch: pytest.MonkeyPatch, number: int, said: str) -> None:
    out = book / "out"
    out.mkdir()
    (out / "book.pdf").write_bytes(b"old")

    def refused(*args: object, **kwargs: object) -> None:
        raise OSError(number, os.strerror(number), ".hidden")

    monkeypatch.setattr("bookmaker.files.tempfile.mkstemp", refused)
    result = run("typeset", book, "--out", out)
    assert result.exit_code == 1
    assert result.stderr.startswith(f"{out / 'book.pdf'}: {os.strerror(number)}\n")
    assert said in result.stderr
    assert "nothing was changed" in result.stderr
    assert [path.name for path in out.iterdir()] == ["book.pdf"]
    assert (out / "book.pdf").read_bytes() == b"old"


@pytest.mark.skipif(sys.platform == "win32", reason="no limit on the size of files there")
def test_a_disk_that_fills_up_while_pages_are_drawn(book: Path) -> None:
    out = book / "out"
    out.mkdir()
    (out / "book.pdf").write_bytes(b"old")
    script = (
        "import resource, signal; signal.signal(signal.SIGXFSZ, signal.SIG_IGN)\n"
        f"resource.setrlimit(resource.RLIMIT_FSIZE, (20_000, 20_000))\n{BOOKMAKER}"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, "typeset", str(book), "--out", str(out)],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    assert ".pdf: File too large" in done.stderr and "nothing was changed" in done.stderr
    assert [path.name for path in out.iterdir()] == ["book.pdf"]
    assert (out / "book.pdf").read_bytes() == b"old"


@pytest.mark.skipif(sys.platform == "win32", reason="no process is forked there")
def test_a_worker_that_ends_too_soon(book: Path) -> None:
    script = (
        "import os, multiprocessing, bookmaker.book.gathering as room\n"
        "multiprocessing.set_start_method('fork')\n"
        f"room.prove_each = lambda *args, **more: os._exit(9)\n{BOOKMAKER}"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, "typeset", str(book), "--out", str(book / "out"), "--workers", "2"],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    assert "Traceback" not in done.stderr and "fewer workers" in done.stderr
    assert not (book / "out").exists()


def test_the_folder_for_the_output_is_a_file(book: Path) -> None:
    result = run("typeset", book, "--out", book / "book.yaml" / "out")
    assert result.exit_code == 1
    assert "name another one" in result.stderr
    assert (book / "book.yaml").read_text(encoding="utf-8") == BOOK


@pytest.mark.skipif(sys.platform == "win32", reason="no limit on the size of files there")
def test_a_report_that_can_not_be_written_is_named_and_taken_up_later(book: Path, tmp_path: Path) -> None:
    (tmp_path / "list.txt").write_text(f"{GIVENS}\n" * 3, encoding="utf-8")
    whole = tmp_path / "whole.jsonl"
    assert run("screen", tmp_path / "list.txt", "--out", whole).exit_code == 0
    room = whole.stat().st_size // 2  # in the midst of the second line
    script = (
        "import resource, signal; signal.signal(signal.SIGXFSZ, signal.SIG_IGN)\n"
        f"resource.setrlimit(resource.RLIMIT_FSIZE, ({room}, {room}))\n{BOOKMAKER}"
    )
    report = tmp_path / "report.jsonl"
    done = subprocess.run(
        [sys.executable, "-c", script, "screen", str(tmp_path / "list.txt"), "--out", str(report)],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    assert done.stderr.startswith(f"{report}: File too large")
    assert "Traceback" not in done.stderr
    assert run("screen", tmp_path / "list.txt", "--out", report).exit_code == 0
    assert [json.loads(line)["verdict"] for line in report.read_text("utf-8").splitlines()] == ["unique"] * 3


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no such device")
def test_a_report_is_a_file(book: Path) -> None:
    result = run("screen", book, "--out", "/dev/full")
    assert result.exit_code == 1
    assert "a report is a file" in result.stderr


def _installation(folder: Path, file: str, harm: Callable[[bytes], bytes | None]) -> Path:
    """A copy of the files that come with bookmaker, one of them harmed, or missing where `harm` leaves nothing."""
    for room in ("fonts", "layouts"):
        shutil.copytree(resources.shipped(room), folder / room)
    content = harm((folder / file).read_bytes())
    (folder / file).unlink()
    if content is not None:
        (folder / file).write_bytes(content)
    return folder / file


@pytest.mark.parametrize(
    ("file", "harm", "said"),
    [
        ("font", lambda _: None, "this font is missing"),
        ("font", lambda whole: whole[:-1] + bytes([whole[-1] ^ 1]), "this font is damaged"),
        ("fonts/fonts.yaml", lambda _: None, "the list of fonts is missing or damaged"),
        ("fonts/fonts.yaml", lambda _: b"\xff", "the list of fonts is missing or damaged"),
    ],
    ids=["font missing", "font damaged", "list missing", "list damaged"],
)
def test_an_installation_with_a_file_that_is_missing_or_damaged(
    book: Path, tmp_path: Path, file: str, harm: Callable[[bytes], bytes | None], said: str
) -> None:
    """Asked in a fresh process, since fonts are read once."""
    shipped = tmp_path / "shipped"
    harmed = _installation(shipped, f"fonts/{next(iter(font_files().values())).name}" if file == "font" else file, harm)
    script = (
        "from pathlib import Path; from bookmaker import resources\n"
        f"resources.shipped = lambda folder: Path({str(shipped)!r}) / folder\n{BOOKMAKER}"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, "typeset", str(book), "--out", str(book / "out")],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    assert done.stderr.startswith(f"{harmed}: {said}: install bookmaker again")
    assert "Traceback" not in done.stderr
    assert not (book / "out").exists()


def test_a_report_may_lie_in_a_new_folder(book: Path, tmp_path: Path) -> None:
    assert run("screen", book, "--out", tmp_path / "new" / "folder" / "report.jsonl").exit_code == 0
    assert [path.name for path in (tmp_path / "new" / "folder").iterdir()] == ["report.jsonl"]


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="whoever may do anything is never refused")
def test_a_folder_that_can_only_be_read(book: Path) -> None:
    book.chmod(0o555)
    try:
        result = run("typeset", book, "--out", book / "out")
    finally:
        book.chmod(0o755)
    assert result.exit_code == 1
    assert "where you may write" in result.stderr
    assert not (book / "out").exists()


@pytest.mark.parametrize(
    "environment",
    [
        {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"},
        {"PYTHONIOENCODING": "cp437"},
        {"PYTHONIOENCODING": "cp1252", "TZ": "Pacific/Chatham"},
    ],
    ids=["locale C", "cp437", "cp1252"],
)
def test_whatever_the_locale_what_is_piped_is_utf8(book: Path, environment: dict[str, Any]) -> None:
    told = _elsewhere("proof", "a böok", "--json", "-", cwd=book.parent, **environment)
    assert told.returncode == 0, told.stderr
    assert json.loads(told.stdout.decode("utf-8"))["puzzles"][0]["title"] == "“Worked” – Ś"
    asked = _elsewhere("explain", "a böok", "wörked", cwd=book.parent, **environment)
    assert asked.returncode == 1
    assert "did you mean “worked”?" in asked.stderr.decode("utf-8")
    assert b"Traceback" not in asked.stderr


@pytest.mark.parametrize("name", ["with a space", "Ünïçødé", "日本", "-dash", "a'b\"c", "50%", "🧩"])
def test_odd_folders(tmp_path: Path, name: str) -> None:
    folder = tmp_path / name
    folder.mkdir()
    (folder / "book.yaml").write_text(BOOK, encoding="utf-8")
    result = run("typeset", "--out", folder / f"out {name}", "--", folder)
    assert result.exit_code == 0, result.output
    assert sorted(path.name for path in (folder / f"out {name}").iterdir()) == ["book.pdf", "key.pdf"]


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="file names are Unicode there")
def test_a_folder_whose_name_is_no_text(tmp_path: Path) -> None:
    folder = os.fsencode(tmp_path) + b"/b\xfcch"
    os.mkdir(folder)  # noqa: PTH102 — a name in bytes
    (Path(os.fsdecode(folder)) / "book.yaml").write_text(BOOK, encoding="utf-8")
    done = _elsewhere("typeset", os.fsdecode(folder), "--out", os.fsdecode(folder + b"/out"), cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    assert "b\N{REPLACEMENT CHARACTER}ch".encode() in done.stdout


@pytest.mark.parametrize(
    "change",
    [
        lambda text: text.replace("\n", "\r\n"),
        lambda text: "\ufeff" + text,
        lambda text: "\ufeff" + text.replace("\n", "\r"),
        lambda text: text.rstrip("\n"),
    ],
    ids=["CRLF", "BOM", "BOM and CR", "no last line end"],
)
def test_ends_of_lines_and_marks_at_the_start(book: Path, change: object) -> None:
    out = book / "out"
    assert run("typeset", book, "--out", out).exit_code == 0
    before = (out / "book.pdf").read_bytes()
    (book / "book.yaml").write_bytes(change(BOOK).encode())  # type: ignore[operator]
    result = run("typeset", book, "--out", out)
    assert result.exit_code == 0, result.output
    assert (out / "book.pdf").read_bytes() == before


@pytest.mark.parametrize("unbuffered", ["", "1"])
def test_a_reader_that_goes_away(book: Path, unbuffered: str) -> None:
    """With a buffer, which is how it is unless PYTHONUNBUFFERED is set, something is left to be written at the end."""
    reading, writing = os.pipe()
    os.close(reading)
    try:
        done = _elsewhere("proof", book, cwd=book, stdout=writing, PYTHONUNBUFFERED=unbuffered)
    finally:
        os.close(writing)
    assert done.returncode == 1
    assert b"Traceback" not in done.stderr
    assert b"Exception" not in done.stderr


@pytest.mark.skipif(sys.platform == "win32", reason="needs a shell")
def test_standard_output_that_is_closed(book: Path) -> None:
    command = [sys.executable, "-c", BOOKMAKER, "typeset", str(book), "--out", str(book / "out")]
    done = subprocess.run(
        ["sh", "-c", 'exec "$@" >&-', "sh", *command],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        stderr=subprocess.PIPE,
        check=False,
    )
    assert done.returncode == 0
    assert b"Traceback" not in done.stderr
    assert sorted(path.name for path in (book / "out").iterdir()) == ["book.pdf", "key.pdf"]


@pytest.mark.parametrize("statement", ["CREATE", "SELECT", "INSERT", "COMMIT"])
@pytest.mark.parametrize(
    "error", [sqlite3.OperationalError("disk I/O error"), sqlite3.DatabaseError("malformed"), OSError(28, "full")]
)
def test_a_cache_that_fails_at_any_statement_never_stops_a_book(
    book: Path, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, statement: str, error: Exception
) -> None:
    class Faulty(sqlite3.Connection):
        def execute(self, sql: str, *more: object) -> sqlite3.Cursor:
            if sql.startswith(statement):
                raise error
            return super().execute(sql, *more)  # type: ignore[arg-type]

        def executemany(self, sql: str, rows: object) -> sqlite3.Cursor:
            if sql.startswith(statement):
                raise error
            return super().executemany(sql, rows)  # type: ignore[arg-type]

        def __exit__(self, *what: Any) -> Literal[False]:
            if statement == "COMMIT":
                self.rollback()
                raise error
            return super().__exit__(*what)

    honest = sqlite3.connect
    monkeypatch.setenv("BOOKMAKER_CACHE", str(tmp_path / "cache"))
    monkeypatch.setattr(
        "bookmaker.proof.cache.sqlite3.connect", lambda *args, **kw: honest(*args, **kw, factory=Faulty)
    )
    assert run("proof", book).exit_code == 0
    monkeypatch.undo()
    monkeypatch.setenv("BOOKMAKER_CACHE", str(tmp_path / "cache"))
    assert run("proof", book).exit_code == 0
