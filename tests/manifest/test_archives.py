"""Picking from archives: puzzles by id, wherever in a folder of files they stand."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.manifest.archives import archive_files
from bookmaker.source.diagnostics import BookErrors, Collector
from tests.manifest.books import GIVENS, read, troubles_of, write

OTHER = "....9..5....674.3....5....95.....3.82......6.7.3.46...45...1.9.....6....3......27"
HEAD = "book: {title: T, archive: ../store, permission: ours}\npuzzles:\n"
STORE: dict[str, str | bytes] = {
    "store/deep/a.yaml": f"- id: low-tide\n  title: Low Tide\n  setter: Wick\n  givens: {GIVENS}\n",
    "store/book.yaml": (
        f"book: {{title: B, permission: B's}}\npuzzles:\n- include: in.yaml\n- id: own\n  givens: {OTHER}\n"
    ),
    "store/in.yaml": f"- id: included\n  givens: {OTHER}\n",
    "store/weekly.txt": f"# two\n{GIVENS} First\n{OTHER}\n",
    "store/.hidden.yaml": "- id: hidden\n",
    "store/brief.yaml": "brief: {title: low-tide, puzzles: 3}\n",
    "store/archive.yaml": "printed-in: []\n",
    "store/notes.md": "id: low-tide",
}


def test_picks_come_as_they_are_typed_with_fields_of_this_book(tmp_path: Path) -> None:
    book = HEAD + "- pick: low-tide\n  title: Lower Tide\n- pick: weekly-1\n- pick: included\n- pick: own\n"
    entries = read(tmp_path, {**STORE, "mine/book.yaml": book}, "mine/book.yaml").entries
    assert [(e.id, e.title, e.setter) for e in entries] == [
        ("low-tide", "Lower Tide", "Wick"),
        ("weekly-1", "First", ""),
        ("included", "", ""),
        ("own", "", ""),
    ]
    assert [e.permission for e in entries] == ["ours", "ours", "B's", "B's"]
    assert entries[0].place.file.endswith("store/deep/a.yaml")
    assert entries[1].place.line == 2


WRONG = {
    "unknown": ("- pick: low-tyde\n", "unknown-pick", "did you mean “low-tide”?"),
    "empty": ("- pick:\n", "bad-pick", "such as"),
    "list": ("- pick: [a, b]\n", "bad-pick", "such as"),
    "field": ("- pick: low-tide\n  titel: T\n", "unknown-key", "did you mean “title”?"),
    "twice": ("- pick: low-tide\n- pick: low-tide\n", "pick-twice", ""),
    "from": ("- pick: low-tide\n  from: in.yaml\n", "unknown-pick", ""),
    "hidden": ("- pick: hidden\n", "unknown-pick", ""),
}


@pytest.mark.parametrize("name", WRONG)
def test_slips(name: str, tmp_path: Path) -> None:
    line, code, hint = WRONG[name]
    found = troubles_of(tmp_path, {**STORE, "mine/book.yaml": HEAD + line}, "mine/book.yaml")
    assert [t.code for t in found] == [code]
    assert hint in found[0].hint


def test_one_id_in_two_files_wants_a_file(tmp_path: Path) -> None:
    files = {**STORE, "store/b.yaml": f"- id: low-tide\n  givens: {OTHER}\n"}
    (found,) = troubles_of(tmp_path, {**files, "mine/book.yaml": HEAD + "- pick: low-tide\n"}, "mine/book.yaml")
    assert found.code == "pick-unclear"
    book = HEAD + "- pick: low-tide\n  from: b.yaml\n"
    (entry,) = read(tmp_path, {**files, "mine/book.yaml": book}, "mine/book.yaml").entries
    assert entry.puzzle.givens_text == OTHER


def test_a_book_without_an_archive_says_how_to_name_one(tmp_path: Path) -> None:
    book = "book: {title: T}\npuzzles:\n- pick: low-tide\n"
    (found,) = troubles_of(tmp_path, {**STORE, "mine/book.yaml": book}, "mine/book.yaml")
    assert (found.code, "--archive" in found.hint) == ("no-archive", True)
    assert load(tmp_path / "mine", (tmp_path / "store",)).entries[0].id == "low-tide"


def test_a_folder_that_is_not_there(tmp_path: Path) -> None:
    (found,) = {t.code for t in troubles_of(tmp_path, {"mine/book.yaml": HEAD + "- pick: a\n"}, "mine/book.yaml")} - {
        "unknown-pick"
    }
    assert found == "no-archive"


def test_links_that_lead_out_are_refused(tmp_path: Path) -> None:
    write(tmp_path, {**STORE, "secret/s.yaml": f"- id: secret\n  givens: {OTHER}\n"})
    (tmp_path / "store" / "out.yaml").symlink_to(tmp_path / "secret" / "s.yaml")
    (tmp_path / "store" / "outside").symlink_to(tmp_path / "secret")
    (tmp_path / "store" / "inside").symlink_to(tmp_path / "store" / "deep")
    collector = Collector()
    names = [path.relative_to(tmp_path / "store").as_posix() for path in archive_files(tmp_path / "store", collector)]
    assert names == ["book.yaml", "brief.yaml", "in.yaml", "weekly.txt", "deep/a.yaml"]
    assert [t.code for t in collector.found] == ["link-outside", "link-outside"]
    write(tmp_path, {"mine/book.yaml": HEAD + "- pick: secret\n"})
    with pytest.raises(BookErrors) as found:
        load(tmp_path / "mine")
    assert {t.code for t in found.value.diagnostics} == {"link-outside", "unknown-pick"}
