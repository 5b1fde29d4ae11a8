"""Inputs that are no files, outputs that are links, homes that cannot be written, clocks that go backwards."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.cli.running import run
from tests.hostile.writers import laid_out

ROOT = Path(__file__).resolve().parents[2]

posix = pytest.mark.skipif(sys.platform == "win32", reason="no pipes in folders there")


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(laid_out(tmp_path / "folder"))
    return tmp_path / "folder"


READERS = {
    "proof": ["proof", "PIPE"],
    "typeset": ["typeset", "PIPE", "--out", "o"],
    "preflight": ["preflight", "PIPE"],
    "against": ["preflight", "out/book.pdf", "--against", "PIPE"],
    "screen": ["screen", "PIPE", "--out", "r.jsonl"],
    "report": ["screen", "small.yaml", "--out", "PIPE"],
    "intake": ["intake", "PIPE", "--out", "store"],
    "assemble": ["assemble", "PIPE", "--out", "o"],
    "draft": ["draft", "PIPE", "--out", "o.yaml"],
    "drafted": ["draft", "wish.yaml", "--out", "PIPE"],
    "mend": ["mend", "PIPE", "calm"],
    "tune": ["tune", "PIPE", "calm", "--fewer-givens"],
    "times": ["times", ".", "PIPE"],
    "calibration": ["proof", ".", "--calibration", "PIPE"],
    "printed": ["archive", "store", "--printed-in", "PIPE"],
    "json": ["proof", ".", "--json", "PIPE"],
    "review": ["review", "PIPE", "--out", "o.html"],
    "twins": ["twins", "PIPE"],
}


@posix
@pytest.mark.parametrize("words", READERS.values(), ids=READERS)
@pytest.mark.parametrize("kind", ["pipe", "device"])
def test_a_pipe_or_a_device_is_refused_at_once(folder: Path, words: list[str], kind: str) -> None:
    """Nobody writes into the pipe, and the device never ends: who reads either waits for ever."""
    if kind == "pipe":
        os.mkfifo("pipe")
    place = {"pipe": "pipe", "device": "/dev/zero"}[kind]
    result = run(*(place if word == "PIPE" else word for word in words))
    assert result.exit_code == 1, result.output
    assert result.exception is None or isinstance(result.exception, SystemExit)
    assert result.stderr


@posix
def test_a_picture_that_is_a_pipe_is_none(folder: Path) -> None:
    os.mkfifo("quay.png")
    text = (folder / "book.yaml").read_text(encoding="utf-8").replace("ours}", "ours, cover: {image: quay.png}}")
    (folder / "book.yaml").write_text(text, encoding="utf-8")
    result = run("proof", ".")
    assert result.exit_code == 1 and "quay.png" in result.stderr


@posix
def test_a_link_in_place_of_an_output_stays_a_link(folder: Path) -> None:
    """The file that it leads to is replaced, as by any other program; nothing beside it is touched."""
    elsewhere = folder / "elsewhere"
    elsewhere.mkdir()
    (elsewhere / "kept.pdf").write_bytes(b"old")
    (folder / "out" / "book.pdf").unlink()
    (folder / "out" / "book.pdf").symlink_to(elsewhere / "kept.pdf")
    assert run("typeset", ".", "--out", "out").exit_code == 0
    assert (folder / "out" / "book.pdf").is_symlink()
    assert (elsewhere / "kept.pdf").read_bytes().startswith(b"%PDF")
    assert [path.name for path in elsewhere.iterdir()] == ["kept.pdf"]


@posix
@pytest.mark.parametrize("leads", ["/dev/null", "."], ids=["to a device", "to a folder"])
def test_a_link_that_leads_to_no_file_is_refused(folder: Path, leads: str) -> None:
    (folder / "out" / "book.pdf").unlink()
    (folder / "out" / "book.pdf").symlink_to(leads)
    result = run("typeset", ".", "--out", "out")
    assert result.exit_code == 1
    assert "book.pdf" in result.stderr and "nothing was changed" in result.stderr
    assert (folder / "out" / "key.pdf").read_bytes() == b"old"


@pytest.mark.parametrize("home", ["missing", "a file", "read-only"])
def test_a_home_that_cannot_be_written_stops_nothing(folder: Path, home: str) -> None:
    place = folder / "home"
    if home == "a file":
        place.write_text("no folder")
    elif home == "read-only":
        place.mkdir(mode=0o500)
    environment = {name: value for name, value in os.environ.items() if not name.startswith(("XDG_", "BOOKMAKER"))}
    done = subprocess.run(
        [sys.executable, "-m", "bookmaker", "proof", "."],
        env={**environment, "HOME": str(place / "under"), "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert "calm" in done.stdout.casefold()


def test_a_clock_that_goes_backwards_changes_no_byte(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The time of day takes no part: neither in files nor in what is kept, though it jumps back with every look."""
    monkeypatch.setenv("BOOKMAKER_CACHE", str(folder / "cache"))
    assert run("typeset", ".", "--out", "out").exit_code == 0
    before = (folder / "out" / "book.pdf").read_bytes()
    now = [2_000_000_000.0]

    def back() -> float:
        now[0] -= 86_400
        return now[0]

    monkeypatch.setattr(time, "time", back)
    monkeypatch.setattr(time, "time_ns", lambda: int(back() * 1e9))
    for more in ([], ["--fresh"]):
        result = run("typeset", ".", "--out", "out", *more)
        assert result.exit_code == 0, result.output
        assert (folder / "out" / "book.pdf").read_bytes() == before


