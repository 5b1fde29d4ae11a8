"""Every command that writes, with what it needs, disturbed while it writes; and what must be so afterwards."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from tests.hostile.moments import Ending, every, files_in

SMALL = """\
- id: calm
  title: Calm
  size: 6
  givens: |
    . . .  . 3 .
    . . .  2 1 .

    . 2 .  . . .
    . 1 4  5 6 .

    . 6 2  3 . .
    . 4 .  . . .
"""
TINY = "12343.12.1434.21"
FILES = {
    "book.yaml": "book: {title: Calm, permission: ours}\npuzzles:\n  - include: small.yaml\n",
    "small.yaml": SMALL,
    "slip.yaml": SMALL.replace(". . .  2 1 .", ". . .  2 4 ."),
    "store/small.yaml": SMALL,
    "table.csv": "id,givens,size\nnew,1.........2....3,4\n",
    "brief.yaml": "archive: store\nbrief: {title: Few, puzzles: 1}\n",
    "wish.yaml": "wish: {puzzles: 2, size: 6, rules: cage, tags: [new]}\n",
}
OLD = ("out/book.pdf", "out/key.pdf", "out/file.pdf", "out/file-marker.pdf", "out/file.json", "out/file.svg")
"""Files that are there before."""

WRITERS: dict[str, list[str]] = {
    "start": ["start", "new"],
    "typeset": ["typeset", ".", "--out", "out", "--layout", "a5-book"],
    "typeset with all": ["typeset", ".", "--out", "out", "--contact", "--booklet", "--cover", "--text", "--braille"],
    "e-book": ["typeset", ".", "--out", "out", "--edition", "ebook", "--date", "2026-03-14"],
    "press": ["typeset", ".", "--out", "out", "--edition", "press", "--date", "2026-03-14", "--metadata", "out/m.json"],
    "handout": ["handout", ".", "--pick", "calm", "--contest", "--out", "out/file.pdf"],
    "crib": ["crib", ".", "calm", "--out", "out/file.pdf"],
    "picture": ["picture", ".", "calm", "--out", "out/file.svg"],
    "moments": ["picture", ".", "calm", "--moments", "--out", "out/moments"],
    "proof": ["proof", ".", "--json", "out/file.json"],
    "review": ["review", ".", "--out", "out/file.html"],
    "archive": ["archive", "store", "--csv", "out/t.csv", "--xlsx", "out/t.xlsx", "--json", "out/file.json"],
    "twins": ["twins", "store", "--json", "out/file.json"],
    "intake": ["intake", "table.csv", "--out", "store"],
    "assemble": ["assemble", "brief.yaml", "--out", "out/mine"],
    "draft": ["draft", "wish.yaml", "--out", "out/drafted.yaml"],
    "mend": ["mend", "slip.yaml", "calm", "--write", "out/mended.yaml"],
    "tune": ["tune", "small.yaml", "calm", "--fewer-givens", "--show", "1", "--write", "out/tuned.yaml"],
    "rules": ["rules", "--chart", "out/file.pdf"],
    "layouts": ["layouts", "a5-book", "--out", "out/file.pdf"],
    "themes": ["themes", ".", "--out", "out/themes.png"],
}
"""`screen` is not among them: it adds to its report line by line. Nor is `times`, which wants ten puzzles and a club's
table; it writes its two files as `archive` does."""

GROWING = {"draft", "proof"}
"""Of these a file may be neither the old one nor the new one of another run: a draft is written several times, each
time whole, and a report says how long the proofs took."""


def laid_out(folder: Path) -> Path:
    """A folder in which every command finds what it needs, and old files where it writes."""
    for name, text in FILES.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(text, encoding="utf-8")
    for name in OLD:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(b"old")
    return folder


@dataclass(frozen=True)
class Judged:
    """How a command took it: at how many moments it was disturbed, what was wrong after that, and how often new files
    stood beside old ones, until the next run."""

    moments: int
    findings: list[str]
    mixed: int


def judged(name: str, folder: Path, act: str, most: int = 10_000) -> Judged:
    """Disturb the command at its file operations, `most` of them spread over all."""
    before = laid_out(folder / "before")
    old = files_in(before)
    whole, met = every(WRITERS[name], before, act, most)
    findings = [] if whole.code == 0 and whole.files != old else [f"undisturbed: {whole}"]
    mixed = 0
    for number, ending in enumerate(met, start=1):
        all_old, all_new = ending.files == old, ending.files == whole.files
        mixed += not (all_old or all_new)
        if wrong := _wrong(name, act, old, whole.files, ending):
            findings.append(f"moment {number} of {len(met)}: {wrong}: {ending}")
    return Judged(len(met), findings, mixed)


def _wrong(name: str, act: str, old: dict[str, str], new: dict[str, str], ending: Ending) -> str:
    """What should not be so; empty where all is well."""
    files, all_old, all_new = ending.files, ending.files == old, ending.files == new
    if "Traceback" in ending.said or "Exception" in ending.said:
        return "a traceback"
    if not old.keys() <= files.keys():
        return "an old file is gone"
    if name not in GROWING and any(content not in (old.get(path), new.get(path)) for path, content in files.items()):
        return "a file that is neither old nor new"
    if ending.code != {"kill": -9, "stop": 130, "refuse": 1}[act] and not (act == "refuse" and ending.code == 0):
        return "another exit code"
    if act == "kill":
        mixed = name not in GROWING and ending.mended not in (old, new)
        return "new files beside old ones, which the next run left so" if mixed else ""
    if ending.hidden and act == "stop":
        return "something hidden is left"
    if name not in GROWING and not all_new and (ending.code == 0 or not all_old):
        return "some files are new"
    if act == "stop" and ("all was written" in ending.said) != all_new and name not in GROWING:
        return "what is said is not so"
    if ending.code == 1 and "No space left on device" not in ending.said:
        return "the disk is not named"
    return ""
