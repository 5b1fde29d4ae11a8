"""A command that is met by something at a moment that is counted, not timed: killed, stopped or refused at its n-th
file operation, or at its n-th import.

Moments are audit events of Python (PEP 578), which no library can get round. A process of its own reads bookmaker in
once and splits off a copy for each moment:

    python -m tests.hostile.moments FOLDER kill 8 typeset . --out out

It prints a line of JSON for the command undisturbed, and one for each moment: exit code, what was said, the files
that are there afterwards, and those that are there after the next run.
"""

from __future__ import annotations

import importlib
import json
import os
import shutil
import signal
import subprocess
import sys
from collections.abc import Iterable
from dataclasses import dataclass
from errno import ENOSPC
from hashlib import sha256
from pathlib import Path
from typing import Any, NoReturn

ROOT = Path(__file__).resolve().parents[2]

WRITING = ("os.rename", "os.link", "os.remove", "os.mkdir", "os.rmdir", "os.chmod", "os.truncate", "os.symlink")
"""Events that change files, besides those of opening one for writing."""

LATE = 10_000
"""A moment that never comes: the command ends by itself, and says how many moments there are."""


@dataclass
class Ending:
    """How a command ended."""

    code: int
    said: str
    files: dict[str, str]
    """What is in the folder, by path: a hash of each file."""
    hidden: list[str]
    """Hidden files that are left."""
    moments: int
    """How many came."""
    mended: dict[str, str]
    """What is in the folder once another process has begun to write beside each file."""


def every(words: Iterable[str], before: Path, act: str, most: int) -> tuple[Ending, list[Ending]]:
    """Run a command in copies of the folder `before`. How it ends if nothing comes between, and if the act is done at
    each moment, at most so many spread over all."""
    done = subprocess.run(
        [sys.executable, "-m", "tests.hostile.moments", str(before), act, str(most), *words],
        cwd=ROOT,
        env={**os.environ, "PYTHONPATH": str(ROOT), "BOOKMAKER_CACHE": str(before.parent / "cache")},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    whole, *met = (Ending(**json.loads(line)) for line in done.stdout.splitlines())
    return whole, met


def files_in(folder: Path) -> dict[str, str]:
    """What is in a folder and is not hidden: a hash of each file."""
    found = (path for path in sorted(folder.rglob("*")) if path.is_file() and not path.name.startswith("."))
    return {path.relative_to(folder).as_posix(): sha256(path.read_bytes()).hexdigest() for path in found}


def watch(act: str, moment: int, folder: Path) -> list[int]:
    """Do the act at the moment; the list says how many have come."""
    come = [0]

    def hook(event: str, args: tuple[Any, ...]) -> None:
        if not _writes(event, args, folder):
            return
        come[0] += 1
        if come[0] != moment:
            return
        match act:
            case "kill":
                os.kill(os.getpid(), signal.SIGKILL)
            case "stop":
                signal.raise_signal(signal.SIGINT)
            case "refuse":
                raise OSError(ENOSPC, os.strerror(ENOSPC))

    sys.addaudithook(hook)
    return come


def _writes(event: str, args: tuple[Any, ...], folder: Path) -> bool:
    """Is this an operation that changes a file in the folder?"""
    if event == "open":
        path, _, flags = args
        if not isinstance(flags, int) or not flags & (os.O_WRONLY | os.O_RDWR | os.O_CREAT | os.O_APPEND):
            return False
    elif event in WRITING:
        path = args[0]
    else:
        return False
    return isinstance(path, str | bytes | os.PathLike) and os.fsdecode(path).startswith(str(folder))


def ending(words: list[str], before: Path, act: str, moment: int) -> Ending:
    """Run the command in a process split off from this one."""
    case, told = before.with_name("case"), before.with_name("told")
    shutil.rmtree(case, ignore_errors=True)
    shutil.copytree(before, case)
    child = os.fork()
    if not child:
        _run(words, case, told, act, moment)
    code = os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])
    said = told.read_text(encoding="utf-8", errors="replace")
    moments = int(said.split()[-2]) if moment == LATE else moment
    files, hidden = files_in(case), [path.name for path in case.rglob(".*")]
    return Ending(code, said, files, hidden, moments, _mended(case))


def _mended(case: Path) -> dict[str, str]:
    from bookmaker.files import undone, write_whole

    for folder in {path.parent for path in case.rglob("*") if path.is_file()}:
        write_whole({folder / "another": b""})
        (folder / "another").unlink()
    undone.clear()  # the next process split off has not done it
    return files_in(case)


def _run(words: list[str], case: Path, told: Path, act: str, moment: int) -> NoReturn:
    from bookmaker import cli, stopping

    os.chdir(case)
    handle = os.open(told, os.O_WRONLY | os.O_CREAT | os.O_TRUNC)
    os.dup2(handle, 1)
    os.dup2(handle, 2)
    signal.signal(signal.SIGINT, signal.default_int_handler)  # in the background of a shell it may be off
    stopping.in_order()
    come = watch(act, moment, case)
    code = 70
    try:
        cli.main(words)
    except SystemExit as end:
        code = int(end.code or 0)
    except KeyboardInterrupt as stop:
        code = stopping.code_of(stop)
    if moment == LATE:
        print(f"\n{come[0]} moments")
    sys.stdout.flush()
    os._exit(code)


def main() -> None:
    before, act, most, words = Path(sys.argv[1]), sys.argv[2], int(sys.argv[3]), sys.argv[4:]
    importlib.import_module(f"bookmaker.cli.commands.{words[0]}")  # once, not in each process
    whole = ending(words, before, act, LATE)
    print(json.dumps(vars(whole)))
    for moment in range(1, whole.moments + 1, max(1, -(-whole.moments // most))):
        print(json.dumps(vars(ending(words, before, act, moment))), flush=True)


if __name__ == "__main__":
    main()
