"""Every command as a door: a manifest from the grammar, and words that a user might type for it."""

from __future__ import annotations

import os
from pathlib import Path
from shutil import rmtree

from hypothesis import strategies as st

from bookmaker.manifest import load
from bookmaker.visible import HIDDEN
from tests.cli.running import run
from tests.hostile import books, doors, shaped
from tests.hostile.damage import damaged
from tests.hostile.slips import wishes

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
        "typeset . --out out --draft --layout own.yaml",
        "typeset . --out out --draft --calibration marks.yaml --theme harbour-night --cover",
    ),
    "handout": ("handout . --pick p0 --out out/a.pdf", "handout . --pick p0,p1 --contest --out out/a --key reverse",
                "handout . --pick p0 --out out/a.pdf --fillable --hints",
                "handout . --pick p0 --out out/a --layout own.yaml"),
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
    "intake": ("intake table.csv --out out", "intake book.yaml --out out"),
    "layouts": ("layouts own.yaml", "layouts own.yaml --out out/a.pdf", "layouts book.yaml"),
    "themes": ("themes .", "themes . --out out/a.png"),
    "mark": ("mark book.yaml --against .",),
}  # fmt: skip
"""For each door what may be typed. Commands that read no manifest have none."""

SPOKEN = {"typeset", "handout", "crib", "explain", "picture"}
"""Commands with --language."""

BESIDE = {
    "brief.yaml": "archive: .\nbrief: {title: Few, puzzles: 1, permission: [granted, own, none]}\n",
    "wish.yaml": "wish: {puzzles: 1, size: 6, rules: cage}\n",
    "times.csv": "solver,p0,p1\nAda,3,4\nBo,5,>9\n",
    "own.yaml": "based-on: a5-book\n",
    "marks.yaml": doors.CALIBRATION,
    "table.csv": "id,givens,size\nnew,1.........2....3,4\n",
}
"""Files of other rooms, as most cases find them."""

DRAWN: dict[str, st.SearchStrategy[str]] = {
    "brief.yaml": shaped.files("brief").map(lambda text: f"archive: .\n{text}"),
    "wish.yaml": shaped.files("wish") | wishes(),
    "own.yaml": shaped.files("layout"),
    "archive.yaml": shaped.files("archive"),
}
"""The same drawn from their schemas."""

ROOMS = st.one_of(
    st.none(),
    st.none(),
    *(st.tuples(st.just(name), drawn) for name, drawn in DRAWN.items()),
    st.sampled_from(sorted(BESIDE)).flatmap(
        lambda name: st.tuples(
            st.just(name), damaged(BESIDE[name].encode()).map(lambda raw: raw.decode("utf-8", "replace"))
        )
    ),
)
"""None, or a file of another room with what is in it."""

MANIFESTS = st.one_of(
    *(books.sound(), books.sound(), books.of_other_shapes(), books.headed(), books.mixed(), books.clashing_shapes()),
    *(books.fit_for_print(), books.fit_for_print(), books.fit_for_print()),
    *(books.nearly_sound(), books.SLIPPED, books.HOSTILE),
)

WISHED = st.tuples(st.just("wish.yaml"), DRAWN["wish.yaml"])
"""What `draft` needs most."""

Case = tuple[str, str, tuple[str, str] | None]
"""A manifest, what is typed, and a file beside it."""


@st.composite
def typed(draw: st.DrawFn, door: str, manifests: st.SearchStrategy[str] = MANIFESTS) -> Case:
    """A manifest, a command for it, and now and then another file."""
    words = draw(st.sampled_from(WORDS[door]))
    if door in SPOKEN and draw(st.booleans()):
        words += f" --language {draw(st.sampled_from(books.LANGUAGES))}"
    return draw(manifests), words, draw(WISHED if door == "draft" else ROOMS)


def command(folder: Path, found: Case) -> None:
    """Type it: it ends with an exit code and words, shows nothing hidden, and writes only into its folder."""
    text, words, other = found
    for path in [*folder.glob("*.yaml"), *folder.glob("out/*")]:
        path.unlink() if path.is_file() else rmtree(path)
    for name, beside in (BESIDE | dict([other] if other else ())).items():
        (folder / name).write_text(beside, encoding="utf-8", newline="")
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
    assert result.exit_code == 0 or result.output.strip(), words
    assert _files(folder) == before, words
    if words.startswith("draft") and result.exit_code == 0:
        assert load(folder / words.split()[-1]).entries, "what was drafted can be read"


def _files(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}
