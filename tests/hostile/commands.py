"""Every command as a door: a manifest from the grammar, and words that a user might type for it."""

from __future__ import annotations

import os
from pathlib import Path

from hypothesis import strategies as st

from bookmaker.visible import HIDDEN
from tests.cli.running import run
from tests.hostile import books

ID = "p0"
"""The first puzzle of a book from the grammar."""

WORDS: dict[str, tuple[str, ...]] = {
    "proof": ("proof .", "proof . --notes", "proof . --count 50", "proof . --json out/a.json", "proof . --json -"),
    "typeset": (
        "typeset . --out out --draft",
        "typeset . --out out --layout a5-book --text --braille --cover",
        "typeset . --out out --draft --booklet --contact",
        "typeset . --out out --draft --edition ebook --date 2026-03-14 --metadata out/a.xml",
        "typeset . --out out --edition press --date 2026-03-14",
    ),
    "handout": ("handout . --pick p0 --out out/a.pdf", "handout . --pick p0,p1 --contest --out out/a --key reverse"),
    "crib": ("crib . p0 --out out/a.pdf",),
    "explain": ("explain . p0", "explain . p0 --steps", "explain . p1"),
    "picture": ("picture . p0 --out out/a.svg", "picture . p0 --solved --out out/a.png --dpi 40",
                "picture . p0 --moments --out out/m"),
    "review": ("review . --out out/a.html", "review . --notes --out out/a.html"),
    "archive": ("archive .", "archive . --csv out/a.csv --xlsx out/a.xlsx --json out/a.json"),
    "twins": ("twins . --json out/a.json", "twins . --exact"),
    "assemble": ("assemble brief.yaml --out out/mine",),
    "screen": ("screen book.yaml --out out/a.jsonl", "screen book.yaml brief.yaml --out out/b.jsonl"),
    "mend": ("mend . p0 --for 1s", "mend . p1 --for 1s --write out/a.yaml"),
    "tune": ("tune . p0 --fewer-givens --for 1s", "tune . p0 --band Ramble --for 1s --write out/a.yaml"),
    "times": ("times . book.yaml", "times . times.csv --out out/a.yaml"),
    "draft": ("draft wish.yaml --for 1s --out out/a.yaml", "draft book.yaml --for 1s --out out/b.yaml"),
    "preflight": ("preflight book.yaml", "preflight book.yaml --against ."),
}  # fmt: skip
"""For each door what may be typed. Commands that read no manifest have none."""

BESIDE = {
    "brief.yaml": "archive: .\nbrief: {title: Few, puzzles: 1, permission: [granted, own, none]}\n",
    "wish.yaml": "wish: {puzzles: 1, size: 6, rules: cage}\n",
    "times.csv": "solver,p0,p1\nAda,3,4\nBo,5,>9\n",
}

MANIFESTS = books.sound() | books.mixed() | books.nearly_sound() | books.HOSTILE


def typed(door: str) -> st.SearchStrategy[tuple[str, str]]:
    """A manifest, and a command for it."""
    return st.tuples(MANIFESTS, st.sampled_from(WORDS[door]))


def command(folder: Path, found: tuple[str, str]) -> None:
    """Type it: it ends with an exit code and words, shows nothing hidden, and writes only into its folder."""
    text, words = found
    for name, beside in BESIDE.items():
        (folder / name).write_text(beside, encoding="utf-8")
    (folder / "book.yaml").write_bytes(text.encode("utf-8", errors="surrogatepass"))
    (folder / "out").mkdir(exist_ok=True)
    before = _files(folder)
    home = Path.cwd()
    os.chdir(folder)
    try:
        result = run(*words.split())
    finally:
        os.chdir(home)
    assert result.exit_code in (0, 1, 2), (words, result.output, result.exception)
    assert result.exception is None or isinstance(result.exception, SystemExit), (words, result.exception)
    assert "Traceback" not in result.output
    assert not HIDDEN.search(result.output), (words, result.output)
    assert result.exit_code == 0 or result.stderr, words
    assert _files(folder) == before, words


def _files(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}