@posix
def test_of_two_runs_into_one_folder_one_is_there_at_the_end(folder: Path) -> None:
    """Two layouts, typeset at once: the book and the key are of the same run."""
    alone: dict[bytes, str] = {}
    for layout in ("a4-book", "a5-book"):
        assert run("typeset", ".", "--out", "out", "--layout", layout).exit_code == 0
        for name in ("book.pdf", "key.pdf"):
            alone[(folder / "out" / name).read_bytes()] = layout
    words = [sys.executable, "-m", "bookmaker", "typeset", ".", "--out", "out", "--layout"]
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    runs = [subprocess.Popen([*words, layout], env=env) for layout in ("a4-book", "a5-book")]
    assert [one.wait(timeout=120) for one in runs] == [0, 0]
    assert len({alone[(folder / "out" / name).read_bytes()] for name in ("book.pdf", "key.pdf")}) == 1
    assert not [path for path in (folder / "out").iterdir() if path.name.startswith(".")]


ADDING = ("screen", "small.yaml", "--out", "r.jsonl"), ("draft", "wish.yaml", "--out", "d.yaml")


@posix
@pytest.mark.parametrize("words", ADDING, ids=lambda words: words[0])
def test_of_two_runs_that_add_to_one_file_the_second_is_refused(folder: Path, words: tuple[str, ...]) -> None:
    fcntl = pytest.importorskip("fcntl")
    name = words[-1]
    held = folder / (name if words[0] == "screen" else f".{name}.lock")
    with held.open("w") as stream:
        fcntl.flock(stream, fcntl.LOCK_EX)
        result = run(*words)
    assert result.exit_code == 1
    assert f"{name}: another bookmaker is at work on this file" in result.stderr
    assert "wait until it has ended" in result.stderr
    assert run(*words).exit_code == 0


@posix
def test_who_moves_files_into_a_folder_waits_for_another(folder: Path) -> None:
    """Held here for a moment, by a process that ends with its standard input."""
    holding = subprocess.Popen(
        [sys.executable, "-c", "from pathlib import Path; from bookmaker.alone import alone_in\n"
         "with alone_in(Path('out')): print('held', flush=True); input()"],
        env={**os.environ, "PYTHONPATH": str(ROOT)}, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True,
    )  # fmt: skip
    assert holding.stdout is not None and holding.stdout.readline() == "held\n"
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    words = [sys.executable, "-m", "bookmaker", "rules", "--chart", "out/file.pdf"]
    waiting = subprocess.Popen(words, env=env, stdout=subprocess.PIPE)
    with pytest.raises(subprocess.TimeoutExpired):
        waiting.wait(timeout=4)
    assert (folder / "out" / "file.pdf").read_bytes() == b"old"
    holding.communicate("\n", timeout=30)
    assert waiting.wait(timeout=60) == 0
    assert (folder / "out" / "file.pdf").read_bytes().startswith(b"%PDF")
