"""What can be made of the book from the desk: the commands, run beside it, with how far they have come.

In: what is asked for, and the book. Out: lines of progress as they come, then the files, in a folder that goes with the
desk. Nothing is written into the user's own folders.
"""

from __future__ import annotations

import asyncio
import re
import sys
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

_PROGRESS = re.compile(r"(\w[\w ]*?) (\d+) of (\d+)(?: (.+))?")

KINDS = {
    "typeset": ("typeset", "{book}", "--out", "{folder}"),
    "draft": ("typeset", "{book}", "--out", "{folder}", "--draft"),
    "handout": ("handout", "{book}", "--pick", "{ids}", "--out", "{folder}/handout.pdf"),
    "crib": ("crib", "{book}", "{ids}", "--out", "{folder}/crib-{ids}.pdf"),
    "picture": ("picture", "{book}", "{ids}", "--out", "{folder}/{ids}.svg"),
    "review": ("review", "{book}", "--out", "{folder}/review.html"),
}
"""The commands, and what is put into them."""

ONE_PUZZLE = ("crib", "picture")
OF_PUZZLES = ("handout", *ONE_PUZZLE)

Say = Callable[[str, int, int], None]
"""Told what is being done, and how far it has come, of how much; 0 of 0 where that is not known."""


@dataclass(frozen=True, slots=True)
class Made:
    """The files, or what is wrong."""

    files: tuple[Path, ...] = ()
    wrong: str = ""


async def make(kind: str, book: Path, archives: Sequence[Path], ids: Sequence[str], folder: Path, say: Say) -> Made:
    """Run a command. Raises KeyError for one that is not in `KINDS`."""
    values = {"book": str(book), "folder": str(folder), "ids": ",".join(ids)}
    words = [word.format(**values) for word in KINDS[kind]]
    words += [word for archive in archives for word in ("--archive", str(archive))]
    say("begun", 0, 0)
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "bookmaker",
        *words,
        stdin=asyncio.subprocess.DEVNULL,
        stdout=asyncio.subprocess.DEVNULL,
        stderr=asyncio.subprocess.PIPE,
    )
    said: list[str] = []
    try:
        assert process.stderr is not None
        async for line in process.stderr:
            text = line.decode("utf-8", errors="replace").rstrip()
            if found := _PROGRESS.fullmatch(text):
                say(" ".join(filter(None, (found[1], found[4]))), int(found[2]), int(found[3]))
            else:
                said.append(text)
        code = await process.wait()
    finally:
        if process.returncode is None:
            process.terminate()
    if code:
        return Made(wrong="\n".join(said) or f"the command ended with {code}")
    return Made(tuple(sorted(path for path in folder.iterdir() if path.is_file())))
