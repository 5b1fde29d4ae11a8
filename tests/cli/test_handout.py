"""`handout` and `typeset --booklet` as a host types them."""

from __future__ import annotations

from pathlib import Path

import pikepdf
import pytest
from pypdf import PdfReader

from bookmaker.preflight import inspect
from tests.cli.running import run
from tests.published import PULP, SEVENTEEN, WORKED


def printed(path: Path) -> list[tuple[int, str]]:
    """Page and kind of every grid in a file."""
    return [(grid.page, grid.kind) for grid in inspect(path.read_bytes(), path.name).printed]


@pytest.mark.parametrize(
    ("key", "grids"),
    [
        (None, [(1, "grid"), (2, "key")]),
        ("last", [(1, "grid"), (2, "key")]),
        ("reverse", [(1, "grid"), (2, "key")]),
        ("foot", [(1, "grid"), (1, "key")]),
        ("none", [(1, "grid")]),
    ],
)
def test_the_key_stands_where_it_is_wanted(
    folder: Path, tmp_path: Path, key: str | None, grids: list[tuple[int, str]]
) -> None:
    file = tmp_path / "sheet.pdf"
    result = run("handout", folder, "--pick", "worked", "--out", file, *(["--key", key] if key else []))
    assert result.exit_code == 0, result.output
    assert printed(file) == grids


def test_a_contest_writes_a_second_file_for_the_marker(folder: Path, tmp_path: Path) -> None:
    result = run(
        "handout", folder, "--pick", "worked", "--out", tmp_path / "evening.pdf", "--contest", "--points", "30"
    )
    assert result.exit_code == 0, result.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["evening-marker.pdf", "evening.pdf"]
    assert printed(tmp_path / "evening.pdf") == [(1, "grid")]
    assert printed(tmp_path / "evening-marker.pdf") == [(2, "key")]


@pytest.mark.parametrize(
    ("options", "said"),
    [
        (["--contest", "--points", "10,20"], "one puzzle picked, but 2 given"),
        (["--contest", "--points", "many"], "whole numbers from 1 to 999"),
        (["--contest", "--points", "0"], "whole numbers from 1 to 999"),
        (["--points", "10"], "add --contest"),
        (["--contest", "--key", "foot"], "leave out --key"),
        (["--contest", "--key-file", "key.pdf"], "leave out --key-file"),
        (["--copies", "2", "--fillable"], "leave out --copies"),
        (["--copies", "0"], "0 is not in the range"),
        (["--date", "14 March"], "does not match the format"),
    ],
)
def test_options_that_do_not_go_together(folder: Path, tmp_path: Path, options: list[str], said: str) -> None:
    result = run("handout", folder, "--pick", "worked", "--out", tmp_path / "sheet.pdf", *options)
    assert result.exit_code == 2 and said in " ".join(result.stderr.split())
    assert not list(tmp_path.iterdir())


@pytest.fixture(scope="module")
def three(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A book whose order is not that of its ids, which is why numbers need its proofs."""
    folder = tmp_path_factory.mktemp("three")
    givens = {"2": SEVENTEEN, "easy": WORKED, "b": PULP}
    puzzles = [f"{{id: {name}, givens: '{text}'}}" for name, text in givens.items()]
    heading = "book: {title: Three, permission: made for this test, order: difficulty}"
    (folder / "book.yaml").write_text(f"{heading}\npuzzles: [{', '.join(puzzles)}]\n", encoding="utf-8")
    return folder


@pytest.mark.parametrize(
    ("picks", "ids"),
    [
        (["b"], ["b"]),
        (["b", "easy"], ["b", "easy"]),
        (["b,easy", "b"], ["b", "easy"]),
        (["1"], ["easy"]),
        (["2-3"], ["b", "2"]),
        (["2"], ["2"]),  # an id before a number
        (["3", "all"], ["2", "easy", "b"]),
    ],
)
def test_what_is_picked_adds_up(three: Path, tmp_path: Path, picks: list[str], ids: list[str]) -> None:
    file = tmp_path / "sheet.pdf"
    asked = [word for pick in picks for word in ("--pick", pick)]
    result = run("handout", three, *asked, "--key", "none", "--out", file)
    assert result.exit_code == 0, result.output
    assert [grid.id for grid in inspect(file.read_bytes(), file.name).printed] == ids


@pytest.mark.parametrize(
    ("pick", "said"),
    [
        ("4", "no puzzle number 4"),
        ("0-2", "no puzzle number 0"),
        ("3-1", "write 1-3"),
        ("eazy", "did you mean “easy”?"),
        ("eazy,9,3-1", "no puzzle number 9"),
    ],
)
def test_what_names_no_puzzle(three: Path, tmp_path: Path, pick: str, said: str) -> None:
    result = run("handout", three, "--pick", pick, "--out", tmp_path / "x.pdf")
    assert result.exit_code == 1 and said in result.stderr
    assert len([line for line in result.stderr.splitlines() if "book.yaml: " in line]) == pick.count(",") + 1
    assert not [*tmp_path.iterdir()]


def test_copies_have_numbers_and_the_key_has_its_file(three: Path, tmp_path: Path) -> None:
    result = run(
        "handout", three, "--pick", "all", "--out", tmp_path / "x.pdf", "--key-file", tmp_path / "key.pdf", "--copies",
        "3", "--title", "A quiet evening", "--date", "2026-03-14", "--hide-grade", "--hints",
    )  # fmt: skip
    assert result.exit_code == 0, result.output
    assert printed(tmp_path / "key.pdf") == [(1, "key")] * 3
    assert sorted(printed(tmp_path / "x.pdf")) == [(copy, "grid") for copy in (1, 2, 3) for _ in range(3)]
    pages = [page.extract_text() for page in PdfReader(tmp_path / "x.pdf").pages]
    assert len(pages) == 4 and "Hints" in pages[-1]
    for copy, page in enumerate(pages[:-1], start=1):
        assert f"Copy {copy} of 3" in page and "A quiet evening" in page and "14 March 2026" in page
        assert "difficulty" not in page and "Stroll" not in page
    for name in ("x.pdf", "key.pdf"):
        with pikepdf.open(tmp_path / name) as pdf:
            assert str(pdf.docinfo["/CreationDate"]) == "D:20260314000000Z"


def test_a_title_that_cannot_be_printed(three: Path, tmp_path: Path) -> None:
    result = run("handout", three, "--pick", "1", "--out", tmp_path / "x.pdf", "--title", "☂")
    assert result.exit_code == 1 and "--title: the book's title has the character “☂”" in result.stderr


@pytest.mark.parametrize("options", [["--booklet"], ["--layout", "half-letter-booklet"]])
def test_a_booklet_stands_beside_the_book(folder: Path, tmp_path: Path, options: list[str]) -> None:
    result = run("typeset", folder, "--out", tmp_path, *options)
    assert result.exit_code == 0, result.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["book.pdf", "booklet.pdf", "key.pdf"]
    book, booklet = (inspect((tmp_path / f"{name}.pdf").read_bytes(), name) for name in ("book", "booklet"))
    sheets = -(-book.pages // 4)
    assert booklet.pages == 2 * sheets
    assert f"fold {sheets} sheets" in result.stdout
    assert sorted(grid.kind for grid in booklet.printed) == ["grid", "key"]


def test_a_press_gets_no_booklet(folder: Path, tmp_path: Path) -> None:
    press = ("typeset", folder, "--out", tmp_path, "--edition", "press", "--date", "2026-03-14")
    assert run(*press, "--booklet").exit_code == 2
    assert not list(tmp_path.iterdir())
    result = run(*press, "--layout", "a5-booklet")
    assert result.exit_code == 0, result.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["book-press.pdf", "key-press.pdf"]
